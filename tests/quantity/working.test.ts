import { describe, expect, test } from 'vitest';
import {
  byMethod,
  input,
  minus,
  named,
  number,
  over,
  plus,
  quantity,
  roundedUp,
  times,
} from '../../src/quantity/quantity.ts';
import { rulesBehind, working } from '../../src/quantity/working.ts';

const volume = input(100, 'ft3', 'volume', { symbol: 'V', label: 'Volume' });
const density = quantity(
  1.5,
  'lb/ft3',
  { from: 'rule', rule: 'fill.density.usual', part: 'low' },
  { symbol: 'ρ', label: 'Density' },
);
const bag = input(40, 'lb/bag', 'bag', { symbol: 'wb', label: 'Net weight of a bag' });
const weight = named(times(volume, density), 'w', 'Weight');
const bags = named(over(weight, bag), 'n', 'Bags');
const whole = named(roundedUp(bags, quantity(1, 'bag')), 'N', 'Whole bags');

describe('a working shows what was computed', () => {
  test('symbols, numbers with units, result, a line a step, rounding on its own', () => {
    expect(
      working(whole).map(({ symbol, symbols, numbers, result, rounds }) => [
        symbol,
        symbols,
        numbers,
        result,
        rounds,
      ]),
    ).toEqual([
      ['w', 'V × ρ', '100 ft³ × 1.5 lb/ft³', '150 lb', false],
      ['n', 'w ÷ wb', '150 lb ÷ 40 lb a bag', '3.75 bags', false],
      ['N', 'n, rounded up to the next 1 bag', '3.75 bags, rounded up to the next 1 bag', '4 bags', true],
    ]);
  });

  test('each input is tagged as yours or as a rule', () => {
    expect(working(weight)[0]?.inputs).toEqual([
      { symbol: 'V', label: 'Volume', text: '100 ft³', whose: 'yours' },
      {
        symbol: 'ρ',
        label: 'Density',
        text: '1.5 lb/ft³',
        whose: 'rule',
        rule: 'fill.density.usual',
        part: 'low',
      },
    ]);
  });

  test('a step used twice is shown once', () => {
    expect(working(named(plus(weight, weight), 'ww', 'Twice')).map(({ symbol }) => symbol)).toEqual([
      'w',
      'ww',
    ]);
  });

  test('an input has no working', () => {
    expect(working(volume)).toEqual([]);
  });

  test('a method is told by its formula and what went in', () => {
    const area = named(
      byMethod('π r²', [input(2, 'in', 'r', { symbol: 'r' })], Math.PI * 4, 'in2'),
      'A',
      'Area',
    );
    expect(working(area)[0]).toMatchObject({ symbols: 'π r²', numbers: 'r = 2 in', result: '12.57 in²' });
  });

  test('the rules behind a figure come out in the order of their use, each once', () => {
    expect(rulesBehind(whole, weight)).toEqual(['fill.density.usual']);
  });
});

/** By the rules of arithmetic: × before +, and the right side of − and ÷ is bracketed where it must be. */
const [a, b, c] = [1, 2, 3].map((amount, place) => number(amount, { symbol: 'abc'[place] ?? '' }));
if (!a || !b || !c) throw new Error('three numbers are needed');
const brackets: readonly [string, string][] = [
  [working(times(plus(a, b), c))[0]?.symbols ?? '', '(a + b) × c'],
  [working(plus(times(a, b), c))[0]?.symbols ?? '', 'a × b + c'],
  [working(minus(a, minus(b, c)))[0]?.symbols ?? '', 'a − (b − c)'],
  [working(minus(minus(a, b), c))[0]?.symbols ?? '', 'a − b − c'],
  [working(over(a, times(b, c)))[0]?.symbols ?? '', 'a ÷ (b × c)'],
  [working(over(times(a, b), c))[0]?.symbols ?? '', 'a × b ÷ c'],
];

describe('brackets stand where they are needed and nowhere else', () => {
  test.each(brackets)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});
