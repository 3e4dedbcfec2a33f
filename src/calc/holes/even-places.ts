import type { LayoutProblem } from './problem.ts';

/**
 * Where would so many holes lie if nothing stood in the way?
 * Half a gap in from either end, moved into what the first and the last hole allow where both can have it, and evenly between;
 * a single hole lies in the middle. In inches from the start.
 * @example evenPlaces(bareRoof(60), 5) // => [72, 216, 360, 504, 648]
 */
export function evenPlaces({ length, first, last }: LayoutProblem, holes: number): number[] {
  if (holes === 1) return [length / 2];
  const low = Math.max(first.low, last.low);
  const high = Math.min(first.high, last.high);
  const halfGap = length / (2 * holes);
  const fromEnd = low <= high ? Math.min(Math.max(halfGap, low), high) : halfGap;
  const gap = (length - 2 * fromEnd) / (holes - 1);
  return Array.from({ length: holes }, (_, hole) => fromEnd + hole * gap);
}
