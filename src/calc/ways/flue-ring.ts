import { format } from '../../quantity/format.ts';
import { amountIn, compare, named, number, plus, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { lengthField, listField, optional, type Values } from '../declare/field.ts';
import { NOISE } from './reach.ts';

/** The list of hot flues, for ways of working that push a hose past them; places across are counted from the eave named. */
export const fluesField = (eave = 'the eave on the back side') =>
  listField(
    'Hot flues',
    'Flues and chimneys that get hot; the hose stops before the ring kept open about each.',
    'a hot flue',
    {
      along: lengthField(
        'xf',
        'Place along the roof',
        'From the starting end to the middle of the flue.',
        '21 ft 6 in',
        { zero: 'allowed' },
      ),
      at: lengthField('yf', 'Its place, from the eave', `Across the home, from ${eave}.`, '5 ft', {
        zero: 'allowed',
        most: '40 ft',
      }),
      across: lengthField('Df', 'Width of the flue', 'The widest across, its jacket included.', '6 in', {
        most: '6 ft',
      }),
      ring: optional(
        lengthField(
          'cf',
          'Kept clear around it',
          'By its listing or kind, as the page on clear spaces gives it. Left empty, the least published distance of a vent.',
          '3 in',
          { zero: 'allowed', most: '6 ft' },
        ),
      ),
    },
  );

type Flue = Values<ReturnType<typeof fluesField>['of']>;

/** A round space that fill and hose keep out of. */
export interface Ring {
  readonly along: Quantity<'length'>;
  /** Its place, from the eave. */
  readonly at: Quantity<'length'>;
  /** How wide the open space is, the clearance on both sides included. */
  readonly across: Quantity<'length'>;
  /** How wide the flue itself is, for a drawing. */
  readonly flue?: Quantity<'length'>;
  /** It stands in the stretch of a neighbouring opening, whose hose it keeps from what lies behind it: this opening blows there. */
  readonly blownBehind?: boolean | undefined;
}

/** The lengths that tell where a ring is and how wide. */
export const ringTold = ({ along, at, across }: Ring): Quantity<'length'>[] => [along, at, across];

/**
 * Which ring is kept open about a flue? Its own width, and its clearance on both sides; where none is given, the least published one.
 * By hand: 6 in, and 3 in on both sides of it.
 * @example ringAbout({ along: quantity(20, 'ft'), at: quantity(5, 'ft'), across: quantity(6, 'in'), ring: quantity(3, 'in') }, rules).across.amount // => 12
 */
export const ringAbout = (flue: Flue & Pick<Ring, 'blownBehind'>, rules: Rulebook): Ring => ({
  along: flue.along,
  blownBehind: flue.blownBehind,
  at: flue.at,
  flue: flue.across,
  across: named(
    plus(flue.across, times(flue.ring ?? rules.value('clearance.flue.to-combustibles'), number(2))),
    'D',
    'Open space about the flue',
  ),
});

/**
 * The rings about some flues.
 * By hand: 6 in, and 2 in on both sides of it.
 * @throws EntriesClash for a flue beyond the end of the roof or beyond the other eave.
 * @example ringsAbout([{ along: quantity(20, 'ft'), at: quantity(5, 'ft'), across: quantity(6, 'in'), ring: quantity(2, 'in') }], { width: quantity(14, 'ft') }, rules).map(({ across }) => across.amount) // => [10]
 */
export function ringsAbout(
  flues: readonly Flue[] | undefined,
  { length, width }: { readonly length?: Quantity<'length'>; readonly width: Quantity<'length'> },
  rules: Rulebook,
): Ring[] {
  const beyond = (place: Quantity<'length'>, edge: Quantity<'length'> | undefined, way: string): void => {
    if (!edge || compare(place, edge) <= 0) return;
    throw new EntriesClash({
      field: 'flues',
      label: 'Hot flues',
      found: `one ${format(place, { tape: 8 })} ${way}`,
      expected: `a place inside the cavity, ${format(edge, { tape: 8 })} ${way}`,
    });
  };
  for (const { along, at } of flues ?? []) {
    beyond(along, length, 'along');
    beyond(at, width, 'across');
  }
  return (flues ?? []).map((flue) => ringAbout(flue, rules));
}

/**
 * Where does a straight push run into a round space? The stretch of the push inside it, in the unit of all three; undefined where
 * it passes clear. `ahead` is how far along the push its middle lies, `aside` how far off the line, `radius` half its width with
 * half the hose.
 * @example runsInto(10, 3, 5) // => { from: 6, to: 14 }
 */
export function runsInto(
  ahead: number,
  aside: number,
  radius: number,
): { readonly from: number; readonly to: number } | undefined {
  // What touches the ring and no more passes it, whatever the unit: floating noise is let pass.
  if (!(radius - Math.abs(aside) > NOISE * radius)) return undefined;
  const half = Math.sqrt(radius * radius - aside * aside);
  return ahead + half > 0 ? { from: ahead - half, to: ahead + half } : undefined;
}

/**
 * Half a ring's width with half the hose, in inches: how near the middle of the hose may come.
 * By hand: half of 12 in and half of 3 in.
 * @example keptOff({ across: quantity(12, 'in') }, quantity(3, 'in')) // => 7.5
 */
export const keptOff = (ring: Ring, hose: Quantity<'length'>): number =>
  (amountIn(ring.across, 'in') + amountIn(hose, 'in')) / 2;
