import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { readJobFile, writeJobFile } from '../../job/job-file.ts';
import type { Entries } from '../entries.ts';

interface JobFileButtonsProps {
  readonly entries: Entries;
  readonly open: (entries: Entries) => void;
  readonly reset: () => void;
}

/** Saving the job to a file, and opening one. */
export function JobFileButtons({ entries, open, reset }: JobFileButtonsProps): JSX.Element {
  const said = useRef<HTMLParagraphElement>(null);
  const say = (words: string) => {
    if (said.current) said.current.textContent = words;
  };
  return (
    <div class="files">
      <button
        type="button"
        onClick={() => {
          const link = document.createElement('a');
          link.href = URL.createObjectURL(new Blob([writeJobFile(entries)], { type: 'application/json' }));
          link.download = 'job.json';
          link.click();
          URL.revokeObjectURL(link.href);
        }}
      >
        Save the job to a file
      </button>
      <label class="button" for="open-job">
        Open a job file
      </label>
      <input
        id="open-job"
        type="file"
        accept="application/json,.json"
        class="visually-hidden"
        onChange={async (event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (!file) return;
          const text = await file.text();
          const read = readJobFile(text);
          if (!read.ok) {
            say(
              `Not opened. ${read.problems.map(({ label, found, expected }) => `${label}: found ${found}; expected ${expected}.`).join(' ')}`,
            );
            return;
          }
          const { format: _format, version: _version, ...rest } = JSON.parse(text) as Record<string, unknown>;
          open(rest);
          say('Opened.');
        }}
      />
      <button type="button" class="plain" onClick={reset}>
        Back to the example job
      </button>
      <p ref={said} role="status" />
    </div>
  );
}
