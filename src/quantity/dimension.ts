/**
 * What kinds of thing can be measured here, and what two of them multiplied together make.
 *
 * Weight is the trade's pound: it stands for the mass on a bag label and for the load it puts on a ceiling,
 * so lb/ft2 and Pa are one dimension (standard gravity joins them).
 */

/**
 * The base dimensions: length, weight, time, temperature difference, heat, pieces, money; and four that are only read off a scale and never
 * multiplied: a thermometer's reading, a sound level, an angle, a voltage. A dimension is the sum of its powers, each in a place of its own, as
 * digits are in a number: what is multiplied is added. No power comes near the half of a place, so that no two dimensions share a sum.
 */
const PLACE = 16;
const [length, weight, time, temperature, heat, pieces, money, reading, sound, angle, voltage] = Array.from(
  { length: 11 },
  (_, place) => PLACE ** place,
) as [number, number, number, number, number, number, number, number, number, number, number];

export const dimensions = {
  number: 0,
  length,
  area: 2 * length,
  volume: 3 * length,
  weight,
  density: weight - 3 * length,
  load: weight - 2 * length,
  pieces,
  'weight of a piece': weight - pieces,
  'thermal resistance': time + 2 * length + temperature - heat,
  'resistance per length': time + length + temperature - heat,
  'thermal transmittance': heat - time - 2 * length - temperature,
  'thermal conductivity': heat - time - length - temperature,
  time,
  /** A difference of temperature; what a thermometer shows is a `temperature reading`. */
  temperature,
  'temperature reading': reading,
  'degree-days': temperature + time,
  speed: length - time,
  'air flow': 3 * length - time,
  'weight rate': weight - time,
  'weight per length': weight - length,
  /** Vapour that crosses an area in a time. */
  'vapour flow': weight - 2 * length - time,
  /** Vapour flow a pressure drives; weight standing for load too, it comes down to one over time. */
  permeance: -time,
  heat,
  'heat flow': heat - time,
  'heat flux': heat - time - 2 * length,
  'heat loss coefficient': heat - time - temperature,
  'heat per volume': heat - 3 * length,
  'weight per heat': weight - heat,
  money,
  'money rate': money - time,
  'money per area': money - 2 * length,
  'price of heat': money - heat,
  'price per volume': money - 3 * length,
  'length of a piece': length - pieces,
  'area of a piece': 2 * length - pieces,
  'volume of a piece': 3 * length - pieces,
  'pieces per volume': pieces - 3 * length,
  'sound level': sound,
  angle,
  voltage,
} as const;

export type Dimension = keyof typeof dimensions;

/**
 * The products the trade uses, as types: `Product<'length', 'length'>` is `'area'`.
 * A product that is not listed is still computed; its dimension is then known only when the program runs.
 */
interface Products {
  'length*length': 'area';
  'length*area': 'volume';
  'length*density': 'load';
  'volume*density': 'weight';
  'area*load': 'weight';
  'pieces*weight of a piece': 'weight';
  'length*resistance per length': 'thermal resistance';
  'thermal resistance*thermal transmittance': 'number';
  'resistance per length*thermal conductivity': 'number';
  'length*thermal transmittance': 'thermal conductivity';
  'thermal resistance*thermal conductivity': 'length';
  'area*thermal transmittance': 'heat loss coefficient';
  'heat loss coefficient*thermal resistance': 'area';
  'heat loss coefficient*temperature': 'heat flow';
  'heat loss coefficient*degree-days': 'heat';
  'thermal transmittance*temperature': 'heat flux';
  'heat flux*area': 'heat flow';
  'heat flow*time': 'heat';
  'heat per volume*volume': 'heat';
  'price of heat*heat': 'money';
  'price of heat*heat flow': 'money rate';
  'price of heat*heat per volume': 'price per volume';
  'price per volume*volume': 'money';
  'money rate*time': 'money';
  'money per area*area': 'money';
  'weight per heat*heat': 'weight';
  'weight per heat*heat flow': 'weight rate';
  'temperature*time': 'degree-days';
  'speed*time': 'length';
  'speed*area': 'air flow';
  'air flow*time': 'volume';
  'air flow*density': 'weight rate';
  'weight rate*time': 'weight';
  'weight per length*length': 'weight';
  'weight per length*speed': 'weight rate';
  'density*area': 'weight per length';
  'load*length': 'weight per length';
  'permeance*load': 'vapour flow';
  'vapour flow*time': 'load';
  'vapour flow*area': 'weight rate';
  'length of a piece*pieces': 'length';
  'area of a piece*pieces': 'area';
  'volume of a piece*pieces': 'volume';
  'length of a piece*area': 'volume of a piece';
  'pieces per volume*volume': 'pieces';
}

export type Product<A extends Dimension, B extends Dimension> = A extends 'number'
  ? B
  : B extends 'number'
    ? A
    : `${A}*${B}` extends keyof Products
      ? Products[`${A}*${B}`]
      : `${B}*${A}` extends keyof Products
        ? Products[`${B}*${A}`]
        : Dimension;

/** The factor that, times B, makes A, where the products above say so. */
type CoFactor<A extends Dimension, B extends Dimension> = {
  [K in keyof Products]: Products[K] extends A
    ? K extends `${B}*${infer Other extends Dimension}`
      ? Other
      : K extends `${infer Other extends Dimension}*${B}`
        ? Other
        : never
    : never;
}[keyof Products];

export type Quotient<A extends Dimension, B extends Dimension> = B extends 'number'
  ? A
  : A extends B
    ? 'number'
    : [CoFactor<A, B>] extends [never]
      ? Dimension
      : CoFactor<A, B>;

const byPowers = new Map<number, Dimension>(
  (Object.entries(dimensions) as [Dimension, number][]).map(([name, powers]) => [powers, name]),
);

/**
 * What is only read off a scale: a thermometer, a sound meter. Two readings are compared, never added or multiplied.
 * @example isReading('temperature') // => false
 */
export const isReading = (dimension: Dimension): boolean =>
  dimension === 'temperature reading' || dimension === 'sound level';

/**
 * What a times b measures; undefined if nothing here is measured that way.
 * @example productOf('length', 'area') // => 'volume'
 */
export const productOf = (a: Dimension, b: Dimension): Dimension | undefined =>
  byPowers.get(dimensions[a] + dimensions[b]);

/**
 * What a divided by b measures; undefined if nothing here is measured that way.
 * @example quotientOf('volume', 'area') // => 'length'
 */
export const quotientOf = (a: Dimension, b: Dimension): Dimension | undefined =>
  byPowers.get(dimensions[a] - dimensions[b]);
