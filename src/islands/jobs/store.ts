import { type FieldProblem, type Read, sentence } from '../../calc/declare/read-fields.ts';
import type { JobEntries } from '../../job/job-file.ts';
import { isJobId, newJobId } from '../../job/job-id.ts';
import { type KeptJob, readKept, readSingleKept, writeKept } from '../../job/kept-job.ts';
import { photographStore } from '../photographs/store.ts';
import { type WhyNot, whyNot } from './browser-store.ts';
import { type SecondCopy, secondCopy } from './second-copy.ts';

/** Each job has its own place, so that a key typed in one writes no other. The names never change with the site. */
const PLACE = 'heel-to-ridge job ';
/** Where the site kept its one job before it kept several. */
const SINGLE = 'heel-to-ridge job';
const OPENED = 'heel-to-ridge opened job';
const PROBE = 'heel-to-ridge probe';

/** A deleted job can be brought back for so long. */
export const DAYS_KEPT_AFTER_DELETION = 7;
const DAY = 86_400_000;

/** What became of a change. */
export type Put =
  | Kept
  /** Nothing was written: another tab was faster. */
  | { readonly state: 'overtaken'; readonly by: KeptJob };

type Kept =
  | { readonly state: 'kept'; readonly job: KeptJob }
  /** Held while the page is open, and no longer. */
  | { readonly state: 'unkept'; readonly job: KeptJob; readonly why: WhyNot };

interface Change {
  readonly id: string;
  readonly entries: JobEntries;
  readonly deleted?: boolean | undefined;
}

/** Something that stands where a job is kept and can't be read; it is left as it is. */
export interface Unreadable {
  readonly key: string;
  readonly text: string;
  readonly says: string;
}

/** Where this tab finds the browser's stores; a test gives its own. */
export interface Places {
  readonly local: () => Storage;
  readonly session: () => Storage;
  readonly second: SecondCopy;
  /** Lets go of what is kept beside a job, by its id: its photographs. */
  readonly letGo: (id: string) => void;
  readonly now: () => Date;
}

const browserPlaces = (): Places => ({
  local: () => localStorage,
  session: () => sessionStorage,
  second: secondCopy(),
  letGo: (id) => photographStore().removeJob(id),
  now: () => new Date(),
});

/** The jobs that this browser keeps. */
export class JobStore {
  /** Marks what this tab wrote. */
  readonly tab: string = newJobId();
  readonly #places: Places;
  /** What the browser did not take, each with why: a store that is nearly full takes one job and not the next. */
  readonly #memory = new Map<string, { readonly job: KeptJob; readonly why: WhyNot }>();
  /** What this tab wrote last, and as what text: as long as that stands in its place, it need not be read anew, at each key. */
  #written: { readonly text: string; readonly job: KeptJob } | undefined;

  constructor(places: Places) {
    this.#places = places;
  }

  /** Every job, the newest change first, the deleted among them; and what can't be read. */
  all(): { readonly jobs: readonly KeptJob[]; readonly unreadable: readonly Unreadable[] } {
    const jobs = new Map([...this.#memory].map(([id, { job }]) => [id, job]));
    const unreadable: Unreadable[] = [];
    for (const key of this.#keys()) {
      const text = this.#read(key);
      if (text === undefined) continue;
      const read = readPlace(key, text);
      if (!read.ok) unreadable.push({ key, text, says: read.problems.map(sentence).join(' ') });
      else if (read.value.revision >= (jobs.get(read.value.id)?.revision ?? 0))
        jobs.set(read.value.id, read.value);
    }
    return {
      jobs: [...jobs.values()].sort((a, b) => Date.parse(b.changed) - Date.parse(a.changed)),
      unreadable,
    };
  }

  /** A job by its id, deleted or not. */
  get(id: string): KeptJob | undefined {
    const held = this.#memory.get(id)?.job;
    const text = this.#read(PLACE + id);
    const kept = text === undefined ? undefined : this.#jobIn(id, text);
    return kept && kept.revision >= (held?.revision ?? 0) ? kept : held;
  }

  /** Why is a job held by this page alone? Undefined where the browser keeps it. */
  whyUnkept(id: string): WhyNot | undefined {
    return this.#memory.get(id)?.why;
  }

  /** Does something stand in the place of a job that can't be read, such as what a newer copy of the site wrote? It is never written over. */
  isUnreadable(id: string): boolean {
    const text = this.#read(PLACE + id);
    return text !== undefined && this.#jobIn(id, text) === undefined;
  }

  /** Keeps a change of a job, whose revision so far is `base`: 0 for a new one. */
  put(change: Change, base: number, changed: string = this.#now()): Put {
    const before = this.get(change.id);
    return before && before.revision !== base
      ? { state: 'overtaken', by: before }
      : this.#keep(change, base, changed);
  }

  /** A new job of these entries, under its own id where nothing else stands under that. */
  add(
    entries: JobEntries,
    {
      id,
      changed,
      deleted,
    }: {
      readonly id?: string | undefined;
      readonly changed?: string | undefined;
      readonly deleted?: boolean;
    } = {},
  ): KeptJob {
    const free = id !== undefined && !this.get(id) && !this.isUnreadable(id);
    const put = this.put({ id: free ? id : newJobId(), entries, deleted }, 0, changed);
    if (put.state === 'overtaken') throw new Error('found a new id that is taken, expected one that is not');
    return put.job;
  }

  /** Marks a job as deleted, or takes the mark off; when it was last changed stays as it was. */
  mark(id: string, deleted: boolean): KeptJob | undefined {
    const job = this.get(id);
    return job && this.#keep({ id, entries: job.entries, deleted }, job.revision, job.changed).job;
  }

  /** Lets go of a job for good, and of its photographs. */
  purge(id: string): void {
    this.#memory.delete(id);
    this.#places.second.remove(PLACE + id);
    this.#places.letGo(id);
    try {
      this.#places.local().removeItem(PLACE + id);
    } catch {
      // Nothing was kept where nothing can be.
    }
  }

  /** Lets go of the jobs that were deleted long ago. */
  purgeOld(): void {
    const limit = this.#places.now().getTime() - DAYS_KEPT_AFTER_DELETION * DAY;
    for (const { id, deleted } of this.all().jobs)
      if (deleted !== undefined && Date.parse(deleted) < limit) this.purge(id);
  }

  /** The job that this tab had open last, or else any tab. */
  get opened(): string | undefined {
    const here = openedIn(() => this.#places.session().getItem(OPENED));
    return here ? here.id : openedIn(() => this.#places.local().getItem(OPENED))?.id;
  }

  set opened(id: string | undefined) {
    const text = JSON.stringify({ id: id ?? '', at: this.#places.now().getTime() });
    for (const place of [this.#places.session, this.#places.local]) {
      try {
        place().setItem(OPENED, text);
      } catch {
        // The address still says it.
      }
    }
    this.#places.second.put(OPENED, text);
  }

  /** Why nothing at all would be kept now; undefined where a few letters would be. */
  trouble(): WhyNot | undefined {
    try {
      this.#places.local().setItem(PROBE, PROBE);
      this.#places.local().removeItem(PROBE);
      return undefined;
    } catch (error) {
      return whyNot(error);
    }
  }

  /** The one job that the site kept before it kept several becomes one of them. */
  takeSingle(): void {
    const text = this.#read(SINGLE);
    if (text === undefined) return;
    const read = readSingleKept(text);
    if (!read.ok) return;
    const job = this.add(read.value);
    if (this.whyUnkept(job.id) !== undefined) return;
    this.opened = job.id;
    try {
      this.#places.local().removeItem(SINGLE);
    } catch {
      // It will be taken again.
    }
  }

  /** Brings back what the browser kept of the second copy alone, but not over what can't be read. Gives the ids of the jobs that changed by it. */
  async recover(): Promise<readonly string[]> {
    const copies = await this.#places.second.all();
    const newer = copies.flatMap(([key, text]) => {
      const read = key.startsWith(PLACE) ? readPlace(key, text) : undefined;
      if (!read?.ok || this.isUnreadable(read.value.id)) return [];
      return read.value.revision > (this.get(read.value.id)?.revision ?? 0) ? [read.value] : [];
    });
    for (const job of newer) this.#write(job);
    const copied = copies.find(([key]) => key === OPENED)?.[1];
    const here = openedIn(() => this.#places.local().getItem(OPENED));
    const there = openedIn(() => copied ?? null);
    if (there && there.at > (here?.at ?? 0)) {
      try {
        this.#places.local().setItem(OPENED, copied ?? '');
      } catch {
        // The list of jobs still leads to it.
      }
    }
    return newer.map(({ id }) => id);
  }

  /** Tells of every change by another tab; gives what ends it. */
  watch(told: (id: string | undefined) => void): () => void {
    const listen = ({ key }: StorageEvent) => {
      if (key === null) told(undefined);
      else if (key.startsWith(PLACE)) told(key.slice(PLACE.length));
    };
    addEventListener('storage', listen);
    return () => removeEventListener('storage', listen);
  }

  #now(): string {
    return this.#places.now().toISOString();
  }

  #keep({ id, entries, deleted }: Change, base: number, changed: string): Kept {
    const job: KeptJob = {
      id,
      entries,
      changed,
      revision: base + 1,
      by: this.tab,
      deleted: deleted === true ? this.#now() : undefined,
    };
    const why = this.isUnreadable(id) ? this.#hold(job, 'unreadable') : this.#write(job);
    return why === undefined ? { state: 'kept', job } : { state: 'unkept', job, why };
  }

  #write(job: KeptJob): WhyNot | undefined {
    const text = writeKept(job);
    this.#places.second.put(PLACE + job.id, text);
    try {
      this.#places.local().setItem(PLACE + job.id, text);
      this.#memory.delete(job.id);
      this.#written = { text, job };
      return undefined;
    } catch (error) {
      return this.#hold(job, whyNot(error));
    }
  }

  #hold(job: KeptJob, why: WhyNot): WhyNot {
    this.#memory.set(job.id, { job, why });
    return why;
  }

  #read(key: string): string | undefined {
    try {
      return this.#places.local().getItem(key) ?? undefined;
    } catch {
      return undefined;
    }
  }

  #jobIn(id: string, text: string): KeptJob | undefined {
    if (this.#written?.text === text && this.#written.job.id === id) return this.#written.job;
    const read = readPlace(PLACE + id, text);
    return read.ok ? read.value : undefined;
  }

  #keys(): readonly string[] {
    try {
      const local = this.#places.local();
      const keys = Array.from({ length: local.length }, (_, place) => local.key(place) ?? '');
      return keys.filter((key) => key.startsWith(PLACE) || key === SINGLE);
    } catch {
      return [];
    }
  }
}

/** Reads what stands in a place; the job in it must be the place's own. */
function readPlace(key: string, text: string): Read<KeptJob> {
  const read = readKept(text);
  if (!read.ok || PLACE + read.value.id === key) return read;
  const problem: FieldProblem = {
    field: '',
    label: 'Kept job',
    found: 'the id of another job',
    expected: 'its own',
  };
  return { ok: false, problems: [problem] };
}

function openedIn(
  read: () => string | null,
): { readonly id: string | undefined; readonly at: number } | undefined {
  try {
    const found: unknown = JSON.parse(read() ?? 'null');
    if (found === null || typeof found !== 'object') return undefined;
    const { id, at } = found as Record<string, unknown>;
    return typeof at === 'number' ? { id: isJobId(id) ? id : undefined, at } : undefined;
  } catch {
    return undefined;
  }
}

let ofThisPage: JobStore | undefined;

/** The store of this page; only where a browser runs it. */
export function jobStore(): JobStore {
  ofThisPage ??= new JobStore(browserPlaces());
  return ofThisPage;
}
