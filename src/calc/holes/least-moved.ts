import { entering, type Gap, leaving, passable, type Stand } from './fewest-over-seams.ts';
import { countOf, type Stretches } from './intervals.ts';
import { endsOf } from './most-even.ts';

/** Movement of one hole and of every later one, by the mark of that hole. In marks. */
interface Movement {
  readonly lowest: number;
  readonly at: Float64Array;
}

/** The layouts that keep to one gap, and the least movement that each mark of each hole still leads to. */
interface Passage {
  readonly gap: Gap;
  readonly stands: readonly Stand[];
  readonly least: number;
  readonly fromHere: readonly Movement[];
}

/**
 * Of the layouts that keep to one of these gaps, which moves the holes least from their even places?
 * Places and `tie` are in marks, the answer too. Layouts within `tie` of the least movement count as equal; of those the one whose
 * first hole lies nearest the start is taken, then its second, and so on.
 * By hand: of 4, 5 and 6 the middle hole takes the one nearest to 5.2.
 * @example leastMoved([{ clear: [[0, 0]], over: [] }, { clear: [[4, 6]], over: [] }, { clear: [[10, 10]], over: [] }], [{ least: 3, most: 7 }], [0, 5.2, 10], 1e-6) // => [0, 5, 10]
 */
export function leastMoved(
  stands: readonly Stand[],
  gaps: readonly Gap[],
  even: readonly number[],
  tie: number,
): number[] {
  const forcedBy = (gap: Gap) => movementForced(gap, even);
  let least = Number.POSITIVE_INFINITY;
  let best: Passage[] = [];
  // The gaps that force the least first: what they come to spares the rest a search.
  for (const gap of [...gaps].sort((a, b) => forcedBy(a) - forcedBy(b))) {
    if (forcedBy(gap) > least + tie) break;
    const kept = passable(stands, gap);
    if (!kept) continue;
    const passage = movementThrough(kept, gap, even);
    if (passage.least > least + tie) continue;
    least = Math.min(least, passage.least);
    best = [...best.filter((other) => other.least <= least + tie), passage];
  }
  const [nearest = [], ...others] = best.map((passage) => nearestTheStart(passage, even, least + tie));
  return others.reduce((a, b) => (before(b, a) ? b : a), nearest);
}

/**
 * How much movement does a gap alone force, with no truss or seam in the way?
 * Where every gap has to be one mark longer or shorter than the even one, the holes drift off their even places by one more mark
 * each; the least sum is had by fixing the middle hole: 1 + 1 + 2 + 2 ..., a quarter of the square of the number of holes.
 */
function movementForced({ least, most }: Gap, even: readonly number[]): number {
  const holes = even.length;
  if (holes < 2) return 0;
  const gap = ((even[holes - 1] as number) - (even[0] as number)) / (holes - 1);
  return Math.max(least - gap, gap - most, 0) * Math.floor(holes ** 2 / 4);
}

function movementThrough(stands: readonly Stand[], gap: Gap, even: readonly number[]): Passage {
  const fromHere: Movement[] = [];
  for (let hole = stands.length - 1; hole >= 0; hole--) {
    const stand = stands[hole] as Stand;
    const next = stands[hole + 1];
    const place = even[hole] as number;
    const { low, high } = endsOf(stand);
    const here = { lowest: low, at: new Float64Array(high - low + 1) };
    for (let patches = 0; patches < stand.clear.length; patches++) {
      const marks = leaving(stand, patches);
      if (next) addLeastOfNext(here, marks, fromHere[0] as Movement, entering(next, patches), gap);
      eachMark(marks, (mark) => {
        here.at[mark - low] = (here.at[mark - low] as number) + Math.abs(mark - place);
      });
    }
    fromHere.unshift(here);
  }
  return { gap, stands, least: leastOf(stands[0] as Stand, fromHere[0] as Movement), fromHere };
}

/**
 * Adds to each mark the least movement of the next hole's marks within its gap. The window only ever moves on, so marks that a
 * later and better one has overtaken never come back: the queue keeps the rest, the best of them in front.
 */
function addLeastOfNext(
  here: Movement,
  marks: Stretches,
  next: Movement,
  nextMarks: Stretches,
  gap: Gap,
): void {
  const queue = new Int32Array(countOf(nextMarks));
  const from = (mark: number) => next.at[mark - next.lowest] as number;
  let front = 0;
  let back = 0;
  let run = 0;
  let coming = nextMarks[0] ?? Number.POSITIVE_INFINITY;
  eachMark(marks, (mark) => {
    while (coming <= mark + gap.most) {
      while (back > front && from(queue[back - 1] as number) >= from(coming)) back--;
      queue[back++] = coming;
      if (coming < (nextMarks[run + 1] as number)) {
        coming++;
      } else {
        run += 2;
        coming = nextMarks[run] ?? Number.POSITIVE_INFINITY;
      }
    }
    // Only marks that lead on to the last hole are kept, so the window is never empty.
    while ((queue[front] as number) < mark + gap.least) front++;
    here.at[mark - here.lowest] = from(queue[front] as number);
  });
}

function leastOf({ clear, over }: Stand, { lowest, at }: Movement): number {
  let least = Number.POSITIVE_INFINITY;
  for (const marks of [...clear, ...over]) {
    eachMark(marks, (mark) => {
      least = Math.min(least, at[mark - lowest] as number);
    });
  }
  return least;
}

/** Of the layouts whose movement stays within `allowed`, the first in the order of the tape. */
function nearestTheStart(
  { stands, gap, fromHere }: Passage,
  even: readonly number[],
  allowed: number,
): number[] {
  const layout: number[] = [];
  let patches = 0;
  let left = allowed;
  for (const [hole, stand] of stands.entries()) {
    const before = layout[hole - 1];
    const { lowest, at } = fromHere[hole] as Movement;
    const from = before === undefined ? 0 : before + gap.least;
    const to = before === undefined ? Number.POSITIVE_INFINITY : before + gap.most;
    const affordable = (mark: number) => mark <= to && (at[mark - lowest] as number) <= left;
    const clear = firstMark(stand.clear[patches] ?? [], from, affordable);
    const over = firstMark(stand.over[patches] ?? [], from, affordable);
    const mark = Math.min(clear, over);
    if (over < clear) patches++;
    left -= Math.abs(mark - (even[hole] as number));
    layout.push(mark);
  }
  return layout;
}

function firstMark(marks: Stretches, from: number, holds: (mark: number) => boolean): number {
  for (let at = 0; at < marks.length; at += 2) {
    const end = marks[at + 1] as number;
    for (let mark = Math.max(marks[at] as number, from); mark <= end; mark++) if (holds(mark)) return mark;
  }
  return Number.POSITIVE_INFINITY;
}

function eachMark(marks: Stretches, visit: (mark: number) => void): void {
  for (let at = 0; at < marks.length; at += 2) {
    const end = marks[at + 1] as number;
    for (let mark = marks[at] as number; mark <= end; mark++) visit(mark);
  }
}

function before(a: readonly number[], b: readonly number[]): boolean {
  for (const [at, mark] of a.entries()) {
    const other = b[at] as number;
    if (mark !== other) return mark < other;
  }
  return false;
}
