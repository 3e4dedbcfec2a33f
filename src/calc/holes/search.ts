import { onTheTape, type Tape } from './allowed-positions.ts';
import { evenPlaces } from './even-places.ts';
import { fewestHoles } from './fewest-holes.ts';
import { fewestOverSeams } from './fewest-over-seams.ts';
import { isWithin } from './intervals.ts';
import { leastDeparture } from './least-departure.ts';
import { leastMoved } from './least-moved.ts';
import { TIE } from './marks.ts';
import { mostEvenGaps } from './most-even.ts';
import { type LayoutProblem, ruleNames } from './problem.ts';

/** Where the holes go. Everything is in inches; lists run from the first hole to the last, places from the start of the roof. */
export interface Layout {
  readonly positions: readonly number[];
  /** Where the holes would lie if nothing stood in the way. */
  readonly evenPlaces: readonly number[];
  /** From the even place to the hole; negative towards the start. */
  readonly moved: readonly number[];
  /** Whether the patch lies over a seam. */
  readonly overSeam: readonly boolean[];
  /** From each hole to the next: one fewer than holes. */
  readonly gaps: readonly number[];
  /** The longest gap less the shortest; 0 with fewer than two gaps. */
  readonly spread: number;
}

/** A search's end: the best layout there is, and whether it holds every rule; none where no hole finds room. */
export type Search =
  | { readonly outcome: 'meets-every-rule' | 'least-departure'; readonly layout: Layout }
  | { readonly outcome: 'no-room' };

/**
 * Where along the roof does each hole go?
 *
 * Looks at every mark of the tape; the answer is the best there is. Of the layouts that hold every rule: the fewest holes, then
 * the fewest patches over a seam, then the most even gaps, then the least movement from the even places, then the places nearest
 * the start, from the first hole on. Where no layout holds every rule: the one that departs least from the first, the last and the
 * spacing, trusses, seams and obstacles still held. All in inches.
 *
 * Sums within a billionth of an inch count as equal, or the noise of adding them would choose between equals.
 * The problem is one that `checkProblem` lets pass: of any other, nothing is said of what comes out, or when. `layOut` looks first; the form
 * of the ways in takes no more than it lets pass, by the rules as they are published.
 * @throws RangeError for a grid too coarse: see `onTheTape`.
 * @example bestLayout(bareRoof(66)).layout.positions // => [79.25, 237.625, 396, 554.375, 712.75]
 */
export function bestLayout(problem: LayoutProblem): Search {
  const tape = onTheTape(problem, new Set(ruleNames));
  if (tape.allowed.length === 0) return { outcome: 'no-room' };
  const holes = fewestHoles(tape);
  if (holes === undefined)
    return { outcome: 'least-departure', layout: layoutAt(leastDeparture(problem, tape), problem, tape) };
  const stands = fewestOverSeams(tape, holes);
  const gaps = mostEvenGaps(stands, { least: tape.leastGap, most: tape.mostGap });
  const even = evenPlaces(problem, holes).map((place) => place / problem.grid);
  const marks = leastMoved(stands, gaps, even, TIE / problem.grid);
  return { outcome: 'meets-every-rule', layout: layoutAt(marks, problem, tape) };
}

function layoutAt(marks: readonly number[], problem: LayoutProblem, { overSeam }: Tape): Layout {
  const { grid } = problem;
  const positions = marks.map((mark) => mark * grid);
  const even = evenPlaces(problem, marks.length);
  const gaps = marks.slice(1).map((mark, hole) => mark - (marks[hole] as number));
  return {
    positions,
    evenPlaces: even,
    moved: positions.map((position, hole) => position - (even[hole] as number)),
    overSeam: marks.map((mark) => isWithin(overSeam, mark)),
    gaps: gaps.map((gap) => gap * grid),
    spread: gaps.length < 2 ? 0 : (Math.max(...gaps) - Math.min(...gaps)) * grid,
  };
}
