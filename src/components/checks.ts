import { checksByRule, type MovedValue, moveEveryValue } from '../calc/checks/moved-values.ts';
import { type CheckResult, runCheck } from '../calc/checks/run-check.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import type { Check } from '../rulebook/schema.ts';
import { page } from './links.ts';
import { rulebook, ruleFiles } from './rulebook.ts';

/** A check with what this build computed for it. */
export interface WorkedCheck {
  /** The file it stands in and its place there: its address on the page of checks. */
  readonly id: string;
  readonly check: Check;
  readonly result: CheckResult;
}

const rules = openRulebook(rulebook);

/** Every check of the rulebook, worked by this build. */
export const workedChecks: readonly WorkedCheck[] = ruleFiles.checks.map(({ id, entry }) => ({
  id,
  check: entry,
  result: runCheck(entry, rules),
}));

const guards = checksByRule(
  rulebook,
  workedChecks.map(({ check }) => check),
);

/** The checks that ask for a rule. */
export const checksOf = (id: string): readonly WorkedCheck[] => {
  const asking = new Set(guards.get(id) ?? []);
  return workedChecks.filter(({ check }) => asking.has(check));
};

/** The address of a check on the page of checks. */
export const checkAt = (id: string): string => `${page('checks')}#${id}`;

const holding = workedChecks.every(({ result }) => result.holds);

/** Every number that feeds a calculation, and which ways of moving it no check notices; empty while a check fails, since then nothing can be learnt. */
export const movedValues: readonly MovedValue[] = holding
  ? moveEveryValue(
      rulebook,
      workedChecks.map(({ check }) => check),
    )
  : [];
