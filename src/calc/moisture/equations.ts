/** The equations of moist air of ASHRAE Fundamentals 2017, chapter 1, in plain numbers: degrees Celsius and pascals. */

/** The equations hold between these, in degrees Celsius. */
export const HOLDS_FROM = -100;
export const HOLDS_TO = 200;

const KELVIN_AT_ZERO = 273.15;
/** Below it water lies as ice, in degrees Celsius. */
const TRIPLE_POINT = 0.01;
/** The mass of a mole of water by that of a mole of dry air. */
const WATER_TO_AIR = 0.621945;
/** Water in the air by the weight of the dry air; air drier than this can't be told from dry air. */
const LEAST_HUMIDITY_RATIO = 1e-7;

/** The natural logarithm of the pressure over ice, equation 5, and over water, equation 6; T in kelvins. */
const overIce = (T: number): number =>
  -5.6745359e3 / T +
  6.3925247 -
  9.677843e-3 * T +
  6.2215701e-7 * T ** 2 +
  2.0747825e-9 * T ** 3 -
  9.484024e-13 * T ** 4 +
  4.1635019 * Math.log(T);
const overWater = (T: number): number =>
  -5.8002206e3 / T +
  1.3914993 -
  4.8640239e-2 * T +
  4.1764768e-5 * T ** 2 -
  1.4452093e-8 * T ** 3 +
  6.5459673 * Math.log(T);

/**
 * The vapour pressure of saturated air, over ice below the triple point of water, over water above it.
 * @throws RangeError outside of −100 to 200 °C.
 * @example Math.round(saturationPressure(25)) // => 3169
 */
export function saturationPressure(celsius: number): number {
  if (!(celsius >= HOLDS_FROM && celsius <= HOLDS_TO))
    throw new RangeError(`found ${celsius} °C, expected ${HOLDS_FROM} to ${HOLDS_TO} °C`);
  const T = celsius + KELVIN_AT_ZERO;
  return Math.exp(celsius <= TRIPLE_POINT ? overIce(T) : overWater(T));
}

/**
 * At which temperature is air of this vapour pressure saturated? Never above the air's own temperature; undefined for air so dry that
 * the equations have no answer. The equations are not turned round: halves of the scale are cut off until none is left.
 * @throws RangeError for air outside of −100 to 200 °C.
 * @example Math.round(dewPoint(25, 3169 / 2) ?? 0) // => 14
 */
export function dewPoint(celsius: number, vapourPressure: number): number | undefined {
  if (!(vapourPressure >= saturationPressure(HOLDS_FROM))) return undefined;
  if (vapourPressure >= saturationPressure(celsius)) return celsius;
  let [low, high] = [HOLDS_FROM, celsius];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return middle;
    if (saturationPressure(middle) < vapourPressure) low = middle;
    else high = middle;
  }
}

/**
 * The vapour pressure that a wet-bulb reading shows, equations 20, 33 and 35; undefined where no air gives that reading: it is too low, or
 * above the dry bulb.
 * By the tables: where both read 20 °C the air is saturated, at 2339 Pa.
 * @throws RangeError for a wet bulb outside of −100 to 200 °C.
 * @example Math.round(vapourPressureByWetBulb(20, 20, 101325) ?? 0) // => 2339
 */
export function vapourPressureByWetBulb(
  celsius: number,
  wetBulb: number,
  pressure: number,
): number | undefined {
  const saturated = saturationPressure(wetBulb);
  if (wetBulb > celsius || saturated >= pressure) return undefined;
  const saturatedRatio = (WATER_TO_AIR * saturated) / (pressure - saturated);
  // The heat that a kilogram of water takes with it, of the bulb's water and of the bulb's ice.
  const [takes, atBulb, inAir, ofBulb] = wetBulb >= 0 ? [2501, 2.326, 1.86, 4.186] : [2830, 0.24, 1.86, 2.1];
  const ratio =
    ((takes - atBulb * wetBulb) * saturatedRatio - 1.006 * (celsius - wetBulb)) /
    (takes + inAir * celsius - ofBulb * wetBulb);
  return ratio > LEAST_HUMIDITY_RATIO ? (pressure * ratio) / (WATER_TO_AIR + ratio) : undefined;
}
