import { calculationRules } from '../generated/calculation-rules.ts';
import { openRulebook } from '../rulebook/rulebook.ts';

/** The rulebook as the reader's browser holds it: the rules that calculations ask for, and the cautions. */
export const rules = openRulebook(calculationRules);
export const cautions = calculationRules.cautions;
