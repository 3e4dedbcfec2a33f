import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly, type Ray, ray, type Stretch } from '../../../src/calc/marks/directions.ts';
import { fewestDirections } from '../../../src/calc/marks/fewest.ts';
import { sharesUnreached } from '../../../src/calc/marks/unreached.ts';
import { places, round, worst } from './brute-force.ts';

/** A push straight to the right, of this length in inches. */
const right = (length: number): Ray => ({ minutes: 180, x: 1, y: 0, length });
const strip: Stretch = { left: 0, right: 200, up: 20, down: 20 };
/** Pushes that no ring stops. */
const free = (rays: readonly Ray[]) => rays.map((ray) => ({ ray, whole: ray, ring: undefined }));

/**
 * By hand: a strip 200 in long and 40 in wide, its stream 20 in to the sides. A push of 100 in serves 100 in of it whole, and the half
 * round of 20 in past its end: 100 · 40 + π/2 · 20² = 4628.3 of 8000 in2. A ring of radius 10 in has 314.2 in2.
 */
describe('what no push comes to is left of the stretch', () => {
  test.each<
    [title: string, rays: readonly Ray[], rings: { x: number; y: number; radius: number }[], share: number]
  >([
    ['all of it without a push', [], [], 1],
    ['nothing where the push goes to the far end', [right(200)], [], 0],
    ['the rest of the strip past a push of half of it', [right(100)], [], 1 - (4000 + 200 * Math.PI) / 8000],
    [
      'less the ring in what is left',
      [right(100)],
      [{ x: 160, y: 0, radius: 10 }],
      (8000 - 4000 - 200 * Math.PI - 100 * Math.PI) / (8000 - 100 * Math.PI),
    ],
    [
      'and of no ring where the push has been',
      [right(100)],
      [{ x: 50, y: 0, radius: 10 }],
      (8000 - 4000 - 200 * Math.PI) / (8000 - 100 * Math.PI),
    ],
  ])('%s', (_, rays, rings, share) => {
    // Middle lines of strips of 4 in tell a half round of 628 in2 to some hundredth of it, and a ring of 314 in2 to some thirtieth, of 8000 in2.
    expect(Math.abs(sharesUnreached(strip, free(rays), rings, 20).all - share)).toBeLessThan(0.003);
  });

  test('a ring up the slope takes from what lies up the slope', () => {
    // By hand: of 200 by 40 in, all of it above the opening, the push of 100 in serves 100 by 20 in and the quarter round of 20 in past its end.
    const above: Stretch = { left: 0, right: 200, up: 40, down: 0 };
    const { all } = sharesUnreached(above, free([right(100)]), [{ x: 160, y: 30, radius: 10 }], 20);
    const without = 8000 - 100 * Math.PI;
    expect(Math.abs(all - (without - 2000 - 100 * Math.PI) / without)).toBeLessThan(0.003);
  });

  test('as much as by a look at places all over the stretch', () => {
    const side = fc.integer({ min: 20, max: 120 });
    let most = 0;
    fc.assert(
      fc.property(
        fc.record({ left: side, right: side, up: side, down: side }),
        fc.integer({ min: 4, max: 12 }),
        fc.integer({ min: 10, max: 40 }),
        (box, count, stream) => {
          const pushes = round(box, count, 0);
          const looked = places(box, 1);
          const missed = looked.filter(([x, y]) => worst(pushes, [[x, y]]) > stream);
          const rays = evenly(count).map((minutes) => ray(box, minutes, 0));
          const { all } = sharesUnreached(box, free(rays), [], stream);
          most = Math.max(most, all);
          // A place stands for 1 in2, and half of those along a border count wrongly; those at the edge stand for half a square.
          expect(Math.abs(all - missed.length / looked.length)).toBeLessThan(0.02);
        },
      ),
      { numRuns: 30 },
    );
    expect(most).toBeGreaterThan(0.1);
  });

  test('nothing of a stretch that its directions cover', () => {
    const stretch: Stretch = { left: 84, right: 84, up: 99, down: 67 };
    expect(sharesUnreached(stretch, free(fewestDirections(stretch, 24, 6).rays), [], 24).all).toBe(0);
  });

  /**
   * By hand: a push to the right stops after 100 of 200 in, one to the left after 120. Past them 100 and 80 in by 40 stay out of reach, less
   * the half round of 20 in past each end, and less the ring of 10 in in each: of 400 by 40 in less the two rings.
   */
  test('each place is left behind the ring that stops the push which would come there', () => {
    const both: Stretch = { left: 200, right: 200, up: 20, down: 20 };
    const left = (length: number): Ray => ({ minutes: 540, x: -1, y: 0, length });
    const rings = [
      { x: -160, y: 0, radius: 10 },
      { x: 140, y: 0, radius: 10 },
    ];
    const { all, behind } = sharesUnreached(
      both,
      [
        { ray: right(100), whole: right(200), ring: 1 },
        { ray: left(120), whole: left(200), ring: 0 },
      ],
      rings,
      20,
    );
    const stretch = 400 * 40 - 2 * 100 * Math.PI;
    const [byLeft, byRight] = [80, 100].map((rest) => rest * 40 - 200 * Math.PI - 100 * Math.PI);
    expect(Math.abs((behind[0] ?? 0) - (byLeft ?? 0) / stretch)).toBeLessThan(0.008);
    expect(Math.abs((behind[1] ?? 0) - (byRight ?? 0) / stretch)).toBeLessThan(0.008);
    expect((behind[0] ?? 0) + (behind[1] ?? 0)).toBeCloseTo(all, 12);
  });

  test('what no push would come to were no ring there lies behind none', () => {
    const rings = [{ x: 120, y: 0, radius: 10 }];
    const { all, behind } = sharesUnreached(
      strip,
      [{ ray: right(100), whole: right(150), ring: 0 }],
      rings,
      20,
    );
    // Of 200 in the last 50, less a half round, stay out of reach in any case.
    const stretch = 200 * 40 - 100 * Math.PI;
    expect(Math.abs(all - (behind[0] ?? 0) - (2000 - 200 * Math.PI) / stretch)).toBeLessThan(0.008);
  });
});

test('what two stopped pushes would have come to lies behind the ring of the nearer: as much behind either, where one mirrors the other', () => {
  // A square with the opening in its corner, a push along each side, each stopped 20 in from its start; all is the same turned over the diagonal.
  const push = (x: number, y: number, ring: number) => {
    const whole = { minutes: 180 * x, x, y, length: 200 };
    return { ray: { ...whole, length: 20 }, whole, ring };
  };
  const { behind } = sharesUnreached(
    { left: 0, right: 200, up: 200, down: 0 },
    [push(1, 0, 0), push(0, 1, 1)],
    [
      { x: 30, y: 0, radius: 5 },
      { x: 0, y: 30, radius: 5 },
    ],
    80,
  );
  const [along = 0, up = 0] = behind;
  expect(along).toBeGreaterThan(0.2);
  expect(Math.abs(along - up)).toBeLessThan(0.002);
});

test('what either of two stopped pushes would have come to lies behind the ring of the nearer alone', () => {
  // One push runs along the top of the stretch, the other rises away from it: every place of the stretch is nearer to the first, and most lie within
  // the 60 in of the second too, which at 100 in off is 0.28 · 100 = 28 in above the top.
  const push = (x: number, y: number, ring: number) => {
    const whole = { minutes: 180 * x, x, y, length: 200 };
    return { ray: { ...whole, length: 20 }, whole, ring };
  };
  const { all, behind } = sharesUnreached(
    { left: 0, right: 200, up: 0, down: 20 },
    [push(0.96, 0.28, 0), push(1, 0, 1)],
    // Both stand off the stretch, and take nothing from it.
    [
      { x: 29, y: 9, radius: 5 },
      { x: 30, y: 5, radius: 5 },
    ],
    60,
  );
  // Past 20 in and the stream's 60 more: 120 of 200 in, and by the bow of the stream's end, at most 60 − √(60² − 20²) = 3.4 in, a little more.
  expect(all).toBeGreaterThan(0.6);
  expect(all).toBeLessThan(0.6 + 3.5 / 200);
  expect(behind[0]).toBe(0);
  expect(behind[1]).toBeCloseTo(all, 12);
});
