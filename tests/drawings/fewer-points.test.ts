import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fewerPoints } from '../../src/drawings/fewer-points.ts';
import type { Point } from '../../src/drawings/lines.ts';

const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });
const points = fc.array(fc.tuple(coordinate, coordinate), { maxLength: 40 });

/** How far a point lies from a stretch of line between two points, by looking at a thousand places of it. */
const awayFrom = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number =>
  Math.min(
    ...Array.from({ length: 1001 }, (_, place) => place / 1000).map((share) =>
      Math.hypot(ax + share * (bx - ax) - x, ay + share * (by - ay) - y),
    ),
  );

describe('a line is drawn with fewer points', () => {
  test.each<[string, Point[], Point[]]>([
    ['none of none', [], []],
    ['a point stays', [[1, 2]], [[1, 2]]],
    [
      'a straight run keeps its ends',
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [3, 0],
      ],
      [
        [0, 0],
        [3, 0],
      ],
    ],
    [
      'a corner stays',
      [
        [0, 0],
        [5, 0],
        [5, 5],
      ],
      [
        [0, 0],
        [5, 0],
        [5, 5],
      ],
    ],
    [
      'a bump that can be seen stays',
      [
        [0, 0],
        [5, 0.2],
        [10, 0],
      ],
      [
        [0, 0],
        [5, 0.2],
        [10, 0],
      ],
    ],
    [
      'a bump that can’t be seen goes',
      [
        [0, 0],
        [5, 0.05],
        [10, 0],
      ],
      [
        [0, 0],
        [10, 0],
      ],
    ],
    [
      'a ring keeps the point farthest from where it begins',
      [
        [0, 0],
        [4, 4],
        [0, 0],
      ],
      [
        [0, 0],
        [4, 4],
        [0, 0],
      ],
    ],
    [
      'what is no number stays, to be seen',
      [
        [0, 0],
        [5, Number.NaN],
        [10, 0],
      ],
      [
        [0, 0],
        [5, Number.NaN],
        [10, 0],
      ],
    ],
  ])('%s', (_, given, expected) => expect(fewerPoints(given, 0.1)).toEqual(expected));

  test('an arc of 90 degrees of radius 100 needs no chord but what a sagitta of 0.1 allows', () => {
    const arc = Array.from({ length: 1001 }, (_, place): Point => {
      const turn = (place / 1000) * (Math.PI / 2);
      return [100 * Math.cos(turn), 100 * Math.sin(turn)];
    });
    // A chord of an arc of angle a lies r (1 - cos a/2) off it: 0.1 allows 0.0894 rad, so 18 chords at the least.
    const found = fewerPoints(arc, 0.1).length - 1;
    expect(found).toBeGreaterThanOrEqual(18);
    expect(found).toBeLessThanOrEqual(36);
  });

  test('ends stay, order stays, and each point left out lies by the line that is drawn', () => {
    fc.assert(
      fc.property(points, (given) => {
        const kept = fewerPoints(given, 20);
        expect([kept[0], kept.at(-1)]).toEqual([given[0], given.at(-1)]);
        let from = 0;
        for (const next of kept.slice(1)) {
          const to = given.indexOf(next as (typeof given)[number], from + 1);
          expect(to).toBeGreaterThan(from);
          // From the line through both; beyond an end a stretch is farther than its line.
          for (const left of given.slice(from + 1, to))
            expect(
              Math.min(
                awayFrom(left, given[from] as Point, next),
                lineAway(left, given[from] as Point, next),
              ),
            ).toBeLessThanOrEqual(20 + 1e-6);
          from = to;
        }
      }),
      { numRuns: 200 },
    );
  });
});

/** From the line through two points, as the area of a triangle by its base. */
function lineAway([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const base = Math.hypot(bx - ax, by - ay);
  return base === 0 ? Number.POSITIVE_INFINITY : Math.abs((ax - x) * (by - y) - (bx - x) * (ay - y)) / base;
}
