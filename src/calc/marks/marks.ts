import { byMethod, inches, inUnit, named, type Quantity } from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';
import { type ReachWord, reachOf, reachWord } from '../ways/reach.ts';
import { clock, type Ray } from './directions.ts';
import { type Opening, rightHand } from './opening.ts';
import { type Pushes, pushesOf } from './pushes.ts';
import { edgeUnreached } from './reached.ts';

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

/** Every push from one opening, the farthest first. */
export interface HoseMarks extends Pushes {
  readonly marks: readonly HoseMark[];
  /** How much of the stretch's edge lies beyond the stream behind a ring, or at all; 0 in where all is reached. */
  readonly missed: Quantity<'length'>;
  readonly reach: QuantityRange<'length'>;
  /** Directions in which a ring lies within the hose's own width of the opening: nothing is pushed there. */
  readonly unpushed: readonly string[];
}

/** What is nearer to another length than this, in inches, does not change the order: arithmetic in another unit makes it. */
const settled = (amount: number): number => Math.round(amount * 1e6);

/**
 * Which ways round the clock is the hose pushed from an opening, and where does the tape go on it for each? The pushes of the opening, each
 * as long as the way to the stretch's edge or to a ring, less the stand-off.
 * @throws EntriesClash if the stretch has no length, the opening lies outside it or inside a ring, or the stand-off outdoes the stream.
 * @example hoseMarks({ along: quantity(4, 'ft'), from: quantity(0, 'ft'), to: quantity(8, 'ft'), width: quantity(8, 'ft'), across: quantity(4, 'ft'), streamReach: quantity(3, 'ft') }, rules).marks.length // => 5
 */
export function hoseMarks(opening: Opening, rules: Rulebook): HoseMarks {
  const pushes = pushesOf(opening, rules);
  const { sent, hose, told, stretch, covers, rings } = pushes;
  const standOff = opening.standOff ? inches(opening.standOff) : 0;
  const reach = reachOf(opening.reach, rules);
  // A ring within the hose's own width of the opening leaves no push that a tape could mark.
  const pushed = sent.filter(
    ({ ray, stopsAtRing }) => settled(ray.length) > (stopsAtRing ? settled(inches(hose)) : 0),
  );
  const marks = [...pushed]
    .sort((a, b) => settled(b.ray.length) - settled(a.ray.length) || a.ray.minutes - b.ray.minutes)
    .map(({ ray, stopsAtRing, past }, place): HoseMark => {
      const end = stopsAtRing ? 'the ring about a flue' : 'the edge of the stretch';
      const levelLength = (method: string, amount: number) =>
        inUnit(byMethod(method, told, amount, 'in'), 'ft');
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
          told,
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
  const rays = sent.map(({ ray }) => ray);
  const missed = covers && rings.length === 0 ? 0 : edgeUnreached(stretch, rays, inches(opening.streamReach));
  return {
    ...pushes,
    marks,
    missed: named(
      byMethod(
        'places on the edge of the stretch that no push comes within the stream’s reach of, taken together',
        told,
        missed,
        'in',
      ),
      'u',
      'Edge of the stretch out of reach',
    ),
    reach,
    unpushed: sent
      .filter((each) => each.stopsAtRing && !pushed.includes(each))
      .map(({ ray }) => clock(ray.minutes)),
  };
}

/** How many trusses does a push cross? One that stands at the opening itself counts for none. */
function crossed(trusses: readonly number[], { along, startingEnd }: Opening, { x, length }: Ray): number {
  const start = inches(along);
  const end = start + rightHand(startingEnd) * x * length;
  const [low, high] = [Math.min(start, end), Math.max(start, end)];
  return trusses.filter((place) => settled(place) > settled(low) && settled(place) < settled(high)).length;
}
