import type { Way } from '../../calc/ways/compare.ts';
import { USUAL_WAY } from '../../job/way-taken.ts';
import { type JobSheetFacts, type JobSheetPath, jobSheets } from './sheets.ts';

/** The procedures that a sheet leads to, by their addresses, with their titles. */
export const procedures = {
  'first-visit': 'First visit and survey',
  'choosing-the-way-in': 'Choose the way in',
  'marking-out': 'Mark out',
  'cutting-and-guarding-the-hole': 'Cut and guard the hole',
  'looking-in-and-feeding-the-hose': 'Look in and feed the hose',
  'filling-through-roof-holes': 'Fill through roof holes',
  'opening-the-gable': 'Open the gable end',
  'filling-from-the-gable': 'Fill from the gable end',
  'lifting-the-edge': 'Lift the roof edge',
  'filling-under-a-lifted-edge': 'Fill under a lifted edge',
  'closing-the-edge-and-the-gable': 'Close the edge and the gable',
  'flues-lights-and-wiring': 'Flues, lights and wiring',
  'sealing-the-ceiling': 'Seal the ceiling',
  'testing-the-machine': 'Test the machine',
  'knowing-when-it-is-full': 'Know when it is full',
  patching: 'Patch the hole',
  'putting-in-the-fans': 'Put in the fans',
  'setting-up-roof-and-machine': 'Set up roof and machine',
  'checking-the-work': 'Check the work',
  'paperwork-and-handing-over': 'Paperwork and handing over',
} as const;
export type Procedure = keyof typeof procedures;

/** How each way in is opened, filled and closed. */
const ofWay = {
  'roof holes': {
    open: ['marking-out', 'cutting-and-guarding-the-hole'],
    fill: ['looking-in-and-feeding-the-hose', 'filling-through-roof-holes'],
    close: ['patching'],
  },
  'gable end': {
    open: ['opening-the-gable'],
    fill: ['filling-from-the-gable'],
    close: ['closing-the-edge-and-the-gable'],
  },
  'lifted roof edge': {
    open: ['lifting-the-edge'],
    fill: ['filling-under-a-lifted-edge'],
    close: ['closing-the-edge-and-the-gable'],
  },
} as const satisfies Readonly<Record<Way, Readonly<Record<string, readonly Procedure[]>>>>;

/**
 * Which procedures does a sheet of the job belong to, by the way in that is taken?
 * @example proceduresOf('fill-log', 'gable end') // => ['filling-from-the-gable', 'knowing-when-it-is-full']
 */
export function proceduresOf(path: JobSheetPath, way: Way | undefined): readonly Procedure[] {
  const { open, fill, close } = ofWay[way ?? USUAL_WAY];
  const of: Readonly<Record<JobSheetPath, readonly Procedure[]>> = {
    '': open,
    before: ['first-visit', 'flues-lights-and-wiring', 'sealing-the-ceiling'],
    'ways-in': ['choosing-the-way-in', ...open, ...fill],
    'hose-marks': fill,
    machine: ['testing-the-machine'],
    'fill-log': [...fill, 'knowing-when-it-is-full'],
    patches: close,
    heat: [],
    air: ['putting-in-the-fans'],
    crew: ['setting-up-roof-and-machine'],
    photographs: [],
    receipt: ['checking-the-work', 'paperwork-and-handing-over'],
  };
  return of[path];
}

/** The pages that belong to one way in alone, or to some. */
const waysOfPage = (page: string): readonly Way[] =>
  (Object.keys(ofWay) as Way[]).filter((way) =>
    Object.values(ofWay[way]).some((pages) => (pages as readonly string[]).includes(page)),
  );

/**
 * Does a procedure belong to a way in? One that belongs to none of them belongs to all; so does looking in and feeding the hose, from
 * wherever.
 * @example isOfWay('marking-out', 'gable end') // => false
 */
export function isOfWay(page: string, way: Way): boolean {
  const ways = waysOfPage(page);
  return page === 'looking-in-and-feeding-the-hose' || ways.length === 0 || ways.includes(way);
}

/** The sheet that comes after another; undefined after the last. */
export const nextSheet = (path: JobSheetPath): JobSheetFacts | undefined =>
  jobSheets[jobSheets.findIndex((each) => each.path === path) + 1];
