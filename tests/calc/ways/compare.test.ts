import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cell, EntriesClash } from '../../../src/calc/declare/calculation.ts';
import { readFields } from '../../../src/calc/declare/read-fields.ts';
import { layout } from '../../../src/calc/holes/declaration.ts';
import { checkProblem, type LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { layoutProblem } from '../../../src/calc/holes/roof.ts';
import { compareWays } from '../../../src/calc/ways/declaration.ts';
import type { Quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, rules, worked } from '../told.ts';

const home: Entries = {
  length: '14 ft',
  shape: 'two-slope',
  width: '12 ft',
  eave: '6 in',
  ridge: '18 in',
  cover: 'metal',
  carries_crew: 'yes',
  hot_in_cavity: 'no',
  gables: 'both ends',
  edges: 'one edge',
  truss_spacing: '24 in',
  first_truss: '0 in',
};

type Row = Readonly<Record<string, Cell>>;
const ways = ['gable end', 'roof holes', 'lifted roof edge'] as const;

/** What the table says of a way. */
function rowOf(more: Entries, way: (typeof ways)[number]): Row {
  const row = worked(compareWays, { ...home, ...more }).tables?.ways?.rows.find((each) => each.way === way);
  if (!row) throw new Error(`found no row for ${way}`);
  return row;
}
const open = (more: Entries) => worked(compareWays, { ...home, ...more }).figures.not_ruled_out?.value;

describe('what rules a way out', () => {
  const out: readonly [title: string, more: Entries, way: (typeof ways)[number], says: RegExp][] = [
    [
      'a roof that does not carry the crew',
      { carries_crew: 'no' },
      'roof holes',
      /^the roof does not carry the crew$/,
    ],
    ['no gable end', { gables: 'neither' }, 'gable end', /^no gable end can be opened$/],
    ['no edge', { edges: 'neither' }, 'lifted roof edge', /^no edge of the roof can be lifted$/],
    [
      'a push beyond reach',
      { length: '80 ft', reach: '30 ft' },
      'gable end',
      /the hose has to be pushed 40 ft, and reaches 30 ft: a part is left over/,
    ],
    [
      'an eave too low',
      { eave: '1 in' },
      'lifted roof edge',
      /^the cavity where it is lowest leaves 1 in free, and the tube is 2 in wide$/,
    ],
    [
      'chords that leave the hose no room',
      { eave: '2 in', ridge: '4 in' },
      'gable end',
      /^the cavity at its deepest, between the chords, leaves 1 in free, and the hose is 2 in wide$/,
    ],
    [
      'trusses too near for a hole between them',
      { truss_spacing: '7 in' },
      'roof holes',
      /no row of holes finds room on this roof/,
    ],
  ];
  test.each(out)('%s', (_, more, way, says) => {
    expect(rowOf(more, way).ruled_out).toMatch(says);
    expect(open(more)).not.toContain(way);
  });

  // By hand: 18 in at the deepest, less two chords of 1.5 in, leave 15 in, though over the marriage line it is 4 in deep, and they leave 1 in.
  test('room at the deepest place lets a hose in, wherever that lies in half a double-section home', () => {
    const more = { sections: 'double', eave: '4 in' };
    expect(rowOf(more, 'gable end').ruled_out).toBe('nothing that was entered');
    expect(open(more)).toContain('gable end');
  });

  test('nothing, where nothing does', () => {
    for (const way of ways) expect(rowOf({}, way).ruled_out).toBe('nothing that was entered');
  });
});

describe('what nobody knows rules nothing out, and is told', () => {
  const unknown: readonly [title: string, more: Entries, way: (typeof ways)[number], says: RegExp][] = [
    [
      'whether the roof carries the crew',
      { carries_crew: 'not known' },
      'roof holes',
      /whether the roof carries the crew/,
    ],
    ['the gable ends', { gables: 'not known' }, 'gable end', /whether a gable end can be opened/],
    ['the edges', { edges: 'not known' }, 'lifted roof edge', /whether an edge of the roof can be lifted/],
    [
      'what is left over behind a ring, in the lanes',
      { hot_in_cavity: 'yes' },
      'gable end',
      /^what is left over behind the ring of a flue or a light: the lanes tell how much$/,
    ],
    [
      'and in the bays',
      { hot_in_cavity: 'yes' },
      'lifted roof edge',
      /^what is left over behind the ring of a flue or a light: the bays tell how much$/,
    ],
    [
      'whether there is a ring, for the hose',
      { hot_in_cavity: 'not known' },
      'gable end',
      /^whether a flue or a light stands in the cavity$/,
    ],
    [
      'and for the tube',
      { hot_in_cavity: 'not known' },
      'lifted roof edge',
      /^whether a flue or a light stands in the cavity$/,
    ],
    [
      'trusses measured here and there only, so that a bay may be several',
      {
        truss_spacing: '',
        first_truss: '',
        trusses_measured: [{ at: '0 in' }, { at: '24 in' }, { at: '48 in' }],
      },
      'lifted roof edge',
      /^where the trusses stand, and so the bays$/,
    ],
    ['the cover', { cover: '' }, 'roof holes', /what the roof is covered with/],
    ['a cover that is not metal', { cover: 'shingles' }, 'lifted roof edge', /ask a roofer/],
    [
      'the trusses',
      { truss_spacing: '', first_truss: '' },
      'lifted roof edge',
      /where the trusses stand, and so the bays/,
    ],
    [
      'a reach between its two ends',
      { length: '60 ft' },
      'gable end',
      /whether the hose goes the whole way: it has to be pushed 30 ft, and reaches 25 ft to 35 ft/,
    ],
  ];
  test.each(unknown)('%s', (_, more, way, says) => {
    expect(rowOf(more, way).unknown).toMatch(says);
    expect(open(more)).toContain(way);
  });
});

test('a flue or a light is nothing to the roof holes, whose hose goes every way, and where there is none nothing is said of one', () => {
  expect(rowOf({ hot_in_cavity: 'yes' }, 'roof holes').unknown).toBe('nothing that is asked here');
  for (const way of ways)
    expect(rowOf({ hot_in_cavity: 'no' }, way).unknown).toBe('nothing that is asked here');
});

describe('half a double-section home has one edge to lift, whatever its shape', () => {
  // By hand: 14 ft with a truss every 2 ft are 7 bays; the tube goes all through the 12 ft of a half, and half of them where both edges are lifted.
  test.each<[title: string, more: Entries, openings: number, push: number]>([
    ['a single home, by both edges', { shape: 'level', ridge: '' }, 14, 6],
    ['half a double-section home that is level', { sections: 'double', shape: 'level', ridge: '' }, 7, 12],
    ['half a double-section home of one slope', { sections: 'double', shape: 'one-slope' }, 7, 12],
    ['one slope, told to be no half', { shape: 'one-slope' }, 7, 12],
  ])('%s', (_, more, openings, push) => {
    const entries = { ...home, edges: 'both edges', ...more };
    expect(figure(compareWays, entries, 'edge_openings', '1')).toBe(openings);
    expect(figure(compareWays, entries, 'edge_push', 'ft')).toBeCloseTo(push, 9);
  });
});

/**
 * The search of places asks for a problem that `checkProblem` lets pass, and the ways in hand it theirs unlooked at: at most 200 ft, which are 19,200
 * eighths of 40,000, and a truss or seam every 2 in, which are 1,201 of 3,000.
 */
test('whatever roof the form takes is one that the search of places may be given', () => {
  const inchesUpTo = (most: number) =>
    fc.integer({ min: 0, max: most * 8 }).map((eighths) => `${eighths / 8} in`);
  const vent = fc.record({ along: inchesUpTo(2400), from_peak: inchesUpTo(60), across: inchesUpTo(100) });
  let taken = 0;
  fc.assert(
    fc.property(
      fc.record({
        length: fc.oneof(fc.constant('200 ft'), inchesUpTo(2400)),
        truss_spacing: fc.oneof(fc.constant('2 in'), inchesUpTo(96)),
        seam_spacing: fc.oneof(fc.constant('2 in'), inchesUpTo(720)),
        obstacles: fc.array(
          vent.map((each) => ({ what: 'furnace flue', side: 'back', ...each })),
          { maxLength: 40 },
        ),
      }),
      (roof) => {
        const read = readFields(compareWays.fields, { ...home, ...roof, first_truss: '', first_seam: '' });
        if (!read.ok) return;
        let problem: LayoutProblem;
        try {
          problem = layoutProblem(read.value.length, read.value, 'back', rules);
        } catch (error) {
          // Entries that don't go together are told before the search.
          if (error instanceof EntriesClash) return;
          throw error;
        }
        taken += 1;
        expect(() => checkProblem(problem)).not.toThrow();
      },
    ),
    { numRuns: 200 },
  );
  expect(taken).toBeGreaterThan(20);
});

describe('figures', () => {
  test('are not told where they can’t be', () => {
    const { figures } = worked(compareWays, { ...home, gables: 'not known', edges: 'not known' });
    expect(Object.keys(figures)).toEqual(['not_ruled_out', 'holes_openings', 'holes_push']);
  });

  test('as many holes as the layout itself gives, and patches as holes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 900 }), (inches) => {
        const length = `${inches} in`;
        const entries = { length, truss_spacing: '24 in', first_truss: '0 in' };
        const holes = figure(layout, entries, 'holes', 'hole');
        const more = { ...home, length };
        expect(figure(compareWays, more, 'holes_openings', '1')).toBe(holes);
        expect((rowOf({ length }, 'roof holes').patches as Quantity).amount).toBe(holes);
      }),
      { numRuns: 40 },
    );
  });

  test('a longer home never needs a shorter push from its gable ends, and one end twice the push of two', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 900 }), fc.integer({ min: 0, max: 300 }), (inches, more) => {
        const push = (length: number, gables: string) =>
          figure(compareWays, { ...home, length: `${length} in`, gables }, 'gable_push', 'in');
        expect(push(inches + more, 'both ends')).toBeGreaterThanOrEqual(push(inches, 'both ends'));
        expect(push(inches, 'one end')).toBeCloseTo(2 * push(inches, 'both ends'), 9);
      }),
      { numRuns: 40 },
    );
  });

  test('the push from a hole reaches the farthest corner of any stretch, by looking at all of them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 160, max: 900 }), (inches) => {
        const entries = { length: `${inches} in`, truss_spacing: '24 in', first_truss: '0 in' };
        const places = Array.from({ length: figure(layout, entries, 'holes', 'hole') }, (_, n) =>
          figure(layout, entries, `hole_${n + 1}`, 'in'),
        );
        expect(places.length).toBeGreaterThan(0);
        const ends = places.map((place, n) => {
          const [before, after] = [places[n - 1], places[n + 1]];
          const [from, to] = [
            before === undefined ? 0 : (before + place) / 2,
            after === undefined ? inches : (after + place) / 2,
          ];
          // The hole lies 16 in below the peak of a roof 144 in wide: 56 in from one eave and 88 from the other.
          return Math.max(...[from, to].flatMap((x) => [0, 144].map((y) => Math.hypot(x - place, y - 56))));
        });
        expect(figure(compareWays, { ...home, length: `${inches} in` }, 'holes_push', 'in')).toBeCloseTo(
          Math.max(...ends),
          6,
        );
      }),
      { numRuns: 30 },
    );
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  ['no length', { length: '' }, /^Length of the roof \(length\): found nothing; expected text with a unit/],
  [
    'an answer that is none',
    { carries_crew: 'perhaps' },
    /\(carries_crew\): found "perhaps"; expected one of: yes; no; not known\.$/,
  ],
  [
    'a gable that nobody has',
    { gables: '3' },
    /\(gables\): found "3"; expected one of: both ends; one end; neither; not known\.$/,
  ],
  [
    'a roof shorter than a hole',
    { length: '5 in' },
    /^Length of the roof \(length\): found 5 in; expected more than a hole of 6 in\.$/,
  ],
  ['seams an inch apart', { seam_spacing: '1 in' }, /\(seam_spacing\): found 1 in; expected 2 in or more\.$/],
  [
    'a vent beyond the roof',
    {
      obstacles: [{ what: 'plumbing vent', along: '15 ft', side: 'back', from_peak: '1 ft', across: '4 in' }],
    },
    /^Vents, flues and skylights \(obstacles\): found a plumbing vent at 15 ft; expected a place on the roof, which is 14 ft long\.$/,
  ],
  [
    'a bow that is more than a half circle',
    { shape: 'bowed', width: '20 in' },
    /^Depth at the ridge \(ridge\): found a rise of 12 in over a width of 20 in; expected a bow of no more than a half circle\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(compareWays, { ...home, ...more })).toEqual([expect.stringMatching(says)]);
  });
});
