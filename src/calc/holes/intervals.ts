/**
 * Marks on the tape as stretches: from, to, from, to and so on. Both ends are included; the stretches ascend and never touch.
 * Flat, because the search for the most even gaps makes some hundred thousand of them.
 */
export type Stretches = readonly number[];

export const NOWHERE: Stretches = [];

/**
 * The marks from one to another; none where they are the wrong way round.
 * @example stretch(5, 3) // => []
 */
export const stretch = (from: number, to: number): Stretches => (from <= to ? [from, to] : NOWHERE);

/**
 * Which marks are left when the taken ones are gone?
 * Here `taken` may come in any order and overlap; a pair the wrong way round takes nothing.
 * @example leftOver([8, 9, 2, 3], 0, 10) // => [0, 1, 4, 7, 10, 10]
 */
export function leftOver(taken: readonly number[], from: number, to: number): Stretches {
  const pairs: (readonly [number, number])[] = [];
  for (let at = 0; at + 1 < taken.length; at += 2) {
    const low = taken[at] as number;
    const high = taken[at + 1] as number;
    if (low <= high) pairs.push([low, high]);
  }
  pairs.sort((a, b) => a[0] - b[0]);
  const left: number[] = [];
  let next = from;
  for (const [low, high] of pairs) {
    if (low > to) break;
    if (low > next) left.push(next, low - 1);
    next = Math.max(next, high + 1);
  }
  if (next <= to) left.push(next, to);
  return left;
}

/**
 * Which marks lie within reach of some mark, and where one may stand?
 * A mark is within reach of another when it lies from `least` to `most` further on; both are negative to look back.
 * @example withinReach([0, 0], 10, 12, [3, 10, 12, 20]) // => [10, 10, 12, 12]
 */
export function withinReach(from: Stretches, least: number, most: number, into: Stretches): Stretches {
  if (from.length === 0 || into.length === 0 || least > most) return NOWHERE;
  const reached: number[] = [];
  let next = endingAtOrAfter(into, (from[0] as number) + least);
  for (let at = 0; at < from.length && next < into.length; ) {
    const low = (from[at] as number) + least;
    let high = (from[at + 1] as number) + most;
    at += 2;
    while (at < from.length && (from[at] as number) + least <= high + 1) {
      high = (from[at + 1] as number) + most;
      at += 2;
    }
    while (next < into.length && (into[next + 1] as number) < low) next += 2;
    while (next < into.length && (into[next] as number) <= high) {
      reached.push(Math.max(into[next] as number, low), Math.min(into[next + 1] as number, high));
      if ((into[next + 1] as number) > high) break;
      next += 2;
    }
  }
  return reached;
}

/**
 * Which marks do both hold?
 * @example common([1, 4, 8, 9], [3, 8]) // => [3, 4, 8, 8]
 */
export const common = (a: Stretches, b: Stretches): Stretches => withinReach(a, 0, 0, b);

/**
 * Do the stretches hold a mark?
 * @example isWithin([1, 4, 8, 9], 5) // => false
 */
export const isWithin = (stretches: Stretches, mark: number): boolean =>
  common(stretches, [mark, mark]).length > 0;

/**
 * Which marks does either hold?
 * @example either([1, 4], [5, 6, 9, 9]) // => [1, 6, 9, 9]
 */
export function either(a: Stretches, b: Stretches): Stretches {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const joined: number[] = [];
  let inA = 0;
  let inB = 0;
  while (inA < a.length || inB < b.length) {
    const takeA = inB >= b.length || (inA < a.length && (a[inA] as number) <= (b[inB] as number));
    const low = (takeA ? a[inA] : b[inB]) as number;
    const high = (takeA ? a[inA + 1] : b[inB + 1]) as number;
    if (takeA) inA += 2;
    else inB += 2;
    const end = joined.length - 1;
    if (end > 0 && (joined[end] as number) + 1 >= low) joined[end] = Math.max(joined[end] as number, high);
    else joined.push(low, high);
  }
  return joined;
}

/**
 * How many marks do the stretches hold?
 * By hand: 1 to 4 are four, 8 and 9 are two.
 * @example countOf([1, 4, 8, 9]) // => 6
 */
export function countOf(stretches: Stretches): number {
  let count = 0;
  for (let at = 0; at < stretches.length; at += 2) {
    count += (stretches[at + 1] as number) - (stretches[at] as number) + 1;
  }
  return count;
}

/** Where the first stretch starts whose end is not before a mark: halving, since most steps look at a few stretches of many. */
function endingAtOrAfter(stretches: Stretches, mark: number): number {
  let low = 0;
  let high = stretches.length / 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stretches[2 * middle + 1] as number) < mark) low = middle + 1;
    else high = middle;
  }
  return 2 * low;
}
