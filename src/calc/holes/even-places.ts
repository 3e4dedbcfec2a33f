import type { LayoutProblem } from './problem.ts';

/**
 * Where would that many holes lie if nothing stood in the way? So that each serves the same length: the first half a gap from its end,
 * held within its allowed distance; the others evenly between.
 * @example evenPlaces({ length: 792, first: { low: 72, high: 96 }, last: { low: 72, high: 96 } }, 5)[0] // => 79.2
 */
export function evenPlaces(
  { length, first, last }: Pick<LayoutProblem, 'length' | 'first' | 'last'>,
  holes: number,
): number[] {
  if (holes === 1) return [length / 2];
  const low = Math.max(first.low, last.low);
  const high = Math.min(first.high, last.high);
  const ideal = length / (2 * holes);
  const end = low <= high ? Math.min(high, Math.max(low, ideal)) : ideal;
  return Array.from({ length: holes }, (_, hole) => end + ((length - 2 * end) * hole) / (holes - 1));
}
