import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { dimensions } from '../../src/quantity/dimension.ts';
import {
  amountIn,
  byMethod,
  compare,
  excess,
  input,
  inUnit,
  larger,
  minus,
  number,
  over,
  plus,
  type Quantity,
  QuantityError,
  quantity,
  roundedUp,
  smaller,
  times,
  total,
  warmerBy,
} from '../../src/quantity/quantity.ts';
import { working } from '../../src/quantity/working.ts';

/** By hand, from 12 in to the foot and 1728 in3 to the cubic foot. */
const byHand: readonly [what: string, got: Quantity, amount: number, unit: string][] = [
  ['1 ft + 6 in is 1.5 ft', plus(quantity(1, 'ft'), quantity(6, 'in')), 1.5, 'ft'],
  ['1 ft − 6 in is 0.5 ft', minus(quantity(1, 'ft'), quantity(6, 'in')), 0.5, 'ft'],
  ['2 ft × 3 ft is 6 ft2', times(quantity(2, 'ft'), quantity(3, 'ft')), 6, 'ft2'],
  ['18 in × 2 ft is 3 ft2', times(quantity(18, 'in'), quantity(2, 'ft')), 3, 'ft2'],
  ['6 ft2 ÷ 2 ft is 36 in', over(quantity(6, 'ft2'), quantity(2, 'ft')), 36, 'in'],
  ['10 ft3 × 1.5 lb/ft3 is 15 lb', times(quantity(10, 'ft3'), quantity(1.5, 'lb/ft3')), 15, 'lb'],
  ['45 lb ÷ 30 lb a bag is 1.5 bags', over(quantity(45, 'lb'), quantity(30, 'lb/bag')), 1.5, 'bag'],
  ['12 in × 1.5 lb/ft3 is 1.5 lb/ft2', times(quantity(12, 'in'), quantity(1.5, 'lb/ft3')), 1.5, 'lb/ft2'],
  [
    '10 in × R-3 per in is R-30',
    times(quantity(10, 'in'), quantity(3, 'h ft2 F/(Btu in)')),
    30,
    'h ft2 F/Btu',
  ],
  ['1 ÷ R-4 is U 0.25', over(number(1), quantity(4, 'h ft2 F/Btu')), 0.25, 'Btu/(h ft2 F)'],
  ['10 % of 50 lb is 5 lb', times(quantity(50, 'lb'), quantity(10, 'percent')), 5, 'lb'],
  ['1 + 10 % is 1.1', plus(number(1), quantity(10, 'percent')), 1.1, '1'],
  ['the smaller of 1 ft and 6 in is 0.5 ft', smaller(quantity(1, 'ft'), quantity(6, 'in')), 0.5, 'ft'],
  ['the larger of 1 ft and 30 in is 2.5 ft', larger(quantity(1, 'ft'), quantity(30, 'in')), 2.5, 'ft'],
  ['6.2 bags rounded up are 7', roundedUp(quantity(6.2, 'bag'), quantity(1, 'bag')), 7, 'bag'],
  ['7 bags and a trillionth stay 7', roundedUp(quantity(7 + 1e-12, 'bag'), quantity(1, 'bag')), 7, 'bag'],
  ['7 bags and a ten-billionth stay 7', roundedUp(quantity(7 + 1e-10, 'bag'), quantity(1, 'bag')), 7, 'bag'],
  ['7 bags and a millionth are 8', roundedUp(quantity(7 + 1e-6, 'bag'), quantity(1, 'bag')), 8, 'bag'],
  [
    'of a million bags the half of a millionth is let pass',
    roundedUp(quantity(1e6 + 5e-7, 'bag'), quantity(1, 'bag')),
    1e6,
    'bag',
  ],
  ['5 bags by fours are 8', roundedUp(quantity(5, 'bag'), quantity(4, 'bag')), 8, 'bag'],
  ['14.5 in by whole feet are 24 in', roundedUp(quantity(14.5, 'in'), quantity(1, 'ft')), 24, 'in'],
  ['1 ft more than 6 in is 0.5 ft', excess(quantity(1, 'ft'), quantity(6, 'in')), 0.5, 'ft'],
  ['6 in is no more than 1 ft', excess(quantity(6, 'in'), quantity(1, 'ft')), 0, 'in'],
  ['68 F is as warm as 20 C', warmerBy(quantity(68, 'F'), quantity(20, 'C')), 0, 'F difference'],
  ['0 bags stay 0', roundedUp(quantity(0, 'bag'), quantity(1, 'bag')), 0, 'bag'],
  [
    '1 ft, 6 in and 1 ft make 2.5 ft',
    total([quantity(1, 'ft'), quantity(6, 'in'), quantity(1, 'ft')]),
    2.5,
    'ft',
  ],
];

describe('arithmetic carries the unit', () => {
  test.each(byHand)('%s', (_, got, amount, unit) => {
    expect(got.unit).toBe(unit);
    expect(got.amount).toBeCloseTo(amount, 12);
  });

  test('12 in and 1 ft compare as equal', () => {
    expect(compare(quantity(12, 'in'), quantity(1, 'ft'))).toBe(0);
  });

  test('a conversion keeps the name and the origin', () => {
    const length = inUnit(input(24, 'in', 'home.length', { symbol: 'L' }), 'ft');
    expect(length).toMatchObject({
      amount: 2,
      unit: 'ft',
      symbol: 'L',
      origin: { from: 'input', field: 'home.length' },
    });
  });

  test('an eighth of an inch is exact in feet and back, for every mark of a 200 ft tape', () => {
    for (let mark = 0; mark <= 200 * 12 * 8; mark++) {
      const inches = mark / 8;
      expect(amountIn(inUnit(quantity(inches, 'in'), 'ft'), 'in')).toBe(inches);
    }
  });

  test('a reading in its own unit is what was read, to the last bit', () => {
    for (let tenth = 0; tenth <= 1000; tenth++)
      expect(amountIn(quantity(tenth / 10, 'C'), 'C')).toBe(tenth / 10);
  });

  test('amounts that only floating noise sets apart compare as equal, others do not', () => {
    // In binary 0.1 + 0.2 is a hair more than 0.3.
    const noisy = plus(quantity(0.1, 'ft'), quantity(0.2, 'ft'));
    expect(noisy.amount).not.toBe(0.3);
    expect(compare(noisy, quantity(0.3, 'ft'))).toBe(0);
    expect(compare(quantity(0.300001, 'ft'), quantity(0.3, 'ft'))).toBeGreaterThan(0);
    expect(excess(noisy, quantity(0.3, 'ft')).amount).toBe(0);
  });

  test('a little below nought rounds up to 0, not to −0', () => {
    expect(roundedUp(quantity(-0.5, 'bag'), quantity(1, 'bag')).amount).toBe(0);
  });

  test('one alone added up is itself', () => {
    const one = quantity(1, 'ft');
    expect(total([one])).toBe(one);
  });

  test('what is made without an origin is a constant', () => {
    expect(quantity(1, 'ft').origin).toEqual({ from: 'constant' });
    expect(number(1).origin).toEqual({ from: 'constant' });
  });
});

const [foot, inch, two] = [quantity(1, 'ft'), quantity(1, 'in'), number(2)];
const [warm, cool] = [quantity(70, 'F'), quantity(20, 'C')];
const remembered: readonly [operator: string, got: Quantity, operands: readonly Quantity[]][] = [
  ['+', plus(foot, inch), [foot, inch]],
  ['−', minus(foot, inch), [foot, inch]],
  ['−', excess(foot, inch), [foot, inch]],
  ['−', warmerBy(warm, cool), [warm, cool]],
  ['+', total([foot, inch, foot]), [foot, inch, foot]],
  ['×', times(foot, inch), [foot, inch]],
  ['×', times(foot, two), [foot, two]],
  ['×', times(two, foot), [two, foot]],
  ['÷', over(foot, inch), [foot, inch]],
  ['÷', over(foot, two), [foot, two]],
  ['smaller of', smaller(foot, inch), [foot, inch]],
  ['larger of', larger(foot, inch), [foot, inch]],
  ['rounded up', roundedUp(foot, inch), [foot, inch]],
];

test('no two dimensions are told by the same powers', () => {
  expect(new Set(Object.values(dimensions)).size).toBe(Object.keys(dimensions).length);
});

test('what is no more is told as the larger of 0 and the difference, so that the working is true', () => {
  const [line] = working(excess(inch, foot));
  expect(line).toMatchObject({ numbers: 'larger of 0 in and 1 in − 1 ft', result: '0 in' });
});

describe('a result remembers what it was worked from', () => {
  test.each(remembered)('%s', (operator, got, operands) => {
    expect(got.origin).toEqual({ from: 'operation', operator, operands });
  });
});

describe('dimensions are checked', () => {
  test('what the types can see, the type check refuses', () => {
    const feet = quantity(1, 'ft');
    const pounds = quantity(1, 'lb');
    // @ts-expect-error feet and pounds don't add
    expect(() => plus(feet, pounds)).toThrow(QuantityError);
    // @ts-expect-error a length is not counted in pounds
    expect(() => amountIn(feet, 'lb')).toThrow(QuantityError);
    expectTypeOf(times(feet, feet)).toEqualTypeOf<Quantity<'area'>>();
    expectTypeOf(over(quantity(1, 'lb/ft2'), feet)).toEqualTypeOf<Quantity<'density'>>();
    expectTypeOf(over(feet, feet)).toEqualTypeOf<Quantity<'number'>>();
  });

  const clear: readonly [string, () => unknown, RegExp][] = [
    [
      'adding feet to pounds names both',
      () => plus(quantity(1, 'ft') as Quantity, quantity(2, 'lb') as Quantity),
      /1 ft \(length\).*2 lb \(weight\)/,
    ],
    [
      'comparing an area with a length names both',
      () => compare(quantity(1, 'ft2') as Quantity, quantity(2, 'ft') as Quantity),
      /area.*length/,
    ],
    [
      'multiplying pounds by pounds is measured by nothing',
      () => times(quantity(1, 'lb'), quantity(2, 'lb')),
      /nothing here is measured that way/,
    ],
    [
      'subtracting pounds from feet names both',
      () => minus(quantity(1, 'ft') as Quantity, quantity(2, 'lb') as Quantity),
      /^can't subtract 1 ft \(length\) and 2 lb \(weight\)/,
    ],
    [
      'adding up feet and pounds names both',
      () => total([quantity(1, 'ft') as Quantity, quantity(2, 'lb') as Quantity]),
      /^can't add 1 ft \(length\) and 2 lb \(weight\)/,
    ],
    [
      'rounding feet to pounds names both',
      () => roundedUp(quantity(1, 'ft') as Quantity, quantity(2, 'lb') as Quantity),
      /^can't round 1 ft \(length\) and 2 lb \(weight\)/,
    ],
    [
      'readings are not added up',
      () => total([quantity(1, 'F'), quantity(2, 'F')]),
      /^can't add 1 F, which is a reading/,
    ],
    [
      'a voltage is only read, never doubled',
      () => times(quantity(2, 'kV'), number(2)),
      /^can't multiply 2 kV \(voltage\) and 2 1 \(number\): nothing here is measured that way/,
    ],
    ['dividing by nought is refused', () => over(quantity(1, 'lb'), quantity(0, 'lb/bag')), /other than 0/],
    ['NaN is no amount', () => quantity(Number.NaN, 'ft'), /finite/],
    ['infinity is no amount', () => quantity(Number.POSITIVE_INFINITY, 'ft'), /finite/],
    ['nothing can be added up', () => total([]), /nothing to add up/],
    [
      'rounding to a step of 0 is refused',
      () => roundedUp(quantity(1, 'bag'), quantity(0, 'bag')),
      /above 0/,
    ],
    ['a method that gives NaN is refused', () => byMethod('x', [], Number.NaN, 'in'), /finite/],
  ];
  test.each(clear)('%s', (_, attempt, message) => {
    expect(attempt).toThrow(message);
  });
});

const lengths = fc
  .double({ min: -1e4, max: 1e4, noNaN: true })
  .chain((amount) =>
    fc.constantFrom('in', 'ft', 'mm', 'cm', 'm').map((unit) => quantity(amount, unit as 'in')),
  );

describe('arithmetic keeps its laws, whatever the units', () => {
  const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

  test('a + b is b + a', () => {
    fc.assert(
      fc.property(lengths, lengths, (a, b) => near(amountIn(plus(a, b), 'in'), amountIn(plus(b, a), 'in'))),
    );
  });
  test('a + b − b is a', () => {
    fc.assert(
      fc.property(
        lengths,
        lengths,
        (a, b) => Math.abs(amountIn(minus(plus(a, b), b), 'in') - amountIn(a, 'in')) < 1e-6,
      ),
    );
  });
  test('a × b is b × a', () => {
    fc.assert(
      fc.property(lengths, lengths, (a, b) =>
        near(amountIn(times(a, b), 'in2'), amountIn(times(b, a), 'in2')),
      ),
    );
  });
  test('the smaller is at most the larger, and both are one of the two', () => {
    fc.assert(
      fc.property(lengths, lengths, (a, b) => {
        const [low, high] = [amountIn(smaller(a, b), 'in'), amountIn(larger(a, b), 'in')];
        return low <= high + 1e-9 && near(low + high, amountIn(a, 'in') + amountIn(b, 'in'));
      }),
    );
  });
});
