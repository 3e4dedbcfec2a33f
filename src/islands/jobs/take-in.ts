import type { OpenedJob } from '../../job/job-file.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { sameEntries } from './addresses.ts';
import type { WhyNot } from './browser-store.ts';
import type { JobStore } from './store.ts';
import { notKept } from './words.ts';

/** A job that came, and differs from the one here of the same id. */
export interface Differing {
  readonly job: OpenedJob;
  readonly here: KeptJob;
}

/** What became of jobs that came: of each exactly one of these. */
export interface TakenIn {
  readonly kept: number;
  /** Here already, the same. */
  readonly known: number;
  readonly differing: readonly Differing[];
  /** Why each that is only held while the page is open is not kept. */
  readonly unkept: readonly WhyNot[];
  /** The last that is here now, kept or not. */
  readonly last: string | undefined;
}

/** Takes in jobs that came; what is here already and differs is not written over. */
export function takeIn(store: JobStore, jobs: readonly OpenedJob[]): TakenIn {
  const differing: Differing[] = [];
  const unkept: WhyNot[] = [];
  let kept = 0;
  let known = 0;
  let last: string | undefined;
  for (const job of jobs) {
    const here = job.id === undefined ? undefined : store.get(job.id);
    if (here && !sameEntries(here.entries, job.entries)) {
      differing.push({ job, here });
      continue;
    }
    if (here?.deleted) store.mark(here.id, false);
    last = (here ?? store.add(job.entries, job)).id;
    const why = store.whyUnkept(last);
    if (why !== undefined) unkept.push(why);
    else if (here) known += 1;
    else kept += 1;
  }
  return { kept, known, differing, unkept, last };
}

/**
 * What is told of jobs that came, sentence by sentence?
 * @example toldOf({ kept: 2, known: 0, differing: [], unkept: [], last: undefined }) // => ['2 jobs kept.']
 */
export function toldOf({ kept, known, differing, unkept }: TakenIn): readonly string[] {
  const [why] = unkept;
  return [
    ...(why === undefined ? [] : [notKept(counted(unkept.length), why)]),
    ...(kept > 0 ? [`${counted(kept)} kept.`] : []),
    ...(known > 0 ? [`${counted(known)} here already, the same.`] : []),
    ...(differing.length > 0
      ? [`${counted(differing.length)} here already, and different: choose below.`]
      : []),
  ];
}

const counted = (jobs: number): string => (jobs === 1 ? '1 job' : `${jobs} jobs`);
