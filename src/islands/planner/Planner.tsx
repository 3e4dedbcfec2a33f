import type { JSX } from 'preact';
import { useCallback, useRef } from 'preact/hooks';
import { type Read, readFields } from '../../calc/declare/read-fields.ts';
import { jobFields } from '../../job/job-fields.ts';
import { readJobFile, writeJobFile } from '../../job/job-file.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { workJob } from '../../job/work.ts';
import type { Entries } from '../entries.ts';
import { FieldsForm } from '../form/FieldInput.tsx';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { rules } from '../rules.ts';
import { useEntries } from '../use-entries.ts';
import { PlanView, shortAnswer } from './PlanView.tsx';

/** The name under which the browser keeps the job. */
const KEPT_AS = 'heel-to-ridge job';

function plan(entries: Entries): Read<WorkedJob> {
  const job = readFields(jobFields, entries);
  return job.ok ? workJob(job.value, rules) : job;
}

/** The planner: the job's entries, and the whole plan worked from them at every change. */
export function Planner({ example }: { readonly example: Entries }): JSX.Element {
  const work = useCallback(plan, []);
  const state = useEntries<WorkedJob>(KEPT_AS, example, work);
  return (
    <div class="bench">
      <form class="entries" aria-label="The job" onSubmit={(event) => event.preventDefault()}>
        <FieldsForm
          fields={jobFields}
          entries={state.entries}
          set={state.set}
          leave={state.leave}
          problems={state.problems}
        />
        <FileButtons
          entries={state.entries}
          open={(entries) => Object.keys(entries).length > 0 && state.set([], entries)}
          reset={state.reset}
        />
      </form>
      {state.result ? (
        <button type="button" class="short-answer" onClick={toPlan}>
          {shortAnswer(state.result)}
        </button>
      ) : null}
      <section class="answers" id="plan" tabIndex={-1} aria-label="The plan">
        {state.problems.length > 0 ? <ProblemSummary problems={state.problems} /> : null}
        {state.waitingFor ? (
          <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
        ) : null}
        {state.result ? <PlanView plan={state.result} /> : null}
      </section>
    </div>
  );
}

/** Goes to the plan; not by the address, which holds the entries. */
function toPlan(): void {
  const plan = document.getElementById('plan');
  plan?.scrollIntoView();
  plan?.focus({ preventScroll: true });
}

interface FileButtonsProps {
  readonly entries: Entries;
  readonly open: (entries: Entries) => void;
  readonly reset: () => void;
}

/** Saving the job to a file, and opening one. */
function FileButtons({ entries, open, reset }: FileButtonsProps): JSX.Element {
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
