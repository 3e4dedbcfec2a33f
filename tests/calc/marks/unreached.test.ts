import { describe, expect, test } from 'vitest';
import { fewestDirections, type Ray, type Zone } from '../../../src/calc/marks/directions.ts';
import { shareUnreached } from '../../../src/calc/marks/unreached.ts';

/** A push straight to the right, of this length in inches. */
const right = (length: number): Ray => ({ minutes: 180, x: 1, y: 0, length });
const strip: Zone = { left: 0, right: 200, up: 20, down: 20 };

/**
 * By hand: a strip 200 in long and 40 in wide, its stream 20 in to the sides. A push of 100 in serves 100 in of it whole, and the half
 * round of 20 in past its end: 100 · 40 + π/2 · 20² = 4628.3 of 8000 in2. A ring of radius 10 in has 314.2 in2.
 */
describe('what no push comes to is left of the zone', () => {
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
    // Squares of 2 in along a round border: half a square of 4 in2 along some 60 in of it, of 8000 in2.
    expect(Math.abs(shareUnreached(strip, rays, rings, 20) - share)).toBeLessThan(0.008);
  });

  test('nothing of a zone that its directions cover', () => {
    const zone: Zone = { left: 84, right: 84, up: 99, down: 67 };
    expect(shareUnreached(zone, fewestDirections(zone, 24, 6).rays, [], 24)).toBe(0);
  });
});
