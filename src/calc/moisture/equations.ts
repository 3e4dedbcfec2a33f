import psychrolib from 'psychrolib';

/**
 * The equations of moist air of ASHRAE Fundamentals 2017, chapter 1, in plain numbers: degrees Celsius and pascals. The package keeps
 * its unit system in itself, so nothing else here may import it.
 */
psychrolib.SetUnitSystem(psychrolib.SI);

/** The equations hold between these, in degrees Celsius. */
export const HOLDS_FROM = -100;
export const HOLDS_TO = 200;

/** The package never gives less water than this in a pound of dry air; air drier than it can't be told from dry air. */
const LEAST_HUMIDITY_RATIO = 1e-7;

/**
 * The vapour pressure of saturated air, over ice below the triple point of water, over water above it.
 * @throws Error outside of −100 to 200 °C.
 * @example Math.round(saturationPressure(25)) // => 3169
 */
export const saturationPressure = (celsius: number): number => psychrolib.GetSatVapPres(celsius);

/** The least vapour pressure that has a dew point within the equations. */
const LEAST_VAPOUR_PRESSURE = saturationPressure(HOLDS_FROM);

/**
 * At which temperature is air of this vapour pressure saturated? Never above the air's own temperature; undefined for air so dry that
 * the equations have no answer.
 * @example Math.round(dewPoint(25, 3169 / 2) ?? 0) // => 14
 */
export function dewPoint(celsius: number, vapourPressure: number): number | undefined {
  if (!(vapourPressure >= LEAST_VAPOUR_PRESSURE)) return undefined;
  return psychrolib.GetTDewPointFromVapPres(celsius, Math.min(vapourPressure, saturationPressure(celsius)));
}

/**
 * The vapour pressure that a wet-bulb reading shows; undefined where no air gives that reading: it is too low, or above the dry bulb.
 * By the tables: where both read 20 °C the air is saturated, at 2339 Pa.
 * @example Math.round(vapourPressureByWetBulb(20, 20, 101325)) // => 2339
 */
export function vapourPressureByWetBulb(
  celsius: number,
  wetBulb: number,
  pressure: number,
): number | undefined {
  if (wetBulb > celsius || saturationPressure(wetBulb) >= pressure) return undefined;
  const ratio = psychrolib.GetHumRatioFromTWetBulb(celsius, wetBulb, pressure);
  return ratio > LEAST_HUMIDITY_RATIO ? psychrolib.GetVapPresFromHumRatio(ratio, pressure) : undefined;
}
