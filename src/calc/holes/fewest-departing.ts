import { type BendingRules, fromLast, fromStart, standsWithin, throughNext } from './departure.ts';
import { mostHoles } from './most-holes.ts';

interface Found {
  readonly holes: number;
  /** In marks. */
  readonly departure: number;
}

/**
 * What is the least departure, and how few holes have it?
 * Looks at every sixteenth mark first. The best layout on those is a layout like any other, so the least departure is no more than
 * its; and the less a layout may depart, the fewer marks its holes can lie on. Marks ascend, and there is at least one.
 */
export function fewestDeparting(rules: BendingRules, marks: Int32Array): Found {
  const coarse = fewestWithin(
    Number.POSITIVE_INFINITY,
    rules,
    marks.filter((_, at) => at % 16 === 0),
  );
  return fewestWithin(coarse.departure, rules, marks);
}

/** The least departure of all where it is within the budget; what comes out above the budget may be beaten. */
function fewestWithin(budget: number, rules: BendingRules, marks: Int32Array): Found {
  const { length, first, last, spacing, tie } = rules;
  // Nothing but the departure counts here, so the least is wanted to the last digit.
  const exact = { ...rules, tie: 0 };
  let found = { holes: 1, departure: Number.POSITIVE_INFINITY };
  const marksBefore = (after: number) => marks.subarray(...standsWithin(budget, rules, marks, after));
  let here = marksBefore(0);
  let toFarEnd = fromLast(exact, here);
  for (let holes = 1; here.length > 0 && holes <= mostHoles(length, spacing.high); holes++) {
    // The distances before the first hole, between holes and after the last add up to the length.
    const short = first.low + last.low + (holes - 1) * spacing.low - length;
    if (short > Math.min(budget, found.departure) + tie) break;
    const { costs, best } = fromStart(exact, here, toFarEnd);
    const departure = costs.departure[best] as number;
    if (departure < found.departure - tie) found = { holes, departure };
    const before = marksBefore(holes);
    toFarEnd = throughNext(exact, before, here, toFarEnd);
    here = before;
  }
  return found;
}
