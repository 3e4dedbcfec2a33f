import { calculations } from '../calc/calculations.ts';
import { checksByRule, type MovedValue, moveEveryValue } from '../calc/checks/moved-values.ts';
import { type CheckResult, runCheck } from '../calc/checks/run-check.ts';
import { whyUnguarded } from '../calc/checks/unguarded.ts';
import { page } from '../islands/links.ts';
import { withSigns } from '../quantity/signs.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import type { Check } from '../rulebook/schema.ts';
import { baseRulebook, local, ruleFiles } from './rulebook.ts';

/** A check with what this build computed for it. */
export interface WorkedCheck {
  /** The file it stands in and its place there: its address on the page of checks. */
  readonly id: string;
  readonly check: Check;
  readonly result: CheckResult;
}

/** The checks hold the rulebook as it was published, whatever an agency sets. */
const rules = openRulebook(baseRulebook);

/** What a copy with values of its own says of its checks, or their figures would be taken for what holds here; empty for any other. */
export const workedAsPublished =
  (local?.changes ?? []).length > 0
    ? ' They are worked with the rulebook as it was published: the local values of this copy have no part in them.'
    : '';

/** Every check of the rulebook, worked by this build. */
export const workedChecks: readonly WorkedCheck[] = ruleFiles.checks.map(({ id, entry }) => ({
  id,
  check: { ...entry, title: withSigns(entry.title) },
  result: runCheck(entry, rules),
}));

const guards = checksByRule(
  baseRulebook,
  workedChecks.map(({ check }) => check),
);

/** The checks that ask for a rule. */
export const checksOf = (id: string): readonly WorkedCheck[] => {
  const asking = new Set(guards.get(id) ?? []);
  return workedChecks.filter(({ check }) => asking.has(check));
};

/** The checks by the calculation they are of, in the order of the work. */
export const checkedCalculations: readonly { readonly name: string; readonly all: readonly WorkedCheck[] }[] =
  [
    ...new Set([
      ...calculations.map(({ name }) => name),
      ...workedChecks.map(({ check }) => check.calculation),
    ]),
  ]
    .map((name) => ({ name, all: workedChecks.filter(({ check }) => check.calculation === name) }))
    .filter(({ all }) => all.length > 0);

/** The address of a check on the page of its calculation. */
export const checkAt = ({ id, check }: WorkedCheck): string => `${page(`checks/${check.calculation}`)}#${id}`;

const holding = workedChecks.every(({ result }) => result.holds);

/** Every number that feeds a calculation, and which ways of moving it no check notices; empty while a check fails, since then nothing can be learnt. */
export const movedValues: readonly MovedValue[] = holding
  ? moveEveryValue(
      baseRulebook,
      workedChecks.map(({ check }) => check),
    )
  : [];

const reasons = ruleFiles.unguarded.map(({ entry }) => entry);

/** The numbers with a move that no check notices, each with the reason that the rulebook gives for it, if it gives one. */
export const unguardedValues: readonly (MovedValue & { readonly reason: string | undefined })[] = movedValues
  .filter(({ unnoticed }) => unnoticed.length > 0)
  .map((value) => ({ ...value, reason: whyUnguarded(reasons, value) }));
