import { format } from '../../quantity/format.ts';
import { amountIn, byMethod, named, type Quantity, quantity } from '../../quantity/quantity.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { dewPoint, HOLDS_FROM, HOLDS_TO, saturationPressure } from './equations.ts';

type Reading = Quantity<'temperature reading'>;

/** Air by its thermometer and its relative humidity. */
export interface Air {
  readonly temperature: Reading;
  readonly humidity: Quantity<'number'>;
}

/**
 * A pressure in inches of mercury, from pascals.
 * By hand: 33863.89 Pa are ten times the 3386.389 Pa of an inch.
 * @example inHgOf(33863.89).toFixed(4) // => '10.0000'
 */
export const inHgOf = (pascals: number): number => amountIn(quantity(pascals, 'Pa'), 'inHg');
const holds = (celsius: number): string => format(quantity(celsius, 'C'), { unit: 'F' });
/**
 * A reading in degrees Fahrenheit, from degrees Celsius.
 * @example fahrenheitOf(100).toFixed(6) // => '212.000000'
 */
export const fahrenheitOf = (celsius: number): number => amountIn(quantity(celsius, 'C'), 'F');

/**
 * A thermometer's reading in degrees Celsius, if the equations of moist air hold there.
 * @throws EntriesClash that names the field if they don't.
 * @example celsiusOf(quantity(212, 'F'), 'indoors', 'Indoors').toFixed(6) // => '100.000000'
 */
export function celsiusOf(reading: Reading, field: string, label: string): number {
  const celsius = amountIn(reading, 'C');
  if (celsius > HOLDS_FROM && celsius < HOLDS_TO) return celsius;
  throw new EntriesClash({
    field,
    label,
    found: format(reading),
    expected: `more than ${holds(HOLDS_FROM)} and less than ${holds(HOLDS_TO)}, where the equations of moist air hold`,
  });
}

/**
 * What is the vapour pressure of this air? Its relative humidity times the pressure of saturated air, by the equations of ASHRAE
 * Fundamentals 2017, chapter 1, over ice below freezing.
 * @throws Error outside of −100 to 200 °C.
 * @example Math.round(amountIn(vapourPressure({ temperature: quantity(25, 'C'), humidity: quantity(50, 'percent') }, 'i', 'room'), 'Pa')) // => 1585
 */
export function vapourPressure(
  { temperature, humidity }: Air,
  suffix: string,
  label: string,
): Quantity<'load'> {
  const pascals = amountIn(humidity, '1') * saturationPressure(amountIn(temperature, 'C'));
  return named(
    byMethod(
      `φ${suffix} × pressure of saturated air at t${suffix}`,
      [humidity, temperature],
      inHgOf(pascals),
      'inHg',
    ),
    `p${suffix}`,
    `Vapour pressure ${label}`,
  );
}

/**
 * At which temperature is air of this vapour pressure saturated? Undefined for air so dry that the equations have no answer.
 * By the tables of moist air the dew point at 25 °C and 50 % is 13.9 °C, 57 °F.
 * @throws Error outside of −100 to 200 °C.
 * @example Math.round(dewPointOf(quantity(25, 'C'), quantity(3169 / 2, 'Pa')).amount) // => 57
 */
export function dewPointOf(temperature: Reading, pressure: Quantity<'load'>): Reading | undefined {
  const celsius = dewPoint(amountIn(temperature, 'C'), amountIn(pressure, 'Pa'));
  if (celsius === undefined) return undefined;
  return named(
    byMethod(
      'temperature at which air of this vapour pressure is saturated',
      [pressure],
      fahrenheitOf(celsius),
      'F',
    ),
    'td',
    'Dew point',
  );
}
