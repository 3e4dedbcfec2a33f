import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/calc/holes/lay-out.ts';
import { bareRoof } from './roofs.ts';

const holesOn = (feet: number): number | undefined => {
  const found = layOut(bareRoof(feet));
  return found.outcome === 'meets-every-rule' ? found.layout.positions.length : undefined;
};

const halfFeet = (from: number, to: number) =>
  Array.from({ length: 2 * (to - from) + 1 }, (_, step) => from + step / 2);

// By hand: n holes and the n - 1 gaps between them take at least 6 + 12(n - 1) + 6 = 12n ft and at most 8 + 16(n - 1) + 8 = 16n ft.
describe('a bare roof under the ranges of the trade', () => {
  const reached = [
    { holes: 1, from: 12, to: 16 },
    { holes: 2, from: 24, to: 32 },
    { holes: 3, from: 36, to: 48 },
    { holes: 4, from: 48.5, to: 64 },
    { holes: 5, from: 64.5, to: 80 },
  ];
  test.each(reached)('takes $holes holes at every length from $from to $to ft', ({ holes, from, to }) => {
    for (const feet of halfFeet(from, to)) expect(holesOn(feet), `${feet} ft`).toBe(holes);
  });

  const between = [
    { from: 6, to: 11.5 },
    { from: 16.5, to: 23.5 },
    { from: 32.5, to: 35.5 },
  ];
  test.each(between)('holds no rule-keeping layout at any length from $from to $to ft', ({ from, to }) => {
    for (const feet of halfFeet(from, to)) expect(holesOn(feet), `${feet} ft`).toBeUndefined();
  });

  test('misses by an eighth of an inch just past 16 ft and just short of 24 ft', () => {
    for (const length of [192.125, 287.875]) {
      const found = layOut({ ...bareRoof(0), length });
      expect(found.outcome).toBe('least-departure');
      // By hand: 192 1/8 in is 1/8 in more than 2 × 96 in, and 287 7/8 in 1/8 in less than 72 + 144 + 72 in.
      if (found.outcome !== 'least-departure') return;
      expect(found.departures.reduce((sum, { by }) => sum + by, 0)).toBe(0.125);
    }
  });
});
