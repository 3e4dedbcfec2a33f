import { type FieldProblem, type Read, readFields } from '../calc/declare/read-fields.ts';
import { type JobValues, jobFields } from './job-fields.ts';

/** What the first two entries of every job file say, so that a file can be told from others and from its older kind. */
export const JOB_FORMAT = 'heel-to-ridge job';
export const JOB_VERSION = 1;

/** The largest job file that is read, in characters; far above the largest real one. */
const LARGEST = 200_000;

/** A job as it is kept: plain entries as they were typed. */
export type JobEntries = Readonly<Record<string, unknown>>;

const refused = (
  field: string,
  label: string,
  found: string,
  expected: string,
): { ok: false; problems: FieldProblem[] } => ({
  ok: false,
  problems: [{ field, label, found, expected }],
});

/**
 * Reads the text of a job file: JSON, then format and version, then every entry. Strict: an unknown key is a problem that names the nearest.
 * @example readJobFile('{}').ok // => false
 */
export function readJobFile(text: string): Read<JobValues> {
  if (text.length > LARGEST)
    return refused('', 'Job file', `${text.length} characters`, `${LARGEST} at most`);
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return refused('', 'Job file', 'text that is not JSON', 'a job file as this site saves it');
  }
  if (parsed === null || typeof parsed !== 'object' || Array.isArray(parsed)) {
    return refused('', 'Job file', 'JSON that is not a set of entries', 'a job file as this site saves it');
  }
  const { format, version, ...entries } = parsed as Record<string, unknown>;
  if (format !== JOB_FORMAT)
    return refused(
      'format',
      'Job file',
      `the format ${JSON.stringify(format) ?? 'nothing'}`,
      `"${JOB_FORMAT}"`,
    );
  if (version !== JOB_VERSION) {
    const newer = typeof version === 'number' && version > JOB_VERSION;
    return refused(
      'version',
      'Job file',
      `version ${JSON.stringify(version) ?? 'nothing'}`,
      newer ? `${JOB_VERSION}: this copy of the site is older than the file, update it` : String(JOB_VERSION),
    );
  }
  return readFields(jobFields, entries);
}

/** The text of a job file, from its entries. @example JSON.parse(writeJobFile({ name: 'x' })).version // => 1 */
export const writeJobFile = (entries: JobEntries): string =>
  `${JSON.stringify({ format: JOB_FORMAT, version: JOB_VERSION, ...entries }, null, 2)}\n`;
