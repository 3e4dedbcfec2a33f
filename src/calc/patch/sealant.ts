import {
  amountIn,
  byMethod,
  inUnit,
  minus,
  named,
  number,
  over,
  type Quantity,
  quantity,
  roundedUp,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export const beadShapes = ['square', 'round'] as const;
export const cartridgeSizes = ['small', 'large'] as const;

/** A bead by its section: the side of a square one, the diameter of a round one. */
export interface Bead {
  readonly size: Quantity<'length'>;
  readonly shape: (typeof beadShapes)[number];
}

/** What a bead takes. */
export interface SealantNeed {
  readonly section: Quantity<'area'>;
  readonly cartridge: Quantity<'volume of a piece'>;
  /** Bead from one cartridge, nothing lost. */
  readonly yield: Quantity<'length of a piece'>;
  readonly volume: Quantity<'volume'>;
  readonly lost: Quantity<'number'>;
  readonly withLost: Quantity<'volume'>;
  readonly cartridges: Quantity<'pieces'>;
}

/**
 * What is the section of a bead? A square one b², a round one π b²/4.
 * @example beadSection({ size: quantity(0.25, 'in'), shape: 'square' }).amount // => 0.0625
 */
export function beadSection({ size, shape }: Bead): Quantity<'area'> {
  const b = amountIn(size, 'in');
  const section =
    shape === 'square'
      ? inUnit(times(size, size), 'in2')
      : byMethod(`π·${size.symbol ?? 'b'}²/4`, [size], (Math.PI * b * b) / 4, 'in2');
  return named(section, 'As', 'Cross-section of the bead');
}

/**
 * What does a cartridge hold? Its label comes first; else the usual of its size, the lower end where there are two.
 * By hand: 10 fl oz of 231/128 in3.
 * @example cartridgeHolds('small', quantity(10, 'fl oz/cartridge'), rules).amount.toFixed(4) // => '18.0469'
 */
export const cartridgeHolds = (
  size: (typeof cartridgeSizes)[number],
  label: Quantity<'volume of a piece'> | undefined,
  rules: Rulebook,
): Quantity<'volume of a piece'> => {
  const usual = label ?? rules.find('patch.sealant.cartridge', { size }, 'holds')?.low;
  if (!usual)
    throw new Error(`found no ${size} cartridge in the rulebook, expected one in patch.sealant.cartridge`);
  return inUnit(usual, 'in3/cartridge');
};

/**
 * How long a bead does one cartridge make, if nothing is lost?
 * By hand: 18 in3 over 1/16 in2 are 288 in.
 * @example beadFromCartridge(quantity(18, 'in3/cartridge'), quantity(1 / 16, 'in2')).amount // => 24
 */
export const beadFromCartridge = (
  cartridge: Quantity<'volume of a piece'>,
  section: Quantity<'area'>,
): Quantity<'length of a piece'> =>
  named(inUnit(over(cartridge, section), 'ft/cartridge'), 'y', 'Bead from a cartridge, nothing lost');

/**
 * How many cartridges does a bead take, with what stays in them and goes with the tooling?
 * The share lost is taken off each cartridge; whole cartridges are bought. No bead takes none.
 * By hand: 480 in × 1/16 in2 = 30 in3, with a fifth lost 37.5 in3: 2.08 cartridges of 18 in3.
 * @example sealantFor(quantity(40, 'ft'), { size: quantity(1 / 4, 'in'), shape: 'square' }, quantity(18, 'in3/cartridge'), quantity(20, 'percent')).cartridges.amount // => 3
 */
export function sealantFor(
  length: Quantity<'length'>,
  bead: Bead,
  cartridge: Quantity<'volume of a piece'>,
  lost: Quantity<'number'>,
): SealantNeed {
  const section = beadSection(bead);
  const volume = named(inUnit(times(length, section), 'in3'), 'Vb', 'Sealant in the bead');
  const withLost = named(over(volume, minus(number(1), lost)), 'Vn', 'Sealant with what is lost');
  return {
    section,
    cartridge,
    yield: beadFromCartridge(cartridge, section),
    volume,
    lost,
    withLost,
    cartridges: named(
      roundedUp(inUnit(over(withLost, cartridge), 'cartridge'), quantity(1, 'cartridge')),
      'nc',
      'Cartridges',
    ),
  };
}
