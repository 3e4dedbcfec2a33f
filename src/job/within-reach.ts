import { bagsFor } from '../calc/fill/bags.ts';
import { plus, type Quantity, quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { openingsOf } from './openings.ts';
import type { WorkedJob } from './planned.ts';

/**
 * How many bags of the plan go where the hose or tube of the way taken reaches? Undefined while its openings are not known.
 * @example withinReach(plan, rules)?.unit // => 'bag'
 */
export function withinReach(plan: WorkedJob, rules: Rulebook): Quantity<'pieces'> | undefined {
  const found = openingsOf(plan, rules);
  if (!found.known) return undefined;
  const reached = found.openings.reduce((sum, opening) => plus(sum, opening.reached), quantity(0, 'ft3'));
  const { density, bag_weight } = plan.job.fill;
  return bagsFor(reached, density, bag_weight).bags;
}
