import type { JobEntries } from '../../job/job-file.ts';
import type { WhyNot } from './browser-store.ts';

/**
 * What a job is called: its own first entry.
 * @example nameOf({ name: ' Lot 4 ' }) // => 'Lot 4'
 */
export const nameOf = (entries: JobEntries): string => {
  const { name } = entries;
  return typeof name === 'string' && name.trim() !== '' ? name.trim() : 'A job without an address';
};

/**
 * The entries of a copy, told from the first by its name.
 * @example copied({ name: 'Lot 4' }).name // => 'Lot 4 (copy)'
 */
export const copied = (entries: JobEntries): JobEntries => ({
  ...entries,
  name: `${nameOf(entries).slice(0, 190)} (copy)`,
});

/**
 * A time as people say it.
 * @example said('yesterday') // => 'at a time that is not known'
 */
export function said(time: string | undefined): string {
  const at = time === undefined ? Number.NaN : Date.parse(time);
  return Number.isNaN(at)
    ? 'at a time that is not known'
    : new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** Why nothing is kept. */
export const whyNotKept: Readonly<Record<WhyNot, string>> = {
  full: 'the browser’s store is full',
  refused: 'this browser refuses to keep anything for this site',
  unreadable: 'what stands in its place can’t be read here, and is left as it is',
};

/** The name of a file for a job: letters and digits of its name. */
export const fileNameOf = (entries: JobEntries, ending = 'json'): string =>
  `${
    nameOf(entries)
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-|-$/g, '')
      .slice(0, 60) || 'job'
  }.${ending}`;
