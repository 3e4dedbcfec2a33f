import { placesOf } from './places.ts';
import type { LayoutProblem, RuleName } from './problem.ts';
import { fewestHoles } from './reach.ts';

/** Rules are dropped in this order, so that a clash among distances is told as one, and not blamed on a truss. */
const dropFirst: readonly RuleName[] = ['obstacles', 'seams', 'trusses', 'first', 'last', 'spacing'];

/** The problem with some of its rules alone; patches still never overlap. */
function withRules(problem: LayoutProblem, kept: ReadonlySet<RuleName>): LayoutProblem {
  const anywhere = { low: 0, high: problem.length };
  return {
    ...problem,
    first: kept.has('first') ? problem.first : anywhere,
    last: kept.has('last') ? problem.last : anywhere,
    spacing: kept.has('spacing')
      ? problem.spacing
      : { low: problem.patchSide, high: Math.max(problem.length, problem.patchSide) },
    trusses: kept.has('trusses') ? problem.trusses : [],
    seams: kept.has('seams') ? problem.seams : [],
    obstacles: kept.has('obstacles') ? problem.obstacles : [],
  };
}

/** Can a layout hold these rules at once? */
export const holdTogether = (problem: LayoutProblem, kept: ReadonlySet<RuleName>): boolean =>
  fewestHoles(placesOf(withRules(problem, kept))) !== undefined;

/**
 * Which rules can't hold together? A set from which none can be taken without the rest holding: each rule in turn is left out for good
 * if the rest still clash. Empty where even no rule at all leaves room: the roof is shorter than a hole.
 */
export function clashOf(problem: LayoutProblem, among: readonly RuleName[]): RuleName[] {
  const kept = new Set<RuleName>(among);
  for (const rule of dropFirst) {
    if (!kept.has(rule)) continue;
    kept.delete(rule);
    if (holdTogether(problem, kept)) kept.add(rule);
  }
  return among.filter((rule) => kept.has(rule));
}
