import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { jobFile, type OpenedJob, openJob, parsed } from './job-file.ts';
import { openKept } from './kept-job.ts';
import { type MigrationStep, migrate } from './migrate.ts';
import { isSet } from './shape.ts';

/** What a file of all jobs says that it is. */
export const JOBS_FORMAT = 'heel-to-ridge jobs';
export const JOBS_VERSION = 1;

/** A browser keeps some five million letters for a site, and a job with nothing in it takes some two hundred. */
export const MOST_JOBS = 30_000;
/** Set out in a file those letters are half as many again. */
const LARGEST = 10_000_000;

/** No older version yet. */
const steps: Readonly<Record<number, MigrationStep>> = {};

/** What a file brought: its jobs, and what is wrong with those that can't be read. */
export interface BroughtJobs {
  readonly jobs: readonly OpenedJob[];
  readonly refused: readonly FieldProblem[];
}

/**
 * The jobs in the text of a file: one job, all the jobs of a phone, or what a phone kept of one, saved where an older copy of the site could
 * not read it. A job that can't be read keeps no other from being read.
 * @example readJobs('[]').ok // => false
 */
export function readJobs(text: string): Read<BroughtJobs> {
  const file = parsed(text, LARGEST);
  if (!file.ok) return file;
  if (file.value.format !== JOBS_FORMAT) {
    const job =
      file.value.format === undefined && isSet(file.value.job) ? openKept(file.value) : openJob(file.value);
    if (!job.ok) return job;
    const { id, changed, entries } = job.value;
    return { ok: true, value: { jobs: [{ id, changed, entries }], refused: [] } };
  }
  const all = migrate(file.value, { now: JOBS_VERSION, steps, label: 'File of jobs' });
  if (!all.ok) return all;
  const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
    ok: false,
    problems: [{ field: 'jobs', label: 'File of jobs', found, expected }],
  });
  const { jobs } = all.value;
  if (!Array.isArray(jobs)) return refused('no list of jobs', 'a list, each a job file');
  if (jobs.length > MOST_JOBS) return refused(`${jobs.length} jobs`, `${MOST_JOBS} at most`);
  const each = jobs.map((job: unknown, place) => openOne(job, `Job ${place + 1} of ${jobs.length}`));
  return {
    ok: true,
    value: {
      jobs: each.flatMap((read) => (read.ok ? [read.value] : [])),
      refused: each.flatMap((read) => (read.ok ? [] : read.problems)),
    },
  };
}

function openOne(job: unknown, called: string): Read<OpenedJob> {
  const read: Read<OpenedJob> = isSet(job)
    ? openJob(job)
    : {
        ok: false,
        problems: [{ field: '', label: 'Job file', found: 'something else', expected: 'a job file' }],
      };
  if (read.ok) return read;
  const [first] = read.problems;
  return { ok: false, problems: first ? [{ ...first, label: `${called}, ${first.label}` }] : [] };
}

/** The text of a file with all these jobs. @example JSON.parse(writeJobs([])).jobs // => [] */
export const writeJobs = (jobs: readonly OpenedJob[]): string =>
  `${JSON.stringify(
    {
      format: JOBS_FORMAT,
      version: JOBS_VERSION,
      jobs: jobs.map(({ entries, ...head }) => jobFile(entries, head)),
    },
    null,
    1,
  )}\n`;
