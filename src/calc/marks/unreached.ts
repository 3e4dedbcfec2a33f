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
  const [columns, rows] = [left + right, up + down].map((side) => Math.max(1, Math.round(side / SQUARE)));
  const middle = (from: number, side: number, count: number, place: number) =>
    from + ((place + 0.5) / count) * side;
  let [all, missed] = [0, 0];
  for (let column = 0; column < (columns ?? 1); column++) {
    const x = middle(-left, left + right, columns ?? 1, column);
    for (let row = 0; row < (rows ?? 1); row++) {
      const y = middle(-down, up + down, rows ?? 1, row);
      if (rings.some((ring) => (x - ring.x) ** 2 + (y - ring.y) ** 2 < ring.radius ** 2)) continue;
      all++;
      if (!rays.some((each) => comesTo(each, x, y, streamReach))) missed++;
    }
  }
  return all === 0 ? 0 : missed / all;
}
