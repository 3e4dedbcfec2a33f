import { guessed } from '../calc/declare/guess.ts';
import { type FieldProblem, type Read, readFields, shown } from '../calc/declare/read-fields.ts';
import { type JobValues, jobFields } from './job-fields.ts';
import { isJobId } from './job-id.ts';
import { jobSteps, migrate, type Versioned } from './migrate.ts';
import { isSet, readShape } from './shape.ts';

/** What the first two entries of every job file say, so that a file can be told from others and from its older kind. */
export const JOB_FORMAT = 'heel-to-ridge job';
export const JOB_VERSION = 3;

/**
 * The largest job file that is read, in characters: the largest log, of the longest roof with the closest trusses, takes three quarters of it,
 * and all else of a real job is far below the rest.
 */
export const LARGEST_JOB = 700_000;

/** A job as it is kept: plain entries as they were typed. */
export type JobEntries = Readonly<Record<string, unknown>>;

/** What a file may say of its job besides the entries. */
export interface JobHead {
  /** The same for ever, through files and links; what is kept beside the job goes by it. */
  readonly id?: string | undefined;
  /** When an entry was last changed, as 2026-11-26T10:42:00.000Z. */
  readonly changed?: string | undefined;
}

/** A job out of a file or a link, as it was typed. */
export interface OpenedJob extends JobHead {
  readonly entries: JobEntries;
}

/** The pattern of a time, for the reader and for the schema. */
export const TIME = '^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]{1,3})?Z$';

const AS_WRITTEN = new RegExp(TIME);

/** Is this a time as files write it? @example isTime('2026-11-26T10:42:00Z') // => true */
export const isTime = (value: unknown): value is string =>
  typeof value === 'string' && AS_WRITTEN.test(value) && !Number.isNaN(Date.parse(value));

const refused = (
  field: string,
  found: string,
  expected: string,
): { ok: false; problems: FieldProblem[] } => ({
  ok: false,
  problems: [{ field, label: 'Job file', found, expected }],
});

/** Some editors begin a file with a byte-order mark, which is no JSON. */
const MARK = /^\uFEFF/;

/** The text of a file as JSON. A text that is too long is not even begun. @example parsed('[]', 10).ok // => false */
export function parsed(text: string, largest: number, label = 'Job file'): Read<Versioned> {
  const none = (found: string, expected = `a ${label.toLowerCase()} as this site saves it`): Read<never> => ({
    ok: false,
    problems: [{ field: '', label, found, expected }],
  });
  if (text.length > largest) return none(`${text.length} characters`, `${largest} at most`);
  let value: unknown;
  try {
    value = JSON.parse(text.replace(MARK, ''));
  } catch {
    return none('text that is not JSON');
  }
  return isSet(value) ? { ok: true, value } : none('JSON that is not a set of entries');
}

/** Format, version and head of a job file; its entries come back untouched. */
function headOf(file: Versioned): Read<OpenedJob> {
  if (file.format !== JOB_FORMAT)
    return refused('format', `the format ${shown(file.format)}`, `"${JOB_FORMAT}"`);
  const migrated = migrate(file, { now: JOB_VERSION, steps: jobSteps, label: 'Job file' });
  if (!migrated.ok) return migrated;
  const { format: _format, version: _version, id, changed, ...entries } = migrated.value;
  if (id !== undefined && !isJobId(id))
    return refused('id', `the id ${shown(id)}`, 'from 8 to 40 small letters and digits');
  if (changed !== undefined && !isTime(changed))
    return refused('changed', `the time ${shown(changed)}`, 'a time such as 2026-11-26T10:42:00Z');
  return { ok: true, value: { id, changed, entries } };
}

/**
 * Reads the text of a job file: JSON, then format and version, then every entry. Strict: an unknown key is a problem that names the nearest.
 * @example readJobFile('{}').ok // => false
 */
export function readJobFile(text: string): Read<JobValues> {
  const file = parsed(text, LARGEST_JOB);
  const head = file.ok ? headOf(file.value) : file;
  if (!head.ok) return head;
  const read = readFields(jobFields, head.value.entries);
  return read.ok ? read : { ok: false, problems: read.problems.map(guessed) };
}

/** Opens a parsed job file with its entries as they were typed, whether or not they can be worked yet. */
export function openJob(file: Versioned): Read<OpenedJob> {
  const head = headOf(file);
  if (!head.ok) return head;
  const entries = readShape(jobFields, head.value.entries);
  return entries.ok ? { ok: true, value: { ...head.value, entries: entries.value } } : entries;
}

/** Opens the text of a job file, half typed or not. @example openJobFile('{}').ok // => false */
export function openJobFile(text: string): Read<OpenedJob> {
  const file = parsed(text, LARGEST_JOB);
  return file.ok ? openJob(file.value) : file;
}

/** A job file, before it is written. */
export const jobFile = (entries: JobEntries, { id, changed }: JobHead = {}): Versioned => ({
  format: JOB_FORMAT,
  version: JOB_VERSION,
  ...(id === undefined ? {} : { id }),
  ...(changed === undefined ? {} : { changed }),
  ...entries,
});

/** The text of a job file, from its entries. @example JSON.parse(writeJobFile({ name: 'x' })).version // => 3 */
export const writeJobFile = (entries: JobEntries, head?: JobHead): string =>
  `${JSON.stringify(jobFile(entries, head), null, 2)}\n`;
