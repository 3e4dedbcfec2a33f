import { describe, expect, test } from 'vitest';
import { calculationNamed } from '../../../src/calc/calculations.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { format } from '../../../src/quantity/format.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const rules = openRulebook(theProject().data);

/** What a calculation says: a figure, its cautions, or its complaint. */
function says(name: string, entries: unknown, figure: string): string {
  const declared = calculationNamed(name);
  if (!declared) throw new Error(`found no calculation ${name}`);
  const read = answer(declared, entries, rules);
  if (!read.ok) return read.problems.map(sentence).join(' ');
  if (figure === 'cautions') return read.value.cautions.join();
  const value = read.value.figures[figure]?.value;
  return value === undefined || typeof value === 'string' ? String(value) : format(value, { figures: 6 });
}

/** Each limit met exactly, once in its own unit and once in another: 10 in are 25.4 cm, a lb/ft3 is 16.018463373960142 kg/m3. */
const alike: readonly [title: string, name: string, figure: string, a: object, b: object, says: RegExp][] = [
  [
    'an edge as thick as the whole',
    'restricted-edge',
    'kept',
    { kind: 'blown', nominal: '20 R', thickness: '10 in', edge: '0.8333333333333333 ft' },
    { kind: 'blown', nominal: '20 R', thickness: '254 mm', edge: '0.8333333333333334 ft' },
    /^100 %$/,
  ],
  [
    'the lightest glass fibre that the estimate holds for: k = 0.268 − 0.02221 × 0.4 + 0.05046/0.4 = 0.385266',
    'fill',
    'resistance_per_inch',
    { material: 'glass fibre', volume: '1 ft3', density: '0.4 lb/ft3', bag_weight: '30 lb/bag' },
    { material: 'glass fibre', volume: '1 ft3', density: '6407385.349584056 mg/m3', bag_weight: '30 lb/bag' },
    /^R-2\.5956/,
  ],
  [
    'a ceiling whose limit the insulation takes up: no pressure is left',
    'trapped-air',
    'highest_pressure',
    { board: 'gypsum 1/2 in', framing: '16 in', pressure: '0 psi', insulation: '2.2 lb/ft2' },
    { board: 'gypsum 1/2 in', framing: '16 in', pressure: '0 Pa', insulation: '0.015277777777777777 psi' },
    /^undefined$/,
  ],
  [
    'a ceiling whose limit the old insulation takes up: no density passes. 4 in × 6.6 lb/ft3 is 2.2 lb/ft2',
    'ceiling-load',
    'highest_density',
    {
      board: 'gypsum 1/2 in',
      framing: '16 in',
      depth: '13 in',
      density: '1.5 lb/ft3',
      old_depth: '4 in',
      old_density: '6.6 lb/ft3',
    },
    {
      board: 'gypsum 1/2 in',
      framing: '16 in',
      depth: '13 in',
      density: '1.5 lb/ft3',
      old_depth: '10.16 cm',
      old_density: '6.6 lb/ft3',
    },
    /^undefined$/,
  ],
  [
    'a fan that moves what is asked: 0.03 × 616 + 7.5 × 2 = 33.48 cfm',
    'fresh-air',
    'to_install',
    { floor: '616 ft2', bedrooms: '1', rooms: [], existing: '33.48 cfm' },
    { floor: '616 ft2', bedrooms: '1', rooms: [], existing: '15.800800398336 L/s' },
    /^0 cfm$/,
  ],
  [
    'a day whose noise is used up: 0.8 h and 7.2 h of the 8 h at 90 dBA',
    'noise-dose',
    'left',
    {
      periods: [
        { level: '90 dBA', time: '0.8 h' },
        { level: '90 dBA', time: '7.2 h' },
      ],
      next_level: '100 dBA',
    },
    {
      periods: [
        { level: '90 dBA', time: '48 min' },
        { level: '90 dBA', time: '432 min' },
      ],
      next_level: '100 dBA',
    },
    /^0 min$/,
  ],
  [
    'old insulation as deep as the cavity leaves the roof no new fill',
    'roof-heat',
    'refused',
    {
      ...calculationNamed('roof-heat')?.example,
      shape: 'level',
      eave: '3 7/8 in',
      ridge: '',
      old_depth: '3 7/8 in',
      old_condition: '',
      pressed_depth: '',
    },
    {
      ...calculationNamed('roof-heat')?.example,
      shape: 'level',
      eave: '3 7/8 in',
      ridge: '',
      old_depth: '9.8425 cm',
      old_condition: '',
      pressed_depth: '',
    },
    /^Depth of the old insulation \(old_depth\): found 3 7\/8 in; expected less than the cavity/,
  ],
  [
    'a density over the most that the ceiling carries: 5.75 x 30/140 = 1.232 lb/ft3, over 1.22',
    'opening-log',
    'cautions',
    {
      volume: '140 ft3',
      density: '1.5 lb/ft3',
      bag_weight: '30 lb/bag',
      bags: '5.75 bags',
      state: 'filling',
      highest_density: '1.22 lb/ft3',
    },
    {
      volume: '140 ft3',
      density: '1.5 lb/ft3',
      bag_weight: '30 lb/bag',
      bags: '5.75 bags',
      state: 'filling',
      highest_density: '19542525.31623137 mg/m3',
    },
    /^caution\.log\.overloaded/,
  ],
  [
    'as much R after as before: nothing is saved',
    'savings',
    'payback',
    {
      area: '1000 ft2',
      r_before: '34 R',
      r_after: '34 R',
      degree_days: '6000 F days',
      fuel: 'propane',
      efficiency: '80 %',
      price_per_volume: '1 $/gal',
      cost: '1800 $',
    },
    {
      area: '1000 ft2',
      r_before: '34 R',
      r_after: '5.987746245198396 m2 K/W',
      degree_days: '6000 F days',
      fuel: 'propane',
      efficiency: '80 %',
      price_per_volume: '1 $/gal',
      cost: '1800 $',
    },
    /^never$/,
  ],
  [
    'a bow of no rise is a level cavity: 3 in by 10 ft',
    'cavity-section',
    'area',
    { shape: 'bowed', width: '10 ft', eave: '3 in', ridge: '0.25 ft' },
    { shape: 'bowed', width: '10 ft', eave: '76.20000000000002 mm', ridge: '7.619999999999999 cm' },
    /^2\.5 ft²$/,
  ],
  [
    'a last truss at the very end of the roof takes half a member off the last bay: 24 less two halves of 1.5 in',
    'edge-bays',
    'clear',
    { ...calculationNamed('edge-bays')?.example },
    { ...calculationNamed('edge-bays')?.example, length: '2011.6799999999998 cm' },
    /^22\.5 in$/,
  ],
  [
    'a two-slope roof no higher than its eave has its ridge in the middle all the same, 6 ft 11 in from either',
    'edge-bays',
    'tube',
    {
      ...calculationNamed('edge-bays')?.example,
      edges: 'both edges',
      shape: 'two-slope',
      eave: '6 in',
      ridge: '6 in',
    },
    {
      ...calculationNamed('edge-bays')?.example,
      edges: 'both edges',
      shape: 'two-slope',
      eave: '15.24 cm',
      ridge: '0.5 ft',
    },
    /^6\.91667 ft$/,
  ],
  [
    'a place as far as the other eave is still inside the cavity',
    'cavity-section',
    'depth_at',
    { shape: 'two-slope', width: '12 ft', eave: '3 in', ridge: '15 in', at: '144 in' },
    { shape: 'two-slope', width: '365.76 cm', eave: '3 in', ridge: '15 in', at: '12.000000000000002 ft' },
    /^3 in$/,
  ],
];

describe('a limit met exactly is met in every unit', () => {
  test.each(alike)('%s', (_, name, figure, a, b, expected) => {
    expect(says(name, a, figure)).toMatch(expected);
    expect(says(name, b, figure)).toBe(says(name, a, figure));
  });
});

const beyond: readonly [title: string, name: string, entries: object, says: string][] = [
  [
    'a place beyond the other eave',
    'cavity-section',
    { shape: 'two-slope', width: '12 ft', eave: '3 in', ridge: '15 in', at: '12 ft 1 in' },
    'Depth wanted at (at): found 12 ft 1 in; expected a place inside the cavity, which is 12 ft wide.',
  ],
  [
    'a space kept open beyond it',
    'cavity-section',
    {
      shape: 'two-slope',
      width: '12 ft',
      eave: '3 in',
      ridge: '15 in',
      length: '40 ft',
      kept_open: [{ across: '9 in', at: '13 ft' }],
    },
    'Its place, from the eave (space kept open 1) (kept_open.0.at): found 13 ft; expected a place inside the cavity, which is 12 ft wide.',
  ],
  [
    'bags told in screws',
    'opening-log',
    { ...calculationNamed('opening-log')?.example, bags: '5.75 screws' },
    'Bags blown so far (bags): found "5.75 screws"; expected a count such as 3.25 bags.',
  ],
];

describe('what can’t be meant is told in a sentence', () => {
  test.each(beyond)('%s', (_, name, entries, expected) => {
    expect(says(name, entries, 'bags')).toBe(expected);
  });
});
