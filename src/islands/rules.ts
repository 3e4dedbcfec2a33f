import { calculationRules } from '../generated/calculation-rules.ts';
import { openRulebook, type Rulebook } from '../rulebook/rulebook.ts';

/** The rulebook as the reader's browser holds it: the rules that calculations ask for, and the cautions. */
export const rules = openRulebook(calculationRules);
export const cautions = calculationRules.cautions;

/** The title of a rule, for a link to its page. */
export const ruleTitle = (id: string): string => calculationRules.rules[id]?.title ?? id;

/** Does some work, and tells which rules it asked for, in the order of their ids. */
export function watched<T>(work: (rules: Rulebook) => T): {
  readonly result: T;
  readonly asked: readonly string[];
} {
  const asked = new Set<string>();
  const result = work(openRulebook(calculationRules, (id) => asked.add(id)));
  return { result, asked: [...asked].sort() };
}
