import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/calc/holes/lay-out.ts';
import { bruteForce, departureOf } from './brute-force.ts';
import { smallRoofs } from './roofs.ts';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** Steps that a binary number holds exactly, and steps that it does not: noise must not decide between equals. */
const steps = [1, 1 / 8, 0.1, 1 / 3, 2.54];

describe('the search agrees with trying every layout', () => {
  const cases = [
    { title: '1,000 crowded roofs of up to 26 marks', most: 26, roofs: 1000, seed: 20_261_125 },
    { title: '300 crowded roofs of up to 33 marks', most: 33, roofs: 300, seed: 7 },
  ];
  test.each(cases)('on $title, hole for hole', ({ most, roofs, seed }) => {
    const seen = { 'meets-every-rule': 0, 'least-departure': 0, 'no-room': 0 };
    let overSeams = 0;
    fc.assert(
      fc.property(smallRoofs(steps, { least: 6, most }), (roof) => {
        const found = layOut(roof);
        const best = bruteForce(roof);
        expect(found.outcome).toBe(best.outcome);
        seen[found.outcome]++;
        if (found.outcome === 'no-room') return;
        expect(found.layout.positions).toEqual(best.positions);
        if (found.layout.overSeam.includes(true)) overSeams++;
        if (found.outcome === 'meets-every-rule') return;
        expect(sum(found.departures.map(({ by }) => by))).toBeCloseTo(best.departure, 9);
        expect(departureOf(roof, found.layout.positions)).toBeCloseTo(best.departure, 9);
      }),
      { numRuns: roofs, seed },
    );
    // The roofs are no good as a check unless they bring up each case often.
    expect(seen['meets-every-rule']).toBeGreaterThan(roofs / 5);
    expect(seen['least-departure']).toBeGreaterThan(roofs / 5);
    expect(overSeams).toBeGreaterThan(roofs / 10);
  });

  test('on 300 roofs full of trusses and seams, some of which leave no room', () => {
    let noRoom = 0;
    const packed = smallRoofs(steps, { least: 6, most: 12 }).map((roof) => ({
      ...roof,
      memberWidth: 2 * roof.grid,
      trusses: [...roof.trusses, 1.5 * roof.grid, 5 * roof.grid],
      seams: [...roof.seams, 8 * roof.grid, 10.5 * roof.grid],
    }));
    fc.assert(
      fc.property(packed, (roof) => {
        const found = layOut(roof);
        const best = bruteForce(roof);
        expect(found.outcome).toBe(best.outcome);
        if (found.outcome === 'no-room') noRoom++;
        else expect(found.layout.positions).toEqual(best.positions);
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(noRoom).toBeGreaterThan(10);
  });
});
