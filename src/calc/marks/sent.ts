import { runsInto } from '../ways/flue-ring.ts';
import { ray, readingTowards, type Stretch } from './directions.ts';
import { fewestDirections } from './fewest.ts';
import { type Push, sharesUnreached, type Unreached } from './unreached.ts';

/** What an opening's pushes have to do with, in plain numbers: inches from the opening, to the right hand and up the slope. */
export interface Around {
  readonly stretch: Stretch;
  readonly streamReach: number;
  readonly standOff: number;
  readonly rings: readonly {
    readonly x: number;
    readonly y: number;
    readonly radius: number;
    /** How near to its middle the middle of the hose comes. */
    readonly off: number;
    readonly blownBehind: boolean;
  }[];
}

/** A push as far as it gets. */
export interface SentPush extends Push {
  /** It stops before the ring kept open about a flue. */
  readonly stopsAtRing: boolean;
  /** It goes on past the end of the stretch, towards a flue that a neighbouring opening is not blown behind. */
  readonly past: boolean;
}

/** The pushes as far as they get. */
export interface Sent {
  readonly sent: readonly SentPush[];
  /** Does the stream come to all of the stretch, were no ring in the way? */
  readonly covers: boolean;
  /** What they leave out. */
  readonly unreached: Unreached;
}

/**
 * Which ways is the hose pushed from an opening, how far does each push get, and what does the stream not come to?
 * The fewest directions, evenly round the clock to the nearest five minutes of its face, from which every place of the stretch lies within
 * the stream's reach of a push; each as long as the way to the stretch's edge less the stand-off. A push that would run into the ring
 * about a flue stops short of the ring by the stand-off. One more goes to each ring that is blown behind from here, in the place of one
 * round the clock that points the same way. Lengths are level: the slope of these roofs is slight. The method is our own.
 * By hand: up the slope the ring's edge lies 6 from the opening.
 * @example sendPushes({ stretch: { left: 9, right: 9, up: 9, down: 9 }, streamReach: 9, standOff: 1, rings: [{ x: 0, y: 8, radius: 1, off: 2, blownBehind: false }] }).sent[0].ray.length // => 5
 */
export function sendPushes({ stretch, streamReach, standOff, rings }: Around): Sent {
  const { rays, covers } = fewestDirections(stretch, streamReach, standOff);
  const past = rings
    .filter(({ blownBehind }) => blownBehind)
    .map(({ x, y, off }) => ({
      ...ray(stretch, readingTowards(x, y), standOff),
      // However the reading is rounded, the hose ends no nearer to the middle of the flue than this.
      length: Math.max(0, Math.hypot(x, y) - off - standOff),
    }));
  const round = rays.filter(({ minutes }) => past.every((each) => each.minutes !== minutes));
  const sent = [...round, ...past].map((each): SentPush => {
    const met = rings.flatMap(({ x, y, off }, ring) => {
      const into = runsInto(x * each.x + y * each.y, x * each.y - y * each.x, off);
      return into && into.from < each.length + standOff ? [{ from: into.from, ring }] : [];
    });
    const [first] = met.sort((a, b) => a.from - b.from);
    const length = Math.max(0, first ? first.from - standOff : each.length);
    const isPast = past.includes(each);
    return {
      ray: { ...each, length },
      whole: each,
      ring: first?.ring,
      stopsAtRing: isPast || first !== undefined,
      past: isPast,
    };
  });
  const nothing = { all: 0, behind: [] };
  const whole = covers && rings.length === 0;
  return {
    sent,
    covers,
    unreached: whole ? nothing : sharesUnreached(stretch, sent, rings, streamReach),
  };
}
