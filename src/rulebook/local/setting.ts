import { valueChange } from '../changes/judge.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';
import { type Entry, problemAt, problemAtKey } from '../rule-files.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleSource } from '../schema.ts';
import { valueHeadline } from '../value-text.ts';
import type { LocalChange } from './local.ts';
import { rangeProblem } from './range.ts';
import type { WithAgency } from './read.ts';
import type { LocalValue } from './schema.ts';
import { sizeProblem } from './size-meant.ts';
import { notComparable } from './strictest.ts';

/** One setting of a value that can stand beside the rulebook's. */
export interface Setting {
  readonly rule: Rule;
  readonly entry: Entry<LocalValue>;
  readonly change: LocalChange;
}

/** A rule by its id, or by one that it had before. */
export const ruleNamed = ({ rules }: RulebookData, id: string): Rule | undefined =>
  Object.hasOwn(rules, id) ? rules[id] : Object.values(rules).find(({ aliases }) => aliases?.includes(id));

/** A source as the resolved rulebook knows it: a document of the agency's own by its id with the agency's before it. */
export const sourceIn = ({ agency, documents }: WithAgency, source: RuleSource): RuleSource =>
  source.kind === 'document' && documents.some(({ id }) => id === source.document)
    ? { ...source, document: `${agency.id}.${source.document}` }
    : source;

/** What a folder sets for a rule; or what keeps it from standing beside the rulebook's value. */
export function settingOf(
  base: RulebookData,
  layer: WithAgency,
  entry: Entry<LocalValue>,
): Setting | { readonly problems: Problem[] } {
  const rule = ruleNamed(base, entry.id);
  if (!rule) {
    const guess = nearest(entry.id.slice(0, 100), Object.keys(base.rules));
    const expected = guess ? `an id of the rulebook; did you mean "${guess}"?` : 'an id of the rulebook';
    return {
      problems: [problemAtKey(entry, `the rule "${entry.id.slice(0, 100)}"`, expected, 'unknown-rule')],
    };
  }
  const { value, reason, source } = entry.entry;
  if (rule.value.kind === 'exact' && rule.value.formula !== undefined) {
    const from = rule.source.kind === 'derived' ? rule.source.from.join(', ') : 'others';
    return {
      problems: [
        problemAtKey(
          entry,
          `a value for "${rule.id}", which is worked out`,
          `a value for what it rests on: ${from}`,
          'local-derived',
        ),
      ],
    };
  }
  const apart = notComparable(rule.value, value);
  if (apart) return { problems: [problemAt(entry, ['value'], apart.found, apart.expected, 'local-value')] };
  const upsideDown = rangeProblem(value);
  if (upsideDown)
    return {
      problems: [problemAt(entry, ['value'], upsideDown, 'the lower end below the upper', 'empty-range')],
    };
  const oversized = sizeProblem(rule.value, value);
  if (oversized)
    return { problems: [problemAt(entry, ['value'], oversized.found, oversized.expected, 'local-size')] };
  const kind = valueChange(rule.value, value, rule.safety) ?? 'same';
  if (rule.safety !== undefined && kind !== 'stricter' && kind !== 'same') {
    const base = valueHeadline(rule.value);
    const refused =
      kind === 'looser'
        ? [
            `${valueHeadline(value)}, looser than the rulebook's ${base}`,
            `a value as strict or stricter: ${rule.safety}`,
          ]
        : [
            `${valueHeadline(value)}, which can not be called stricter than ${base}`,
            'the value of the rulebook: it is for safety, and has no stricter way',
          ];
    return {
      problems: [
        problemAt(
          entry,
          ['value'],
          refused[0] as string,
          refused[1] as string,
          kind === 'looser' ? 'looser-value' : 'not-comparable',
        ),
      ],
    };
  }
  return {
    rule,
    entry,
    change: {
      rule: rule.id,
      agency: layer.agency.id,
      value,
      reason,
      source: sourceIn(layer, source),
      kind,
      file: entry.file.name,
      line: entry.file.placeOfKey(entry.path).line,
    },
  };
}
