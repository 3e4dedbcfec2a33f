import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/calc/holes/lay-out.ts';
import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { crowded } from './crowded.ts';
import { bareRoof } from './roofs.ts';

/** The shortest of a few runs, in milliseconds: what the search takes, without what else the computer was at. */
function quickest(roof: LayoutProblem): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 7; run++) {
    const start = performance.now();
    layOut(roof);
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const slowestOf = (roofs: readonly LayoutProblem[]): number => Math.max(...roofs.map(quickest));
const seeds = Array.from({ length: 20 }, (_, seed) => seed + 1);

/**
 * Machines differ, and some are shared: a test lets pass four times what the search may take, so that it fails where a change makes the
 * search grow out of hand, and not where the machine is slow.
 */
const SLACK = 4;

describe('the search is quick enough to follow typing', () => {
  test('within 5 ms on twenty roofs of 80 ft with 40 trusses, 20 seams and 6 obstacles', () => {
    const crowd = { feet: 80, grid: 1 / 8, trusses: 24, seams: 48, obstacles: 6 };
    expect(slowestOf(seeds.map((seed) => crowded(crowd, seed)))).toBeLessThan(5 * SLACK);
  });

  test.each([
    { title: 'seams every 2 ft', seams: 24 },
    { title: 'seams so close that every patch lies over one', seams: 9 },
    { title: 'seams that put most patches over one', seams: 12.3 },
  ])('within 50 ms on hostile roofs of 200 ft to the sixteenth, $title', ({ seams }) => {
    const crowd = { feet: 200, grid: 1 / 16, trusses: 16, seams, obstacles: 20 };
    expect(slowestOf(seeds.map((seed) => crowded(crowd, seed)))).toBeLessThan(50 * SLACK);
  });

  test('within 50 ms where the most marks are left and the ranges clash', () => {
    const bare = { ...bareRoof(200), grid: 1 / 16 };
    const gone = [{ from: 700, to: 1500, name: 'solar array' }];
    const roofs = [
      bare,
      {
        ...bare,
        spacing: { low: 150, high: 150 },
        first: { low: 80, high: 80 },
        last: { low: 80, high: 80 },
      },
      { ...bare, obstacles: gone },
      { ...bare, spacing: { low: 60, high: 127 }, obstacles: gone },
    ];
    expect(slowestOf(roofs)).toBeLessThan(50 * SLACK);
  });
});
