import type { Interval } from './intervals.ts';
import type { Places } from './places.ts';
import { canPlace } from './reach.ts';
import { leastAhead } from './sliding.ts';

/** Two movements this near to each other, in inches, count as the same; then the layout nearer the starting end is taken. */
export const SAME = 1e-7;

interface Candidate {
  readonly cost: number;
  readonly steps: readonly number[];
}

/** Does one layout come before another: less moved, or as much and nearer the starting end? */
function comesBefore(a: Candidate, b: Candidate): boolean {
  if (Math.abs(a.cost - b.cost) > SAME) return a.cost < b.cost;
  const place = a.steps.findIndex((step, hole) => step !== b.steps[hole]);
  return place >= 0 && (a.steps[place] ?? 0) < (b.steps[place] ?? 0);
}

/**
 * Of all layouts with that many holes, that many patches over a seam and that spread of gaps: the one least moved from the even
 * places, in all. Every smallest gap is tried in turn; for each the best is found from the far end by dynamic programming.
 * The answer is in grid steps.
 */
export function leastMoved(
  places: Places,
  even: readonly number[],
  grid: number,
  overSeam: number,
  spread: number,
): readonly number[] {
  let best: Candidate | undefined;
  for (let least = places.gap[0]; least + spread <= places.gap[1]; least++) {
    const gap: Interval = [least, least + spread];
    if (!canPlace(places, even.length, gap, overSeam)) continue;
    const found = bestWithGap(places, even, grid, overSeam, gap);
    if (found && (!best || comesBefore(found, best))) best = found;
  }
  return best?.steps ?? [];
}

/** The stretch of places that a hole can have at all, given the gaps. */
function stretchOf(places: Places, hole: number, holes: number, gap: Interval): Interval {
  const left = holes - 1 - hole;
  return [
    Math.max(places.first[0] + hole * gap[0], places.last[0] - left * gap[1], 0),
    Math.min(places.first[1] + hole * gap[1], places.last[1] - left * gap[0]),
  ];
}

function bestWithGap(
  places: Places,
  even: readonly number[],
  grid: number,
  overSeam: number,
  gap: Interval,
): Candidate | undefined {
  const holes = even.length;
  const stretches = even.map((_, hole) => stretchOf(places, hole, holes, gap));
  // toGo[hole][count][place]: the least movement of this hole and all after it, with at most `count` patches over a seam among them.
  const toGo: Float64Array[][] = [];
  for (let hole = holes - 1; hole >= 0; hole--) {
    const [from, to] = stretches[hole] ?? [0, -1];
    if (to < from) return undefined;
    const next = stretches[hole + 1];
    const after = toGo[hole + 1]?.map((values) =>
      leastAhead(shifted(values, next ?? [0, -1], from, to + gap[1]), gap[0], gap[1]),
    );
    toGo[hole] = Array.from({ length: overSeam + 1 }, (_, count) => {
      const values = new Float64Array(to - from + 1).fill(Number.POSITIVE_INFINITY);
      const fill = (allowed: Places['all'], rest: Float64Array | undefined | 'none') => {
        if (rest === undefined) return;
        for (const [first, last] of allowed) {
          for (let place = Math.max(first, from); place <= Math.min(last, to); place++) {
            values[place - from] =
              Math.abs(place * grid - (even[hole] ?? 0)) +
              (rest === 'none' ? 0 : (rest[place - from] ?? Number.POSITIVE_INFINITY));
          }
        }
      };
      fill(places.clear, after ? after[count] : 'none');
      if (count > 0) fill(places.over, after ? after[count - 1] : 'none');
      return values;
    });
  }
  return readOff(toGo, stretches, places, overSeam, gap);
}

/** Values of one stretch, laid onto another that begins elsewhere; what lies outside is infinite. */
function shifted(values: Float64Array, [from]: Interval, newFrom: number, newTo: number): Float64Array {
  const result = new Float64Array(Math.max(0, newTo - newFrom + 1)).fill(Number.POSITIVE_INFINITY);
  for (let place = 0; place < values.length; place++) {
    const at = place + from - newFrom;
    if (at >= 0 && at < result.length) result[at] = values[place] ?? Number.POSITIVE_INFINITY;
  }
  return result;
}

/** Walks from the starting end, taking each time the nearest place that still leads to the least movement. */
function readOff(
  toGo: readonly Float64Array[][],
  stretches: readonly Interval[],
  places: Places,
  overSeam: number,
  gap: Interval,
): Candidate | undefined {
  const steps: number[] = [];
  let count = overSeam;
  let cost = Number.POSITIVE_INFINITY;
  for (const [hole, [from]] of stretches.entries()) {
    const values = toGo[hole]?.[count] ?? new Float64Array();
    const before = steps.at(-1);
    const first = before === undefined ? 0 : Math.max(0, before + gap[0] - from);
    const last =
      before === undefined ? values.length - 1 : Math.min(values.length - 1, before + gap[1] - from);
    let least = Number.POSITIVE_INFINITY;
    for (let place = first; place <= last; place++)
      least = Math.min(least, values[place] ?? Number.POSITIVE_INFINITY);
    if (!Number.isFinite(least)) return undefined;
    if (hole === 0) cost = least;
    let place = first;
    while ((values[place] ?? Number.POSITIVE_INFINITY) > least + SAME) place++;
    const taken = place + from;
    steps.push(taken);
    if (places.over.some(([start, end]) => start <= taken && taken <= end)) count--;
  }
  return { cost, steps };
}
