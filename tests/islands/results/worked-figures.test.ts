import { describe, expect, test } from 'vitest';
import { oneOfEachKind, type WorkedRow, workedRows } from '../../../src/islands/results/worked-figures.ts';
import { named, over, type Quantity, quantity, times } from '../../../src/quantity/quantity.ts';

const length = (symbol: string, amount: number) => named(quantity(amount, 'in'), symbol, 'A length');
const row = (name: string, value: Quantity): WorkedRow => ({ name, of: [{ title: 'How large', value }] });
const names = (rows: readonly WorkedRow[]): string[] => oneOfEachKind(rows).map(({ name }) => name);

describe('one row of each kind', () => {
  const product = (place: number) => times(length(`a${place}`, place), length('b', 2));

  test('of rows worked by the same arithmetic, the first: neither other amounts nor the numbers of symbols make another kind', () => {
    expect(names([row('first', product(1)), row('second', product(2)), row('third', product(13))])).toEqual([
      'first',
    ]);
  });

  test('a row worked otherwise stands by itself, wherever it is in the table', () => {
    const quotient = over(length('a1', 1), length('b', 2));
    expect(names([row('first', product(1)), row('other', quotient), row('third', product(3))])).toEqual([
      'first',
      'other',
    ]);
  });

  test('so does one whose amount stands in another column', () => {
    const column = { name: 'column', of: [{ title: 'How heavy', value: product(1) }] };
    expect(names([row('first', product(1)), column])).toEqual(['first', 'column']);
  });

  test('of no rows, none', () => {
    expect(oneOfEachKind([])).toEqual([]);
  });
});

test('rows hold what was worked out, under what names them; what was typed has no working', () => {
  const worked = times(length('a', 2), length('b', 3));
  const table = {
    title: 'Squares',
    columns: { what: 'What', side: 'Side', area: 'Area' },
    rows: [
      { what: 'cap', side: quantity(6, 'in'), area: worked },
      { what: 'typed', side: quantity(6, 'in'), area: quantity(36, 'in2') },
    ],
  };
  expect(workedRows(table)).toEqual([
    { name: 'What: cap', of: [{ title: 'Area', value: worked, format: {} }] },
  ]);
});
