import { format } from '../../quantity/format.ts';
import { compare, inches, type Quantity } from '../../quantity/quantity.ts';
import { EntriesClash } from '../declare/calculation.ts';
import type { Ring } from '../ways/flue-ring.ts';
import type { Stretch } from './directions.ts';

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

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

export const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

/**
 * Stops at entries that can't be true together.
 * @throws EntriesClash if the stretch has no length, the opening lies outside it, or the stand-off outdoes the stream.
 */
export function checkOpening({ along, from, to, width, across, streamReach, standOff }: Opening): void {
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
export function stretchOf({ along, from, to, width, across, startingEnd }: Opening): Stretch {
  const [toStart, toFar] = [inches(along) - inches(from), inches(to) - inches(along)];
  const [right, left] = startingEnd === 'left hand' ? [toFar, toStart] : [toStart, toFar];
  return { left, right, up: inches(width) - inches(across), down: inches(across) };
}

/** Which way along the roof is the right hand: 1 away from the starting end, −1 towards it. */
export const rightHand = (startingEnd: Hand | undefined): number => (startingEnd === 'left hand' ? 1 : -1);

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
