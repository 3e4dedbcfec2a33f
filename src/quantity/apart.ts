import type { Dimension } from './dimension.ts';
import { format } from './format.ts';
import { compare, inUnit, type Quantity } from './quantity.ts';
import type { UnitOf } from './units.ts';

/** Two amounts that differ, differ in these. */
const ALL_FIGURES = 17;

/**
 * How many figures of an amount are told beside a bound that decides on it? As many as were asked for; more where it would else read
 * like the bound that it is not, since "10 %" beside the word heavy looks like a mistake where 10 % is near enough.
 * @example figuresApart(quantity(10.04, 'percent'), [quantity(10, 'percent')], 2) // => 4
 */
export function figuresApart<D extends Dimension>(
  amount: Quantity<D>,
  bounds: readonly Quantity<NoInfer<D>>[],
  least: number,
): number {
  const others = bounds
    .filter((bound) => compare(amount, bound) !== 0)
    .map((bound) => inUnit(bound, amount.unit as UnitOf<D>));
  const alike = (figures: number): boolean =>
    others.some((bound) => format(amount, { figures }) === format(bound, { figures }));
  let figures = least;
  while (figures < ALL_FIGURES && alike(figures)) figures++;
  return figures;
}
