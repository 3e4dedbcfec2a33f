import { common, either, type Interval, type Intervals, stepped } from './intervals.ts';
import type { Places } from './places.ts';

/**
 * Can so many holes be placed, with gaps in a range and at most so many patches over a seam?
 * Sets of reachable places are carried from hole to hole as intervals, one set for each number of patches over a seam so far.
 */
export function canPlace(places: Places, holes: number, gap: Interval, mostOverSeam: number): boolean {
  let reached = step([[places.first]], places, mostOverSeam, true);
  for (let hole = 1; hole < holes; hole++) {
    if (reached.every((set) => set.length === 0)) return false;
    reached = step(
      reached.map((set) => stepped(set, gap[0], gap[1])),
      places,
      mostOverSeam,
      false,
    );
  }
  return reached.some((set) => common(set, [places.last]).length > 0);
}

/** Keeps of the places stepped to those that are allowed; a place over a seam counts as one more. */
function step(
  stretched: readonly Intervals[],
  places: Places,
  mostOverSeam: number,
  start: boolean,
): Intervals[] {
  return Array.from({ length: mostOverSeam + 1 }, (_, count) => {
    const same = stretched[start ? 0 : count] ?? [];
    const oneLess = count === 0 ? [] : (stretched[start ? 0 : count - 1] ?? []);
    return either(common(same, places.clear), common(oneLess, places.over));
  });
}

/** The fewest holes that hold every rule; undefined where no number does. */
export function fewestHoles(places: Places): number | undefined {
  const { gap, last } = places;
  let reached = common([places.first], places.all);
  for (let holes = 1; reached.length > 0; holes++) {
    if (common(reached, [last]).length > 0) return holes;
    if (gap[0] > gap[1] || gap[1] <= 0) return undefined;
    const next = stepped(reached, Math.max(1, gap[0]), gap[1]);
    reached = common(common(next, places.all), [[0, last[1]]]);
  }
  return undefined;
}

/** The fewest patches over a seam with that many holes, which are known to fit. */
export function fewestOverSeam(places: Places, holes: number): number {
  for (let count = 0; count < holes; count++) if (canPlace(places, holes, places.gap, count)) return count;
  return holes;
}

/**
 * The smallest difference between the largest and the smallest gap, in grid steps. As the smallest gap grows, the largest that
 * goes with it never shrinks, so one walk of both from left to right tries every pair that matters.
 */
export function mostEven(places: Places, holes: number, overSeam: number): number {
  const [shortest, longest] = places.gap;
  let best = longest - shortest;
  let most = shortest;
  for (let least = shortest; least <= longest; least++) {
    most = Math.max(most, least);
    while (most <= longest && !canPlace(places, holes, [least, most], overSeam)) most++;
    if (most > longest) break;
    best = Math.min(best, most - least);
    if (best === 0) break;
  }
  return best;
}
