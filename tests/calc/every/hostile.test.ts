import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../../src/calc/calculations.ts';
import { addressOf, entriesIn } from '../../../src/calc/declare/address.ts';
import {
  type Answer,
  type AnyCalculation,
  answer,
  cellValue,
} from '../../../src/calc/declare/calculation.ts';
import { readFields } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { toSvg } from '../../../src/drawings/svg.ts';
import { drawingsFor } from '../../../src/islands/calculator/drawings.ts';
import { format } from '../../../src/quantity/format.ts';
import type { Quantity } from '../../../src/quantity/quantity.ts';
import { working } from '../../../src/quantity/working.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import {
  CASES,
  noNumbers,
  PATIENCE,
  poorSentences,
  shownAsTyped,
  timed,
  typedAnew,
} from './hostile-words.ts';

const rules = openRulebook(theProject().data);

const textOf = (value: Quantity | string, options = {}): string =>
  typeof value === 'string' ? value : format(value, options);

const workingOf = (value: Quantity | string, options = {}): string[] =>
  typeof value === 'string'
    ? []
    : working(value, options).flatMap(({ symbols, numbers, result, inputs }) => [
        symbols,
        numbers,
        result,
        ...inputs.map(({ text }) => text),
      ]);

/** Everything that the page of a calculation says of an answer. */
const textsOf = ({ figures, tables = {}, remarks }: Answer): string[] => [
  ...Object.values(figures).flatMap(({ value, format: how }) => [
    textOf(value, how),
    ...workingOf(value, how),
  ]),
  ...Object.values(tables).flatMap(({ rows, format: how }) =>
    rows.flatMap((row) =>
      Object.entries(row).map(([column, value]) => textOf(cellValue(value), how?.[column])),
    ),
  ),
  ...remarks.map(remarkText),
];

/** What is amiss with what a page would show for these entries; empty where all is well. */
function amiss(one: AnyCalculation, entries: unknown): string[] {
  const read = timed(() => answer(one, entries, rules));
  if (!read.ok) return poorSentences(read.problems);
  const found = noNumbers(textsOf(read.value));
  const values = readFields(one.fields, entries);
  if (found.length > 0 || !values.ok) return found;
  return noNumbers(
    drawingsFor(one.name, values.value, rules).flatMap(({ wide, narrow }) =>
      // Lines of a drawing may break.
      [wide, narrow].map((each) => toSvg(each, 'a').replaceAll('\n', ' ')),
    ),
  );
}

const each = calculations.map((one) => ({ name: one.name, one }));
/** Of all cases most are typed into calculations, and a fifth come by their addresses; the rest is the job's. */
const [TYPED, ADDRESSED] = [0.6, 0.2].map((share) => Math.ceil((CASES * share) / calculations.length)) as [
  number,
  number,
];

test('what is amiss is seen: a figure that is no number, a refusal without words, one field told twice', () => {
  expect(noNumbers(['3 in', 'NaN in', '-Infinity lb', 'undefined'])).toHaveLength(3);
  const problem = { field: 'a', label: 'A', found: '"NaN"', expected: 'a length' };
  expect(poorSentences([problem])).toEqual([]);
  expect(poorSentences([])).toHaveLength(1);
  expect(poorSentences([problem, problem])).toHaveLength(1);
  expect(poorSentences([{ ...problem, expected: 'NaN at most' }])).toHaveLength(1);
});

describe('whatever is typed into a calculation, its page says nothing that is no number, in good time', () => {
  test.each(each)(
    '$name',
    ({ one }) => {
      fc.assert(
        fc.property(typedAnew(one.fields, [one.example]), (entries) => {
          expect(amiss(one, entries)).toEqual([]);
        }),
        { numRuns: TYPED },
      );
    },
    PATIENCE,
  );
});

describe('whatever its address holds', () => {
  test.each(each)(
    '$name',
    ({ one }) => {
      const right = addressOf(one.example);
      const address = fc.oneof(
        typedAnew(one.fields, [one.example]).map((entries) => addressOf(entries)),
        fc
          .tuple(
            fc.nat(right.length),
            fc.nat(6),
            fc.constantFrom(...shownAsTyped, '&', '=', '.', '%', '%E0%A4%A', '.0.', '&__proto__.x=1'),
          )
          .map(([at, cut, put]) => right.slice(0, at) + put + right.slice(at + cut)),
        fc.string(),
      );
      fc.assert(
        fc.property(address, (text) => {
          const entries = timed(() => entriesIn(text));
          if (entries) expect(amiss(one, entries)).toEqual([]);
          expect(({} as { x?: unknown }).x).toBeUndefined();
        }),
        { numRuns: ADDRESSED },
      );
    },
    PATIENCE,
  );
});
