import { resistanceDrawing } from '../../src/drawings/resistance-across.ts';
import { roofPlan } from '../../src/drawings/roof-plan.ts';
import { sectionDrawing } from '../../src/drawings/section.ts';
import { sectionSheet } from '../../src/drawings/section-sheet.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import type { JobEntries } from '../../src/job/job-file.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import type { Rulebook } from '../../src/rulebook/rulebook.ts';
import { exampleEntries, exampleWith } from '../job/entries.ts';
import { type Element, readXml } from './xml.ts';

export const orientations = { wide: 'across the sheet', narrow: 'down the sheet' } as const;
export type Size = keyof typeof orientations;
export const sizes = ['wide', 'narrow'] as const satisfies readonly Size[];

export const roofSheet = (plan: WorkedJob, rules: Rulebook, size: Size): Element =>
  readXml(toSvg(roofPlan(plan, rules, orientations[size]), `roof-${size}`));

export const sectionOf = (plan: WorkedJob, size: Size): Element =>
  readXml(toSvg(sectionDrawing(plan, sectionSheet(plan, size), `section-${size}`), `section-${size}`));

/** Undefined where the fill has no R per inch. */
export function resistanceSheet(plan: WorkedJob, rules: Rulebook, size: Size): Element | undefined {
  const drawing = resistanceDrawing(plan, rules, sectionSheet(plan, size));
  return drawing && readXml(toSvg(drawing, `resistance-${size}`));
}

/** Every drawing that stands on the page of a job, by the names it has there. */
export const sheetsOf = (plan: WorkedJob, rules: Rulebook): Element[] =>
  sizes.flatMap((size) => {
    const resistance = resistanceSheet(plan, rules, size);
    return [roofSheet(plan, rules, size), sectionOf(plan, size), ...(resistance ? [resistance] : [])];
  });

/** Jobs that differ in what is drawn of them. */
export const jobs: readonly [what: string, entries: JobEntries][] = [
  ['the example job', exampleEntries],
  ['two slopes, nothing on the ceiling', exampleWith({ 'cavity.shape': 'two-slope', old: undefined })],
  ['a level cavity', exampleWith({ 'cavity.shape': 'level', 'cavity.ridge': undefined })],
  ['one slope', exampleWith({ 'cavity.shape': 'one-slope' })],
  [
    'a cavity measured at five places, deepest off the middle',
    exampleWith({
      'cavity.shape': 'measured',
      'cavity.ridge': undefined,
      'cavity.points': [
        { from_eave: '0 in', depth: '3 in' },
        { from_eave: '30 in', depth: '8 in' },
        { from_eave: '70 in', depth: '14 1/4 in' },
        { from_eave: '110 in', depth: '9 in' },
        { from_eave: '13 ft 10 in', depth: '4 in' },
      ],
    }),
  ],
  [
    'a double-section home with flues and vents on both sides',
    exampleWith({
      'home.sections': 'double',
      'cavity.shape': 'one-slope',
      'roof.obstacles': [
        { what: 'furnace flue', along: '20 ft', side: 'back', from_peak: '2 ft', across: '8 in' },
        { what: 'skylight', along: '40 ft', side: 'front', from_peak: '3 ft', across: '24 in' },
        { what: 'plumbing vent', along: '31 ft', side: 'front', from_peak: '1 ft', across: '4 in' },
      ],
    }),
  ],
  [
    'a roof too short for a hole',
    exampleWith({ 'home.length': '6 ft', 'roof.obstacles': [], 'survey.flues': 'none' }),
  ],
  ['a fill without a published R', exampleWith({ 'fill.density': '3 lb/ft3' })],
  ['lengths in metres', exampleWith({ 'home.length': '20.1 m', 'cavity.width': '4.2 m' })],
  ['trusses and seams not known', exampleWith({ 'roof.truss_spacing': '', 'roof.seam_spacing': '' })],
];
