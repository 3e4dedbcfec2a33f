import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';

/** What the rules ask for, worked out by trying every layout there is. Slow; shares nothing with the search but the problem. */
export interface BruteAnswer {
  readonly outcome: 'meets-every-rule' | 'least-departure' | 'no-room';
  readonly positions: readonly number[];
  readonly departure: number;
}

/** The same billionth of an inch that the search takes for the noise of adding. */
const tie = 1e-9;

type Measure = (positions: readonly number[]) => number;

const outside = (low: number, high: number, value: number): number => {
  if (value < low) return low - value;
  if (value > high) return value - high;
  return 0;
};

function holeMayLieAt(problem: LayoutProblem, x: number): boolean {
  const radius = problem.holeDiameter / 2;
  if (x < radius - tie) return false;
  if (x > problem.length - radius + tie) return false;
  for (const truss of problem.trusses) {
    if (Math.abs(x - truss) <= radius + problem.memberWidth / 2 + tie) return false;
  }
  for (const seam of problem.seams) {
    if (Math.abs(x - seam) <= radius + tie) return false;
  }
  for (const obstacle of problem.obstacles) {
    if (x > obstacle.from + tie && x < obstacle.to - tie) return false;
  }
  return true;
}

function everyLayout(
  places: readonly number[],
  gapWillDo: (gap: number) => boolean,
  firstWillDo: (x: number) => boolean,
): number[][] {
  const all: number[][] = [];
  const extend = (layout: number[]) => {
    all.push(layout);
    const end = layout[layout.length - 1] as number;
    for (const x of places) {
      if (x > end && gapWillDo(x - end)) extend([...layout, x]);
    }
  };
  for (const x of places) {
    if (firstWillDo(x)) extend([x]);
  }
  return all;
}

const gapsOf = (positions: readonly number[]): number[] => {
  const gaps: number[] = [];
  for (let i = 1; i < positions.length; i++) {
    gaps.push((positions[i] as number) - (positions[i - 1] as number));
  }
  return gaps;
};

/** How far a layout departs from the first, the last and the spacing, in all. */
export const departureOf = (problem: LayoutProblem, positions: readonly number[]): number => {
  const { first, last, spacing, length } = problem;
  let sum = outside(first.low, first.high, positions[0] as number);
  sum += outside(last.low, last.high, length - (positions[positions.length - 1] as number));
  for (const gap of gapsOf(positions)) sum += outside(spacing.low, spacing.high, gap);
  return sum;
};

export const patchesOverSeams = (problem: LayoutProblem, positions: readonly number[]): number => {
  let count = 0;
  for (const x of positions) {
    if (problem.seams.some((seam) => Math.abs(x - seam) < problem.patchSide / 2 - tie)) count++;
  }
  return count;
};

export const spreadOf = (positions: readonly number[]): number => {
  const gaps = gapsOf(positions);
  return gaps.length < 2 ? 0 : Math.max(...gaps) - Math.min(...gaps);
};

export const movementOf = (problem: LayoutProblem, positions: readonly number[]): number => {
  const n = positions.length;
  const { length, first, last } = problem;
  if (n === 1) return Math.abs((positions[0] as number) - length / 2);
  let start = length / (2 * n);
  const low = Math.max(first.low, last.low);
  const high = Math.min(first.high, last.high);
  if (low <= high) {
    if (start < low) start = low;
    else if (start > high) start = high;
  }
  const end = length - start;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    sum += Math.abs((positions[i] as number) - (start + ((end - start) * i) / (n - 1)));
  }
  return sum;
};

/** The layouts for which a measure is least, those within a tie of it too. */
function keepLeast(layouts: readonly number[][], measure: Measure): number[][] {
  const measured = layouts.map((layout) => measure(layout));
  const least = measured.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return layouts.filter((_, i) => (measured[i] as number) <= least + tie);
}

const nearestTheStart = (layouts: readonly number[][]): number[] =>
  layouts.reduce((a, b) => {
    for (let i = 0; i < a.length; i++) {
      if (a[i] !== b[i]) return (a[i] as number) < (b[i] as number) ? a : b;
    }
    return a;
  });

function bestOf(layouts: readonly number[][], measures: readonly Measure[]): number[] {
  return nearestTheStart(measures.reduce<readonly number[][]>(keepLeast, layouts));
}

/** The best layout of all, found by trying every one. */
export function bruteForce(problem: LayoutProblem): BruteAnswer {
  const { first, last, spacing, length, grid, patchSide } = problem;
  const places: number[] = [];
  for (let k = 0; k * grid <= length + grid; k++) {
    if (holeMayLieAt(problem, k * grid)) places.push(k * grid);
  }
  if (places.length === 0) return { outcome: 'no-room', positions: [], departure: 0 };

  const patchesClear = (gap: number) => gap >= patchSide - tie;
  const holes: Measure = (positions) => positions.length;
  const patches: Measure = (positions) => patchesOverSeams(problem, positions);
  const movement: Measure = (positions) => movementOf(problem, positions);

  const keepingRules = everyLayout(
    places,
    (gap) => patchesClear(gap) && outside(spacing.low, spacing.high, gap) <= tie,
    (x) => outside(first.low, first.high, x) <= tie,
  ).filter((positions) => outside(last.low, last.high, length - (positions.at(-1) as number)) <= tie);
  if (keepingRules.length > 0) {
    const positions = bestOf(keepingRules, [holes, patches, spreadOf, movement]);
    return { outcome: 'meets-every-rule', positions, departure: 0 };
  }

  const all = everyLayout(places, patchesClear, () => true);
  const departure: Measure = (positions) => departureOf(problem, positions);
  const positions = bestOf(all, [departure, holes, patches, movement]);
  return { outcome: 'least-departure', positions, departure: departure(positions) };
}
