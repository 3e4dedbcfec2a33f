import { common, type Interval, type Intervals, joined, without } from './intervals.ts';
import type { LayoutProblem } from './problem.ts';

/**
 * The places a hole may take, as whole numbers of grid steps. A bound that falls between two places is rounded to the side that
 * keeps the rule; a billionth of a step is taken for the noise of floating arithmetic.
 */
const NOISE = 1e-9;
export const atLeast = (inches: number, grid: number): number => Math.ceil(inches / grid - NOISE);
export const atMost = (inches: number, grid: number): number => Math.floor(inches / grid + NOISE);
const above = (inches: number, grid: number): number => Math.floor(inches / grid + NOISE) + 1;
const below = (inches: number, grid: number): number => Math.ceil(inches / grid - NOISE) - 1;

export interface Places {
  /** Every place that breaks no rule of trusses, seams and obstacles. */
  readonly all: Intervals;
  /** Those of them where the metal patch is clear of every seam. */
  readonly clear: Intervals;
  /** Those of them where it is not. */
  readonly over: Intervals;
  readonly first: Interval;
  readonly last: Interval;
  readonly gap: Interval;
}

/** Works out all places of a problem once. */
export function placesOf({ grid, length, first, last, spacing, ...problem }: LayoutProblem): Places {
  const half = problem.holeDiameter / 2;
  const offTruss = half + problem.memberWidth / 2;
  const offSeam = problem.patchSide / 2;
  // A hole that touches a member or a seam is not clear of it: the ends of the stretch are closed too.
  const about = (places: readonly number[], reach: number): Interval[] =>
    places.map((place) => [atLeast(place - reach, grid), atMost(place + reach, grid)]);
  const closed = joined([
    ...about(problem.trusses, offTruss),
    ...about(problem.seams, half),
    ...problem.obstacles.map(({ from, to }): Interval => [above(from, grid), below(to, grid)]),
  ]);
  const all = without(
    common([[atLeast(half, grid), atMost(length - half, grid)]], [[0, Number.POSITIVE_INFINITY]]),
    closed,
  );
  // A patch may touch a seam, so here the ends are free.
  const underPatch = joined(
    problem.seams.map((seam): Interval => [above(seam - offSeam, grid), below(seam + offSeam, grid)]),
  );
  return {
    all,
    clear: without(all, underPatch),
    over: common(all, underPatch),
    first: [atLeast(first.low, grid), atMost(first.high, grid)],
    last: [atLeast(length - last.high, grid), atMost(length - last.low, grid)],
    gap: [atLeast(Math.max(spacing.low, problem.patchSide), grid), atMost(spacing.high, grid)],
  };
}
