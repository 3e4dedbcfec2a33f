import { describe, expect, test } from 'vitest';
import {
  byMethod,
  input,
  larger,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
  roundedUp,
  smaller,
  times,
} from '../../src/quantity/quantity.ts';
import { rulesBehind, working, workings } from '../../src/quantity/working.ts';

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

  test('an input that goes into two lines is told with the first', () => {
    const twice = named(plus(weight, times(volume, density)), 'ww', 'Twice');
    expect(working(twice).map(({ inputs }) => inputs.map(({ symbol }) => symbol))).toEqual([['V', 'ρ'], []]);
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

  test('a method without a name still has a line of its own, and its result stands in the next', () => {
    const circle = byMethod('π r²', [input(2, 'in', 'r', { symbol: 'r' }), number(7)], 12.5, 'in2');
    const pipe = named(times(circle, input(2, 'in', 'h', { symbol: 'h' })), 'V', 'Volume');
    expect(
      working(pipe).map(({ symbol, label, symbols, numbers }) => [symbol, label, symbols, numbers]),
    ).toEqual([
      ['', '', 'π r²', 'r = 2 in, 7'],
      ['V', 'Volume', '12.5 in² × h', '12.5 in² × 2 in'],
    ]);
  });

  test('only the last line is printed as asked; the steps before keep their figures', () => {
    // 100 x 1.2346 = 123.46; over 40, 3.0865.
    const step = named(times(volume, quantity(1.2346, 'lb/ft3')), 'w', 'Weight');
    expect(working(over(step, bag), { figures: 2 }).map(({ result }) => result)).toEqual([
      '123.5 lb',
      '3.1 bags',
    ]);
  });

  test('a plain number keeps six figures, whatever is measured keeps four', () => {
    const shown = (q: Quantity) => working(times(q, bag))[0]?.numbers;
    expect(shown(number(Math.PI))).toBe('3.14159 × 40 lb a bag');
    expect(shown(input(Math.PI, '1', 'x'))).toBe('3.142 × 40 lb a bag');
    expect(shown(quantity(Math.PI, 'bag'))).toBe('3.142 bags × 40 lb a bag');
  });

  test('arithmetic without a name is written out, and what went into it is told; plain numbers are not', () => {
    const [line] = working(over(times(volume, plus(density, quantity(1, 'lb/ft3'))), bag));
    expect(line?.symbols).toBe('V × (ρ + 1 lb/ft³) ÷ wb');
    expect(line?.inputs.map(({ symbol }) => symbol)).toEqual(['V', 'ρ', 'wb']);
  });

  test('a rule of one value has no part', () => {
    const whole = quantity(2, 'in', { from: 'rule', rule: 'a.b' });
    expect(working(plus(whole, whole))[0]?.inputs[0]).toStrictEqual({
      symbol: '',
      label: '',
      text: '2 in',
      whose: 'rule',
      rule: 'a.b',
    });
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
  [working(plus(a, plus(b, c)))[0]?.symbols ?? '', 'a + b + c'],
  [working(times(a, times(b, c)))[0]?.symbols ?? '', 'a × b × c'],
  [working(minus(a, times(b, c)))[0]?.symbols ?? '', 'a − b × c'],
  [working(minus(a, plus(b, c)))[0]?.symbols ?? '', 'a − (b + c)'],
  [working(over(a, named(times(b, c), 'd', 'D'))).at(-1)?.symbols ?? '', 'a ÷ d'],
  [working(larger(plus(a, b), c))[0]?.symbols ?? '', 'larger of a + b and c'],
  [working(times(smaller(a, b), c))[0]?.symbols ?? '', '(smaller of a and b) × c'],
  [working(minus(a, larger(b, c)))[0]?.symbols ?? '', 'a − (larger of b and c)'],
  [working(smaller(larger(a, b), c))[0]?.symbols ?? '', 'smaller of (larger of a and b) and c'],
  [working(roundedUp(plus(a, b), c))[0]?.symbols ?? '', 'a + b, rounded up to the next c'],
];

describe('brackets stand where they are needed and nowhere else', () => {
  test.each(brackets)('%s', (got, expected) => {
    expect(got).toBe(expected);
  });
});

describe('workings that stand one below the other tell each step once', () => {
  const told = workings([
    { title: 'Weight', value: weight },
    { title: 'Whole bags', value: whole },
    { title: 'Bags', value: bags, format: { figures: 2 } },
    { title: 'Weight again', value: weight },
    { title: 'Volume', value: volume },
  ]);
  const symbols = told.map(({ lines }) => lines.map(({ symbol }) => symbol));
  const above = told.map(({ above }) => above.map(({ under, line }) => `${line.symbol}, ${under}`));

  test.each([
    { title: 'the first tells all', place: 0, lines: ['w'], from: [] },
    { title: 'the next names what it takes from it', place: 1, lines: ['n', 'N'], from: ['w, Weight'] },
    {
      title: 'a step that is printed another way there is told again, with what it takes itself',
      place: 2,
      lines: ['n'],
      from: ['w, Weight'],
    },
    { title: 'a figure that was worked before is named itself', place: 3, lines: [], from: ['w, Weight'] },
    { title: 'an input has nothing to tell', place: 4, lines: [], from: [] },
  ])('$title', ({ place, lines, from }) => {
    expect(symbols[place]).toEqual(lines);
    expect(above[place]).toEqual(from);
  });

  test('what stands behind what is taken is not named again', () => {
    const twoDays = named(times(whole, number(2)), 'NN', 'Bags of two days');
    const [, second] = workings([
      { title: 'Whole bags', value: whole },
      { title: 'Two days', value: twoDays },
    ]);
    expect(second?.above.map(({ line }) => line.symbol)).toEqual(['N']);
  });

  test('two steps worked apart that read alike are one', () => {
    const apart = (): Quantity => named(times(volume, density), 'w', 'Weight');
    const [, second] = workings([
      { title: 'One', value: apart() },
      { title: 'Two', value: named(over(apart() as typeof weight, bag), 'n', 'Bags') },
    ]);
    expect(second?.lines.map(({ symbol }) => symbol)).toEqual(['n']);
    expect(second?.above.map(({ under }) => under)).toEqual(['One']);
  });

  test('none of none', () => {
    expect(workings([])).toEqual([]);
  });
});
