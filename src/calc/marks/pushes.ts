import { byMethod, inches, named, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { keptOff, ringTold, runsInto } from '../ways/flue-ring.ts';
import { ray, readingTowards, type Stretch } from './directions.ts';
import { fewestDirections } from './fewest.ts';
import { checkOpening, clash, type Opening, seenFrom, stretchOf } from './opening.ts';
import { type Push, sharesUnreached } from './unreached.ts';

/** A push as far as it gets. */
export interface SentPush extends Push {
  /** It stops before the ring kept open about a flue. */
  readonly stopsAtRing: boolean;
  /** It goes on past the end of the stretch, towards a flue that a neighbouring opening is not blown behind. */
  readonly past: boolean;
}

/** A ring for a drawing, in inches from the opening. */
export interface DrawnRing {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Half the width of the flue itself, where it is known. */
  readonly flue?: number;
}

/** The pushes of an opening, and what of its stretch they bring the stream to. */
export interface Pushes {
  readonly opening: Opening;
  /** All that the directions rest on, and where each stops. */
  readonly told: readonly Quantity<'length'>[];
  readonly hose: Quantity<'length'>;
  readonly stretch: Stretch;
  readonly rings: readonly DrawnRing[];
  readonly sent: readonly SentPush[];
  /** Does the stream come to all of the stretch, were no ring in the way? */
  readonly covers: boolean;
  /** The share of the stretch, less its rings, that no push brings the stream to: what belongs there is not blown from here. */
  readonly unreached: Quantity<'number'>;
  /** What of it lies behind each ring, in the order of the opening's rings. */
  readonly behind: readonly Quantity<'number'>[];
}

/**
 * Which ways is the hose pushed from an opening, how far does each push get, and what of the stretch does the stream not come to?
 * The fewest directions, evenly round the clock to the nearest five minutes of its face, from which every place of the stretch lies within
 * the stream's reach of a push; each as long as the way to the stretch's edge less the stand-off. A push that would run into the ring
 * about a flue stops short of the ring by the stand-off. One more goes to each ring that is blown behind from here, in the place of one
 * round the clock that points the same way. Lengths are level: the slope of these roofs is slight. The method is our own.
 * @throws EntriesClash if the stretch has no length, the opening lies outside it or inside a ring, or the stand-off outdoes the stream.
 * @example pushesOf({ along: quantity(4, 'ft'), from: quantity(0, 'ft'), to: quantity(8, 'ft'), width: quantity(8, 'ft'), across: quantity(4, 'ft'), streamReach: quantity(3, 'ft') }, rules).sent.length // => 5
 */
export function pushesOf(opening: Opening, rules: Rulebook): Pushes {
  checkOpening(opening);
  const { streamReach, along, from, to, width, across } = opening;
  const standOff = opening.standOff ? inches(opening.standOff) : 0;
  const stretch = stretchOf(opening);
  const hose = rules.value('access.hose.diameter');
  const rings = (opening.rings ?? []).map((ring) => ({
    ring,
    ...seenFrom(opening, ring),
    off: keptOff(ring, hose),
  }));
  const about = rings.findIndex(({ x, y, off }) => Math.hypot(x, y) <= off);
  if (about >= 0)
    clash(
      `flues.${about}.along`,
      'Place along the roof',
      'the opening inside the ring kept open about it',
      'a place clear of the opening',
    );
  const { rays, covers } = fewestDirections(stretch, inches(streamReach), standOff);
  const past = rings
    .filter(({ ring }) => ring.blownBehind)
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
  const drawn = rings.map(({ ring, x, y }) => ({
    x,
    y,
    radius: inches(ring.across) / 2,
    ...(ring.flue ? { flue: inches(ring.flue) / 2 } : {}),
  }));
  const plain = [
    along,
    from,
    to,
    width,
    across,
    streamReach,
    ...(opening.standOff ? [opening.standOff] : []),
  ];
  // A ring stops some pushes, and the others change places with them.
  const told = rings.length > 0 ? [...plain, hose, ...rings.flatMap(({ ring }) => ringTold(ring))] : plain;
  const unreached =
    covers && rings.length === 0 ? undefined : sharesUnreached(stretch, sent, drawn, inches(streamReach));
  return {
    opening,
    told,
    hose,
    stretch,
    rings: drawn,
    sent,
    covers,
    unreached: named(
      byMethod(
        'places in the stretch that no push comes within the stream’s reach of, of all outside a ring',
        told,
        100 * (unreached?.all ?? 0),
        'percent',
      ),
      'su',
      'Stretch out of reach',
    ),
    behind: rings.map((_, place) =>
      named(
        byMethod(
          'places in the stretch that a push would come to, did the ring about this flue not stop it, of all outside a ring',
          told,
          100 * (unreached?.behind[place] ?? 0),
          'percent',
        ),
        `su${place + 1}`,
        'Stretch behind the flue',
      ),
    ),
  };
}
