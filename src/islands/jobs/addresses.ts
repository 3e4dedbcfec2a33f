import { addressOf, entriesIn } from '../../calc/declare/address.ts';
import type { Fields } from '../../calc/declare/field.ts';
import { jobFields } from '../../job/job-fields.ts';
import type { JobEntries } from '../../job/job-file.ts';
import { isJobId } from '../../job/job-id.ts';

/** What the fragment of a sheet's address says. */
export interface InAddress {
  /** The job that is open. */
  readonly id?: string | undefined;
  /** Does it name a job? By what is no id too, such as a link that was cut. */
  readonly names: boolean;
  /** Its entries, where the browser does not keep them; or those of a job from elsewhere. */
  readonly entries?: JobEntries | undefined;
}

/** The fragment of a job that is kept. @example addressOfKept('k3m7p2q9') // => 'job=k3m7p2q9' */
export const addressOfKept = (id: string): string => `job=${id}`;

/** The fragment of a job that is not kept: it goes along from sheet to sheet with all its entries. */
export const addressOfUnkept = (id: string, entries: JobEntries): string =>
  `${addressOfKept(id)}&${addressOf(entries)}`;

/** How many entries can these fields have? @example mostEntries({ ready: choiceField('Ready', '', ['yes']) }) // => 1 */
export const mostEntries = (fields: Fields): number =>
  Object.values(fields).reduce(
    (sum, field) =>
      sum +
      (field.kind === 'group' || field.kind === 'list'
        ? mostEntries(field.of) * (field.kind === 'list' ? field.most : 1)
        : 1),
    0,
  );

/** With its sign: without it, it is a place on the page. */
const NAMES_A_JOB = /(?:^|&)job=/;

/** Every entry of a job, and its id. */
const MOST = mostEntries(jobFields) + 1;

/** Reads the fragment of a sheet's address. @example inAddress('job=k3m7p2q9') // => { id: 'k3m7p2q9', names: true, entries: undefined } */
export function inAddress(fragment: string): InAddress {
  const { job, ...entries } = entriesIn(fragment, MOST) ?? {};
  return {
    id: isJobId(job) ? job : undefined,
    names: isJobId(job) || NAMES_A_JOB.test(fragment),
    entries: Object.keys(entries).length > 0 ? entries : undefined,
  };
}

/** Are these the same entries, whichever way they were written down? Numbers and their digits are the same, and so is what says nothing. */
export const sameEntries = (a: JobEntries, b: JobEntries): boolean => {
  const leaves = (entries: JobEntries) => addressOf(entries).split('&').sort().join('&');
  return leaves(a) === leaves(b);
};
