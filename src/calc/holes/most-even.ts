import { type Gap, reachedFromFirst, type Stand } from './fewest-over-seams.ts';

/**
 * How even can the gaps be?
 * Answers with every gap from `least` to `most` that some layout keeps to and that is as narrow as can be; the most even layouts
 * are those that keep to one of them. One or two holes have nothing to be even with: any allowed gap will do.
 *
 * The more the shortest gap is raised, the more the longest has to be, so both only ever move one way.
 * By hand: from 0 to 10 in two gaps, the middle hole at 5.
 * @example mostEvenGaps([{ clear: [[0, 0]], over: [] }, { clear: [[4, 6]], over: [] }, { clear: [[10, 10]], over: [] }], { least: 3, most: 8 }) // => [{ least: 5, most: 5 }]
 */
export function mostEvenGaps(stands: readonly Stand[], allowed: Gap): Gap[] {
  if (stands.length <= 2) return [allowed];
  const { shortest, longest } = averageGap(stands);
  const holds = (least: number, most: number) => reachedFromFirst(stands, { least, most }) !== undefined;
  const firstMost = Math.max(allowed.least, shortest);
  const lastLeast = Math.min(allowed.most, longest);

  let spread = allowed.most - allowed.least;
  let most = firstMost;
  for (let least = allowed.least; least <= lastLeast; least++) {
    most = Math.max(most, least);
    while (most <= allowed.most && most - least < spread && !holds(least, most)) most++;
    if (most <= allowed.most) spread = Math.min(spread, most - least);
  }

  const gaps: Gap[] = [];
  const lowest = Math.max(allowed.least, firstMost - spread);
  for (let least = lowest; least <= Math.min(lastLeast, allowed.most - spread); least++) {
    if (holds(least, least + spread)) gaps.push({ least, most: least + spread });
  }
  return gaps;
}

/** Between which whole numbers of marks the average gap lies: no layout's shortest gap is longer, nor its longest shorter. */
function averageGap(stands: readonly Stand[]): { shortest: number; longest: number } {
  const first = endsOf(stands[0] as Stand);
  const last = endsOf(stands[stands.length - 1] as Stand);
  const gaps = stands.length - 1;
  return {
    shortest: Math.ceil((last.low - first.high) / gaps),
    longest: Math.floor((last.high - first.low) / gaps),
  };
}

/**
 * The first and the last mark that a hole may lie on.
 * @example endsOf({ clear: [[3, 5]], over: [[1, 2, 8, 9]] }) // => { low: 1, high: 9 }
 */
export function endsOf({ clear, over }: Stand): { low: number; high: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const marks of [...clear, ...over]) {
    low = Math.min(low, marks[0] ?? low);
    high = Math.max(high, marks[marks.length - 1] ?? high);
  }
  return { low, high };
}
