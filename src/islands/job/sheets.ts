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
  /** Its figures are those that an open stop keeps behind it. */
  readonly behindStops?: true;
}

/** The sheets of a job in the order of the work. A job is one; each sheet shows a part of it. */
export const jobSheets = [
  {
    path: '',
    title: 'Plan',
    lead: 'Where each hole goes, how many bags each takes, what the ceiling will carry.',
    groups: ['name', 'agency', 'crew', 'home', 'cavity', 'roof', 'ceiling', 'old', 'fill'],
    behindStops: true,
  },
  {
    path: 'before',
    title: 'Before the fill',
    lead: 'Is the home ready, what room does each flue and light keep, does the cavity need vents?',
    groups: ['survey'],
  },
  {
    path: 'ways-in',
    title: 'Ways in',
    lead: 'Roof holes, gable end or lifted edge: what each asks for on this home, and what rules it out.',
    groups: ['ways', 'hose'],
  },
  {
    path: 'hose-marks',
    title: 'Hose marks',
    lead: 'A card for each opening: which ways round the clock the hose goes, and where the tape.',
    groups: ['hose'],
    behindStops: true,
  },
  {
    path: 'machine',
    title: 'Machine',
    lead: 'Is the machine set right, how fast is the hose drawn back, what does its air do to the ceiling?',
    groups: ['machine'],
    behindStops: true,
  },
  {
    path: 'fill-log',
    title: 'Fill log',
    lead: 'Count the bags as they go in, opening by opening: light or heavy shows at once, and what is left on the truck.',
    groups: ['log'],
    without: ['log.openings'],
    answersFirst: true,
    behindStops: true,
  },
  {
    path: 'patches',
    title: 'Patches',
    lead: 'What to load for every patch, how each is layered, in which order its screws go.',
    groups: ['patches'],
    behindStops: true,
  },
  {
    path: 'heat',
    title: 'Heat and savings',
    lead: 'What R the whole roof has before and after, and what the fill saves.',
    groups: ['heat', 'saving'],
    behindStops: true,
  },
  {
    path: 'air',
    title: 'Air and moisture',
    lead: 'How much fresh air the home needs once it is tighter, how its fans are ducted, and what vapour does in the roof.',
    groups: ['air', 'moisture'],
  },
  {
    path: 'crew',
    title: 'Crew',
    lead: 'Ladder, falls, overhead line, noise, heat and dust on the day.',
    groups: ['ladder', 'fall', 'line', 'noise', 'weather', 'dust'],
  },
  {
    path: 'photographs',
    title: 'Photographs',
    lead: 'What to photograph, at which step and why; what is taken, and what is missing.',
    groups: [],
  },
  {
    path: 'receipt',
    title: 'Receipt',
    lead: 'The receipt and certificate that the law asks for, to sign and post.',
    groups: ['receipt'],
    behindStops: true,
  },
] as const satisfies readonly JobSheetFacts[];

export type JobSheetPath = (typeof jobSheets)[number]['path'];

/** The facts of a sheet. */
export const jobSheet = (path: JobSheetPath): JobSheetFacts =>
  jobSheets.find((each) => each.path === path) as JobSheetFacts;

/** Does a sheet ask for an entry? */
export const asks = ({ groups }: JobSheetFacts, way: string): boolean =>
  (groups as readonly string[]).includes(way.split('.')[0] ?? '');

/** The first sheet on which an entry is asked for. */
export const sheetOf = (way: string): JobSheetFacts =>
  (jobSheets as readonly JobSheetFacts[]).find((sheet) => asks(sheet, way)) ?? jobSheet('');
