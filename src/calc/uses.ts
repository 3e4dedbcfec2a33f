import { rulesIn } from '../rulebook/formula.ts';
import { placeholdersIn } from '../rulebook/placeholders.ts';
import type { References } from '../rulebook/references.ts';
import { openRulebook, type RulebookData } from '../rulebook/rulebook.ts';
import type { Check } from '../rulebook/schema.ts';
import { calculations } from './calculations.ts';
import { type AnyCalculation, answer } from './declare/calculation.ts';
import { filledIn, otherwise } from './variations.ts';

/** One place where a rule is used. */
export type Use =
  | { readonly kind: 'calculator'; readonly name: string; readonly title: string }
  | { readonly kind: 'planner' | 'drawings' }
  | { readonly kind: 'page'; readonly path: string }
  | { readonly kind: 'rule'; readonly id: string; readonly title: string }
  | { readonly kind: 'caution'; readonly id: string; readonly says: string };

/**
 * A place where a rule is used, in words.
 * @example useName({ kind: 'page', path: 'do/patching' }) // => 'page: do/patching'
 */
export function useName(use: Use): string {
  switch (use.kind) {
    case 'calculator':
    case 'rule':
      return `${use.kind}: ${use.title}`;
    case 'planner':
      return 'the planner';
    case 'drawings':
      return 'drawings';
    case 'page':
      return `page: ${use.path}`;
    case 'caution':
      return `caution: ${use.says}`;
  }
}

/** Which rules does each calculation ask for? Watched while each works its own example, the entries of its checks, and variations of them. */
export const askedByCalculations = (
  data: RulebookData,
  checks: readonly Pick<Check, 'calculation' | 'given'>[],
): ReadonlyMap<string, ReadonlySet<string>> =>
  new Map(
    calculations.map((declared) => [
      declared.name,
      askedBy(
        declared,
        data,
        checks.filter(({ calculation }) => calculation === declared.name).map(({ given }) => given),
      ),
    ]),
  );

/**
 * Varied are the example, the example with one more entry, since many an entry counts only beside one choice, and whatever asks for a rule
 * that nothing before it asked for: one choice may open the next.
 */
function askedBy(
  declared: AnyCalculation,
  data: RulebookData,
  checked: readonly Readonly<Record<string, unknown>>[],
): ReadonlySet<string> {
  const asked = new Set<string>();
  const rules = openRulebook(data, (id) => asked.add(id));
  const asksForMore = (entries: unknown): boolean => {
    const before = asked.size;
    answer(declared, entries, rules);
    return asked.size > before;
  };
  const { fields, example } = declared;
  const toVary = [example, ...filledIn(fields, example)];
  toVary.forEach(asksForMore);
  toVary.push(...checked.filter(asksForMore));
  // What is found on the way is varied in its turn: the list grows while it is gone through.
  for (const entries of toVary) toVary.push(...otherwise(fields, entries).filter(asksForMore));
  return asked;
}

/**
 * Where is a rule used? Calculations by watching them ask, the planner, drawings and pages by what they name, rules and cautions by their own
 * words.
 */
export function usesOf(
  id: string,
  data: RulebookData,
  references: References,
  asked: ReadonlyMap<string, ReadonlySet<string>>,
): Use[] {
  const files = references.get(id) ?? [];
  const naming = (folder: string) => files.some((file) => file.startsWith(folder));
  return [
    ...calculations
      .filter(({ name }) => asked.get(name)?.has(id))
      .map(({ name, title }): Use => ({ kind: 'calculator', name, title })),
    ...(naming('src/job/') || naming('src/calc/') ? [{ kind: 'planner' } as const] : []),
    ...(naming('src/drawings/') ? [{ kind: 'drawings' } as const] : []),
    ...files
      .filter((file) => file.startsWith('content/en/') && file.endsWith('.mdx'))
      .map((file): Use => ({ kind: 'page', path: file.replace('content/en/', '').replace('.mdx', '') })),
    ...Object.values(data.rules)
      .filter(
        ({ value, source }) =>
          (source.kind === 'derived' && source.from.includes(id)) ||
          (value.kind === 'exact' && value.formula !== undefined && rulesIn(value.formula).includes(id)),
      )
      .map((rule): Use => ({ kind: 'rule', id: rule.id, title: rule.title })),
    ...Object.values(data.cautions)
      .filter(
        (caution) =>
          caution.rules?.includes(id) ||
          placeholdersIn(`${caution.says} ${caution.do}`).some(({ rule }) => rule === id),
      )
      .map(
        (caution): Use => ({
          kind: 'caution',
          id: caution.id,
          says: caution.says.replace(/\{[^}]*\}/g, '…'),
        }),
      ),
  ];
}
