import type { JSX } from 'preact';
import type { Entries } from '../../calc/declare/entries.ts';
import { calculationRules } from '../../generated/calculation-rules.ts';
import { heldBy } from '../../job/cautions.ts';
import { writeJobFile } from '../../job/job-file.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { writeRecord } from '../../job/record.ts';
import { Arrivals, useArrivals } from '../jobs/Arrivals.tsx';
import { HandOn } from '../jobs/HandOn.tsx';
import { OpenFile } from '../jobs/OpenFile.tsx';
import { saveFile } from '../jobs/save-file.ts';
import type { OpenJob } from '../jobs/use-job.ts';
import { fileNameOf } from '../jobs/words.ts';
import { rules } from '../rules.ts';

interface JobFileButtonsProps {
  readonly job: OpenJob;
  /** Its entries as the plan counts them. */
  readonly counted: Entries;
  /** The plan of these entries, where they can be worked. */
  readonly plan: WorkedJob | undefined;
  readonly open: (id: string) => void;
  readonly reset: () => void;
}

/** Saving the job to a file, opening one, and handing the job on. */
export function JobFileButtons({ job, counted, plan, open, reset }: JobFileButtonsProps): JSX.Element {
  const arrivals = useArrivals(open);
  const { entries } = job;
  return (
    <div class="files">
      <button type="button" onClick={() => saveFile(fileNameOf(entries), writeJobFile(entries, job))}>
        Save the job to a file
      </button>
      {plan ? (
        <button
          type="button"
          class="plain"
          onClick={() => saveFile('record.json', writeRecord(counted, plan, rules, calculationRules))}
        >
          {heldBy(plan).length > 0
            ? 'Save the record, without what the stops hold back'
            : 'Save the record, with every figure'}
        </button>
      ) : null}
      <OpenFile id="open-job" label="Open a job file" take={arrivals.take} />
      <button type="button" class="plain" onClick={reset}>
        Back to the example job
      </button>
      <Arrivals {...arrivals} />
      <details>
        <summary>Send this job on</summary>
        <HandOn job={job} />
      </details>
    </div>
  );
}
