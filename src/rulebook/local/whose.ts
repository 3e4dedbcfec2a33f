import { restingOn } from '../changed.ts';
import { valueChange } from '../changes/judge.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleValue } from '../schema.ts';
import { type Given, mixedFrom } from './mixed.ts';
import type { WithAgency } from './read.ts';
import type { Setting } from './setting.ts';

/** Whose each value is that is not the rulebook's own: the agency by its short name, or, of one that was worked out again, what it follows from. */
export function whoseValues(
  base: RulebookData,
  values: Readonly<Record<string, RuleValue>>,
  bySetting: ReadonlyMap<string, readonly Setting[]>,
  recomputed: readonly string[],
  layers: readonly WithAgency[],
): Record<string, Pick<Rule, 'by' | 'mixed'>> {
  const shortOf = new Map(layers.map(({ agency: { id, entry } }) => [id, entry.short]));
  const given = ({ change: { agency, value, source } }: Setting): Given => ({
    by: shortOf.get(agency) ?? agency,
    value,
    source,
  });
  const set = Object.entries(values).map(([id, value]): readonly [string, Pick<Rule, 'by' | 'mixed'>] => {
    const changed = (bySetting.get(id) ?? []).filter(({ change }) => change.kind !== 'same');
    const alone = changed.filter(({ change }) => valueChange(change.value, value, undefined) === undefined);
    const named = (some: readonly Setting[]) => some.map((each) => given(each).by).join(' and ');
    if (alone.length > 0) return [id, { by: named(alone) }];
    // No one folder has it: each gave a part, an end of a range or a cell of a table.
    const mixed = mixedFrom(value, changed.map(given), { ...(base.rules[id] as Rule), by: 'the rulebook' });
    return [id, { by: named(changed), mixed }];
  });
  const behind = set.map(([id, { by }]) => ({ name: by, resting: restingOn(base, id) }));
  const follows = recomputed.map((id) => {
    const names = behind.filter(({ resting }) => resting.has(id)).map(({ name }) => name);
    return [id, { by: `follows from ${[...new Set(names)].join(' and ')}` }] as const;
  });
  return Object.fromEntries([...set, ...follows]);
}
