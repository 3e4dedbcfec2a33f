import { describe, expect, test } from 'vitest';
import { cavity } from '../../../src/calc/cavity/declaration.ts';
import { leftOf } from '../../../src/calc/cavity/open-within.ts';
import { fillVolume } from '../../../src/calc/cavity/volume.ts';
import { EntriesClash } from '../../../src/calc/declare/calculation.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { integralOver } from '../quadrature.ts';
import { figure } from '../told.ts';

test('a part of a circle to the left of a line, by Simpson’s rule and by school', () => {
  for (const t of [-1, -0.999, -0.8, -0.3, 0, 0.5, 0.99, 1])
    expect(leftOf(t)).toBeCloseTo(
      integralOver((x) => 2 * Math.sqrt(Math.max(0, 1 - x * x)), [-1, t]),
      11,
    );
  // Half of it; a third of the turn less its triangle lies beyond a line at a half; none and all beyond the ends.
  expect(leftOf(0)).toBeCloseTo(Math.PI / 2, 14);
  expect(leftOf(-0.5)).toBeCloseTo(Math.PI / 3 - Math.sqrt(3) / 4, 14);
  expect(leftOf(0.5)).toBeCloseTo((2 * Math.PI) / 3 + Math.sqrt(3) / 4, 14);
  expect([leftOf(-2), leftOf(2)]).toEqual([0, Math.PI]);
});

describe('spaces kept open leave something to fill, or are refused', () => {
  const [free, length] = [quantity(10, 'ft2'), quantity(1, 'ft')];
  const net = (open: number) =>
    fillVolume({ free, old: quantity(0, 'ft2'), framing: quantity(0, 'ft2') }, length, [
      quantity(open, 'ft3'),
    ]).net;
  // By hand: 10 ft2 × 1 ft less what is kept open.
  test('half a cubic foot less than the cavity', () =>
    expect(amountIn(net(9.5), 'ft3')).toBeCloseTo(0.5, 12));
  test.each([
    ['as much as the cavity', 10],
    ['half a cubic foot more', 10.5],
  ])('%s', (_, open) => expect(() => net(open)).toThrow(EntriesClash));
});

describe('a space kept open at the edge of the section takes only what stands in it', () => {
  // By hand: 2 ft across in a cavity 1 ft deep, π/4 · 4 · 1 = π ft3.
  test.each<[title: string, at: string, volume: number]>([
    ['in the middle', '5 ft', Math.PI],
    ['as near as it stands inside', '12 in', Math.PI],
    ['at the eave', '0 in', Math.PI / 2],
    ['at the other edge', '10 ft', Math.PI / 2],
    // On this side of a line at half the radius lie 2π/3 + √3/4 of a circle of 1 ft.
    ['half of its radius inside', '6 in', (2 * Math.PI) / 3 + Math.sqrt(3) / 4],
  ])('%s', (_, at, volume) => {
    const entries = {
      shape: 'level',
      width: '10 ft',
      eave: '12 in',
      length: '60 ft',
      kept_open: [{ across: '24 in', at }],
    };
    expect(figure(cavity, entries, 'kept_open', 'ft3')).toBeCloseTo(volume, 9);
  });
});
