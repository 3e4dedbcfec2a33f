import { evenly, type Ray, ray, type Stretch } from './directions.ts';
import { coversStretch } from './reached.ts';

/**
 * Limits of the search, and no rules: what is asked of a plan is that the stream comes everywhere, in however many pushes. Fewer than four leave out a side.
 * Of 36 two stand twenty minutes of the clock apart, and another one brings them nearer by less than a thirtieth: a stretch that these leave a part of wants to be
 * shorter, or a stream that reaches farther.
 */
export const FEWEST = 4;
export const MOST = 36;

export interface Fewest {
  readonly rays: readonly Ray[];
  /** Does the stream come to all of the stretch? If not even the most directions do, those are given. */
  readonly covers: boolean;
}

/**
 * The fewest directions evenly round the clock from which the stream comes to all of the stretch.
 * By hand: four pushes end in the middles of the sides, 1 from each corner.
 * @example fewestDirections({ left: 1, right: 1, up: 1, down: 1 }, 1, 0).rays.length // => 4
 */
export function fewestDirections(stretch: Stretch, streamReach: number, standOff: number): Fewest {
  const around = (count: number): Ray[] => evenly(count).map((minutes) => ray(stretch, minutes, standOff));
  for (let count = FEWEST; count <= MOST; count++) {
    const rays = around(count);
    if (coversStretch(stretch, rays, streamReach)) return { rays, covers: true };
  }
  return { rays: around(MOST), covers: false };
}
