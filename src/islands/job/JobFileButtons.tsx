import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { calculationRules } from '../../generated/calculation-rules.ts';
import { readJobFile, writeJobFile } from '../../job/job-file.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { writeRecord } from '../../job/record.ts';
import type { Entries } from '../entries.ts';
import { rules } from '../rules.ts';

interface JobFileButtonsProps {
  readonly entries: Entries;
  /** The plan of these entries, where they can be worked. */
  readonly plan: WorkedJob | undefined;
  readonly open: (entries: Entries) => void;
  readonly reset: () => void;
}

/** Hands a text over as a file. */
function save(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Saving the job to a file, and opening one. */
export function JobFileButtons({ entries, plan, open, reset }: JobFileButtonsProps): JSX.Element {
  const said = useRef<HTMLParagraphElement>(null);
  const say = (words: string) => {
    if (said.current) said.current.textContent = words;
  };
  return (
    <div class="files">
      <button type="button" onClick={() => save('job.json', writeJobFile(entries))}>
        Save the job to a file
      </button>
      {plan ? (
        <button
          type="button"
          class="plain"
          onClick={() => save('record.json', writeRecord(entries, plan, rules, calculationRules.rules))}
        >
          Save the record, with every figure
        </button>
      ) : null}
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
