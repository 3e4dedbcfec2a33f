import { describe, expect, test } from 'vitest';
import { line, text } from '../../src/drawings/lines.ts';
import {
  type Box,
  boxAbout,
  boxOf,
  costOf,
  inReach,
  leastCovering,
  linesTaken,
  meet,
  NEVER,
  type Spot,
  wordsTaken,
} from '../../src/drawings/room.ts';

const box = (left: number, right: number, top: number, bottom: number): Box => ({ left, right, top, bottom });

/** What other boxes are held against. */
const a = box(10, 20, 10, 20);

/** The boxes apart are so on one axis each: on the other they lie side by side with it. */
const others: readonly [how: string, other: Box, meets: boolean][] = [
  ['over a corner of it', box(15, 25, 15, 25), true],
  ['inside it', box(12, 14, 12, 14), true],
  ['all about it', box(0, 30, 0, 30), true],
  ['a line across it', box(15, 15, 0, 30), true],
  ['to its left', box(0, 5, 10, 20), false],
  ['to its right', box(25, 30, 10, 20), false],
  ['above it', box(10, 20, 0, 5), false],
  ['below it', box(10, 20, 25, 30), false],
  ['at its left edge', box(0, 10, 10, 20), false],
  ['at its right edge', box(20, 30, 10, 20), false],
  ['at its upper edge', box(10, 20, 0, 10), false],
  ['at its lower edge', box(10, 20, 20, 30), false],
];

describe('two boxes meet where they share more than an edge: one', () => {
  test.each(others)('%s', (_, other, meets) => {
    expect([meet(a, other), meet(other, a)]).toEqual([meets, meets]);
  });

  test.each(others)('%s costs what is taken only if they meet', (_, other, meets) => {
    expect(costOf(a, [{ box: other, cost: 7 }], box(0, 40, 0, 40))).toBe(meets ? 7 : 0);
  });
});

test.each([
  ['inside the room, up to its edges', box(10, 20, 10, 20), 0],
  ['beyond its left edge', box(11, 20, 10, 20), NEVER],
  ['beyond its right edge', box(10, 19, 10, 20), NEVER],
  ['beyond its upper edge', box(10, 20, 11, 20), NEVER],
  ['beyond its lower edge', box(10, 20, 10, 19), NEVER],
])('a box costs by where the room is: %s', (_, room, cost) => {
  expect(costOf(a, [], room)).toBe(cost);
});

// By hand: 4 letters of 0.57 of 10 are 22.8 long; they stand 7.5 over their line and hang 2.2 below it.
test.each<[how: string, spot: Omit<Spot, 'at'>, covered: Box]>([
  ['from their place on', { anchor: 'start' }, box(100, 122.8, 92.5, 102.2)],
  ['about their place', { anchor: 'middle' }, box(88.6, 111.4, 92.5, 102.2)],
  ['up to their place', { anchor: 'end' }, box(77.2, 100, 92.5, 102.2)],
  ['turned, upward from their place', { anchor: 'start', turned: true }, box(92.5, 102.2, 77.2, 100)],
  ['turned, about their place', { anchor: 'middle', turned: true }, box(92.5, 102.2, 88.6, 111.4)],
  ['turned, up to their place', { anchor: 'end', turned: true }, box(92.5, 102.2, 100, 122.8)],
])('words cover what lies %s', (_, spot, covered) => {
  const found = boxAbout('4 ft', { at: [100, 100], ...spot }, 10);
  for (const edge of ['left', 'right', 'top', 'bottom'] as const)
    expect(found[edge], edge).toBeCloseTo(covered[edge], 9);
});

// By hand: the spots go from 0 to 50; 22.8 of words and 10 more are 32.8 beyond them on every side.
test.each([
  ['near the first spot', box(-40, -32, 0, 1), true],
  ['far before it', box(-40, -33, 0, 1), false],
  ['near the last', box(82, 90, 50, 51), true],
  ['far behind it', box(83, 90, 50, 51), false],
  ['far above', box(0, 1, -40, -33), false],
  ['far below', box(0, 1, 83, 90), false],
])('what words can reach: a box %s', (_, other, reached) => {
  const spots: [Spot, ...Spot[]] = [
    { at: [50, 0], anchor: 'start' },
    { at: [0, 50], anchor: 'start' },
  ];
  const taken = [{ box: other, cost: 1 }];
  expect(inReach(taken, '4 ft', spots, 10)).toEqual(reached ? taken : []);
});

describe('what some shapes take', () => {
  const shapes = [
    line('thin', [30, 40], [10, 20]),
    text([100, 100], '4 ft', { anchor: 'start', size: 10 }),
    text([100, 100], '4 ft', { anchor: 'start', size: 10, turn: -90 }),
  ];

  test('is the words among them, turned ones as they lie, which nothing may cover', () => {
    const taken = wordsTaken(shapes).map(({ box: { right, top }, cost }) => [right, top, cost]);
    expect(taken).toEqual([
      [expect.closeTo(122.8, 9), 92.5, NEVER],
      [expect.closeTo(102.2, 9), expect.closeTo(77.2, 9), NEVER],
    ]);
  });

  test('is the lines among them, whichever way they go, each at its cost', () => {
    expect(linesTaken(shapes, 3)).toEqual([{ box: box(10, 30, 20, 40), cost: 3 }]);
    expect(boxOf([10, 40], [30, 20])).toEqual(box(10, 30, 20, 40));
  });
});

// By hand: at 0 the words lie on what is taken, from 0 to 10, which costs 9; at 30 and at 60 they lie clear of it.
test.each<[title: string, places: readonly [at: number, cost?: number][], chosen: number]>([
  ['the first that is clear, not one that covers', [[0], [30], [60]], 30],
  [
    'one that covers, where the clear one is worse by itself',
    [
      [0, 1],
      [30, 11],
    ],
    0,
  ],
  [
    'the clear one, where the other is better by itself but not with what it covers',
    [
      [0, 1],
      [30, 8],
    ],
    30,
  ],
  [
    'the first of those that are alike',
    [
      [30, 5],
      [60, 5],
    ],
    30,
  ],
])('words are set at %s', (_, places, chosen) => {
  const [first, ...more] = places.map(([at, cost = 0]): Spot => ({ at: [at, 0], anchor: 'start', cost }));
  if (!first) throw new Error('found no spot, expected one at the least');
  const taken = [{ box: box(0, 10, -5, 0), cost: 9 }];
  const setting = { size: 10, taken, room: box(0, 90, -9, 9) };
  expect(leastCovering('4 ft', [first, ...more], setting).at).toEqual([chosen, 0]);
});
