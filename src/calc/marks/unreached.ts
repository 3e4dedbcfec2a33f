import { comesTo, fromRay, type Ray, type Stretch } from './directions.ts';

/** A round space that nothing is blown into, in inches from the opening. */
interface Round {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** How wide the squares are that a stretch is counted in, in inches. */
const SQUARE = 2;

/** A push as it goes, and as it would go were no ring in its way. */
export interface Push {
  readonly ray: Ray;
  readonly whole: Ray;
  /** The ring that stops it, by its place among the rings. */
  readonly ring: number | undefined;
}

/** Shares of a stretch, less the rings in it, that no push brings the stream to. */
export interface Unreached {
  readonly all: number;
  /** What of it lies behind each ring, in the order of the rings; the rest no push would come to if there were none. */
  readonly behind: readonly number[];
}

/**
 * What share of a stretch, less the rings in it, does no push come within the stream's reach of, and behind which ring? Counted in squares of
 * 2 in by their middles, so it is off by about as much as the squares along the shadow's border.
 * By hand: a push of 10 in along a strip 20 in long and 4 in wide, its stream 2 in to the sides and past the end, leaves about 8 of 20 in.
 * @example sharesUnreached({ left: 0, right: 20, up: 2, down: 2 }, [{ ray: { minutes: 180, x: 1, y: 0, length: 10 }, whole: { minutes: 180, x: 1, y: 0, length: 10 }, ring: undefined }], [], 2).all // => 0.4
 */
export function sharesUnreached(
  { left, right, up, down }: Stretch,
  pushes: readonly Push[],
  rings: readonly Round[],
  streamReach: number,
): Unreached {
  let [all, missed] = [0, 0];
  const behind = rings.map(() => 0);
  // What came to a square likely comes to the next one.
  let near = pushes[0];
  for (let x = SQUARE / 2 - left; x < right; x += SQUARE)
    for (let y = SQUARE / 2 - down; y < up; y += SQUARE) {
      if (rings.some((ring) => (x - ring.x) ** 2 + (y - ring.y) ** 2 < ring.radius ** 2)) continue;
      all++;
      if (near && comesTo(near.ray, x, y, streamReach)) continue;
      near = pushes.find(({ ray }) => comesTo(ray, x, y, streamReach));
      if (near) continue;
      missed++;
      const ring = hiddenBy(pushes, x, y, streamReach);
      if (ring !== undefined) behind[ring] = (behind[ring] ?? 0) + 1;
    }
  const share = (squares: number): number => all && squares / all;
  return { all: share(missed), behind: behind.map(share) };
}

/** Which ring stops the push that would come nearest to a place? */
function hiddenBy(pushes: readonly Push[], x: number, y: number, streamReach: number): number | undefined {
  const would = pushes.filter(({ whole, ring }) => ring !== undefined && comesTo(whole, x, y, streamReach));
  const nearest = Math.min(...would.map(({ whole }) => fromRay(whole, x, y)));
  return would.find(({ whole }) => fromRay(whole, x, y) === nearest)?.ring;
}
