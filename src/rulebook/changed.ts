import { rulesIn, workOut } from './formula.ts';
import type { Rule, RulebookData } from './rulebook.ts';
import type { RawRule, RuleValue } from './schema.ts';

type ExactValue = Extract<RuleValue, { readonly kind: 'exact' }>;

/**
 * The rulebook with some values changed, and everything that is derived from them worked out again.
 * @throws Error for an id that is no rule; FormulaError where a derived value can't be worked out any more.
 * @example openRulebook(changedRulebook(data, { 'access.roof-holes.diameter': { kind: 'exact', number: 8, unit: 'in' } })).value('patch.layers.metal-side').amount // => 12
 */
export function changedRulebook(
  data: RulebookData,
  changes: Readonly<Record<string, RuleValue>>,
): RulebookData {
  for (const id of Object.keys(changes))
    if (!data.rules[id]) throw new Error(`found no rule "${id}" to change, expected one of the rulebook`);
  const rules: Record<string, Rule> = { ...data.rules };
  for (const [id, value] of Object.entries(changes)) rules[id] = { ...(rules[id] as Rule), value };
  const raw = new Map(Object.entries(rules) as [string, RawRule][]);
  for (const [id, rule] of Object.entries(rules)) {
    if (rule.value.kind === 'exact' && rule.value.formula !== undefined)
      rules[id] = { ...rule, value: workedOut(id, rule.value, raw) };
  }
  return { ...data, rules };
}

/** A derived value worked out; one that is no more than another rule's, as that one is written, so that both read alike. */
function workedOut(id: string, value: ExactValue, raw: ReadonlyMap<string, RawRule>): ExactValue {
  const other =
    typeof value.formula === 'object' && 'rule' in value.formula
      ? raw.get(value.formula.rule)?.value
      : undefined;
  return other?.kind === 'exact' && other.number !== undefined && other.formula === undefined
    ? { ...value, number: other.number, unit: other.unit }
    : { ...value, number: workOut(id, raw) };
}

/** Every rule whose value rests on a rule by a formula, near or far, and the rule itself. */
export function restingOn(data: RulebookData, id: string): ReadonlySet<string> {
  const found = new Set([id]);
  for (let before = 0; before !== found.size; ) {
    before = found.size;
    for (const rule of Object.values(data.rules)) {
      const { value } = rule;
      if (
        value.kind === 'exact' &&
        value.formula !== undefined &&
        rulesIn(value.formula).some((each) => found.has(each))
      )
        found.add(rule.id);
    }
  }
  return found;
}
