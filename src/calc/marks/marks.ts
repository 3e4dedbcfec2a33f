import { format } from '../../quantity/format.ts';
import { byMethod, compare, inches, inUnit, named, type Quantity } from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { keptOff, type Ring, ringTold, runsInto } from '../ways/flue-ring.ts';
import { type ReachWord, reachOf, reachWord } from '../ways/reach.ts';
import {
  clock,
  EDGE_STEP,
  edgePlaces,
  fewestDirections,
  outOfReach,
  type Ray,
  ray,
  readingTowards,
  type Stretch,
} from './directions.ts';
import { sharesUnreached } from './unreached.ts';

/** On which hand does the starting end of the roof lie, as one stands at the opening and faces the ridge? */
export const hands = ['right hand', 'left hand'] as const;
export type Hand = (typeof hands)[number];

/** One opening and the stretch of cavity that is filled through it. */
export interface Opening {
  /** Place of the opening along the roof, and the ends of its stretch, from the starting end. */
  readonly along: Quantity<'length'>;
  readonly from: Quantity<'length'>;
  readonly to: Quantity<'length'>;
  /** Width of the cavity, and the place of the opening across it, from the eave on the opening's own side. */
  readonly width: Quantity<'length'>;
  readonly across: Quantity<'length'>;
  /** How far the fill flies from the hose, ahead and to its sides. */
  readonly streamReach: Quantity<'length'>;
  /** How far the hose stops short of the edge of the stretch; nothing where it is left out. */
  readonly standOff?: Quantity<'length'> | undefined;
  /** Where the starting end lies; on the right hand where it is left out, as it does from the back side of the plan. */
  readonly startingEnd?: Hand | undefined;
  /** How far the hose at hand can be pushed; left out, the usual reach of a flexible hose. */
  readonly reach?: Quantity<'length'> | undefined;
  /** Rings kept open about hot flues; their place across is from the same eave. A ring that is blown behind has a push of its own. */
  readonly rings?: readonly Ring[] | undefined;
  /** Where the trusses stand, in inches from the starting end. */
  readonly trusses?: readonly number[] | undefined;
}

/** One push: its direction, and where on the hose the tape goes. */
export interface HoseMark {
  /** 1 is the first to be worked, the farthest. */
  readonly order: number;
  readonly clock: string;
  readonly angle: Quantity<'angle'>;
  /** To the edge of the stretch, or to the ring about a flue if that comes first. */
  readonly distance: Quantity<'length'>;
  /** Where the tape goes: so far from the end of the hose. */
  readonly mark: Quantity<'length'>;
  readonly word: ReachWord;
  /** It stops before the ring kept open about a flue. */
  readonly stopsAtRing: boolean;
  /** It goes on past the end of the stretch, towards a flue that a neighbouring opening is not blown behind. */
  readonly past: boolean;
  /** Trusses that it crosses; undefined where none are known. */
  readonly trussesCrossed: number | undefined;
  /** Its direction and length, in inches, for a drawing. */
  readonly ray: Ray;
}

/** A ring for a drawing, in inches from the opening. */
export interface DrawnRing {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Half the width of the flue itself, where it is known. */
  readonly flue?: number;
}

/** Every push from one opening, the farthest first. */
export interface HoseMarks {
  readonly opening: Opening;
  /** All that the directions rest on, and where each stops. */
  readonly told: readonly Quantity<'length'>[];
  readonly marks: readonly HoseMark[];
  /** Does the stream come to all of the stretch, were no ring in the way? */
  readonly covers: boolean;
  /** How much of the stretch's edge lies beyond the stream behind a ring, or at all; 0 in where all is reached. */
  readonly missed: Quantity<'length'>;
  /** The share of the stretch, less its rings, that no push brings the stream to: what belongs there is not blown from here. */
  readonly unreached: Quantity<'number'>;
  /** What of it lies behind each ring, in the order of the opening's rings. */
  readonly behind: readonly Quantity<'number'>[];
  readonly reach: QuantityRange<'length'>;
  /** Directions in which a ring lies within the hose's own width of the opening: nothing is pushed there. */
  readonly unpushed: readonly string[];
  readonly hose: Quantity<'length'>;
  readonly stretch: Stretch;
  readonly rings: readonly DrawnRing[];
}

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

/** A place as exact as a tape is read: what arithmetic in another unit makes of it does not change the order. */
const settled = (amount: number): number => Math.round(amount * 1e6);

/**
 * Which ways round the clock is the hose pushed from an opening, and where does the tape go on it for each?
 * The fewest directions, evenly round the clock to the nearest five minutes of its face, from which every place of the stretch lies within
 * the stream's reach of a push; each as long as the way to the stretch's edge less the stand-off. A push that would run into the ring
 * about a flue stops short of the ring by the stand-off. One more goes to each ring that is blown behind from here, in the place of one
 * round the clock that points the same way. Lengths are level: the slope of these roofs is slight. The method is our own.
 * @throws EntriesClash if the stretch has no length, the opening lies outside it or inside a ring, or the stand-off outdoes the stream.
 * @example hoseMarks({ along: quantity(4, 'ft'), from: quantity(0, 'ft'), to: quantity(8, 'ft'), width: quantity(8, 'ft'), across: quantity(4, 'ft'), streamReach: quantity(3, 'ft') }, rules).marks.length // => 5
 */
export function hoseMarks(opening: Opening, rules: Rulebook): HoseMarks {
  checked(opening);
  const { streamReach, along, from, to, width, across } = opening;
  const standOff = opening.standOff ? inches(opening.standOff) : 0;
  const stretch = stretchOf(opening);
  const reach = reachOf(opening.reach, rules);
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
  const stopped = [...round, ...past].map((each) => {
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
  // A ring within the hose's own width of the opening leaves no push that a tape could mark.
  const pushed = stopped.filter(
    ({ ray, stopsAtRing }) => settled(ray.length) > (stopsAtRing ? settled(inches(hose)) : 0),
  );
  const told = [along, from, to, width, across, streamReach, ...(opening.standOff ? [opening.standOff] : [])];
  // A ring stops some pushes, and the others change places with them.
  const rests = rings.length > 0 ? [...told, hose, ...rings.flatMap(({ ring }) => ringTold(ring))] : told;
  const marks = pushed
    .sort((a, b) => settled(b.ray.length) - settled(a.ray.length) || a.ray.minutes - b.ray.minutes)
    .map(({ ray, stopsAtRing, past }, place): HoseMark => {
      const end = stopsAtRing ? 'the ring about a flue' : 'the edge of the stretch';
      const levelLength = (method: string, amount: number) =>
        inUnit(byMethod(method, rests, amount, 'in'), 'ft');
      const mark = named(
        levelLength(`from the opening at ${clock(ray.minutes)} to ${end}, less the stand-off`, ray.length),
        `m${place + 1}`,
        `Mark ${place + 1}, at ${clock(ray.minutes)}`,
      );
      return {
        order: place + 1,
        clock: clock(ray.minutes),
        angle: byMethod(
          past
            ? 'towards the flue'
            : 'one of the fewest directions, evenly round the clock, from which the stream comes to all of the stretch',
          rests,
          ray.minutes / 2,
          'degree',
        ),
        distance: levelLength(`from the opening at ${clock(ray.minutes)} to ${end}`, ray.length + standOff),
        mark,
        word: reachWord(mark, reach),
        stopsAtRing,
        past,
        trussesCrossed: opening.trusses && crossed(opening.trusses, opening, ray),
        ray,
      };
    });
  const drawn = rings.map(({ ring, x, y }) => ({
    x,
    y,
    radius: inches(ring.across) / 2,
    ...(ring.flue ? { flue: inches(ring.flue) / 2 } : {}),
  }));
  const whole = covers && rings.length === 0;
  const sent = stopped.map(({ ray }) => ray);
  const missed = whole ? 0 : outOfReach(sent, edgePlaces(stretch), inches(streamReach)).length * EDGE_STEP;
  const unreached = whole ? undefined : sharesUnreached(stretch, stopped, drawn, inches(streamReach));
  return {
    opening,
    told: rests,
    marks,
    covers,
    missed: named(
      byMethod(
        'places on the edge of the stretch that no push comes within the stream’s reach of, taken together',
        rests,
        missed,
        'in',
      ),
      'u',
      'Edge of the stretch out of reach',
    ),
    unreached: named(
      byMethod(
        'places in the stretch that no push comes within the stream’s reach of, of all outside a ring',
        rests,
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
          rests,
          100 * (unreached?.behind[place] ?? 0),
          'percent',
        ),
        `su${place + 1}`,
        'Stretch behind the flue',
      ),
    ),
    reach,
    stretch,
    unpushed: stopped
      .filter((each) => each.stopsAtRing && !pushed.includes(each))
      .map(({ ray }) => clock(ray.minutes)),
    hose,
    rings: drawn,
  };
}

/** Stops at entries that can't be true together. */
function checked({ along, from, to, width, across, streamReach, standOff }: Opening): void {
  if (compare(to, from) <= 0)
    clash('to', 'Stretch to', tape(to), `a place beyond the other end of the stretch at ${tape(from)}`);
  if (compare(along, from) < 0 || compare(along, to) > 0)
    clash(
      'along',
      'Place of the opening',
      tape(along),
      `a place in its stretch, ${tape(from)} to ${tape(to)}`,
    );
  if (!(inches(width) > 0)) clash('width', 'Width across the cavity', tape(width), 'more than nothing');
  if (inches(across) < 0 || compare(across, width) > 0)
    clash(
      'across',
      'Opening, from the eave',
      tape(across),
      `a place in the cavity, which is ${tape(width)} wide`,
    );
  if (!(inches(streamReach) > 0))
    clash('stream_reach', 'Reach of the stream', tape(streamReach), 'more than nothing');
  if (standOff && compare(standOff, streamReach) > 0)
    clash(
      'stand_off',
      'Stand-off',
      tape(standOff),
      `no more than the stream’s reach of ${tape(streamReach)}, or the edge of the stretch is never filled`,
    );
}

/** The stretch as seen by one who stands at the opening and faces the ridge. */
function stretchOf({ along, from, to, width, across, startingEnd }: Opening): Stretch {
  const [toStart, toFar] = [inches(along) - inches(from), inches(to) - inches(along)];
  const [right, left] = startingEnd === 'left hand' ? [toFar, toStart] : [toStart, toFar];
  return { left, right, up: inches(width) - inches(across), down: inches(across) };
}

/** Which way along the roof is the right hand: 1 away from the starting end, −1 towards it. */
const rightHand = (startingEnd: Hand | undefined): number => (startingEnd === 'left hand' ? 1 : -1);

/**
 * Where is a ring as one stands at the opening and faces the ridge: to the right hand and up the slope, in inches?
 * @example seenFrom({ along: quantity(4, 'ft'), across: quantity(4, 'ft') }, { along: quantity(3, 'ft'), at: quantity(5, 'ft') }) // => { x: 12, y: 12 }
 */
export const seenFrom = (
  { along, across, startingEnd }: Pick<Opening, 'along' | 'across' | 'startingEnd'>,
  ring: Pick<Ring, 'along' | 'at'>,
) => ({
  x: rightHand(startingEnd) * (inches(ring.along) - inches(along)),
  y: inches(ring.at) - inches(across),
});

/** How many trusses does a push cross? One that stands at the opening itself counts for none. */
function crossed(trusses: readonly number[], { along, startingEnd }: Opening, { x, length }: Ray): number {
  const start = inches(along);
  const end = start + rightHand(startingEnd) * x * length;
  const [low, high] = [Math.min(start, end), Math.max(start, end)];
  return trusses.filter((place) => settled(place) > settled(low) && settled(place) < settled(high)).length;
}
