import { describe, expect, test } from 'vitest';
import { type Departure, layOut } from '../../../src/calc/holes/lay-out.ts';
import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { departureSentences } from '../../../src/calc/holes/words.ts';
import { bareRoof, every } from './roofs.ts';

interface Case {
  readonly title: string;
  readonly roof: LayoutProblem;
  readonly positions: readonly number[];
  readonly byHand: string;
}

/** Skylights one behind the other, between which alone a hole finds room. */
const skylights = (...edges: readonly number[]) =>
  edges.slice(1).map((to, place) => ({ from: edges[place] ?? 0, to, name: 'skylight' }));

describe('layouts that hold every rule, worked out by hand', () => {
  const roof30 = { ...bareRoof(30), trusses: every(24, 0, 360) };
  const roof40 = bareRoof(40);
  const cases: Case[] = [
    {
      title: 'a bare roof of 66 ft takes five holes, evenly spaced to the eighth',
      roof: bareRoof(66),
      positions: [79.25, 237.625, 396, 554.375, 712.75],
      byHand:
        '792 / 10 = 79.2, then every 158.4 in; equal gaps of 1267 eighths about the middle miss by 0.4 + 0.2 + 0 + 0.2 + 0.4 eighths',
    },
    {
      title: 'two holes lie at their even places where both fall between trusses',
      roof: roof30,
      positions: [90, 270],
      byHand: '360 / 4 = 90 = 72 + 18 and 270 = 264 + 6: both more than 3 3/4 in from a truss, 180 in apart',
    },
    {
      title: 'a hole moves off a seam by half a patch',
      roof: { ...roof30, seams: [88] },
      positions: [83, 270],
      byHand:
        '88 - 5 = 83; the other side of the seam is 93, where the truss at 96 is too near, and past 96 the range ends',
    },
    {
      title: 'both holes move further sooner than one patch lies over a seam',
      roof: { ...roof30, seams: [88], obstacles: [{ from: 76, to: 84.5, name: 'vent' }] },
      positions: [76, 268],
      byHand:
        'the vent’s edge at 76 is allowed; 76 + 192 = 268 = 264 + 4 clears the truss. 91 1/2 would be nearer, but over the seam',
    },
    {
      title: 'of layouts that are equal in everything the one nearest the start is taken',
      roof: { ...roof40, obstacles: [{ from: 230, to: 250, name: 'skylight' }] },
      positions: [72, 230, 388],
      byHand:
        'even places 80, 240, 400. With 230 in the middle and gaps of 154 to 158, or 250 and the same, the moves come to 30 in: (g - 150) + 10 + (170 - g)',
    },
    {
      title: 'gaps stay uneven where the ends can’t move',
      roof: {
        ...roof40,
        first: { low: 80, high: 80 },
        last: { low: 80, high: 80 },
        obstacles: [{ from: 230, to: 250, name: 'skylight' }],
      },
      positions: [80, 230, 400],
      byHand: '150 and 170 in, or 170 and 150: equal, so the one nearest the start',
    },
    {
      title: 'more even gaps come before less movement',
      roof: {
        ...roof40,
        first: { low: 80, high: 90 },
        last: { low: 80, high: 80 },
        obstacles: [{ from: 230, to: 244, name: 'skylight' }],
      },
      positions: [88, 244, 400],
      byHand:
        '244 in the middle and 400 last leave 156 in, so 88 first: 8 + 4 in of movement where 80 would move 4, with gaps of 164 and 156',
    },
    {
      title: 'gaps as even, and nearer the even places, are of no use where one is too long',
      roof: {
        ...bareRoof(50),
        first: { low: 72, high: 168 },
        last: { low: 72, high: 168 },
        obstacles: skylights(60, 96, 144, 264, 312, 456, 504, 540),
      },
      positions: [144, 312, 504],
      byHand:
        'two holes reach 168 + 192 + 168 = 528 of 600 in; of three, the first lies at 96 or 144, the next at 264 or 312, the last at 456 or 504, and 96 to 312 and 264 to 504 are over 192 in. So 96, 264, 456 and 144, 312, 456 and 144, 312, 504 are left, each with gaps that differ by 24 in, moved from 100, 300 and 500 by 84, 100 and 60 in. 96, 312, 504 would move by 20 in, its gaps 216 and 192',
    },
    {
      title: 'nor where one is too short',
      roof: {
        ...bareRoof(36),
        first: { low: 36, high: 132 },
        last: { low: 36, high: 132 },
        spacing: { low: 96, high: 156 },
        obstacles: skylights(0, 84, 132, 216, 252, 312, 384, 432),
      },
      positions: [132, 252, 384],
      byHand:
        'in feet: two holes reach 11 + 13 + 11 = 35 of 36; of three, the first lies at 7 or 11, the next at 18 or 21, the last at 26 or 32. Gaps of 8 to 13 leave 7, 18, 26 with gaps of 11 and 8, and 11, 21, 32 with 10 and 11, which are more even. 11, 18, 26 would move from 6, 18 and 30 by 9 and not by 10, but its gaps are 7 and 8',
    },
    {
      title: 'a single hole lies in the middle',
      roof: bareRoof(14),
      positions: [84],
      byHand: '168 / 2',
    },
  ];
  test.each(cases)('$title', ({ roof, positions, byHand }) => {
    const found = layOut(roof);
    expect(found.outcome).toBe('meets-every-rule');
    expect(found, byHand).toHaveProperty('layout.positions', positions);
  });

  test('a layout says how far each hole moved, which patches lie over a seam, and how even the gaps are', () => {
    // Seams every 8 in lie under every patch of 10 in; a hole of 6 in fits between them only where it leaves 3 in to either side.
    const found = layOut({ ...bareRoof(30), seams: every(8, 0, 360) });
    expect(found).toEqual({
      outcome: 'meets-every-rule',
      layout: {
        // By hand: clear of a seam by more than 3 in is 8k + 3 1/8 to 8k + 4 7/8: 90 moves to 91 1/8 (88 + 3 1/8), 270 to 268 7/8.
        positions: [91.125, 268.875],
        evenPlaces: [90, 270],
        moved: [1.125, -1.125],
        overSeam: [true, true],
        gaps: [177.75],
        spread: 0,
      },
    });
  });
});

describe('least departures, worked out by hand', () => {
  test('a bare roof of 20 ft takes one hole in the middle, 2 ft too far from either end', () => {
    // By hand: one hole between 96 and 144 in departs by (x - 96) + (144 - x) = 48 in. Two depart by 72 + 144 + 72 - 240 = 48 in
    // too, but one hole is fewer. Of all places between, the middle moves least.
    expect(layOut(bareRoof(20))).toEqual({
      outcome: 'least-departure',
      clash: ['first', 'last', 'spacing'],
      layout: { positions: [120], evenPlaces: [120], moved: [0], overSeam: [false], gaps: [], spread: 0 },
      departures: [
        { rule: 'first', hole: 0, found: 120, allowed: { low: 72, high: 96 }, by: 24 },
        { rule: 'last', hole: 0, found: 120, allowed: { low: 72, high: 96 }, by: 24 },
      ],
    });
  });

  test('a bare roof of 34 ft takes two holes, the gap between them 2 ft too long', () => {
    // By hand: two holes reach 96 + 192 + 96 = 384 in, 24 short of 408. Three need 72 + 144 + 144 + 72 = 432, 24 more; two are fewer.
    // The even places are 102 in from the ends, brought to 96, and lie 216 in apart.
    expect(layOut(bareRoof(34))).toMatchObject({
      outcome: 'least-departure',
      layout: { positions: [96, 312], moved: [0, 0], gaps: [216] },
      departures: [
        { rule: 'spacing', between: [0, 1], found: 216, allowed: { low: 144, high: 192 }, by: 24 },
      ],
    });
  });

  test('a bare roof of 23 ft takes two holes, a foot short in all', () => {
    // By hand: 72 + 144 + 72 = 288 in, 12 more than 276; one hole would depart by 276 - 192 = 84. The even places are 72 in from the
    // ends (276 / 4 = 69, brought to 72): 132 in apart, so the gap alone gives way.
    expect(layOut(bareRoof(23))).toMatchObject({
      layout: { positions: [72, 204], moved: [0, 0] },
      departures: [{ rule: 'spacing', found: 132, by: 12 }],
    });
  });

  test('trusses, seams and obstacles hold where the ranges can’t', () => {
    // By hand: the middle, 120 in, is a truss; 120 - 3 7/8 is the nearest mark clear of it, and as near on the far side.
    expect(layOut({ ...bareRoof(20), trusses: [120] })).toMatchObject({ layout: { positions: [116.125] } });
  });
});

describe('what departs alike is told once', () => {
  const ends = { low: 72, high: 96 };
  const gaps = { low: 144, high: 192 };
  test.each<[title: string, departures: readonly Departure[], said: readonly string[]]>([
    [
      'a hole 3 ft from both ends',
      [
        { rule: 'first', hole: 0, found: 36, allowed: ends, by: 36 },
        { rule: 'last', hole: 0, found: 36, allowed: ends, by: 36 },
      ],
      [
        'The first hole’s and last hole’s distance from its end is 3 ft: 3 ft under the 6 ft to 8 ft that the rule asks for.',
      ],
    ],
    [
      'two gaps that are as short',
      [
        { rule: 'spacing', between: [0, 1], found: 138, allowed: gaps, by: 6 },
        { rule: 'spacing', between: [1, 2], found: 138, allowed: gaps, by: 6 },
      ],
      [
        'The gap from hole 1 to hole 2 and from hole 2 to hole 3 is 11 ft 6 in: 6 in under the 12 ft to 16 ft that the rule asks for.',
      ],
    ],
    [
      'a gap too short, a gap too long, and an end as far off as no gap may be',
      [
        { rule: 'first', hole: 0, found: 138, allowed: ends, by: 42 },
        { rule: 'spacing', between: [0, 1], found: 138, allowed: gaps, by: 6 },
        { rule: 'spacing', between: [1, 2], found: 198, allowed: gaps, by: 6 },
      ],
      [
        'The first hole’s distance from its end is 11 ft 6 in: 3 ft 6 in over the 6 ft to 8 ft that the rule asks for.',
        'The gap from hole 1 to hole 2 is 11 ft 6 in: 6 in under the 12 ft to 16 ft that the rule asks for.',
        'The gap from hole 2 to hole 3 is 16 ft 6 in: 6 in over the 12 ft to 16 ft that the rule asks for.',
      ],
    ],
    ['none', [], []],
  ])('%s', (_, departures, said) => {
    expect(departureSentences(departures)).toEqual(said);
  });
});

describe('roofs with no room for any hole', () => {
  const clear = bareRoof(40);
  test.each([
    { title: 'seams every 6 in', roof: { ...clear, seams: every(6, 0, 480) }, clash: ['seams'] },
    { title: 'trusses every 7 1/2 in', roof: { ...clear, trusses: every(7.5, 0, 480) }, clash: ['trusses'] },
    {
      title: 'seams every 12 in, and trusses between them',
      roof: { ...clear, seams: every(12, 0, 480), trusses: every(12, 6, 480) },
      clash: ['trusses', 'seams'],
    },
    {
      title: 'one obstacle from end to end, whatever else there is',
      roof: { ...clear, trusses: every(24, 0, 480), obstacles: [{ from: -1, to: 481, name: 'solar array' }] },
      clash: ['obstacles'],
    },
  ])('$title', ({ roof, clash }) => {
    expect(layOut(roof)).toEqual({ outcome: 'no-room', clash });
  });
});
