import {
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

/** How many pounds and bags does a volume take at a density? */
export function bagsFor(
  volume: Quantity<'volume'>,
  density: Quantity<'density'>,
  bagWeight: Quantity<'weight of a piece'>,
): Bags {
  const weight = named(times(volume, density), 'w', 'Weight of the new fill');
  return { weight, bags: named(over(weight, bagWeight), 'n', 'Bags') };
}

/** How many whole bags go on the truck, so that the usual spread does not leave the crew short? */
export function bagsToLoad(bags: Quantity<'pieces'>, rules: Rulebook): Quantity<'pieces'> {
  const withSpread = named(
    times(bags, plus(number(1), rules.value('fill.bag.near-enough'))),
    'n more',
    'Bags with the usual spread',
  );
  return named(roundedUp(withSpread, quantity(1, 'bag')), 'n load', 'Bags to load');
}
