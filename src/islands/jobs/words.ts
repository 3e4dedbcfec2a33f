import { onOneLine } from '../../calc/declare/read-fields.ts';
import { copyName } from '../../job/copy-name.ts';
import type { JobEntries } from '../../job/job-file.ts';
import type { WhyNot } from './browser-store.ts';

/**
 * What is a job called? Its own first entry, as its plan shows it.
 * @example nameOf({ name: ' Lot 4 ' }) // => 'Lot 4'
 */
export const nameOf = (entries: JobEntries): string => {
  const name = typeof entries.name === 'string' ? onOneLine(entries.name) : '';
  return name === '' ? 'A job without an address' : name;
};

/**
 * What is told of a job that came, where one of the same id is here? Both names, where they differ.
 * @example alreadyHere({ name: 'Lot 9' }, { name: 'Lot 4' }) // => 'Lot 9 is on this phone already, as Lot 4'
 */
export function alreadyHere(came: JobEntries, here: JobEntries): string {
  const [name, its] = [nameOf(came), nameOf(here)];
  return `${name} is on this phone already${name === its ? '' : `, as ${its}`}`;
}

/**
 * What is told where a job is to get the address that it has?
 * @example notRenamed('Lot 4') // => 'Not renamed: Lot 4 is its address already.'
 */
export const notRenamed = (name: string): string =>
  onOneLine(name) === ''
    ? 'Not renamed: no address was typed.'
    : `Not renamed: ${nameOf({ name })} is its address already.`;

/**
 * The entries of a copy, told by its name from the first and from the jobs that are there, earlier copies among them.
 * @example copied({ name: 'Lot 4' }, [{ entries: { name: 'Lot 4 (copy)' } }]).name // => 'Lot 4 (copy 2)'
 */
export function copied(entries: JobEntries, there: readonly { readonly entries: JobEntries }[]): JobEntries {
  const names = new Set(there.map((job) => nameOf(job.entries)));
  const stem = nameOf(entries).slice(0, LONGEST_STEM);
  let which = 1;
  while (names.has(copyName(stem, which))) which += 1;
  return { ...entries, name: copyName(stem, which) };
}

/** A name has 200 letters at the most, and this leaves room for what tells a copy. */
const LONGEST_STEM = 185;

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

/**
 * What is told of something that is held and not kept?
 * @example notKept('Lot 4', 'full') // => 'Not kept: Lot 4, since the browser’s store is full. Work goes on while this page is open: save to a file before you close it.'
 */
export const notKept = (what: string, why: WhyNot): string =>
  `Not kept: ${what}, since ${whyNotKept[why]}. Work goes on while this page is open: save to a file before you close it.`;

/** The name of a file for a job: letters and digits of its name. */
export const fileNameOf = (entries: JobEntries, ending = 'json'): string =>
  `${
    nameOf(entries)
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      // By whole letters: one beyond the first 65,536 would be cut in half.
      .replace(/^-?(.{0,60}).*$/u, '$1')
      .replace(/-$/, '') || 'job'
  }.${ending}`;
