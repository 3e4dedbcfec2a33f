import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LayoutResult, layOut } from '../../../src/calc/holes/lay-out.ts';
import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { departureOf, movementOf, patchesOverSeams, spreadOf } from './brute-force.ts';
import { bareRoof, every, mirrored, scaled, smallRoofs } from './roofs.ts';

const eighths = (least: number, most: number) =>
  fc.integer({ min: 8 * least, max: 8 * most }).map((marks) => marks / 8);

/** Roofs of 10 to 80 ft as crews meet them. */
const realRoofs: fc.Arbitrary<LayoutProblem> = fc
  .record({
    length: eighths(120, 960),
    trussSpacing: fc.constantFrom(16, 19.25, 24, 48),
    firstTruss: eighths(0, 16),
    seamSpacing: fc.constantFrom(9.5, 24, 36, 48),
    firstSeam: eighths(0, 9),
    vents: fc.array(fc.record({ middle: eighths(0, 960), reach: eighths(8, 30) }), { maxLength: 6 }),
  })
  .map(({ length, trussSpacing, firstTruss, seamSpacing, firstSeam, vents }) => ({
    ...bareRoof(length / 12),
    trusses: every(trussSpacing, firstTruss, length),
    seams: every(seamSpacing, firstSeam, length),
    obstacles: vents.map(({ middle, reach }) => ({ from: middle - reach, to: middle + reach, name: 'vent' })),
  }));

const wholeMarks = smallRoofs([1, 1 / 8], { least: 6, most: 26 }).map((roof) => ({
  ...roof,
  length: Math.ceil(roof.length / roof.grid) * roof.grid,
}));
const anyRoof = fc.oneof(realRoofs, wholeMarks);

/** Everything a layout is judged by, in order; the first difference decides, and less is better. */
function judged(roof: LayoutProblem, found: LayoutResult): number[] {
  if (found.outcome === 'no-room') return [2];
  const { positions } = found.layout;
  const holes = [positions.length, patchesOverSeams(roof, positions)];
  const movement = movementOf(roof, positions);
  return found.outcome === 'meets-every-rule'
    ? [0, ...holes, spreadOf(positions), movement]
    : [1, departureOf(roof, positions), ...holes, movement];
}

function isBetter(a: readonly number[], b: readonly number[]): boolean {
  for (const [at, value] of a.entries()) {
    const other = b[at] ?? 0;
    if (Math.abs(value - other) > 1e-7) return value < other;
  }
  return false;
}

const inRange = ({ low, high }: { low: number; high: number }, value: number) =>
  value >= low && value <= high;

describe('every layout', () => {
  test('keeps clear of trusses, seams and obstacles, lies on the roof, and never lets two patches overlap', () => {
    fc.assert(
      fc.property(anyRoof, (roof) => {
        const found = layOut(roof);
        if (found.outcome === 'no-room') return;
        const { positions, gaps } = found.layout;
        const radius = roof.holeDiameter / 2;
        expect(positions.length).toBeGreaterThan(0);
        for (const x of positions) {
          expect(Number.isInteger(x / roof.grid)).toBe(true);
          expect(x).toBeGreaterThanOrEqual(radius);
          expect(x).toBeLessThanOrEqual(roof.length - radius);
          for (const truss of roof.trusses)
            expect(Math.abs(x - truss)).toBeGreaterThan(radius + roof.memberWidth / 2);
          for (const seam of roof.seams) expect(Math.abs(x - seam)).toBeGreaterThan(radius);
          for (const { from, to } of roof.obstacles) expect(x > from && x < to).toBe(false);
        }
        for (const gap of gaps) expect(gap).toBeGreaterThanOrEqual(roof.patchSide);
      }),
      { numRuns: 1000, seed: 1 },
    );
  });

  test('holds its ranges, or lists each departure with what was found and by how much', () => {
    fc.assert(
      fc.property(anyRoof, (roof) => {
        const found = layOut(roof);
        if (found.outcome === 'no-room') return;
        const { positions, gaps } = found.layout;
        const departing = found.outcome === 'least-departure' ? found.departures : [];
        const expected = [
          inRange(roof.first, positions[0] ?? 0) ? [] : ['first'],
          gaps.flatMap((gap, hole) => (inRange(roof.spacing, gap) ? [] : [`spacing ${hole} ${hole + 1}`])),
          inRange(roof.last, roof.length - (positions.at(-1) ?? 0)) ? [] : ['last'],
        ].flat();
        expect(
          departing.map((each) =>
            each.rule === 'spacing' ? `spacing ${each.between.join(' ')}` : each.rule,
          ),
        ).toEqual(expected);
        for (const { found: value, allowed, by } of departing) {
          expect(by).toBe(value < allowed.low ? allowed.low - value : value - allowed.high);
        }
        if (found.outcome === 'least-departure') expect(departing.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000, seed: 2 },
    );
  });

  test('says of itself what can be worked out from its positions, and never a NaN', () => {
    fc.assert(
      fc.property(anyRoof, (roof) => {
        const found = layOut(roof);
        expect(JSON.stringify(found)).not.toMatch(/null|NaN/);
        if (found.outcome === 'no-room') return;
        const { positions, evenPlaces, moved, overSeam, gaps, spread } = found.layout;
        expect(gaps).toEqual(positions.slice(1).map((x, hole) => x - (positions[hole] ?? 0)));
        expect(spread).toBe(spreadOf(positions));
        expect(moved).toEqual(positions.map((x, hole) => x - (evenPlaces[hole] ?? 0)));
        expect(moved.reduce((sum, by) => sum + Math.abs(by), 0)).toBeCloseTo(movementOf(roof, positions), 9);
        expect(overSeam.filter(Boolean).length).toBe(patchesOverSeams(roof, positions));
      }),
      { numRuns: 1000, seed: 3 },
    );
  });

  test('is as good seen from the other end of the roof', () => {
    fc.assert(
      fc.property(anyRoof, (roof) => {
        const there = layOut(roof);
        const back = layOut(mirrored(roof));
        expect(back.outcome).toBe(there.outcome);
        const [a, b] = [judged(roof, there), judged(mirrored(roof), back)];
        for (const [at, value] of a.entries()) expect(b[at]).toBeCloseTo(value, 9);
      }),
      { numRuns: 1000, seed: 4 },
    );
  });

  test('is twice as long on a roof twice as long', () => {
    fc.assert(
      fc.property(anyRoof, (roof) => {
        const once = layOut(roof);
        const twice = layOut(scaled(roof, 2));
        expect(twice.outcome).toBe(once.outcome);
        if (once.outcome === 'no-room' || twice.outcome === 'no-room') return;
        expect(twice.layout.positions).toEqual(once.layout.positions.map((x) => 2 * x));
        expect(twice.layout.moved).toEqual(once.layout.moved.map((by) => 2 * by));
      }),
      { numRuns: 1000, seed: 5 },
    );
  });

  test('is never the better for one more obstacle', () => {
    const obstacle = fc.record({ from: fc.double({ min: 0, max: 1, noNaN: true }), size: eighths(0, 40) });
    fc.assert(
      fc.property(anyRoof, obstacle, (roof, { from, size }) => {
        const start = from * roof.length;
        const end = start + size * 8 * roof.grid;
        const crowded = {
          ...roof,
          obstacles: [...roof.obstacles, { from: start, to: end, name: 'one more' }],
        };
        expect(isBetter(judged(crowded, layOut(crowded)), judged(roof, layOut(roof)))).toBe(false);
      }),
      { numRuns: 1000, seed: 6 },
    );
  });

  test('comes out the same in whatever order trusses, seams and obstacles are listed', () => {
    fc.assert(
      fc.property(realRoofs, (roof) => {
        const reversed = {
          ...roof,
          trusses: roof.trusses.toReversed(),
          seams: roof.seams.toReversed(),
          obstacles: roof.obstacles.toReversed(),
        };
        expect(layOut(reversed)).toEqual(layOut(roof));
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});
