import { atOrAfter, atOrBefore, TIE } from './marks.ts';
import type { LayoutProblem, Range } from './problem.ts';

/**
 * How far does a value lie outside a range? 0 inside it; in the unit of both.
 * @example departureFrom({ low: 144, high: 192 }, 200) // => 8
 */
export const departureFrom = ({ low, high }: Range, value: number): number =>
  Math.max(low - value, value - high, 0);

/**
 * Gaps whose departure runs along one straight line: too short, within the range, or too long.
 * A gap of g marks, no shorter than `least` and no longer than `most`, departs by `base` + `slope` × g marks.
 */
export interface Band {
  readonly least: number;
  readonly most: number;
  readonly slope: -1 | 0 | 1;
  readonly base: number;
}

/** The rules that may be departed from, in marks. */
export interface BendingRules {
  readonly length: number;
  readonly first: Range;
  readonly last: Range;
  readonly spacing: Range;
  /** No gap is shorter: two patches don't overlap. */
  readonly patch: number;
  readonly gaps: readonly Band[];
  readonly tie: number;
}

/**
 * What do the rules that may be departed from come to, in marks?
 * No gap is shorter than the patch: a spacing rule that asks for less is departed from all the same.
 * @example bendingRules(bareRoof(66)).spacing // => { low: 1152, high: 1536 }
 */
export function bendingRules({ length, grid, first, last, spacing, patchSide }: LayoutProblem): BendingRules {
  const marks = ({ low, high }: Range): Range => ({ low: low / grid, high: high / grid });
  const patch = atOrAfter(patchSide, grid);
  const low = Math.max(patch, atOrAfter(spacing.low, grid));
  const high = atOrBefore(spacing.high, grid);
  const gaps: Band[] = [
    { least: patch, most: low - 1, slope: -1, base: spacing.low / grid },
    { least: low, most: high, slope: 0, base: 0 },
    { least: Math.max(low, high + 1), most: Number.POSITIVE_INFINITY, slope: 1, base: -spacing.high / grid },
  ];
  return {
    length: length / grid,
    first: marks(first),
    last: marks(last),
    spacing: marks(spacing),
    patch,
    gaps: gaps.filter(({ least, most }) => least <= most),
    tie: TIE / grid,
  };
}

/**
 * Between which of the marks can a hole lie, with so many after it, when the whole layout departs by no more than this?
 * No distance departs by more, and no sum of distances; where the holes before it are known too, they count as well. Answers with
 * the place in the list of the first mark and of the one past the last.
 * By hand: 66 ft are 6336 eighths; the last hole lies 576 to 768 from the end, 5568 to 5760.
 * @example standsWithin(0, bendingRules(bareRoof(66)), Int32Array.of(5000, 5600, 5800, 6300), 0) // => [1, 2]
 */
export function standsWithin(
  departure: number,
  { length, first, last, spacing }: BendingRules,
  marks: Int32Array,
  after: number,
  before?: number,
): [from: number, to: number] {
  // One mark to spare, for the noise of the sums.
  const spare = departure + 1;
  let low = length - last.high - after * spacing.high;
  let high = length - last.low - after * spacing.low;
  if (before !== undefined) {
    low = Math.max(low, first.low + before * spacing.low);
    high = Math.min(high, first.high + before * spacing.high);
  }
  const from = firstAtOrAfter(marks, low - spare);
  return [from, Math.max(from, firstAtOrAfter(marks, high + spare))];
}

function firstAtOrAfter(marks: Int32Array, place: number): number {
  let low = 0;
  let high = marks.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((marks[middle] as number) < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * What each place of a hole leads to at best, itself counted, from there to the far end: a list for each thing a layout is judged
 * by, in the order it is judged. They are not added up under weights: a departure can be any fraction of a mark, so no weight is
 * sure to outdo it. Departure and movement in marks.
 */
export interface Costs {
  readonly departure: Float64Array;
  readonly patches: Int32Array;
  readonly movement: Float64Array;
}

const nothingFound = (count: number): Costs => ({
  departure: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
  patches: new Int32Array(count),
  movement: new Float64Array(count),
});

/**
 * What does each mark lead to as the last hole? Patches and movement are not counted yet.
 * By hand: the ends are 25 and 15 off, where 10 to 20 are allowed.
 * @example [...fromLast({ length: 100, last: { low: 10, high: 20 } }, Int32Array.of(75, 85)).departure] // => [5, 0]
 */
export const fromLast = ({ length, last }: BendingRules, marks: Int32Array): Costs => ({
  ...nothingFound(marks.length),
  departure: Float64Array.from(marks, (mark) => departureFrom(last, length - mark)),
});

/**
 * What does each mark lead to with the next hole at its best? Patches and movement of the mark itself are not counted yet.
 * Both lists of marks ascend; a mark that leaves no room for the next hole leads to an endless departure.
 * By hand: from 0 to 5 is a gap within 4 to 6, from 3 it is too short.
 * @example [...throughNext({ gaps: [{ least: 4, most: 6, slope: 0, base: 0 }], tie: 0 }, Int32Array.of(0, 3), Int32Array.of(5), { departure: Float64Array.of(2), patches: Int32Array.of(0), movement: Float64Array.of(0) }).departure] // => [2, Infinity]
 */
export function throughNext(
  rules: BendingRules,
  marks: Int32Array,
  nextMarks: Int32Array,
  next: Costs,
): Costs {
  const { gaps, tie } = rules;
  const here = nothingFound(marks.length);
  const along: Costs = { ...next, departure: new Float64Array(nextMarks.length) };
  for (const band of gaps) {
    const { slope, base } = band;
    for (let at = 0; at < nextMarks.length; at++) {
      along.departure[at] = (next.departure[at] as number) + slope * (nextMarks[at] as number);
    }
    const best = bestWithin(band, marks, nextMarks, along, tie);
    for (let at = 0; at < marks.length; at++) {
      const to = best[at] as number;
      if (to < 0) continue;
      const departure = (along.departure[to] as number) - slope * (marks[at] as number) + base;
      const found = here.departure[at] as number;
      if (departure > found + tie) continue;
      if (departure >= found - tie && !fewerOrNearer(next, to, here, at)) continue;
      here.departure[at] = departure;
      here.patches[at] = next.patches[to] as number;
      here.movement[at] = next.movement[to] as number;
    }
  }
  return here;
}

/**
 * For each mark, which of the next ones within the gaps of a band is best? -1 where there is none.
 * Runs from the far end to the start: a next mark that comes into the window later also leaves it later, so an earlier one that is
 * no better can be forgotten. The queue keeps the rest, the best of them in front.
 */
function bestWithin(
  { least, most }: Band,
  marks: Int32Array,
  nextMarks: Int32Array,
  costs: Costs,
  tie: number,
): Int32Array {
  const best = new Int32Array(marks.length);
  const queue = new Int32Array(nextMarks.length);
  let front = 0;
  let back = 0;
  let coming = nextMarks.length - 1;
  for (let at = marks.length - 1; at >= 0; at--) {
    const mark = marks[at] as number;
    while (coming >= 0 && (nextMarks[coming] as number) >= mark + least) {
      while (back > front && !isBetter(costs, queue[back - 1] as number, costs, coming, tie)) back--;
      queue[back++] = coming--;
    }
    while (front < back && (nextMarks[queue[front] as number] as number) > mark + most) front++;
    best[at] = front < back ? (queue[front] as number) : -1;
  }
  return best;
}

/** Is the first better than the second? Departures within a tie are equal, or the noise of the sums would decide. */
function isBetter(a: Costs, at: number, b: Costs, bt: number, tie: number): boolean {
  const more = (a.departure[at] as number) - (b.departure[bt] as number);
  if (more < -tie) return true;
  if (more > tie) return false;
  return fewerOrNearer(a, at, b, bt);
}

/** Of equal departures, does the first put fewer patches over seams or, with as many, move the holes less? */
function fewerOrNearer(a: Costs, at: number, b: Costs, bt: number): boolean {
  const patches = (a.patches[at] as number) - (b.patches[bt] as number);
  if (patches !== 0) return patches < 0;
  return (a.movement[at] as number) < (b.movement[bt] as number);
}

/**
 * What do the marks of the first hole lead to, and which of them leads to the best?
 * By hand: 5 is 5 short of 10 to 20, 15 is within, and leads to 1.
 * @example fromStart({ first: { low: 10, high: 20 }, tie: 0 }, Int32Array.of(5, 15), { departure: Float64Array.of(0, 1), patches: Int32Array.of(0, 0), movement: Float64Array.of(0, 0) }).best // => 1
 */
export function fromStart(
  { first, tie }: BendingRules,
  marks: Int32Array,
  toFarEnd: Costs,
): { costs: Costs; best: number } {
  const departure = toFarEnd.departure.map((rest, at) => rest + departureFrom(first, marks[at] as number));
  const costs = { ...toFarEnd, departure };
  let best = 0;
  for (let at = 1; at < marks.length; at++) if (isBetter(costs, at, costs, best, tie)) best = at;
  return { costs, best };
}
