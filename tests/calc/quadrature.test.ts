import { describe, expect, test } from 'vitest';
import { integral, integralOver, within } from './quadrature.ts';

/** By hand. */
const known: readonly [title: string, f: (x: number) => number, ends: readonly number[], value: number][] = [
  ['x² from 0 to 3 is 9', (x) => x * x, [0, 3], 9],
  ['sin from 0 to π is 2', Math.sin, [0, Math.PI], 2],
  [
    'a half circle of radius 2 has the area 2π',
    (x) => Math.sqrt(Math.max(0, 4 - x * x)),
    [-2, 2],
    2 * Math.PI,
  ],
  ['|x| from −1 to 2 is 2.5', Math.abs, [-1, 0, 2], 2.5],
  ['1/(1 + x) from 0 to 1 is ln 2', (x) => 1 / (1 + x), [0, 1], Math.LN2],
];

describe('the quadrature that the closed forms are held against is itself right', () => {
  test.each(known)('%s, to a part in 10^11', (_, f, ends, value) => {
    expect(within(1e-11, integralOver(f, ends), value)).toBe(true);
  });
  test('nothing lies between a place and itself', () => {
    expect(integral(Math.exp, 3, 3)).toBe(0);
  });
});
