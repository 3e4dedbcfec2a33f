import { describe, expect, test } from 'vitest';
import { type Box, boxAbout, costOf, inReach, meet, NEVER, type Spot } from '../../src/drawings/room.ts';

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
