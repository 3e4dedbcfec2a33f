import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import type { JobEntries } from './job-file.ts';
import type { WorkedJob } from './planned.ts';

/** Groups of entries that feed parts of their own, and nothing of the plan, its openings or its log. */
const ASIDE = [
  'patches',
  'saving',
  'air',
  'moisture',
  'ladder',
  'fall',
  'line',
  'noise',
  'weather',
  'dust',
  'receipt',
] as const;

/** Does an entry feed a part of its own alone? @example isAside('saving.cost') // => true */
export const isAside = (way: string): boolean =>
  way.includes('.') && (ASIDE as readonly string[]).includes(way.split('.')[0] ?? '');

/**
 * The plan of a job whose problems are all of entries beside it: worked without them, with the problems for the parts that ask for them.
 * Undefined where any problem is of the plan's own. A price that can't be read must not take the fill log away.
 */
export function workAside(
  entries: JobEntries,
  problems: readonly FieldProblem[],
  work: (entries: JobEntries) => Read<WorkedJob>,
): WorkedJob | undefined {
  if (problems.length === 0 || !problems.every(({ field }) => isAside(field))) return undefined;
  const read = work(problems.reduce((all, { field }) => without(all, field), entries));
  return read.ok ? { ...read.value, unread: problems } : undefined;
}

/** Entries without one of a group: of a list, without the whole list, since the rest of it may mean something else by itself. */
export function without(entries: JobEntries, way: string): JobEntries {
  const [group = '', name = ''] = way.split('.');
  const { [name]: _unread, ...rest } = (entries[group] ?? {}) as JobEntries;
  return { ...entries, [group]: rest };
}
