import { inUnit, named, type Quantity, quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Cut, cutMembrane, cutMetal, type MembraneCut } from './cut-squares.ts';
import { type PatchLayers, patchLayers } from './layers.ts';
import { type Bead, cartridgeHolds, type cartridgeSizes, type SealantNeed, sealantFor } from './sealant.ts';

/** What the crew has or buys; what is left out is as the rulebook has it, the bead alone is never guessed. */
export interface PatchSupplies {
  readonly coilWidth?: Quantity<'length'> | undefined;
  readonly coilLength?: Quantity<'length of a piece'> | undefined;
  readonly membraneWidth?: Quantity<'length'> | undefined;
  readonly membraneLength?: Quantity<'length of a piece'> | undefined;
  readonly bead?: Bead | undefined;
  readonly cartridge?: (typeof cartridgeSizes)[number] | undefined;
  /** What the label of the cartridge says, before its size. */
  readonly cartridgeHolds?: Quantity<'volume of a piece'> | undefined;
  readonly lost?: Quantity<'number'> | undefined;
}

/** Everything the patches of a job take. */
export interface PatchKit {
  readonly holes: Quantity<'number'>;
  readonly layers: PatchLayers;
  readonly caps: Quantity<'pieces'>;
  readonly metalSquares: Quantity<'pieces'>;
  readonly membraneSquares: Quantity<'pieces'>;
  readonly metal: Cut;
  readonly membrane: MembraneCut;
  readonly screws: Quantity<'pieces'>;
  readonly bead: Quantity<'length'>;
  /** Undefined where no bead is given: its size is the crew's. */
  readonly sealant: SealantNeed | undefined;
}

/**
 * What do the patches of a job take: caps, metal, membrane, screws, sealant? Nothing is added for loss but what the sealant loses.
 * No holes take nothing. Without a diameter the rulebook's own hole is taken.
 * @throws RangeError for holes that are no whole number from 0 up; EntriesClash for a coil or a roll that a square can't come from.
 * @example patchKit(5, undefined, {}, rules).screws.amount // => 180
 */
export function patchKit(
  holes: number,
  diameter: Quantity<'length'> | undefined,
  supplies: PatchSupplies,
  rules: Rulebook,
): PatchKit {
  if (!Number.isInteger(holes) || holes < 0)
    throw new RangeError(`found ${holes} holes, expected a whole number of them`);
  const N = quantity(holes, '1', { from: 'input', field: 'holes' }, { symbol: 'N', label: 'Holes' });
  const layers = patchLayers(diameter, rules);
  const each = (symbol: string, label: string): Quantity<'pieces'> =>
    named(times(quantity(1, 'piece'), N), symbol, label);
  const bead = named(inUnit(times(N, layers.beads.all), 'ft'), 'Lbead', 'Bead of all patches');
  return {
    holes: N,
    layers,
    caps: each('ncap', 'Caps'),
    metalSquares: each('nm', 'Squares of metal'),
    membraneSquares: each('nb', 'Squares of membrane'),
    metal: cutMetal(N, layers.metal, {
      width: supplies.coilWidth ?? rules.value('patch.stock.coil-width'),
      roll: supplies.coilLength ?? rules.value('patch.stock.coil-length'),
    }),
    membrane: cutMembrane(
      N,
      layers.membrane,
      { width: supplies.membraneWidth, roll: supplies.membraneLength },
      rules,
    ),
    screws: named(times(layers.screws, N), 'nall', 'Screws'),
    bead,
    sealant:
      supplies.bead &&
      sealantFor(
        bead,
        supplies.bead,
        cartridgeHolds(supplies.cartridge ?? 'small', supplies.cartridgeHolds, rules),
        supplies.lost ?? rules.range('patch.sealant.lost').high,
      ),
  };
}
