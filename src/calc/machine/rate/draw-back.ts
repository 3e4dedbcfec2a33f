import { inUnit, named, over, type Quantity, quantity, times } from '../../../quantity/quantity.ts';

/** How fast the hose is drawn back, so that it lays the density wanted. */
export interface DrawBack {
  /** What a foot of hose travel must take. */
  readonly perLength: Quantity<'weight per length'>;
  readonly speed: Quantity<'speed'>;
  /** How long the hose stays in each foot. */
  readonly timePerFoot: Quantity<'time'>;
}

/** What does the machine blow in a minute, from a weighed run? @example rateOf(quantity(60, 'lb'), quantity(5, 'min')).amount // => 12 */
export const rateOf = (weight: Quantity<'weight'>, time: Quantity<'time'>): Quantity<'weight rate'> =>
  named(over(weight, time), 'ṁ', 'Rate of the machine');

/**
 * How fast is the hose drawn back through the strip of cavity that it fills, to lay a density?
 * The rate over the weight that a foot of the strip takes: density times the cross-section.
 * @throws QuantityError if rate, density or area is 0.
 * @example drawBack(quantity(12, 'lb/min'), quantity(1.5, 'lb/ft3'), quantity(2, 'ft2')).speed.amount // => 4
 */
export function drawBack(
  rate: Quantity<'weight rate'>,
  density: Quantity<'density'>,
  area: Quantity<'area'>,
): DrawBack {
  const perLength = named(times(density, area), 'm', 'Weight laid in a foot of hose travel');
  const speed = named(over(rate, perLength), 'v', 'Draw-back speed');
  const timePerFoot = named(inUnit(over(quantity(1, 'ft'), speed), 's'), 't1', 'Time for a foot of hose');
  return { perLength, speed, timePerFoot };
}

/** How many minutes does the machine take to blow a weight? @throws QuantityError if the rate is 0. @example minutesFor(quantity(60, 'lb'), quantity(12, 'lb/min')).amount // => 5 */
export const minutesFor = (weight: Quantity<'weight'>, rate: Quantity<'weight rate'>): Quantity<'time'> =>
  inUnit(over(weight, rate), 'min');
