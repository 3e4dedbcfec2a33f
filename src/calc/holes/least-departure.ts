import { evenPlaces } from './even-places.ts';
import type { Intervals } from './intervals.ts';
import { atLeast, type Places } from './places.ts';
import type { LayoutProblem, Range } from './problem.ts';
import { leastAhead } from './sliding.ts';

/**
 * The weights of the three aims in one number: an inch of departure outweighs any number of patches over a seam, and one of those
 * outweighs any movement. Departures differ by a grid step or not at all, so nothing is lost in the sum.
 */
const PER_INCH_OF_DEPARTURE = 1e9;
const PER_PATCH_OVER_SEAM = 1e5;
/** Sums nearer than this are the same: above the last figure of the largest sum, below any real difference. */
const SAME_SUM = 2e-3;
const SAME_DEPARTURE = 1e-6;

/** How far a value lies outside a range, in its own unit. */
export const departure = (value: number, { low, high }: Range): number =>
  Math.max(low - value, value - high, 0);

/**
 * The layout with the least total departure from the distances of the first and last hole and the gaps; then the fewest holes, the
 * fewest patches over a seam, the least movement, the nearest to the starting end. Trusses, seams and obstacles are never departed from,
 * and patches never overlap. The answer is in grid steps; undefined where there is no place for a hole at all.
 */
export function leastDeparture(problem: LayoutProblem, places: Places): readonly number[] | undefined {
  if (places.all.length === 0) return undefined;
  const holes = bestNumber(problem, places);
  return bestWith(problem, places, holes);
}

const count = ({ length, grid }: LayoutProblem): number => Math.floor(length / grid + 1e-9) + 1;

/** Marks the places of a set with a value each, the rest with infinity. */
function marked(size: number, set: Intervals, value: (place: number) => number): Float64Array {
  const result = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  for (const [first, last] of set)
    for (let place = first; place <= Math.min(last, size - 1); place++) result[place] = value(place);
  return result;
}

/** For each place, the least of "what comes after, and what the gap to it departs", by whether the gap is short, right or long. */
function overGap(
  values: Float64Array,
  { spacing, grid, patchSide }: LayoutProblem,
  perInch: number,
): Float64Array {
  const nearest = atLeast(patchSide, grid);
  const [low, high] = [spacing.low / grid, spacing.high / grid];
  const [shortest, longest] = [Math.max(nearest, Math.ceil(low - 1e-9)), Math.floor(high + 1e-9)];
  const perStep = perInch * grid;
  const size = values.length;
  const right = leastAhead(values, shortest, longest);
  const short = leastAhead(
    values.map((value, place) => value - place * perStep),
    nearest,
    shortest - 1,
  );
  const long = leastAhead(
    values.map((value, place) => value + place * perStep),
    Math.max(nearest, longest + 1),
    size,
  );
  return right.map((value, place) =>
    Math.min(
      value,
      (short[place] ?? 0) + (place + low) * perStep,
      (long[place] ?? 0) - (place + high) * perStep,
    ),
  );
}

/** The number of holes with the least departure; the fewer where two depart alike. */
function bestNumber(problem: LayoutProblem, places: Places): number {
  const { grid, length, first, last } = problem;
  const size = count(problem);
  const open = marked(size, places.all, () => 0);
  let toGo = marked(size, places.all, (place) => departure(length - place * grid, last));
  let best = { holes: 1, by: Number.POSITIVE_INFINITY };
  const most = Math.ceil(length / Math.max(problem.spacing.low, problem.patchSide)) + 2;
  for (let holes = 1; holes <= most; holes++) {
    let by = Number.POSITIVE_INFINITY;
    for (const [place, value] of toGo.entries()) by = Math.min(by, value + departure(place * grid, first));
    if (by < best.by - SAME_DEPARTURE) best = { holes, by };
    toGo = overGap(toGo, problem, 1).map((value, place) => value + (open[place] ?? 0));
  }
  return best.holes;
}

function bestWith(problem: LayoutProblem, places: Places, holes: number): readonly number[] {
  const { grid, length, first, last } = problem;
  const size = count(problem);
  const even = evenPlaces(problem, holes);
  const over = marked(size, places.over, () => PER_PATCH_OVER_SEAM);
  const own = (hole: number) =>
    marked(size, places.all, (place) => {
      const patch = Number.isFinite(over[place]) ? PER_PATCH_OVER_SEAM : 0;
      const ends =
        (hole === 0 ? departure(place * grid, first) : 0) +
        (hole === holes - 1 ? departure(length - place * grid, last) : 0);
      return ends * PER_INCH_OF_DEPARTURE + patch + Math.abs(place * grid - (even[hole] ?? 0));
    });
  const toGo: Float64Array[] = [];
  for (let hole = holes - 1; hole >= 0; hole--) {
    const after = toGo[hole + 1];
    const mine = own(hole);
    toGo[hole] = after ? overGapAdded(mine, after, problem) : mine;
  }
  const steps: number[] = [];
  for (const values of toGo) {
    const before = steps.at(-1);
    const sums = values.map((value, place) =>
      before === undefined ? value : value + gapCost(place - before, problem),
    );
    const least = sums.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    steps.push(sums.findIndex((sum) => sum <= least + SAME_SUM));
  }
  return steps;
}

const overGapAdded = (mine: Float64Array, after: Float64Array, problem: LayoutProblem): Float64Array => {
  const ahead = overGap(after, problem, PER_INCH_OF_DEPARTURE);
  return mine.map((value, place) => value + (ahead[place] ?? Number.POSITIVE_INFINITY));
};

/** What a gap of so many steps costs; infinite where two patches would overlap. */
function gapCost(steps: number, { grid, patchSide, spacing }: LayoutProblem): number {
  return steps < atLeast(patchSide, grid)
    ? Number.POSITIVE_INFINITY
    : departure(steps * grid, spacing) * PER_INCH_OF_DEPARTURE;
}
