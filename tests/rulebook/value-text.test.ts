import { describe, expect, test } from 'vitest';
import type { RuleValue } from '../../src/rulebook/schema.ts';
import { amountText, rangeText, valueHeadline, valueText } from '../../src/rulebook/value-text.ts';
import { valuesApart } from '../../src/rulebook/values-apart.ts';

const gap: RuleValue = { kind: 'between', low: 12, high: 16, unit: 'ft' };
const perInch: RuleValue = { kind: 'between', low: 3, high: 3.14, unit: 'h ft2 F/(Btu in)' };
const ways: RuleValue = { kind: 'one-of', choices: ['gable end', 'roof holes'] };
const rows: RuleValue = {
  kind: 'table',
  columns: [
    { name: 'at', title: 'At', unit: 'in', key: 'number' },
    { name: 'load', title: 'Load', unit: 'lb/ft2' },
  ],
  rows: [
    [1, 2],
    [2, 3],
  ],
};

/** As it should read in a sentence, and on its own. */
const printed: readonly [value: RuleValue, inSentence: string | undefined, headline: string][] = [
  [{ kind: 'exact', number: 16, unit: 'in' }, '16 in', '16 in'],
  [{ kind: 'at-least', number: 2, unit: 'in' }, '2 in', 'at least 2 in'],
  [{ kind: 'at-most', number: 10, unit: 'percent' }, '10 %', 'at most 10 %'],
  [{ kind: 'exact', number: 1978, unit: '1' }, '1978', '1978'],
  [{ kind: 'exact', number: 0.02221, unit: '1' }, '0.02221', '0.02221'],
  [{ kind: 'exact', number: 38, unit: 'h ft2 F/Btu' }, 'R-38', 'R-38'],
  [{ kind: 'exact', number: 2, unit: 'furlong' }, '2 furlong', '2 furlong'],
  [gap, '12 to 16 ft', 'between 12 and 16 ft'],
  [perInch, 'R-3 to R-3.14 per in', 'between R-3 and R-3.14 per in'],
  [ways, 'gable end, roof holes', 'one of: gable end, roof holes'],
  [rows, undefined, 'a table of 2 rows'],
  // By hand, of 2.54 cm to the inch: 9 cm is 3.543 in, 12 cm 4.724, 20 cm 7.874, 2 m 78.740; a bound goes to the side on which it holds, all else to the nearest.
  [{ kind: 'at-least', number: 9, unit: 'cm' }, '9 cm (3 9/16 in)', 'at least 9 cm (3 9/16 in)'],
  [{ kind: 'at-most', number: 9, unit: 'cm' }, '9 cm (3 1/2 in)', 'at most 9 cm (3 1/2 in)'],
  [{ kind: 'at-most', number: 2, unit: 'm' }, '2 m (6 ft 6 11/16 in)', 'at most 2 m (6 ft 6 11/16 in)'],
  [{ kind: 'exact', number: 20, unit: 'cm' }, '20 cm (7 7/8 in)', '20 cm (7 7/8 in)'],
  // Inches between two marks, as follow from a metric value: 11.9055 is 190.49 sixteenths, 2.3 is 36.8.
  [{ kind: 'exact', number: 11.9055, unit: 'in' }, '11.9055 in (11 7/8 in)', '11.9055 in (11 7/8 in)'],
  [{ kind: 'at-least', number: 2.3, unit: 'in' }, '2.3 in (2 5/16 in)', 'at least 2.3 in (2 5/16 in)'],
  [{ kind: 'at-most', number: 2.3, unit: 'in' }, '2.3 in (2 1/4 in)', 'at most 2.3 in (2 1/4 in)'],
  [{ kind: 'exact', number: 0.375, unit: 'in' }, '3/8 in', '3/8 in'],
  [
    { kind: 'between', low: 9, high: 12, unit: 'cm' },
    '9 to 12 cm (3 9/16 in to 4 11/16 in)',
    'between 9 and 12 cm (3 9/16 in to 4 11/16 in)',
  ],
];

describe('a value is printed as its source has it', () => {
  test.each(printed)('%o', (value, inSentence, headline) => {
    expect(valueText(value)).toBe(inSentence);
    expect(valueHeadline(value)).toBe(headline);
  });
});

const parts: readonly [value: RuleValue, part: string, text: string | undefined][] = [
  [gap, 'low', '12 ft'],
  [gap, 'high', '16 ft'],
  [gap, 'middle', undefined],
  [{ kind: 'exact', number: 16, unit: 'in' }, 'low', undefined],
  [ways, 'low', undefined],
  [rows, 'low', undefined],
];

describe('an end of a range is printed by itself; no other value has ends', () => {
  test.each(parts)('%o, %s', (value, part, text) => {
    expect(valueText(value, part)).toBe(text);
  });
});

describe('numbers keep what the source gives', () => {
  test('six figures are printed, so that no published value is rounded', () => {
    expect(amountText(0.268015, '1')).toBe('0.268015');
  });
  test('a range whose ends are one is one value', () => {
    expect(rangeText(2.2, 2.2, 'lb/ft2')).toBe('2.2 lb/ft²');
  });
});

describe('two values that differ, as texts that differ', () => {
  const exact = (number: number): RuleValue => ({ kind: 'exact', number, unit: 'in' });
  const table = (...rows: [string, number][]): RuleValue => ({
    kind: 'table',
    columns: [
      { name: 'board', title: 'Board' },
      { name: 'load', title: 'Load', unit: 'lb/ft2' },
    ],
    rows,
  });
  test.each<[what: string, before: RuleValue, after: RuleValue, told: readonly [string, string]]>([
    ['two numbers', exact(2), exact(3), ['2 in', '3 in']],
    [
      'two numbers that six figures print alike',
      exact(2),
      exact(2.00000001),
      ['{"kind":"exact","number":2,"unit":"in"}', '{"kind":"exact","number":2.00000001,"unit":"in"}'],
    ],
    [
      'two tables of as many rows, by the row that differs',
      table(['thin', 1.3], ['thick', 2.2]),
      table(['thin', 1.3], ['thick', 2.1]),
      ['thick, 2.2 lb/ft²', 'thick, 2.1 lb/ft²'],
    ],
    [
      'a table with a row more',
      table(['thin', 1.3]),
      table(['thin', 1.3], ['thick', 2.2]),
      ['no such row', 'thick, 2.2 lb/ft²'],
    ],
  ])('%s', (_, before, after, told) => expect(valuesApart(before, after)).toEqual(told));
});
