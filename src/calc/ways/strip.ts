import {
  amountIn,
  byMethod,
  inches,
  inUnit,
  minus,
  named,
  type Quantity,
  quantity,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { areaBelow, type Profile } from '../cavity/profile.ts';
import { chordsInFill, type Section, shareOfMembers } from '../cavity/section.ts';
import { type Ring, ringTold } from './flue-ring.ts';

/** What takes room from new fill, all across: old insulation, and the chords of the trusses averaged along the home. */
export interface Taken {
  readonly oldDepth: Quantity<'length'> | undefined;
  readonly trussSpacing: Quantity<'length'> | undefined;
}

const oldInches = ({ oldDepth }: Taken): number => (oldDepth ? inches(oldDepth) : 0);

/**
 * A part of a section, its places counted from its own left end; plain numbers in inches.
 * By hand: the left end of the right half is half-way up.
 * @example part(oneSlope(100, 0, 10), 50, 100).depthAt(0) // => 5
 */
export function part(profile: Profile, from: number, to: number): Profile {
  const [left, right] = [Math.max(0, from), Math.min(profile.width, to)];
  const width = Math.max(0, right - left);
  const held = (across: number): number => left + Math.min(width, Math.max(0, across));
  return {
    width,
    depthAt: (across) => profile.depthAt(held(across)),
    areaUpTo: (across) => profile.areaUpTo(held(across)) - profile.areaUpTo(left),
    corners: [
      0,
      ...profile.corners.filter((place) => place > left && place < right).map((x) => x - left),
      width,
    ],
  };
}

/**
 * How much of a strip of the section is free for new fill, in square feet?
 * Old insulation fills a shallow eave to the roof and no more, and chords take no more than the room above it. Strips that share
 * out the whole width share out the whole of the free section.
 * By hand: 3 ft × (12 in − 4 in).
 * @example freeStrip(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), quantity(2, 'ft'), quantity(5, 'ft'), { oldDepth: quantity(4, 'in') }, rules).amount.toFixed(6) // => '2.000000'
 */
export function freeStrip(
  section: Section,
  from: Quantity<'length'>,
  to: Quantity<'length'>,
  taken: Taken,
  rules: Rulebook,
): Quantity<'area'> {
  const strip = part(section.profile, inches(from), inches(to));
  const old = oldInches(taken);
  const aboveOld = strip.areaUpTo(strip.width) - areaBelow(strip, old);
  const operands: Quantity[] = [from, to, ...section.told, ...(taken.oldDepth ? [taken.oldDepth] : [])];
  let framing = 0;
  if (taken.trussSpacing) {
    const chord = rules.value('framing.truss.chord-depth');
    const member = rules.value('framing.truss.member-width');
    const reach = old + chordsInFill(inches(chord), old);
    framing =
      (areaBelow(strip, reach) - areaBelow(strip, old)) *
      amountIn(shareOfMembers(taken.trussSpacing, rules), '1');
    operands.push(chord, member, taken.trussSpacing);
  }
  return named(
    inUnit(
      byMethod(
        'cross-section between two places, less old insulation, less the chords as their mean along the home',
        operands,
        Math.max(0, aboveOld - framing),
        'in2',
      ),
      'ft2',
    ),
    'As',
    'Area of the strip, free for new fill',
  );
}

/**
 * How much room does a hose have above the old insulation at a place across? Where it runs across the trusses it has to pass
 * between their chords.
 * By hand: 12 in, less 1.5 in of top chord and 4 in of old insulation.
 * @example roomForHose(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), quantity(5, 'ft'), { oldDepth: quantity(4, 'in') }, true, rules).amount // => 6.5
 */
export function roomForHose(
  section: Section,
  at: Quantity<'length'>,
  { oldDepth }: Pick<Taken, 'oldDepth'>,
  acrossTrusses: boolean,
  rules: Rulebook,
): Quantity<'length'> {
  const old = oldDepth ? inches(oldDepth) : 0;
  const chord = rules.value('framing.truss.chord-depth');
  const depth = section.profile.depthAt(inches(at));
  const room = acrossTrusses ? depth - inches(chord) - Math.max(old, inches(chord)) : depth - old;
  return named(
    byMethod(
      acrossTrusses
        ? 'depth there, less the top chord, less the old insulation or the bottom chord, whichever is higher'
        : 'depth there, less the old insulation',
      [at, ...section.told, ...(oldDepth ? [oldDepth] : []), ...(acrossTrusses ? [chord] : [])],
      Math.max(0, room),
      'in',
    ),
    'hf',
    'Free depth there',
  );
}

const NOISE = 1e-9;
/**
 * Does a hose go through a room? As wide as the room is narrow enough.
 * @example fits(quantity(4, 'in'), quantity(3, 'in')) // => false
 */
export const fits = (hose: Quantity<'length'>, room: Quantity<'length'>): boolean =>
  inches(hose) <= inches(room) * (1 + NOISE);

/**
 * A volume less what each ring leaves open in it, in cubic inches, and never below nothing.
 * By hand: 864 in3 are half of a cubic foot.
 * @example less(quantity(2, 'ft3'), [{ along: quantity(20, 'ft'), at: quantity(5, 'ft'), across: quantity(12, 'in') }], [864], 'V', 'Volume').amount // => 1.5
 */
export function less(
  whole: Quantity<'volume'>,
  rings: readonly Ring[],
  open: readonly number[],
  symbol: string,
  label: string,
): Quantity<'volume'> {
  const sum = open.reduce((running, volume) => running + volume, 0);
  if (sum <= 0) return named(inUnit(whole, 'ft3'), symbol, label);
  const columns = named(
    inUnit(
      byMethod(
        'round columns kept open about the flues: their part of π/4 · D² times the depth there',
        rings.filter((_, place) => open[place]).flatMap(ringTold),
        Math.min(sum, amountIn(whole, 'in3')),
        'in3',
      ),
      'ft3',
    ),
    'Vk',
    'Volume kept open in it',
  );
  const rest = minus(inUnit(whole, 'ft3'), columns);
  return named(rest.amount < 0 ? quantity(0, 'ft3') : rest, symbol, label);
}

/** A free depth as a tape shows it, never more than there is: a hose has to go in. */
export const ofRoom = { tape: 8, round: 'down' } as const;
