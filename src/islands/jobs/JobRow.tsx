import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { writeJobFile } from '../../job/job-file.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { countInWords, type Photograph } from '../../job/photograph.ts';
import { saveWithPhotographs } from '../photographs/export.ts';
import { HandOn } from './HandOn.tsx';
import { saveFile } from './save-file.ts';
import { sheetOf } from './sheet-of.ts';
import { jobStore } from './store.ts';
import { fileNameOf, nameOf, said, whyNotKept } from './words.ts';

/** One job that this browser keeps, with a way to its sheet and all that can be done with it. */
export function JobRow({
  job,
  photographs,
  copy,
  rename,
  remove,
  tell,
}: {
  readonly job: KeptJob;
  readonly photographs: readonly Photograph[];
  readonly copy: () => void;
  readonly rename: (name: string) => void;
  readonly remove: () => void;
  readonly tell: (words: string) => void;
}): JSX.Element {
  const name = nameOf(job.entries);
  const own = typeof job.entries.name === 'string' ? job.entries.name : '';
  const [typed, setTyped] = useState<string | undefined>();
  const box = `name-${job.id}`;
  const why = jobStore().whyUnkept(job.id);
  return (
    <li>
      <a
        class="job"
        id={`job-${job.id}`}
        href={sheetOf(job)}
        // Whoever taps on to another sheet before this one runs finds the job there too.
        onClick={() => {
          jobStore().opened = job.id;
        }}
      >
        {name}
      </a>
      <p class="hint">
        Last change {said(job.changed)}
        {photographs.length > 0 ? `. ${countInWords(photographs)}` : ''}
        {why === undefined ? '' : `. Not kept: ${whyNotKept[why]}. Held while this page is open`}
      </p>
      <details>
        <summary>
          Copy, rename, save, hand on or delete<span class="visually-hidden"> {name}</span>
        </summary>
        <p class="acts">
          <button type="button" class="plain" aria-label={`Copy ${name}`} onClick={copy}>
            Copy
          </button>
          <button
            type="button"
            class="plain"
            aria-label={`Save to a file: ${name}`}
            onClick={() => saveFile(fileNameOf(job.entries), writeJobFile(job.entries, job))}
          >
            Save to a file
          </button>
          {photographs.length > 0 ? (
            <button
              type="button"
              class="plain"
              onClick={() => saveWithPhotographs(job, photographs).then(tell)}
            >
              Save with its {countInWords(photographs)}
              <span class="visually-hidden">: {name}</span>
            </button>
          ) : null}
          <button type="button" class="plain" aria-label={`Delete ${name}`} onClick={remove}>
            Delete
          </button>
        </p>
        <form
          class="field"
          onSubmit={(event) => {
            event.preventDefault();
            rename(typed ?? own);
            setTyped(undefined);
          }}
        >
          <label for={box}>
            Address<span class="visually-hidden"> of {name}</span>
          </label>
          <span class="box">
            <input
              id={box}
              type="text"
              autocomplete="off"
              maxLength={200}
              value={typed ?? own}
              onInput={(event) => setTyped(event.currentTarget.value)}
            />
            <button type="submit" class="plain" aria-label={`Rename ${name}`}>
              Rename
            </button>
          </span>
        </form>
        <HandOn job={job} />
      </details>
    </li>
  );
}
