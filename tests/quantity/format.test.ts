import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, formatNumber, formatTape } from '../../src/quantity/format.ts';
import { quantity } from '../../src/quantity/quantity.ts';

/** By hand. */
const tapes: readonly [inches: number, mark: 8 | 16, printed: string][] = [
  [166.5, 8, '13 ft 10 1/2 in'],
  [166, 8, '13 ft 10 in'],
  [12, 8, '1 ft'],
  [0, 8, '0 in'],
  [0.5, 8, '1/2 in'],
  [12.5, 8, '1 ft 1/2 in'],
  [11.99, 8, '1 ft'],
  [11.99, 16, '1 ft'],
  [3.0625, 16, '3 1/16 in'],
  [3.0625, 8, '3 1/8 in'],
  [-3.5, 8, '−3 1/2 in'],
  [0.03, 8, '0.03 in'],
  [-0.01, 16, '−0.01 in'],
];

describe('a length is printed to the tape', () => {
  test.each(tapes)('%d in to 1/%d', (inches, mark, printed) => {
    expect(formatTape(quantity(inches, 'in'), mark)).toBe(printed);
  });
});

const numbers: readonly [amount: number, figures: number, printed: string][] = [
  [0, 4, '0'],
  [1.5, 4, '1.5'],
  [12345, 4, '12345'],
  [0.00012349, 4, '0.0001235'],
  [1e-9, 4, '1 × 10^-9'],
  [-2.5, 4, '−2.5'],
  [2.34567, 3, '2.35'],
  [100, 2, '100'],
  [9.9996, 4, '10'],
];

describe('a number is printed to its figures', () => {
  test.each(numbers)('%d to %d', (amount, figures, printed) => {
    expect(formatNumber(amount, figures)).toBe(printed);
  });
  test('what is not nought is never printed as nought', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.integer({ min: 1, max: 6 }),
        (amount, figures) => {
          if (amount === 0) return true;
          return (
            /[1-9]/.test(formatNumber(amount, figures)) &&
            /[1-9]/.test(formatTape(quantity(amount % 1e6 || 1e-3, 'in'), 8))
          );
        },
      ),
      { numRuns: 2000 },
    );
  });
});

/** By hand: the largest number of so many figures, or of so many marks, that is not above the amount. */
const down: readonly [printed: string, expected: string][] = [
  [formatNumber(1.9799, 3, 'down'), '1.97'],
  [formatNumber(2.2, 3, 'down'), '2.2'],
  [formatNumber(2.2 - 4e-16, 3, 'down'), '2.2'],
  [formatNumber(0.00129, 2, 'down'), '0.0012'],
  [formatNumber(12345.9, 4, 'down'), '12345'],
  [formatTape(quantity(14.374, 'in'), 8, 'down'), '1 ft 2 1/4 in'],
  [formatTape(quantity(14.375, 'in'), 8, 'down'), '1 ft 2 3/8 in'],
  [formatTape(quantity(0.1, 'in'), 8, 'down'), '0.1 in'],
  [format(quantity(1.9799, 'lb/ft3'), { figures: 3, round: 'down' }), '1.97 lb/ft³'],
  [format(quantity(13.99, 'in'), { tape: 8, round: 'down' }), '1 ft 1 7/8 in'],
];

describe('a greatest value is printed no greater than it is', () => {
  test.each(down)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});

const printed: readonly [string, string][] = [
  [format(quantity(1.5, 'lb/ft3')), '1.5 lb/ft³'],
  [format(quantity(1, 'bag')), '1 bag'],
  [format(quantity(2, 'bag')), '2 bags'],
  [format(quantity(3.56, 'h ft2 F/(Btu in)')), 'R-3.56 per in'],
  [format(quantity(30, 'h ft2 F/Btu')), 'R-30'],
  [format(quantity(10, 'percent')), '10 %'],
  [format(quantity(166, 'in'), { tape: 8, metric: true }), '13 ft 10 in (4.216 m)'],
  [format(quantity(66, 'ft'), { metric: true }), '66 ft (20.12 m)'],
];

describe('a quantity is printed with its unit', () => {
  test.each(printed)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});
