import { calculationNamed, calculations } from '../calc/calculations.ts';
import { addressOf } from '../calc/declare/address.ts';
import { answer } from '../calc/declare/calculation.ts';
import { guessed } from '../calc/declare/guess.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { type FormatOptions, format } from '../quantity/format.ts';
import { parseQuantity } from '../quantity/parse.ts';
import { type Quantity, QuantityError } from '../quantity/quantity.ts';
import { isUnitName, units } from '../quantity/units.ts';
import { rulesBehind } from '../quantity/working.ts';
import { nearest } from '../rulebook/nearest.ts';
import { openRulebook, type Rule, type RulebookData, type TableId } from '../rulebook/rulebook.ts';
import type { Column } from '../rulebook/schema.ts';
import { rangeText, valueHeadline, valueText } from '../rulebook/value-text.ts';
import type { RawAnswer } from './schema.ts';

/** An answer, as the rulebook or a calculation gives it today. */
export type FoundAnswer =
  | { readonly from: 'rule'; readonly rule: Rule; readonly text: string }
  | {
      readonly from: 'calculation';
      readonly name: string;
      readonly title: string;
      /** What was given, as the calculator's page takes it after the # of its address. */
      readonly address: string;
      readonly label: string;
      readonly text: string;
      readonly value: Quantity | string;
      readonly format?: FormatOptions;
      /** Rules that it rests on: those behind a figure; of words, all that the calculation asked for. */
      readonly rules: readonly string[];
      /** Cautions that this answer trips. */
      readonly cautions: readonly CautionId[];
    }
  | { readonly from: 'caution'; readonly id: CautionId };

/** What is wrong with an answer, and at which of its keys. */
export interface Unanswered {
  readonly at: readonly string[];
  readonly found: string;
  readonly expected: string;
  readonly check: string;
}

export type Answered =
  | { readonly ok: true; readonly value: FoundAnswer }
  | { readonly ok: false; readonly problems: readonly Unanswered[] };

const wrong = (at: readonly string[], found: string, expected: string, check: string): Answered => ({
  ok: false,
  problems: [{ at, found, expected, check }],
});

/** What is expected, with the name that was most likely meant. */
const meant = (what: string, written: string, known: readonly string[]): string => {
  const guess = nearest(written, known);
  return guess ? `${what}; did you mean "${guess}"?` : what;
};

const oneOf = (names: readonly string[]): string => `one of ${names.join(', ')}`;

/** What is the answer to a question, by the rulebook as it stands? Problems come back, they are not thrown. */
export function findAnswer(raw: RawAnswer, data: RulebookData): Answered {
  if ('caution' in raw) return fromCaution(raw.caution, data);
  return 'rule' in raw ? fromRule(raw, data) : fromCalculation(raw, data);
}

function fromCaution(id: string, data: RulebookData): Answered {
  if (Object.hasOwn(data.cautions, id)) return { ok: true, value: { from: 'caution', id: id as CautionId } };
  const expected = meant('an id of the rulebook', id, Object.keys(data.cautions));
  return wrong(['caution'], `the caution "${id}"`, expected, 'unknown-caution');
}

function fromRule(raw: Extract<RawAnswer, { rule: string }>, data: RulebookData): Answered {
  const rule = Object.hasOwn(data.rules, raw.rule) ? data.rules[raw.rule] : undefined;
  if (!rule) {
    const expected = meant('an id of the rulebook', raw.rule, Object.keys(data.rules));
    return wrong(['rule'], `the rule "${raw.rule}"`, expected, 'unknown-rule');
  }
  if (rule.value.kind === 'table') return fromTable(raw, rule, rule.value.columns, data);
  for (const key of ['row', 'column'] as const) {
    if (raw[key] !== undefined)
      return wrong(
        [key],
        `${key} for a rule of the kind ${rule.value.kind}`,
        'it for a table only',
        'rule-part',
      );
  }
  const text = raw.part === undefined ? valueHeadline(rule.value) : valueText(rule.value, raw.part);
  return text === undefined
    ? wrong(['part'], `part "${raw.part}" of a rule of the kind ${rule.value.kind}`, 'a range', 'rule-part')
    : { ok: true, value: { from: 'rule', rule, text } };
}

function fromTable(
  { part, row = {}, column }: Extract<RawAnswer, { rule: string }>,
  rule: Rule,
  columns: readonly Column[],
  data: RulebookData,
): Answered {
  if (part !== undefined)
    return wrong(['part'], `part "${part}" of a table`, 'a row and a column', 'rule-part');
  const keys = columns.filter(({ key }) => key !== undefined);
  const answering = columns.filter(({ key }) => key === undefined).map(({ name }) => name);
  if (column === undefined || !answering.includes(column)) {
    const found = column === undefined ? 'no column of the table' : `the column "${column}"`;
    return wrong(column === undefined ? [] : ['column'], found, oneOf(answering), 'rule-part');
  }
  const stray = Object.keys(row).find((each) => !keys.some(({ name }) => name === each));
  if (stray !== undefined)
    return wrong(
      ['row', stray],
      `the key column "${stray}"`,
      oneOf(keys.map(({ name }) => name)),
      'rule-part',
    );
  const asked: Record<string, string | Quantity> = {};
  for (const { name, unit } of keys) {
    const written = row[name];
    if (written === undefined)
      return wrong(['row'], `no "${name}" in the row`, 'each key column', 'rule-part');
    try {
      asked[name] =
        unit !== undefined && isUnitName(unit)
          ? parseQuantity(written, { dimension: units[unit].dimension })
          : written;
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
      return wrong(
        ['row', name],
        error.message.replace(/^found /, ''),
        'an amount with its unit',
        'rule-part',
      );
    }
  }
  const cell = openRulebook(data).find(rule.id as TableId, asked as never, column as never) as
    | string
    | { readonly low: Quantity; readonly high: Quantity }
    | undefined;
  if (cell === undefined)
    return wrong(['row'], 'a row that the table does not have', 'one that it has', 'rule-part');
  const text = typeof cell === 'string' ? cell : rangeText(cell.low.amount, cell.high.amount, cell.low.unit);
  return { ok: true, value: { from: 'rule', rule, text } };
}

function fromCalculation(
  { calculation, given, figure }: Extract<RawAnswer, { calculation: string }>,
  data: RulebookData,
): Answered {
  const declared = calculationNamed(calculation);
  if (!declared) {
    const names = calculations.map(({ name }) => name);
    const expected = meant('the name of a calculation', calculation, names);
    return wrong(['calculation'], `the calculation "${calculation}"`, expected, 'unknown-calculation');
  }
  const asked = new Set<string>();
  const read = answer(
    declared,
    given,
    openRulebook(data, (id) => asked.add(id)),
  );
  if (!read.ok) {
    return {
      ok: false,
      problems: read.problems.map(guessed).map(({ field, label, found, expected }) => ({
        at: ['given', ...(field === '' ? [] : field.split('.'))],
        found: `${label}: ${found}`,
        expected,
        check: 'entry',
      })),
    };
  }
  const { figures, cautions } = read.value;
  const shown = Object.hasOwn(figures, figure) ? figures[figure] : undefined;
  if (!shown) {
    const expected = meant(oneOf(Object.keys(figures)), figure, Object.keys(figures));
    return wrong(['figure'], `the figure "${figure}"`, expected, 'unknown-figure');
  }
  return {
    ok: true,
    value: {
      from: 'calculation',
      name: declared.name,
      title: declared.title,
      address: addressOf(given),
      label: shown.label,
      text: typeof shown.value === 'string' ? shown.value : format(shown.value, shown.format),
      value: shown.value,
      ...(shown.format ? { format: shown.format } : {}),
      rules: typeof shown.value === 'string' ? [...asked].sort() : rulesBehind(shown.value),
      cautions,
    },
  };
}
