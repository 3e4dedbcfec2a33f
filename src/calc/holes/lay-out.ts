import { clashingRules, rulesLeavingNoRoom } from './clash.ts';
import { departureFrom } from './departure.ts';
import { TIE } from './marks.ts';
import { checkProblem, type LayoutProblem, type Range, type RuleName } from './problem.ts';
import { bestLayout, type Layout } from './search.ts';

interface Departs {
  /** In inches. */
  readonly found: number;
  readonly allowed: Range;
  /** How far it lies outside what is allowed, in inches. */
  readonly by: number;
}

/** One rule that a layout does not hold, and where. Holes are counted from 0. */
export type Departure =
  | (Departs & { readonly rule: 'first' | 'last'; readonly hole: number })
  | (Departs & { readonly rule: 'spacing'; readonly between: readonly [number, number] });

/** `clash`: rules that can't all hold, though they would if any one of them were let off. */
export type LayoutResult =
  | { readonly outcome: 'meets-every-rule'; readonly layout: Layout }
  | {
      readonly outcome: 'least-departure';
      readonly clash: readonly RuleName[];
      readonly layout: Layout;
      readonly departures: readonly Departure[];
    }
  | { readonly outcome: 'no-room'; readonly clash: readonly RuleName[] };

/**
 * Where along the roof does each hole go and, where no layout holds every rule, which rules clash and what does the best one depart from?
 * As `bestLayout`, in inches.
 * @throws RangeError naming the field, what was found and what is expected: see `checkProblem` and, for a grid too coarse, `onTheTape`.
 * @example layOut(bareRoof(66)).layout.positions // => [79.25, 237.625, 396, 554.375, 712.75]
 */
export function layOut(problem: LayoutProblem): LayoutResult {
  checkProblem(problem);
  const found = bestLayout(problem);
  switch (found.outcome) {
    case 'meets-every-rule':
      return { outcome: found.outcome, layout: found.layout };
    case 'no-room':
      return { outcome: found.outcome, clash: rulesLeavingNoRoom(problem) };
    case 'least-departure':
      return {
        outcome: found.outcome,
        clash: clashingRules(problem),
        layout: found.layout,
        departures: departuresOf(found.layout, problem),
      };
  }
}

function departuresOf(
  { positions, gaps }: Layout,
  { length, first, last, spacing }: LayoutProblem,
): Departure[] {
  const lastHole = positions.length - 1;
  const departs = (allowed: Range, found: number): Departs => ({
    found,
    allowed,
    by: departureFrom(allowed, found),
  });
  const all: Departure[] = [
    { rule: 'first', hole: 0, ...departs(first, positions[0] as number) },
    ...gaps.map(
      (gap, hole): Departure => ({ rule: 'spacing', between: [hole, hole + 1], ...departs(spacing, gap) }),
    ),
    { rule: 'last', hole: lastHole, ...departs(last, length - (positions[lastHole] as number)) },
  ];
  return all.filter(({ by }) => by > TIE);
}
