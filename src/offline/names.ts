/**
 * How a copy of the site is kept by a browser: worker and pages agree on it here. Each version has a cache of its own, named after where
 * the site stands, since several copies may stand on one host; what is noted beside the versions has one more.
 */
export interface Copies {
  /** Where the site begins, such as "https://notes.example.org/roof/". */
  readonly root: string;
  /** Is this cache a version of the copy? */
  readonly isVersion: (cache: string) => boolean;
  readonly version: (version: string) => string;
  readonly notes: string;
}

/** The caches of the copy of a site. @example copiesOf('https://a.example/roof/').version('1f') // => 'heel-to-ridge /roof/ version 1f' */
export function copiesOf(root: string): Copies {
  const begin = `heel-to-ridge ${new URL(root).pathname}`;
  return {
    root,
    isVersion: (cache) => cache.startsWith(`${begin} version `),
    version: (version) => `${begin} version ${version}`,
    notes: `${begin} notes`,
  };
}

/** The files of a version with the sum of what each holds; stands in its cache once every one of them does. */
export const WHOLE = 'copy-is-whole.json';

/** In the notes: the rulebook that the reader last knew, until the reader was told what the newer one changed. */
export const RULEBOOK_BEFORE = 'rulebook-before.json';

/** In the notes: the version that serves. */
export const SERVES = 'serves';

/** In the notes: the version that a page was begun with, by the id that the browser gave the page. */
export const pageNote = (id: string): string => `page/${id}`;

/** Where the rulebook of a version stands. */
export const RULEBOOK = 'data/rulebook.json';

/** The worker, from the root of the site. */
export const WORKER = 'worker.js';

/** What a page says to a worker: give your version; take over; see that the copy is whole. */
export const SAY_VERSION = 'version';
export const TAKE_OVER = 'take over';
export const FETCH = 'fetch';
