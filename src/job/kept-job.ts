import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { shown } from '../calc/declare/read-fields.ts';
import { jobFields } from './job-fields.ts';
import { isTime, type JobEntries, jobFile, LARGEST_JOB, openJob, parsed } from './job-file.ts';
import { isJobId } from './job-id.ts';
import { type MigrationStep, migrate, type Versioned } from './migrate.ts';
import { isSet, readShape } from './shape.ts';

/** The version of the envelope in which a browser keeps a job; the job file inside has its own. */
const KEPT_VERSION = 1;
const steps: Readonly<Record<number, MigrationStep>> = {};

/** A job as a browser keeps it. */
export interface KeptJob {
  readonly id: string;
  readonly entries: JobEntries;
  /** When it was last changed. */
  readonly changed: string;
  /** Counts the changes, so that one tab notices that another was faster. */
  readonly revision: number;
  /** Which tab made the last change. */
  readonly by: string;
  /** When it was deleted; it can be brought back for a while. */
  readonly deleted?: string | undefined;
}

/** The text under which a job is kept. */
export const writeKept = ({ id, entries, changed, revision, by, deleted }: KeptJob): string =>
  JSON.stringify({
    version: KEPT_VERSION,
    revision,
    by,
    ...(deleted === undefined ? {} : { deleted }),
    job: jobFile(entries, { id, changed }),
  });

/**
 * Reads the text of a kept job. It is trusted no more than a file: another program on the same host may have written it.
 * @example readKept('{}').ok // => false
 */
export function readKept(text: string): Read<KeptJob> {
  const whole = parsed(text, 2 * LARGEST_JOB);
  return whole.ok ? openKept(whole.value) : whole;
}

/** Opens a parsed kept job. @example openKept({ version: 1 }).ok // => false */
export function openKept(whole: Versioned): Read<KeptJob> {
  const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
    ok: false,
    problems: [{ field: '', label: 'Kept job', found, expected }],
  });
  const envelope = migrate(whole, { now: KEPT_VERSION, steps, label: 'Kept job' });
  if (!envelope.ok) return envelope;
  const { revision, by, deleted, job } = envelope.value;
  if (typeof revision !== 'number' || !Number.isSafeInteger(revision) || revision < 1)
    return refused(`the revision ${shown(revision)}`, 'a whole number from 1');
  if (typeof by !== 'string' || by.length > 40) return refused('no tab that kept it', 'a short text');
  if (deleted !== undefined && !isTime(deleted))
    return refused(`the time ${shown(deleted)}`, 'a time such as 2026-11-26T10:42:00Z');
  if (!isSet(job)) return refused('no job', 'a job file');
  const opened = openJob(job);
  if (!opened.ok) return opened;
  const { id, changed, entries } = opened.value;
  if (!isJobId(id) || changed === undefined) return refused('a job without id or time', 'both in its head');
  return { ok: true, value: { id, entries, changed, revision, by, deleted } };
}

/**
 * Reads the entries of the one job that the site kept before it kept several: bare entries, without format, version or id.
 * @example readSingleKept('{"name":"14 Larkspur Lane"}') // => { ok: true, value: { name: '14 Larkspur Lane' } }
 */
export function readSingleKept(text: string): Read<JobEntries> {
  const whole = parsed(text, LARGEST_JOB);
  return whole.ok ? readShape(jobFields, whole.value) : whole;
}
