import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Read, sentence } from '../../calc/declare/read-fields.ts';
import type { OpenedJob } from '../../job/job-file.ts';
import { type BroughtJobs, readJobs } from '../../job/jobs-file.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { isZip, LARGEST_FILE, sizeInWords } from '../../job/photograph.ts';
import type { Picture } from '../../job/photographs-file.ts';
import { bytesOf, textOf } from '../blob.ts';
import { keepPictures } from '../photographs/arrived.ts';
import { sameEntries } from './addresses.ts';
import { replace, toldOfReplaced } from './replace.ts';
import { jobStore } from './store.ts';
import { takeIn, toldOf } from './take-in.ts';
import { alreadyHere, copied, nameOf, notKept, said } from './words.ts';

/** A job that came and waits for a word: one of the same id is here, or it came with a link that nobody asked for. */
export interface Waiting {
  readonly job: OpenedJob;
  readonly here: KeptJob | undefined;
  /** The photographs that came with it. */
  readonly pictures?: readonly Picture[];
}

export interface ArrivalsState {
  readonly waiting: readonly Waiting[];
  readonly told: string;
  /** Takes the jobs of a file, with their photographs; what is here already is not written over. */
  readonly take: (file: File) => Promise<void>;
  /** Offers a job that came with a link. */
  readonly offer: (job: OpenedJob) => void;
  readonly tell: (words: string) => void;
  readonly answer: (how: Answer) => Promise<void>;
}

type Answer = 'keep' | 'both' | 'replace' | 'leave';

/** Looks after jobs that come from a file or a link; `came` is told of each that is kept. */
export function useArrivals(came: (id: string) => void): ArrivalsState {
  const [waiting, setWaiting] = useState<readonly Waiting[]>([]);
  const [told, tell] = useState('');

  /** What is not answered yet goes on waiting, but for a job that came once more. */
  const ask = (asks: readonly Waiting[]) =>
    setWaiting((before) => [
      ...before.filter(({ job: { id } }) => id === undefined || !asks.some(({ job }) => job.id === id)),
      ...asks,
    ]);

  const take = async (file: File) => {
    const read = await readFile(file);
    if (!read.ok) {
      tell(`Not opened. ${read.problems.map(sentence).join(' ')}`);
      return;
    }
    const { pictures } = read.value;
    const taken = takeIn(jobStore(), read.value.jobs);
    const { differing, last } = taken;
    ask(differing.map((each) => ({ ...each, pictures })));
    const photographs = last === undefined ? '' : await keepPictures(pictures, last);
    tell(
      [
        'Opened.',
        ...toldOf(taken),
        photographs,
        read.value.refused.length > 0 ? `Not opened: ${read.value.refused.map(sentence).join(' ')}` : '',
      ]
        .filter(Boolean)
        .join(' '),
    );
    if (last !== undefined) came(last);
  };

  const answer = async (how: Answer) => {
    const [first, ...rest] = waiting;
    if (!first) return;
    const { job, here, pictures = [] } = first;
    const store = jobStore();
    if (how === 'replace' && here) {
      const replaced = replace(store, here, job);
      const { state } = replaced.put;
      // Where nothing was done the question stays.
      if (state !== 'would be lost') setWaiting(rest);
      const put = state === 'kept' || state === 'unkept';
      const also = put ? await keepPictures(pictures, here.id) : '';
      tell(`${toldOfReplaced(replaced, job)} ${also}`.trim());
      if (state !== 'would be lost') came(here.id);
      return;
    }
    setWaiting(rest);
    if (how === 'leave') return tell(`${nameOf(job.entries)} is left.`);
    const added = store.add(
      how === 'both' ? copied(job.entries, store.all().jobs) : job.entries,
      how === 'both' ? { changed: job.changed } : job,
    );
    const [name, why] = [nameOf(added.entries), store.whyUnkept(added.id)];
    const also = await keepPictures(pictures, added.id);
    tell(`${why === undefined ? `Kept: ${name}.` : notKept(name, why)} ${also}`.trim());
    came(added.id);
  };

  return {
    waiting,
    told,
    take,
    offer: (job) => {
      const here = job.id === undefined ? undefined : jobStore().get(job.id);
      ask([{ job, here }]);
      tell('');
    },
    tell,
    answer,
  };
}

type Brought = BroughtJobs & { readonly pictures: readonly Picture[] };

/** The jobs of a file, and the photographs of one that came with them. */
async function readFile(file: File): Promise<Read<Brought>> {
  if (!isZip(await bytesOf(file.slice(0, 4)))) {
    const jobs = readJobs(await textOf(file));
    return jobs.ok ? { ok: true, value: { ...jobs.value, pictures: [] } } : jobs;
  }
  // Asked for only where a zip comes: most files are jobs alone.
  const { readWithPhotographs } = await import('../../job/photographs-file.ts');
  if (file.size > LARGEST_FILE) {
    const [found, expected] = [sizeInWords(file.size), `${sizeInWords(LARGEST_FILE)} at most`];
    return { ok: false, problems: [{ field: '', label: 'File with photographs', found, expected }] };
  }
  const read = readWithPhotographs(await bytesOf(file));
  if (!read.ok) return read;
  const { job, pictures, refused } = read.value;
  return { ok: true, value: { jobs: [job], refused, pictures } };
}

/** What came, what became of it, and what it waits for. */
export function Arrivals({ waiting, told, answer }: ArrivalsState): JSX.Element {
  const [first] = waiting;
  const question = useRef<HTMLHeadingElement>(null);
  const what = useRef<HTMLParagraphElement>(null);
  const asked = useRef(false);
  useEffect(() => {
    // With the last answer the question goes, and the focus would be lost with it.
    if (first) question.current?.focus();
    else if (asked.current) what.current?.focus();
    asked.current = first !== undefined;
  }, [first]);
  return (
    <>
      <p role="status" ref={what} tabIndex={-1}>
        {told}
      </p>
      {first ? (
        <section class="waiting" aria-label="A job that came">
          <h2 ref={question} tabIndex={-1}>
            {first.here ? alreadyHere(first.job.entries, first.here.entries) : 'A job came with this link'}
          </h2>
          <Came {...first} />
          <p class="acts">
            {first.here && !sameEntries(first.here.entries, first.job.entries) ? (
              <>
                <button type="button" onClick={() => answer('both')}>
                  Keep both
                </button>
                <button type="button" class="plain" onClick={() => answer('replace')}>
                  Replace the one here
                </button>
              </>
            ) : first.here ? null : (
              <button type="button" onClick={() => answer('keep')}>
                Keep it on this phone
              </button>
            )}
            <button type="button" class="plain" onClick={() => answer('leave')}>
              {first.here ? 'Leave what is here' : 'Leave it'}
            </button>
          </p>
        </section>
      ) : null}
    </>
  );
}

function Came({ job, here }: Waiting): JSX.Element {
  if (!here)
    return (
      <p>
        <strong>{nameOf(job.entries)}</strong>, last changed {said(job.changed)}. It is kept beside the other
        jobs.
      </p>
    );
  if (sameEntries(here.entries, job.entries))
    return (
      <p>
        The two are the same{here.deleted ? '; the one here is deleted, and can be brought back below' : ''}.
      </p>
    );
  return (
    <dl class="figures">
      <div>
        <dt>Here{here.deleted ? ', deleted' : ''}</dt>
        <dd>last changed {said(here.changed)}</dd>
      </div>
      <div>
        <dt>What came</dt>
        <dd>last changed {said(job.changed)}</dd>
      </div>
    </dl>
  );
}
