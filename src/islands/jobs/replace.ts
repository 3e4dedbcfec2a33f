import type { OpenedJob } from '../../job/job-file.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import type { WhyNot } from './browser-store.ts';
import type { JobStore, Put } from './store.ts';
import { nameOf, notKept, whyNotKept } from './words.ts';

/** What became of a job that another was to take the place of. */
export interface Replaced {
  readonly before: KeptJob;
  readonly put: Put | { readonly state: 'would be lost'; readonly why: WhyNot };
}

/**
 * Puts a job that came in the place of one that is here, which stands among the deleted from then on, under an id of its own. Nothing is
 * replaced where that one would not be kept there.
 */
export function replace(store: JobStore, here: KeptJob, { entries, changed }: OpenedJob): Replaced {
  // What is here now may be more than when it was asked.
  const before = store.get(here.id) ?? here;
  const aside = store.add(before.entries, { changed: before.changed, deleted: true });
  const why = store.whyUnkept(aside.id);
  const put =
    why === undefined
      ? store.put({ id: here.id, entries }, before.revision, changed)
      : ({ state: 'would be lost', why } as const);
  if (put.state === 'would be lost' || put.state === 'overtaken') store.purge(aside.id);
  return { before, put };
}

/** What is told of a job that another was to take the place of? */
export function toldOfReplaced({ before, put }: Replaced, came: OpenedJob): string {
  const [here, name] = [nameOf(before.entries), nameOf(came.entries)];
  switch (put.state) {
    case 'would be lost':
      return `Not replaced: ${here} stays as it was. It would not be kept under “Deleted lately”, since ${whyNotKept[put.why]}. Save it to a file and let the browser keep more for this site, or choose another answer.`;
    case 'overtaken':
      return `Not replaced: ${here} was changed in another tab just now.`;
    default:
      return [
        `${here} is replaced${here === name ? '' : ` by ${name}`}.`,
        'What was here stands under “Deleted lately”.',
        ...(put.state === 'unkept' ? [notKept(name, put.why)] : []),
      ].join(' ');
  }
}
