import { describe, expect, test } from 'vitest';
import { level, oneSlope } from '../../src/calc/cavity/profile.ts';
import { chordLines, type TrussPart, trussMembers } from '../../src/drawings/truss-members.ts';

type Edge = readonly number[];

/** The edges of the webs of a part, each as its ends, the lower one first. */
const websOf = (part: TrussPart): Edge[] =>
  trussMembers(part, (across, height) => [across, height])
    .slice(chordLines(part, () => [0, 0]).length)
    .map(({ attributes: { x1, y1, x2, y2 } }) => [x1, y1, x2, y2].map(Number));

// By hand: webs meet the chords every 24 in of 192. Chords of 1 3/4 in in 10 1/2 in of cavity leave 7 in, so that a web is 25 in long, and its half,
// level, 7/8 of 25/7: 3 1/8 in.
const part: TrussPart = { profile: level(192, 10.5), from: 0, to: 192, chord: 1.75 };

describe('the webs of a truss', () => {
  test('each have two edges, and go from the bottom chord to the top one and down again', () => {
    const webs = websOf(part);
    expect(webs).toHaveLength(12);
    expect(webs.slice(0, 4)).toEqual([
      [20.875, 1.75, 44.875, 8.75],
      [27.125, 1.75, 51.125, 8.75],
      [68.875, 1.75, 44.875, 8.75],
      [75.125, 1.75, 51.125, 8.75],
    ]);
  });

  test.each<[title: string, change: Partial<TrussPart>, first: Edge | undefined]>([
    [
      'from half their height where old insulation hides the rest',
      { hidden: 5.25 },
      [32.875, 5.25, 44.875, 8.75],
    ],
    ['from the chord where what hides it is thinner', { hidden: 1 }, [20.875, 1.75, 44.875, 8.75]],
    ['not where all of them is hidden', { hidden: 8.75 }, undefined],
    // By hand: of 6 1/4 in the web is 24.8 in long, and its half, level, 3.472 in: less than two chords.
    ['where they are nearly too flat', { profile: level(192, 9.75) }, [20.528, 1.75, 44.528, 8]],
    // By hand: of 6 in it would be 24.74 in long, and its half 3.61 in: more than two chords.
    ['not where they would be too flat', { profile: level(192, 9.5) }, undefined],
    ['not where the chords leave nothing between them', { profile: level(192, 3.5) }, undefined],
    ['from where the part begins', { from: 32.875 }, [32.875, 5.25, 44.875, 8.75]],
    ['not in a part that ends where they begin', { to: 20.875 }, undefined],
    ['not in a part that begins where they end', { from: 171.125 }, undefined],
  ])('are drawn %s', (_, change, first) => {
    const [found] = websOf({ ...part, ...change });
    expect(found?.map((each) => Math.round(each * 1000) / 1000)).toEqual(first);
  });

  // By hand: 48 in from the eave of 9 in a slope of 1/32 has the same 10 1/2 in; 3 1/8 in on it is 0.098 in higher.
  test('end at the top chord where it slopes, each edge at its own height', () => {
    const heights = websOf({ ...part, profile: oneSlope(192, 9, 15) }).map(([, , , top = 0]) => top);
    expect(heights[0]).toBeCloseTo(8.652, 3);
    expect(heights[1]).toBeCloseTo(8.848, 3);
  });

  test('are cut off where the part ends', () => {
    expect(websOf({ ...part, to: 39.125 }).at(-1)).toEqual([27.125, 1.75, 39.125, 5.25]);
  });
});

test.each([
  ['over it', 2, true],
  ['no higher than it', 1.75, false],
])('the bottom chord is dashed where what lies on the ceiling reaches %s', (_, hidden, dashed) => {
  const [, bottom] = chordLines({ ...part, hidden }, (across, height) => [across, height]);
  expect(bottom?.attributes['stroke-dasharray'] !== undefined).toBe(dashed);
});
