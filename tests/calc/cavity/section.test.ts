import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavity } from '../../../src/calc/cavity/declaration.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { amountIn, type Quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { within } from '../quadrature.ts';

const rules = openRulebook(theProject().data);

type Entries = Readonly<Record<string, unknown>>;

/** A figure in a unit; stops where the entries can't be worked. */
function figure(entries: Entries, name: string, unit: 'in' | 'ft2' | 'ft3'): number {
  const read = answer(cavity, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return amountIn(read.value.figures[name]?.value as Quantity<'length'>, unit as 'in');
}

const told = (entries: Entries): string[] => {
  const read = answer(cavity, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
};

const bow: Entries = { shape: 'bowed', width: '14 ft', eave: '3 in', ridge: '15 in' };

/** By hand, in inches, each with its working; to a part in 10^9. */
const worked: readonly [
  title: string,
  entries: Entries,
  name: string,
  unit: 'in' | 'ft2' | 'ft3',
  value: number,
][] = [
  ['two slopes: 168 · (3 + 15)/2 in2', { ...bow, shape: 'two-slope' }, 'area', 'ft2', (168 * 9) / 144],
  ['one slope: 168 · (3 + 15)/2 in2', { ...bow, shape: 'one-slope' }, 'area', 'ft2', (168 * 9) / 144],
  ['level: 168 · 3 in2', { ...bow, shape: 'level', ridge: '' }, 'area', 'ft2', (168 * 3) / 144],
  [
    'level, with a ridge of the same depth',
    { ...bow, shape: 'level', ridge: '7.62 cm' },
    'area',
    'ft2',
    (168 * 3) / 144,
  ],
  ['its mean depth is its area over its width', { ...bow, shape: 'two-slope' }, 'mean_depth', 'in', 9],
  ['half way up one slope: 3 + 12/2', { ...bow, shape: 'one-slope', at: '7 ft' }, 'depth_at', 'in', 9],
  [
    'old insulation under the whole of it: less 2 · 168',
    { ...bow, shape: 'two-slope', old_depth: '2 in' },
    'free_area',
    'ft2',
    (168 * 7) / 144,
  ],
  [
    'old insulation that fills the eave: less 6 · 168 − 3 · 21, since the roof is lower than 6 in over 21 in on each side and falls short by 3/2 on the mean',
    { ...bow, shape: 'two-slope', old_depth: '6 in' },
    'free_area',
    'ft2',
    (168 * 9 - (6 * 168 - 3 * 21)) / 144,
  ],
  [
    'both chords of a truss of 1.5 in every 24 in: less 3 · 168 · 1.5/24',
    { ...bow, shape: 'two-slope', truss_spacing: '24 in' },
    'free_area',
    'ft2',
    (168 * 9 - (3 * 168 * 1.5) / 24) / 144,
  ],
  [
    'the lower chord half in the old insulation: less (1.5 + 0.75) · 168 · 1.5/24 and 0.75 · 168',
    { ...bow, shape: 'two-slope', truss_spacing: '24 in', old_depth: '3/4 in' },
    'free_area',
    'ft2',
    (168 * 9 - (2.25 * 168 * 1.5) / 24 - 0.75 * 168) / 144,
  ],
  ['ten feet of it: 10.5 ft2 · 10 ft', { ...bow, shape: 'two-slope', length: '10 ft' }, 'volume', 'ft3', 105],
  [
    'a round space of 12 in where it is 9 in deep: π/4 · 1 ft2 · 0.75 ft',
    { ...bow, shape: 'two-slope', length: '10 ft', kept_open: [{ across: '12 in', at: '42 in' }] },
    'kept_open',
    'ft3',
    (Math.PI / 4) * 0.75,
  ],
  [
    'less that space',
    { ...bow, shape: 'two-slope', length: '10 ft', kept_open: [{ across: '12 in', at: '42 in' }] },
    'volume',
    'ft3',
    105 - (Math.PI / 4) * 0.75,
  ],
];

describe('a section is worked as by hand', () => {
  test.each(worked)('%s', (_, entries, name, unit, value) => {
    expect(within(1e-9, figure(entries, name, unit), value)).toBe(true);
  });
});

describe('a cavity of no depth is told at its own depth, not at an old insulation that nobody entered', () => {
  test.each([
    ['two-slope', { eave: '0 in', ridge: '0 in' }, 'Depth at the ridge (ridge): found no depth anywhere'],
    ['bowed', { eave: '0 in', ridge: '0 in' }, 'Depth at the ridge (ridge): found no depth anywhere'],
    ['level', { eave: '0 in' }, 'Depth at the eave (eave): found no depth anywhere'],
    [
      'measured',
      {
        points: [
          { from_eave: '0 in', depth: '0 in' },
          { from_eave: '10 ft', depth: '0 in' },
        ],
      },
      'Depths you measured (points): found no depth anywhere',
    ],
    // Chords as wide as their spacing leave nothing.
    [
      'level',
      { eave: '1 in', truss_spacing: '1.5 in' },
      'Depth at the eave (eave): found no more than the trusses take',
    ],
    ['level', { eave: '3 in', old_depth: '3 in' }, 'Depth of the old insulation (old_depth): found 3 in'],
  ] as const)('%s %j', (shape, entries, says) => {
    expect(told({ shape, width: '10 ft', ...entries })).toEqual([expect.stringContaining(says)]);
  });
});

const points = (...all: readonly (readonly [from_eave: string, depth: string])[]): Entries => ({
  shape: 'measured',
  width: '14 ft',
  points: all.map(([from_eave, depth]) => ({ from_eave, depth })),
});

/** Entries that read well one by one and can't be true together: the field that has to be looked at, and the sentence. */
const clashes: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'an eave deeper than the ridge',
    { ...bow, eave: '16 in' },
    /^Depth at the eave \(eave\): found 16 in, deeper than the ridge at 15 in; expected an eave no deeper than the ridge: the two may be swapped\.$/,
  ],
  [
    'a bow of more than a half circle',
    { ...bow, width: '1 ft', eave: '0 in', ridge: '6 1/8 in' },
    /^Depth at the ridge \(ridge\): found a rise of 6\.125 in over a width of 1 ft; expected a bow of no more than a half circle\.$/,
  ],
  [
    'no ridge',
    { ...bow, ridge: '' },
    /^Depth at the ridge \(ridge\): found nothing; expected a depth, since the shape is bowed\.$/,
  ],
  [
    'no eave',
    { ...bow, shape: 'level', eave: '' },
    /^Depth at the eave \(eave\): found nothing; expected a depth, since the shape is level\.$/,
  ],
  ['no measured depth', points(), /^Depths you measured \(points\): found 0 depths; expected two or more, /],
  [
    'one measured depth',
    points(['0 in', '3 in']),
    /^Depths you measured \(points\): found 1 depths; expected two or more, /,
  ],
  [
    'measured depths that leave the eave out',
    points(['1 in', '3 in'], ['14 ft', '3 in']),
    /^Depths you measured \(points\): found the first at 1 in; expected a depth at 0 in, the eave itself\.$/,
  ],
  [
    'measured depths that stop short of the other end',
    points(['0 in', '3 in'], ['13 ft', '3 in']),
    /^Depths you measured \(points\): found the last at 13 ft; expected a depth at the other end, 14 ft\.$/,
  ],
  [
    'two depths at one place',
    points(['0 in', '3 in'], ['7 ft', '9 in'], ['84 in', '8 in'], ['14 ft', '3 in']),
    /^Depths you measured \(points\): found two depths at 7 ft; expected one depth a place\.$/,
  ],
  [
    'old insulation up to the roof',
    { ...bow, old_depth: '15 in' },
    /^Depth of the old insulation \(old_depth\): found 15 in; expected less than the cavity holds/,
  ],
  [
    'a level cavity with a deeper ridge: by its eave alone the ceiling would be told lighter than it is',
    { ...bow, shape: 'level' },
    /^Depth at the ridge \(ridge\): found 15 in in a level cavity of 3 in; expected no more than that, or nothing\.$/,
  ],
  [
    'measured depths that leave a deeper ridge out',
    { ...points(['0 in', '3 in'], ['14 ft', '4 in']), ridge: '4 1/8 in' },
    /^Depth at the ridge \(ridge\): found 4\.125 in in a measured cavity of 4 in; expected no more than that, or nothing\.$/,
  ],
  [
    'trusses closer than they are wide',
    { ...bow, truss_spacing: '1 3/8 in' },
    /^Truss spacing \(truss_spacing\): found 1\.375 in; expected no less than the width of a truss member, 1 1\/2 in\.$/,
  ],
  [
    'spaces kept open that leave nothing',
    { ...bow, length: '1 ft', kept_open: [{ across: '6 ft', at: '7 ft' }] },
    /^Spaces kept open \(kept_open\): found 35\.\d+ ft³ of them in a cavity of 12\.87 ft³; expected less than the cavity holds\.$/,
  ],
];

describe('entries that can’t be true together give one sentence that names the field', () => {
  test.each(clashes)('%s', (_, entries, says) => {
    const sentences = told(entries);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(says);
  });

  test('the same depths in any order are the same cavity', () => {
    const inOrder = points(['0 in', '3 in'], ['7 ft', '15 in'], ['14 ft', '3 in']);
    const mixed = points(['14 ft', '3 in'], ['0 in', '3 in'], ['7 ft', '15 in']);
    expect(figure(mixed, 'area', 'ft2')).toBe(figure(inOrder, 'area', 'ft2'));
  });
});

/** Lengths as a crew reads them, in eighths of an inch, written in any unit. */
const unit = fc.constantFrom(
  (eighths: number) => `${eighths / 8} in`,
  (eighths: number) => `${eighths / 96} ft`,
  (eighths: number) => `${(eighths / 8) * 0.0254} m`,
  (eighths: number) => `${(eighths / 8) * 2.54} cm`,
);

const cavities = fc.record({
  shape: fc.constantFrom('two-slope', 'one-slope', 'bowed', 'level'),
  width: fc.integer({ min: 8 * 60, max: 8 * 400 }),
  eave: fc.integer({ min: 8, max: 8 * 12 }),
  rise: fc.integer({ min: 1, max: 8 * 24 }),
  length: fc.integer({ min: 8 * 12, max: 8 * 2400 }),
});

/** A level cavity has none. */
const ridgeOf = (shape: string, ridge: string): Entries => (shape === 'level' ? {} : { ridge });

describe('whatever the cavity', () => {
  test('the same job in inches, feet, metres and centimetres has the same volume, to a part in 10^9', () => {
    fc.assert(
      fc.property(cavities, unit, unit, ({ shape, width, eave, rise, length }, one, other) => {
        const volume = (write: (eighths: number) => string) =>
          figure(
            {
              shape,
              width: write(width),
              eave: write(eave),
              ...ridgeOf(shape, write(eave + rise)),
              length: write(length),
            },
            'volume',
            'ft3',
          );
        return within(1e-9, volume(one), volume(other));
      }),
      { numRuns: 300 },
    );
  });

  test('old insulation as deep as the cavity leaves no room, and never a crumb of it by a rounding error', () => {
    fc.assert(
      fc.property(cavities, unit, ({ shape, width, eave, rise }, write) => {
        const deep = shape === 'level' ? eave : eave + rise;
        const entries = {
          shape,
          width: `${width / 8} in`,
          eave: `${eave / 8} in`,
          ...ridgeOf(shape, `${(eave + rise) / 8} in`),
        };
        return told({ ...entries, old_depth: write(deep) }).length === 1;
      }),
      { numRuns: 500 },
    );
  });

  test('twice the length holds twice as much', () => {
    fc.assert(
      fc.property(cavities, ({ shape, width, eave, rise, length }) => {
        const volume = (eighths: number) =>
          figure(
            {
              shape,
              width: `${width / 8} in`,
              eave: `${eave / 8} in`,
              ...ridgeOf(shape, `${(eave + rise) / 8} in`),
              length: `${eighths / 8} in`,
              truss_spacing: '24 in',
            },
            'volume',
            'ft3',
          );
        return length > 8 * 1200 || within(1e-9, volume(2 * length), 2 * volume(length));
      }),
    );
  });
});
