import type { Tape } from './allowed-positions.ts';
import {
  type BendingRules,
  bendingRules,
  type Costs,
  departureFrom,
  fromLast,
  fromStart,
  standsWithin,
  throughNext,
} from './departure.ts';
import { evenPlaces } from './even-places.ts';
import { fewestDeparting } from './fewest-departing.ts';
import { countOf } from './intervals.ts';
import type { LayoutProblem } from './problem.ts';

/** Where one hole may lie, in marks, and which of those marks put its patch over a seam. */
interface Places {
  readonly marks: Int32Array;
  readonly overSeam: Uint8Array;
}

/**
 * Where no layout holds every rule, which one departs least from the first, the last and the spacing?
 * Of equal departures: the fewest holes, the fewest patches over a seam, the least movement from the even places, and the places
 * nearest the start. Trusses, seams, obstacles and the width of the patch hold as ever. Answers in marks.
 * @throws RangeError where the tape has no place for a hole.
 * @example leastDeparture(bareRoof(20), onTheTape(bareRoof(20), new Set(ruleNames))) // => [10 * 12 * 8]
 */
export function leastDeparture(problem: LayoutProblem, tape: Tape): number[] {
  if (tape.allowed.length === 0) throw new RangeError('allowed: found no mark, expected a place for a hole');
  const rules = bendingRules(problem);
  const places = placesOn(tape);
  const { holes, departure } = fewestDeparting(rules, places.marks);
  const even = evenPlaces(problem, holes).map((place) => place / problem.grid);
  const stands = even.map((_, hole) => {
    const [from, to] = standsWithin(departure, rules, places.marks, holes - 1 - hole, hole);
    return { marks: places.marks.subarray(from, to), overSeam: places.overSeam.subarray(from, to) };
  });
  return cheapest(rules, stands, even);
}

function placesOn({ allowed, overSeam }: Tape): Places {
  const marks = new Int32Array(countOf(allowed));
  const over = new Uint8Array(marks.length);
  let count = 0;
  let seam = 0;
  for (let at = 0; at < allowed.length; at += 2) {
    const end = allowed[at + 1] as number;
    for (let mark = allowed[at] as number; mark <= end; mark++) {
      while (seam < overSeam.length && (overSeam[seam + 1] as number) < mark) seam += 2;
      over[count] = seam < overSeam.length && (overSeam[seam] as number) <= mark ? 1 : 0;
      marks[count++] = mark;
    }
  }
  return { marks, overSeam: over };
}

function cheapest(rules: BendingRules, stands: readonly Places[], even: readonly number[]): number[] {
  const costs: Costs[] = [];
  for (let hole = stands.length - 1; hole >= 0; hole--) {
    const { marks, overSeam } = stands[hole] as Places;
    const next = stands[hole + 1];
    const here = next ? throughNext(rules, marks, next.marks, costs[0] as Costs) : fromLast(rules, marks);
    for (const [at, mark] of marks.entries()) {
      here.patches[at] = (here.patches[at] as number) + (overSeam[at] as number);
      here.movement[at] = (here.movement[at] as number) + Math.abs(mark - (even[hole] as number));
    }
    costs.unshift(here);
  }
  return nearestTheStart(rules, stands, costs, even);
}

/** Of the best layouts, within a tie, the first in the order of the tape. */
function nearestTheStart(
  rules: BendingRules,
  stands: readonly Places[],
  toFarEnd: readonly Costs[],
  even: readonly number[],
): number[] {
  const { first, spacing, patch, tie } = rules;
  const { costs, best } = fromStart(rules, (stands[0] as Places).marks, toFarEnd[0] as Costs);
  let departureLeft = costs.departure[best] as number;
  let patchesLeft = costs.patches[best] as number;
  let movementLeft = costs.movement[best] as number;
  const layout: number[] = [];
  for (const [hole, { marks, overSeam }] of stands.entries()) {
    const { departure, patches, movement } = toFarEnd[hole] as Costs;
    const before = layout[hole - 1];
    const departing = (mark: number) =>
      before === undefined ? departureFrom(first, mark) : departureFrom(spacing, mark - before);
    const at = marks.findIndex(
      (mark, here) =>
        (before === undefined || mark - before >= patch) &&
        departing(mark) + (departure[here] as number) <= departureLeft + tie &&
        patches[here] === patchesLeft &&
        (movement[here] as number) <= movementLeft + tie,
    );
    const mark = marks[at] as number;
    departureLeft -= departing(mark);
    patchesLeft -= overSeam[at] as number;
    movementLeft -= Math.abs(mark - (even[hole] as number));
    layout.push(mark);
  }
  return layout;
}
