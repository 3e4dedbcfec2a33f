import type { JobFieldGroup } from '../../job/job-fields.ts';

/** One sheet of a job: a page that asks for some of its entries and shows what follows from all of them. */
export interface JobSheetFacts {
  /** Its place below /plan/; empty for the plan itself. */
  readonly path: string;
  readonly title: string;
  /** What it is for, one sentence. */
  readonly lead: string;
  /** The groups of entries that its form asks for. */
  readonly groups: readonly JobFieldGroup[];
  /** Entries that the sheet itself has better means for than a form. */
  readonly without?: readonly string[];
  /** On a phone the answers stand before the form: they are what is touched. */
  readonly answersFirst?: true;
}

/** The sheets of a job in the order of the work. A job is one; each sheet shows a part of it. */
export const jobSheets = [
  {
    path: '',
    title: 'Plan',
    lead: 'Where each hole goes, how many bags each takes, what the ceiling will carry.',
    groups: ['name', 'agency', 'crew', 'home', 'cavity', 'roof', 'ceiling', 'old', 'fill'],
  },
  {
    path: 'fill-log',
    title: 'Fill log',
    lead: 'Count the bags as they go in, opening by opening: light or heavy shows at once, and what is left on the truck.',
    groups: ['log'],
    without: ['log.openings'],
    answersFirst: true,
  },
] as const satisfies readonly JobSheetFacts[];

export type JobSheetPath = (typeof jobSheets)[number]['path'];

/** The facts of a sheet. */
export const jobSheet = (path: JobSheetPath): JobSheetFacts =>
  jobSheets.find((each) => each.path === path) as JobSheetFacts;

/** The sheet on which an entry is asked for. */
export const sheetOf = (way: string): JobSheetFacts =>
  (jobSheets as readonly JobSheetFacts[]).find(({ groups }) =>
    (groups as readonly string[]).includes(way.split('.')[0] ?? ''),
  ) ?? jobSheet('');
