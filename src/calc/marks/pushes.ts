import { byMethod, inches, named, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { keptOff, ringTold } from '../ways/flue-ring.ts';
import type { Stretch } from './directions.ts';
import { checkOpening, clash, type Opening, seenFrom, stretchOf } from './opening.ts';
import { type Around, type Sent, type SentPush, sendPushes } from './sent.ts';

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
 * Which ways is the hose pushed from an opening, how far does each push get, and what of the stretch does the stream not come to? The
 * pushes are sent by a method in plain numbers, which a caller may give so that it is remembered.
 * @throws EntriesClash if the stretch has no length, the opening lies outside it or inside a ring, or the stand-off outdoes the stream.
 * @example pushesOf({ along: quantity(4, 'ft'), from: quantity(0, 'ft'), to: quantity(8, 'ft'), width: quantity(8, 'ft'), across: quantity(4, 'ft'), streamReach: quantity(3, 'ft') }, rules).sent.length // => 5
 */
export function pushesOf(
  opening: Opening,
  rules: Rulebook,
  send: (around: Around) => Sent = sendPushes,
): Pushes {
  checkOpening(opening);
  const { streamReach, along, from, to, width, across } = opening;
  const standOff = opening.standOff ? inches(opening.standOff) : 0;
  const stretch = stretchOf(opening);
  const hose = rules.value('access.hose.diameter');
  const rings = (opening.rings ?? []).map((ring) => ({
    ...seenFrom(opening, ring),
    radius: inches(ring.across) / 2,
    off: keptOff(ring, hose),
    blownBehind: ring.blownBehind === true,
  }));
  const about = rings.findIndex(({ x, y, off }) => Math.hypot(x, y) <= off);
  if (about >= 0)
    clash(
      `flues.${about}.along`,
      'Place along the roof',
      'the opening inside the ring kept open about it',
      'a place clear of the opening',
    );
  const { sent, covers, unreached } = send({ stretch, streamReach: inches(streamReach), standOff, rings });
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
  const told = rings.length > 0 ? [...plain, hose, ...(opening.rings ?? []).flatMap(ringTold)] : plain;
  return {
    opening,
    told,
    hose,
    stretch,
    rings: rings.map(({ x, y, radius }, place) => {
      const flue = opening.rings?.[place]?.flue;
      return { x, y, radius, ...(flue ? { flue: inches(flue) / 2 } : {}) };
    }),
    sent,
    covers,
    unreached: named(
      byMethod(
        'places in the stretch that no push comes within the stream’s reach of, of all outside a ring',
        told,
        100 * unreached.all,
        'percent',
      ),
      'su',
      'Stretch out of reach',
    ),
    behind: unreached.behind.map((share, place) =>
      named(
        byMethod(
          'places in the stretch that a push would come to, did the ring about this flue not stop it, of all outside a ring',
          told,
          100 * share,
          'percent',
        ),
        `su${place + 1}`,
        'Stretch behind the flue',
      ),
    ),
  };
}
