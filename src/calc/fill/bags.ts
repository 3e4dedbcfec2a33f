import {
  compare,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
  roundedUp,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export interface Bags {
  readonly weight: Quantity<'weight'>;
  /** As many as the weight asks for, not rounded. */
  readonly bags: Quantity<'pieces'>;
}

/**
 * How many pounds and bags does a volume take at a density?
 * By hand: 100 ft3 × 1.5 lb/ft3 = 150 lb, in bags of 30 lb.
 * @example bagsFor(quantity(100, 'ft3'), quantity(1.5, 'lb/ft3'), quantity(30, 'lb/bag')).bags.amount // => 5
 */
export function bagsFor(
  volume: Quantity<'volume'>,
  density: Quantity<'density'>,
  bagWeight: Quantity<'weight of a piece'>,
): Bags {
  const weight = named(times(volume, density), 'w', 'Weight of the new fill');
  return { weight, bags: named(over(weight, bagWeight), 'n', 'Bags') };
}

/** Less than a hundredth of a bag comes of rounding alone: areas and volumes are counted in strips and slices, and bags in quarters. */
const NEXT_TO_NOTHING = quantity(0.01, 'bag');

/** Are these so few bags that nothing is said of them? @example tooFewToTell(quantity(0.001, 'bag')) // => true */
export const tooFewToTell = (bags: Quantity<'pieces'>): boolean => compare(bags, NEXT_TO_NOTHING) <= 0;

/**
 * How many whole bags go on the truck, so that the usual spread does not leave the crew short?
 * By hand: 18 and a tenth more are 19.8.
 * @example bagsToLoad(quantity(18, 'bag'), rules).amount // => 20
 */
export function bagsToLoad(bags: Quantity<'pieces'>, rules: Rulebook): Quantity<'pieces'> {
  const withSpread = named(
    times(bags, plus(number(1), rules.value('fill.bag.near-enough'))),
    'n more',
    'Bags with the usual spread',
  );
  return named(roundedUp(withSpread, quantity(1, 'bag')), 'n load', 'Bags to load');
}
