/** Whole numbers from the first to the last, both included. */
export type Interval = readonly [first: number, last: number];

/** Sets of whole numbers as intervals in rising order that neither touch nor overlap. */
export type Intervals = readonly Interval[];

/** The intervals of any list, put in order and joined where they touch; those that hold nothing fall away. */
export function joined(list: readonly Interval[]): Intervals {
  const inOrder = list.filter(([first, last]) => first <= last).sort((a, b) => a[0] - b[0]);
  const result: [number, number][] = [];
  for (const [first, last] of inOrder) {
    const before = result.at(-1);
    if (before && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else result.push([first, last]);
  }
  return result;
}

/** What two sets have in common. */
export function common(a: Intervals, b: Intervals): Intervals {
  const result: Interval[] = [];
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    const [x, y] = [a[i], b[j]];
    if (!x || !y) break;
    const [first, last] = [Math.max(x[0], y[0]), Math.min(x[1], y[1])];
    if (first <= last) result.push([first, last]);
    if (x[1] < y[1]) i++;
    else j++;
  }
  return result;
}

/** What of a set lies outside some closed stretches. */
export function without(set: Intervals, closed: Intervals): Intervals {
  const open: Interval[] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const [first, last] of closed) {
    open.push([from, first - 1]);
    from = last + 1;
  }
  open.push([from, Number.POSITIVE_INFINITY]);
  return common(set, open);
}

/** Every sum of a number of the set and a step from the shortest to the longest. */
export const stepped = (set: Intervals, shortest: number, longest: number): Intervals =>
  joined(set.map(([first, last]) => [first + shortest, last + longest]));

/** What is in either set. */
export const either = (a: Intervals, b: Intervals): Intervals =>
  a.length === 0 ? b : b.length === 0 ? a : joined([...a, ...b]);
