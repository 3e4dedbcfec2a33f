import { sentence } from '../../calc/declare/read-fields.ts';
import { jobFields } from '../../job/job-fields.ts';
import type { JobEntries } from '../../job/job-file.ts';
import { carriesJob } from '../../job/job-link.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { readShape } from '../../job/shape.ts';
import { inAddress, sameEntries } from './addresses.ts';
import type { JobStore } from './store.ts';

/** Where an open job is from: the page's example, the browser's store, or an address. */
export type From = 'example' | 'kept' | 'address';

/** What a sheet is to show. */
export type ToShow =
  | { readonly what: 'kept'; readonly job: KeptJob }
  /** Under the id that came with it, where none here has that. */
  | { readonly what: 'address'; readonly id: string | undefined; readonly entries: JobEntries }
  | { readonly what: 'unreadable'; readonly says: string }
  /** A whole job came with a link: it is offered on the page of jobs. */
  | { readonly what: 'carried' }
  | { readonly what: 'not here' }
  /** What is open, which goes into the address again. */
  | { readonly what: 'open' }
  /** What is shown, and nothing is done. */
  | { readonly what: 'as it is' };

/** Which job is a sheet to show, by the fragment of its address, what is kept, and where the one that is open is from? */
export function toShow(fragment: string, store: Pick<JobStore, 'get' | 'opened'>, from: From): ToShow {
  if (carriesJob(fragment)) return { what: 'carried' };
  const { id, names, entries } = inAddress(fragment);
  if (entries) {
    const shape = readShape(jobFields, entries);
    if (!shape.ok) return { what: 'unreadable', says: shape.problems.map(sentence).join(' ') };
    const there = id === undefined ? undefined : store.get(id);
    return there && !there.deleted && sameEntries(there.entries, shape.value)
      ? { what: 'kept', job: there }
      : { what: 'address', id: there ? undefined : id, entries: shape.value };
  }
  // A link within the page leads to a place on it, such as its head, and to no job: what is open stays open, and in the address.
  if (!names && fragment !== '' && from !== 'example') return { what: 'open' };
  const wanted = names ? id : store.opened;
  const there = wanted === undefined ? undefined : store.get(wanted);
  if (there && !there.deleted) return { what: 'kept', job: there };
  return { what: names ? 'not here' : 'as it is' };
}

/**
 * What did another tab make of the open job? The tab's own last change is nothing new, nor is the same change of another.
 * @example madeOf({ revision: 1, entries: {} }, { id: 'k3m7p2q9', entries: {}, changed: '', revision: 2, by: 'x' }, 'y') // => 'the same'
 */
export function madeOf(
  open: Pick<KeptJob, 'revision' | 'entries'>,
  theirs: KeptJob,
  tab: string,
): 'nothing' | 'the same' | 'changed' | 'deleted' {
  const same = sameEntries(theirs.entries, open.entries);
  if (theirs.revision === open.revision && (theirs.by === tab || same)) return 'nothing';
  if (theirs.deleted) return 'deleted';
  return same ? 'the same' : 'changed';
}
