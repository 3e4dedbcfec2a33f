import type { Rulebook } from '../rulebook/rulebook.ts';
import type { WorkedJob } from './planned.ts';

/**
 * Pure work on a plan that several parts and sheets ask for, done once for each plan and rulebook.
 * @example oncePerPlan((plan) => plan.rows.length)(plan, rules) // => 1
 */
export function oncePerPlan<Found>(
  work: (plan: WorkedJob, rules: Rulebook) => Found,
): (plan: WorkedJob, rules: Rulebook) => Found {
  const known = new WeakMap<WorkedJob, { readonly rules: Rulebook; readonly found: Found }>();
  return (plan, rules) => {
    const before = known.get(plan);
    if (before?.rules === rules) return before.found;
    const found = work(plan, rules);
    known.set(plan, { rules, found });
    return found;
  };
}
