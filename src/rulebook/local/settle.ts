import { changedRulebook, restingOn } from '../changed.ts';
import { same, valueChange } from '../changes/judge.ts';
import type { Problem } from '../problem.ts';
import { problemAt, problemAtKey } from '../rule-files.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleValue } from '../schema.ts';
import { valueHeadline } from '../value-text.ts';
import type { Setting } from './setting.ts';

/** The rulebook with the values in it and what is derived worked out again; a derived safety value may not have got looser by it. */
export function settledRulebook(
  base: RulebookData,
  values: Readonly<Record<string, RuleValue>>,
  by: ReadonlyMap<string, readonly Setting[]>,
): { data: RulebookData; recomputed: string[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const at = (id: string): Setting => by.get(id)?.[0] as Setting;
  for (const id of Object.keys(values)) {
    for (const { id: derived, source, value } of Object.values(base.rules)) {
      const byHand = source.kind === 'derived' && !(value.kind === 'exact' && value.formula !== undefined);
      if (!byHand || !source.from.includes(id) || Object.hasOwn(values, derived)) continue;
      problems.push(
        problemAtKey(
          at(id).entry,
          `a change of "${id}", from which "${derived}" was worked by hand`,
          `a value for "${derived}" too`,
          'local-derived',
        ),
      );
    }
  }
  let data: RulebookData;
  try {
    data = changedRulebook(base, values);
  } catch (error) {
    const [id] = Object.keys(values);
    if (id === undefined) throw error;
    return {
      data: base,
      recomputed: [],
      problems: [
        ...problems,
        problemAtKey(
          at(id).entry,
          (error as Error).message,
          'values that what is derived can be worked out from',
          'local-derived',
        ),
      ],
    };
  }
  const recomputed: string[] = [];
  for (const rule of Object.values(data.rules)) {
    const before = base.rules[rule.id] as Rule;
    if (Object.hasOwn(values, rule.id) || same(before.value, rule.value)) continue;
    recomputed.push(rule.id);
    const sound = rule.value.kind !== 'exact' || Number.isFinite(rule.value.number);
    const kind = valueChange(before.value, rule.value, rule.safety);
    if (sound && (rule.safety === undefined || kind !== 'looser')) continue;
    for (const id of Object.keys(values).filter((each) => restingOn(base, each).has(rule.id)))
      problems.push(
        problemAt(
          at(id).entry,
          ['value'],
          `a value from which "${rule.id}" comes to ${valueHeadline(rule.value)}, ${sound ? 'looser than' : 'not'} ${valueHeadline(before.value)}`,
          'one that leaves it as strict or stricter',
          'looser-value',
        ),
      );
  }
  return { data, recomputed: recomputed.sort(), problems };
}
