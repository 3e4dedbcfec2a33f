import type { AnswerTable, Figure } from '../calc/declare/calculation.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { cautionSentence } from '../job/caution-sentence.ts';
import { format } from '../quantity/format.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { rulesBehind, working } from '../quantity/working.ts';
import type { CautionWords, Rulebook } from '../rulebook/rulebook.ts';

/** A quantity as commands print it: text for people, amount and unit for programs, the rules it rests on, its working. */
export const quantityJson = (q: Quantity, options: Figure['format'] = {}) => ({
  text: format(q, options),
  amount: q.amount,
  unit: q.unit,
  rules: rulesBehind(q),
  working: working(q, options).map(({ symbol, label, symbols, numbers, result }) => ({
    symbol,
    label,
    symbols,
    numbers,
    result,
  })),
});

/** All figures of an answer as commands print them. */
export const figuresJson = (figures: Readonly<Record<string, Figure>>) =>
  Object.fromEntries(
    Object.entries(figures).map(([name, { label, value, format: options }]) => [
      name,
      typeof value === 'string' ? { label, text: value } : { label, ...quantityJson(value, options) },
    ]),
  );

/** A cell of a table: text for people, amount and unit for programs. Its working stands with the figures, or it would be told a hundred times. */
const cellJson = (q: Quantity, options: Figure['format'] = {}) => ({
  text: format(q, options),
  amount: q.amount,
  unit: q.unit,
});

/** All tables of an answer as commands print them: a list of rows for each. */
export const tablesJson = (tables: Readonly<Record<string, AnswerTable>> = {}) =>
  Object.fromEntries(
    Object.entries(tables).map(([name, { title, rows, format: options }]) => [
      name,
      {
        title,
        rows: rows.map((row) =>
          Object.fromEntries(
            Object.entries(row).map(([column, value]) => [
              column,
              typeof value === 'string' || 'caution' in value ? value : cellJson(value, options?.[column]),
            ]),
          ),
        ),
      },
    ]),
  );

/** Cautions as commands print them: each by its id, with its words. */
export const cautionsJson = (
  ids: readonly CautionId[],
  cautions: Readonly<Record<string, CautionWords>>,
  rules: Rulebook,
) => [...new Set(ids)].map((id) => ({ id, text: cautionSentence(cautions[id], rules) }));

/** Every rule that some figures rest on, wherever in what is printed they stand. */
function rulesNamed(told: unknown): string[] {
  if (told === null || typeof told !== 'object') return [];
  return Object.entries(told).flatMap(([key, value]) =>
    key === 'rules' && Array.isArray(value) ? (value as string[]) : rulesNamed(value),
  );
}

/**
 * Whose are the values that figures rest on, where they are not the rulebook's own? Each such rule with the agency's name; nothing where
 * all are its own.
 * @example whoseJson({ figures: { bags: { rules: ['fill.bag.weight'] } } }, rules) // => {}
 */
export function whoseJson(told: unknown, rules: Rulebook): { whose?: Readonly<Record<string, string>> } {
  const theirs = [...new Set(rulesNamed(told))].sort().flatMap((id): [string, string][] => {
    const by = rules.whose(id);
    return by === undefined ? [] : [[id, by]];
  });
  return theirs.length === 0 ? {} : { whose: Object.fromEntries(theirs) };
}
