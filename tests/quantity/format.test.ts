import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, formatNumber, formatTape } from '../../src/quantity/format.ts';
import { byMethod, plus, quantity } from '../../src/quantity/quantity.ts';

/** By hand. */
const tapes: readonly [inches: number, mark: 8 | 16, printed: string][] = [
  [166.5, 8, '13 ft 10 1/2 in'],
  [166, 8, '13 ft 10 in'],
  [12, 8, '1 ft'],
  [0, 8, '0 in'],
  [0.5, 8, '1/2 in'],
  [12.5, 8, '1 ft 0 1/2 in'],
  [156.625, 8, '13 ft 0 5/8 in'],
  [11.99, 8, '1 ft'],
  [11.99, 16, '1 ft'],
  [3.0625, 16, '3 1/16 in'],
  [3.0625, 8, '3 1/8 in'],
  [-3.5, 8, '−3 1/2 in'],
  [0.03, 8, '0.03 in'],
  [-0.01, 16, '−0.01 in'],
  [24, 8, '2 ft'],
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
  [1.23456e-9, 4, '1.235 × 10^-9'],
  [1e-6, 4, '0.000001'],
  [12345.6, 4, '12346'],
  [10000, 4, '10000'],
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
  // 13.96 in is 13 and 7.68 eighths; in metres it is 0.354584.
  [format(quantity(13.96, 'in'), { tape: 8, round: 'down', metric: true }), '1 ft 1 7/8 in (0.3545 m)'],
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
  [format(quantity(66, 'ft'), { metric: true, figures: 3 }), '66 ft (20.1 m)'],
  [format(quantity(2, 'm'), { metric: true }), '2 m'],
  [format(quantity(2, 'ft2'), { tape: 8 }), '2 ft²'],
  [format(quantity(2, 'ft'), { unit: 'in' }), '24 in'],
];

describe('a quantity is printed with its unit', () => {
  test.each(printed)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});

/**
 * As prices are written: the sign before the number, a minus before the sign, two places or none. What was worked out has cents below a hundred
 * dollars; what was entered has those that it was entered with.
 */
const worked = (amount: number, unit: '$' | '$/year') => byMethod('by hand', [], amount, unit);
const prices: readonly [string, string][] = [
  [format(quantity(5, '$')), '$5.00'],
  [format(quantity(-5.5, '$')), '−$5.50'],
  [format(quantity(99.994, '$')), '$99.99'],
  [format(quantity(100, '$')), '$100'],
  [format(worked(1234.5, '$')), '$1235'],
  [format(worked(1234.5, '$'), { figures: 6 }), '$1235'],
  [format(worked(1234.5678, '$'), { figures: 7 }), '$1234.568'],
  [format(worked(99.994, '$')), '$99.99'],
  [format(plus(quantity(1234, '$'), quantity(0.4, '$'))), '$1234'],
  [format(quantity(1234.5, '$')), '$1234.50'],
  [format(quantity(1800, '$')), '$1800'],
  [format(worked(525.9, '$/year')), '$526 a year'],
  [format(worked(-525.9, '$/year')), '−$526 a year'],
  [format(quantity(0, '$')), '$0'],
  [format(quantity(0.01, '$')), '$0.01'],
  [format(quantity(0.004, '$')), '$0.004'],
  [format(quantity(5.25, '$'), { figures: 2 }), '$5.25'],
  [format(quantity(12.5, '$/year')), '$12.50 a year'],
  [format(quantity(-12.5, '$/year')), '−$12.50 a year'],
  [format(quantity(0.125, '$/kWh')), '$0.125 per kWh'],
  [format(quantity(12.5, '$/ft2')), '$12.50 per ft²'],
  [format(quantity(-2.5, '$/gal')), '−$2.50 per gal'],
  [format(quantity(3, '$/gal')), '$3 per gal'],
  [format(quantity(0.00003, '$/Btu')), '$0.00003 per Btu'],
];

describe('money is printed as a price is written', () => {
  test.each(prices)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});
