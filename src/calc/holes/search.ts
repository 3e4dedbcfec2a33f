import { clashOf } from './clash.ts';
import { evenPlaces } from './even-places.ts';
import { departure, leastDeparture } from './least-departure.ts';
import { leastMoved } from './least-moved.ts';
import { placesOf } from './places.ts';
import {
  checkProblem,
  type Departure,
  type Layout,
  type LayoutProblem,
  type LayoutResult,
  ruleNames,
} from './problem.ts';
import { fewestHoles, fewestOverSeam, mostEven } from './reach.ts';

export type { Departure, Layout, LayoutProblem, LayoutResult, RuleName } from './problem.ts';

/**
 * Where along the roof does each hole go? Exact over every place of the grid: fewest holes; then fewest patches over a seam; then the
 * most even gaps; then the least moved, in all, from the even places; then the nearest to the starting end. Inches throughout.
 * Where no layout holds every rule: the rules that clash, and the layout that departs least.
 * @throws RangeError for a problem that makes no sense, naming the field.
 * @example layOut(bareRoofOf66Feet).outcome // => 'meets-every-rule'
 */
export function layOut(problem: LayoutProblem): LayoutResult {
  checkProblem(problem);
  const places = placesOf(problem);
  const holes = fewestHoles(places);
  if (holes !== undefined) {
    const overSeam = fewestOverSeam(places, holes);
    const spread = mostEven(places, holes, overSeam);
    const steps = leastMoved(places, evenPlaces(problem, holes), problem.grid, overSeam, spread);
    return { outcome: 'meets-every-rule', layout: layoutOf(problem, steps) };
  }
  const steps = leastDeparture(problem, places);
  if (!steps) return { outcome: 'no-room', clash: clashOf(problem, ['trusses', 'seams', 'obstacles']) };
  const layout = layoutOf(problem, steps);
  return {
    outcome: 'least-departure',
    clash: clashOf(problem, ruleNames),
    layout,
    departures: departuresOf(problem, layout),
  };
}

function layoutOf(problem: LayoutProblem, steps: readonly number[]): Layout {
  const positions = steps.map((step) => step * problem.grid);
  const even = evenPlaces(problem, positions.length);
  const gaps = positions.slice(1).map((position, hole) => position - (positions[hole] ?? 0));
  return {
    positions,
    evenPlaces: even,
    moved: positions.map((position, hole) => position - (even[hole] ?? 0)),
    overSeam: positions.map((position) =>
      problem.seams.some((seam) => Math.abs(position - seam) < problem.patchSide / 2 - 1e-9),
    ),
    gaps,
    spread: gaps.length === 0 ? 0 : Math.max(...gaps) - Math.min(...gaps),
  };
}

/** A departure smaller than this is the noise of floating arithmetic. */
const NOISE = 1e-9;

function departuresOf(
  { first, last, spacing, length }: LayoutProblem,
  { positions, gaps }: Layout,
): Departure[] {
  const [start = 0, end = 0] = [positions[0], positions.at(-1)];
  const all: Departure[] = [
    { rule: 'first', found: start, allowed: first, by: departure(start, first) },
    ...gaps.map(
      (gap, hole): Departure => ({
        rule: 'spacing',
        between: [hole, hole + 1],
        found: gap,
        allowed: spacing,
        by: departure(gap, spacing),
      }),
    ),
    { rule: 'last', found: length - end, allowed: last, by: departure(length - end, last) },
  ];
  return all.filter(({ by }) => by > NOISE);
}
