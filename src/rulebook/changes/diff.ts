import type { Rule, RulebookData } from '../rulebook.ts';
import { same, shapeOf, valueChange } from './judge.ts';

/** What kind of change a rule underwent, the gravest that applies. */
export const changeKinds = [
  'looser',
  'stricter',
  'value',
  'meaning',
  'source',
  'wording',
  'new',
  'gone',
] as const;
export type ChangeKind = (typeof changeKinds)[number];

/** What each word means, to a reader. */
export const changeMeaning: Readonly<Record<ChangeKind, string>> = {
  looser: 'A safety value allows more than it did.',
  stricter: 'A safety value allows less than it did.',
  value: 'A number or word that is no safety value, or can be called neither stricter nor looser.',
  meaning: 'What the value is or what it applies to: its kind, its unit, its scope, which way is stricter.',
  source: 'Where it comes from, or how it was read.',
  wording: 'Words only.',
  new: 'A rule that was not there.',
  gone: 'A rule that is there no more.',
};

/** One rule that differs between two rulebooks. */
export interface RuleChange {
  readonly id: string;
  readonly kind: ChangeKind;
  readonly before: Rule | undefined;
  readonly after: Rule | undefined;
}

/**
 * What changed from one rulebook to another? One change a rule, in the order of ids; a rule that was renamed is followed by its aliases.
 * @example diffRulebooks(data, data) // => []
 */
export function diffRulebooks(before: RulebookData, after: RulebookData): RuleChange[] {
  const renamed = new Map(
    Object.values(after.rules).flatMap(({ id, aliases = [] }) =>
      aliases.map((old): [string, string] => [old, id]),
    ),
  );
  const now = (id: string): string => (after.rules[id] ? id : (renamed.get(id) ?? id));
  const old = new Map(Object.values(before.rules).map((rule): [string, Rule] => [now(rule.id), rule]));
  return [...new Set([...old.keys(), ...Object.keys(after.rules)])].sort().flatMap((id): RuleChange[] => {
    const [from, to] = [old.get(id), after.rules[id]];
    const kind = changeOf(from, to);
    return kind ? [{ id, kind, before: from, after: to }] : [];
  });
}

function changeOf(before: Rule | undefined, after: Rule | undefined): ChangeKind | undefined {
  if (!before || !after) return before ? 'gone' : after ? 'new' : undefined;
  const alike = same(shapeOf(before.value), shapeOf(after.value));
  // By what was strict before: a direction that is turned makes no looser value stricter.
  const value = alike ? valueChange(before.value, after.value, before.safety ?? after.safety) : 'meaning';
  if (value === 'looser') return value;
  if (before.safety !== after.safety) return 'meaning';
  if (value) return value;
  if (before.applies_to !== after.applies_to) return 'meaning';
  if (!same(before.source, after.source)) return 'source';
  return before.title === after.title && before.says === after.says && before.symbol === after.symbol
    ? undefined
    : 'wording';
}
