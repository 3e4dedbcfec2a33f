import { describe, expect, test } from 'vitest';
import { figuresApart } from '../../src/quantity/apart.ts';
import { quantity } from '../../src/quantity/quantity.ts';

describe('an amount does not read like a bound that it is not', () => {
  test.each([
    ['the bound itself is told as was asked', 10, [10], 2],
    ['one far from it too', 12, [10], 2],
    ['10.4 reads 10.4, where two figures read 10', 10.4, [10], 3],
    ['10.004 takes five', 10.004, [10], 5],
    ['below it the same', 9.996, [10], 4],
    ['the lower of two bounds counts too', -10.04, [-10, 10], 4],
    ['without a bound nothing changes', 10.04, [], 2],
  ])('%s', (_, amount, bounds, expected) => {
    expect(
      figuresApart(
        quantity(amount, 'percent'),
        bounds.map((each) => quantity(each, 'percent')),
        2,
      ),
    ).toBe(expected);
  });

  test('a bound in another unit is told in that of the amount', () => {
    expect(figuresApart(quantity(10.04, 'percent'), [quantity(0.1, '1')], 2)).toBe(4);
  });
});
