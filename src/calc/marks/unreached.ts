import { comesTo, type Ray, type Zone } from './directions.ts';

/** A round space that nothing is blown into, in inches from the opening. */
interface Round {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** How wide the squares are that a zone is counted in, in inches. */
const SQUARE = 2;

/**
 * What share of a zone, less the rings in it, does no push come within the stream's reach of? Counted in squares of 2 in by their middles,
 * so it is off by about as much as the squares along the shadow's border.
 * By hand: a push of 10 in along a strip 20 in long and 4 in wide, its stream 2 in to the sides and past the end, leaves about 8 of 20 in.
 * @example shareUnreached({ left: 0, right: 20, up: 2, down: 2 }, [{ minutes: 180, x: 1, y: 0, length: 10 }], [], 2) // => 0.4
 */
export function shareUnreached(
  { left, right, up, down }: Zone,
  rays: readonly Ray[],
  rings: readonly Round[],
  streamReach: number,
): number {
  let [all, missed] = [0, 0];
  for (let x = SQUARE / 2 - left; x < right; x += SQUARE)
    for (let y = SQUARE / 2 - down; y < up; y += SQUARE) {
      if (rings.some((ring) => Math.hypot(x - ring.x, y - ring.y) < ring.radius)) continue;
      all++;
      if (!rays.some((each) => comesTo(each, x, y, streamReach))) missed++;
    }
  return all && missed / all;
}
