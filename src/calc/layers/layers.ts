import {
  amountIn,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  times,
  total,
} from '../../quantity/quantity.ts';

/**
 * What R does a layer of one material give? Its thickness over its conductivity.
 * @example layerResistance(quantity(12.7, 'mm'), quantity(0.16, 'W/(m K)')).dimension // => 'thermal resistance'
 */
export const layerResistance = (
  thickness: Quantity<'length'>,
  conductivity: Quantity<'thermal conductivity'>,
): Quantity<'thermal resistance'> => over(thickness, conductivity);

/** What R do layers in series give? @throws QuantityError for no layers. @example inSeries([quantity(1, 'h ft2 F/Btu'), quantity(2, 'h ft2 F/Btu')]).amount // => 3 */
export const inSeries = (layers: readonly Quantity<'thermal resistance'>[]): Quantity<'thermal resistance'> =>
  total(layers);

/** The U of an R. @throws QuantityError if it is 0. @example transmittanceOf(quantity(4, 'h ft2 F/Btu')).amount // => 0.25 */
export const transmittanceOf = (
  resistance: Quantity<'thermal resistance'>,
): Quantity<'thermal transmittance'> => over(number(1), resistance);

/** The R of a U. @throws QuantityError if it is 0. @example resistanceOf(quantity(0.25, 'Btu/(h ft2 F)')).amount // => 4 */
export const resistanceOf = (
  transmittance: Quantity<'thermal transmittance'>,
): Quantity<'thermal resistance'> => over(number(1), transmittance);

/** The mean of two transmittances, the second's weighed by its share of the area. */
const weighed = (
  first: Quantity<'thermal transmittance'>,
  second: Quantity<'thermal transmittance'>,
  share: Quantity<'number'>,
): Quantity<'thermal transmittance'> => plus(times(minus(number(1), share), first), times(share, second));

/**
 * What U do two paths side by side give, the second over a share of the area? The area-weighted mean of their transmittances
 * (the parallel-path method): no heat is taken to flow sideways from one path to the other.
 * @example inParallel(quantity(0.1, 'Btu/(h ft2 F)'), quantity(0.3, 'Btu/(h ft2 F)'), quantity(0.5, '1')).amount // => 0.2
 */
export const inParallel = (
  first: Quantity<'thermal transmittance'>,
  second: Quantity<'thermal transmittance'>,
  share: Quantity<'number'>,
): Quantity<'thermal transmittance'> =>
  named(weighed(first, second, share), 'U', 'Transmittance, both paths together');

/**
 * What R does one layer give that is of two kinds side by side, the second over a share of the area? Each of its faces is taken to have one
 * temperature all over, so heat flows sideways freely (the isothermal-planes method). A kind without any R takes all of the heat.
 * @example besideInLayer(quantity(2, 'h ft2 F/Btu'), quantity(1, 'h ft2 F/Btu'), quantity(0.5, '1')).amount // => 1.3333333333333333
 */
export function besideInLayer(
  first: Quantity<'thermal resistance'>,
  second: Quantity<'thermal resistance'>,
  share: Quantity<'number'>,
): Quantity<'thermal resistance'> {
  const part = amountIn(share, '1');
  if (part === 0 || (first.amount === 0 && part < 1)) return first;
  if (part === 1 || second.amount === 0) return second;
  return resistanceOf(weighed(transmittanceOf(first), transmittanceOf(second), share));
}
