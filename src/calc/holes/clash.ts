import { onTheTape } from './allowed-positions.ts';
import { fewestHoles } from './fewest-holes.ts';
import { type LayoutProblem, type RuleName, ruleNames } from './problem.ts';

/** The order in which rules are let off: what stands on the roof first, so that a bare roof clashes by its length alone. */
const letOffFirst: readonly RuleName[] = ['obstacles', 'seams', 'trusses', 'first', 'last', 'spacing'];

/**
 * Which rules can't hold together?
 * Where some can't hold by themselves, such as the distances from both ends of a roof that is too short, they are all of these. Else every one
 * of them is needed for the clash: let any one off and the rest hold. Lets one rule off after another and takes it
 * back only where the rest then hold; since letting a rule off never does harm, what is left can't be thinned further.
 * @example clashingRules(bareRoof(20)) // => ['first', 'last', 'spacing']
 */
export function clashingRules(problem: LayoutProblem): RuleName[] {
  const clash = (kept: ReadonlySet<RuleName>) => fewestHoles(onTheTape(problem, kept)) === undefined;
  // Gaps need two holes, and what stands on the roof leaves room for one, or nobody asks.
  const alone = (['first', 'last'] as const).filter((rule) => clash(new Set([rule])));
  return alone.length > 0 ? alone : thinned(ruleNames, clash);
}

/**
 * Which of trusses, seams and obstacles leave no place for any hole?
 * @example rulesLeavingNoRoom({ ...bareRoof(1), seams: [6] }) // => ['seams']
 */
export function rulesLeavingNoRoom(problem: LayoutProblem): RuleName[] {
  const hard: readonly RuleName[] = ['trusses', 'seams', 'obstacles'];
  return thinned(hard, (kept) => onTheTape(problem, kept).allowed.length === 0);
}

function thinned(rules: readonly RuleName[], clash: (kept: ReadonlySet<RuleName>) => boolean): RuleName[] {
  const kept = new Set(rules);
  for (const rule of letOffFirst) {
    if (!kept.delete(rule)) continue;
    if (!clash(kept)) kept.add(rule);
  }
  return ruleNames.filter((rule) => kept.has(rule));
}
