import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { addressOf } from '../../calc/declare/address.ts';
import type { Entries } from '../../calc/declare/entries.ts';
import type { Read } from '../../calc/declare/read-fields.ts';
import type { JobEntries } from '../../job/job-file.ts';
import { newJobId } from '../../job/job-id.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { entered, type OfOneHome, ofThisHome, stillExamples } from '../../job/still-examples.ts';
import { afterPaint } from '../after-paint.ts';
import { page } from '../links.ts';
import { setAddress } from '../own-address.ts';
import { type SetEntry, useWorked, type Worked } from '../use-entries.ts';
import { addressOfKept, addressOfUnkept } from './addresses.ts';
import type { WhyNot } from './browser-store.ts';
import { jobStore } from './store.ts';
import { type From, madeOf, toShow } from './to-show.ts';
import { copied, nameOf } from './words.ts';

/** The job that is open on a sheet. */
export interface OpenJob {
  readonly entries: JobEntries;
  readonly from: From;
  readonly id?: string | undefined;
  /** When it was last changed, where it ever was. */
  readonly changed?: string | undefined;
  /** Its revision as this tab knows it; 0 before it was ever kept. */
  readonly revision: number;
  /** What it was opened as. As long as it is only changed, the figures of before are its own. */
  readonly line: string;
}

/** Something that happened to the open job and asks for a word. */
export type JobNews =
  | { readonly kind: 'changed' | 'deleted'; readonly theirs: KeptJob }
  | { readonly kind: 'copied'; readonly name: string; readonly theirs: KeptJob }
  /** It became another home, and what tells of the example’s went. */
  | { readonly kind: 'left'; readonly of: readonly OfOneHome[] }
  /** The example took its place on the sheet. */
  | { readonly kind: 'example'; readonly before: OpenJob }
  | { readonly kind: 'not here' }
  | { readonly kind: 'unreadable'; readonly says: string };

export interface JobState<T> extends Omit<Worked<T>, 'typing' | 'settle'> {
  readonly job: OpenJob;
  readonly set: SetEntry;
  /** Why the last change is not kept. */
  readonly trouble: WhyNot | undefined;
  readonly news: JobNews | undefined;
  /** Takes what another tab, or a file, made of a job. */
  readonly open: (id: string) => void;
  /** Goes on with what this tab shows, as a job of its own. */
  readonly keepAsCopy: () => void;
  /** Keeps what came with the address, or the example, as a job of this phone; gives its id. */
  readonly keepNow: () => string | undefined;
  /** Brings a job back that another tab deleted. */
  readonly bringBack: () => void;
  /** Shows the example; the job stays where it is kept. */
  readonly reset: () => void;
  /** Shows again what the example took the place of. */
  readonly backTo: (before: OpenJob) => void;
}

const openedExample = (entries: JobEntries): OpenJob => ({ entries, from: 'example', revision: 0, line: '' });

/** The open job of a sheet: found again at every visit, kept at every key, never written over what another tab made of it. */
export function useJob<T>(example: Entries, work: (entries: Entries) => Read<T>): JobState<T> {
  const [job, setJob] = useState<OpenJob>(openedExample(example));
  const [trouble, setTrouble] = useState<WhyNot | undefined>();
  const [news, setNews] = useState<JobNews | undefined>();
  // Two keys may be struck before the page is drawn again.
  const now = useRef(job);
  const newsNow = useRef(news);
  /** Is a change drawn that is not kept yet? */
  const waits = useRef(false);
  const { typing, settle, ...worked } = useWorked(job.entries, work, job.line);

  const become = useCallback((next: OpenJob) => {
    now.current = next;
    setJob(next);
  }, []);
  const tell = useCallback((next: JobNews | undefined) => {
    newsNow.current = next;
    setNews(next);
  }, []);

  const openKept = useCallback(
    ({ id, entries, revision, changed }: KeptJob, line: string = id) => {
      become({ id, entries, revision, changed, from: 'kept', line });
      const store = jobStore();
      store.opened = id;
      const why = store.whyUnkept(id);
      setTrouble(why);
      setAddress(`#${why === undefined ? addressOfKept(id) : addressOfUnkept(id, entries)}`);
    },
    [become],
  );

  /** Keeps a change; where another tab was faster, or asked about it is still open, it is kept as a copy. */
  const change = useCallback(
    (next: JobEntries, before: OpenJob) => {
      const store = jobStore();
      const asked = newsNow.current;
      const forks = asked?.kind === 'changed' || asked?.kind === 'deleted';
      const id = before.id ?? newJobId();
      const put = forks
        ? ({ state: 'overtaken', by: asked.theirs } as const)
        : store.put({ id, entries: next }, before.revision);
      if (put.state === 'overtaken') {
        const entries = nameOf(next) === nameOf(put.by.entries) ? copied(next, store.all().jobs) : next;
        tell({ kind: 'copied', name: nameOf(entries), theirs: put.by });
        const added = store.add(entries);
        openKept(added, before.line);
        return;
      }
      const { revision, changed } = put.job;
      become({ id, entries: next, revision, changed, from: 'kept', line: before.line });
      setTrouble(put.state === 'unkept' ? put.why : undefined);
      if (before.from !== 'kept') store.opened = id;
      const fragment = `#${put.state === 'kept' ? addressOfKept(id) : addressOfUnkept(id, next)}`;
      if (location.hash !== fragment) setAddress(fragment);
    },
    [become, openKept, tell],
  );

  /** Keeps what is drawn and not kept yet, before anything else becomes of the job. */
  const keepUp = useCallback(() => {
    if (!waits.current) return;
    waits.current = false;
    change(now.current.entries, now.current);
  }, [change]);

  /** Finds the job that this sheet is to show. */
  const find = useCallback(() => {
    // Before anything is kept: that puts the open job into the address.
    const fragment = location.hash.slice(1);
    keepUp();
    const { from, id: open, entries: shown } = now.current;
    const next = toShow(fragment, jobStore(), from);
    switch (next.what) {
      case 'carried':
        return location.replace(`${page('plan/jobs')}#${fragment}`);
      case 'unreadable':
        return tell({ kind: 'unreadable', says: next.says });
      case 'not here':
        return tell({ kind: 'not here' });
      case 'kept':
        // What was told was of the job before.
        tell(undefined);
        return openKept(next.job);
      case 'address': {
        tell(undefined);
        const { id, entries } = next;
        return become({ entries, from: 'address', revision: 0, id, line: fragment });
      }
      case 'open':
        if (open === undefined) return setAddress(`#${addressOf(shown)}`);
        return setAddress(
          `#${from === 'kept' && jobStore().whyUnkept(open) === undefined ? addressOfKept(open) : addressOfUnkept(open, shown)}`,
        );
    }
  }, [become, openKept, tell, keepUp]);

  /** Has another tab changed the open job? */
  const look = useCallback(() => {
    keepUp();
    const { id, revision } = now.current;
    if (id === undefined || revision === 0) return;
    const store = jobStore();
    const theirs = store.get(id);
    const made = theirs ? madeOf(now.current, theirs, store.tab) : 'nothing';
    if (!theirs || made === 'nothing') return;
    if (made !== 'the same') return tell({ kind: made, theirs });
    become({ ...now.current, revision: theirs.revision });
    tell(undefined);
  }, [become, tell, keepUp]);

  useEffect(() => {
    const store = jobStore();
    store.takeSingle();
    find();
    store.recover().then((ids) => {
      const { id, from } = now.current;
      if (from === 'example' || from === 'address' ? now.current.revision === 0 : ids.includes(id ?? ''))
        find();
    });
    const seen = () => (document.visibilityState === 'visible' ? look() : keepUp());
    const unwatch = store.watch((id) => id === now.current.id && look());
    addEventListener('hashchange', find);
    addEventListener('pageshow', look);
    addEventListener('pagehide', keepUp);
    document.addEventListener('visibilitychange', seen);
    return () => {
      keepUp();
      unwatch();
      removeEventListener('hashchange', find);
      removeEventListener('pageshow', look);
      removeEventListener('pagehide', keepUp);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [find, look, keepUp]);

  const set = useCallback(
    (way: readonly string[], value: unknown, begun?: string) => {
      typing(way, value, begun);
      if (newsNow.current?.kind === 'example') tell(undefined);
      const next = entered(now.current.entries, example, way, value);
      const left = stillExamples(next, example);
      const entries = ofThisHome(next, example);
      // To keep a job takes as long as to work its plan: the answer comes first, but for the change that makes a job of the example.
      if (now.current.from === 'kept') {
        become({ ...now.current, entries });
        if (!waits.current) afterPaint(keepUp);
        waits.current = true;
      } else change(entries, now.current);
      if (left.length > 0 && newsNow.current === undefined) tell({ kind: 'left', of: left });
    },
    [typing, become, change, keepUp, tell, example],
  );
  const open = (id: string) => {
    keepUp();
    const there = jobStore().get(id);
    tell(undefined);
    settle();
    if (there) openKept(there);
  };
  return {
    ...worked,
    job,
    trouble,
    news,
    set,
    open,
    keepAsCopy: () => {
      keepUp();
      tell(undefined);
      const store = jobStore();
      openKept(store.add(copied(now.current.entries, store.all().jobs)));
    },
    keepNow: () => {
      waits.current = false;
      change(now.current.entries, now.current);
      return now.current.id;
    },
    bringBack: () => {
      keepUp();
      const { id } = now.current;
      const back = id === undefined ? undefined : jobStore().mark(id, false);
      tell(undefined);
      if (back) openKept(back);
    },
    reset: () => {
      keepUp();
      const before = now.current;
      tell(before.from === 'example' ? undefined : { kind: 'example', before });
      settle();
      jobStore().opened = undefined;
      become(openedExample(example));
      setAddress();
    },
    backTo: (before) => {
      keepUp();
      const { id, entries } = before;
      if (id !== undefined && jobStore().get(id)) return open(id);
      tell(undefined);
      settle();
      become(before);
      setAddress(`#${id === undefined ? addressOf(entries) : addressOfUnkept(id, entries)}`);
    },
  };
}
