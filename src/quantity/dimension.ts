/**
 * What kinds of thing can be measured here, and what two of them multiplied together make.
 *
 * Weight is the trade's pound: it stands for the mass on a bag label and for the load it puts on a ceiling,
 * so lb/ft2 and Pa are one dimension (standard gravity joins them).
 */

/**
 * Powers of the base dimensions: length, weight, time, temperature difference, heat, pieces, money; and four that are only read off a
 * scale and never multiplied: a thermometer's reading, a sound level, an angle, a voltage.
 */
export interface Powers {
  readonly length?: number;
  readonly weight?: number;
  readonly time?: number;
  readonly temperature?: number;
  readonly heat?: number;
  readonly pieces?: number;
  readonly money?: number;
  readonly reading?: number;
  readonly sound?: number;
  readonly angle?: number;
  readonly voltage?: number;
}

export const dimensions = {
  number: {},
  length: { length: 1 },
  area: { length: 2 },
  volume: { length: 3 },
  weight: { weight: 1 },
  density: { weight: 1, length: -3 },
  load: { weight: 1, length: -2 },
  pieces: { pieces: 1 },
  'weight of a piece': { weight: 1, pieces: -1 },
  'thermal resistance': { time: 1, length: 2, temperature: 1, heat: -1 },
  'resistance per length': { time: 1, length: 1, temperature: 1, heat: -1 },
  'thermal transmittance': { time: -1, length: -2, temperature: -1, heat: 1 },
  'thermal conductivity': { time: -1, length: -1, temperature: -1, heat: 1 },
  time: { time: 1 },
  /** A difference of temperature; what a thermometer shows is a `temperature reading`. */
  temperature: { temperature: 1 },
  'temperature reading': { reading: 1 },
  'degree-days': { temperature: 1, time: 1 },
  speed: { length: 1, time: -1 },
  'air flow': { length: 3, time: -1 },
  'weight rate': { weight: 1, time: -1 },
  'weight per length': { weight: 1, length: -1 },
  /** Vapour that crosses an area in a time. */
  'vapour flow': { weight: 1, length: -2, time: -1 },
  /** Vapour flow a pressure drives; weight standing for load too, it comes down to one over time. */
  permeance: { time: -1 },
  heat: { heat: 1 },
  'heat flow': { heat: 1, time: -1 },
  'heat flux': { heat: 1, time: -1, length: -2 },
  'heat loss coefficient': { heat: 1, time: -1, temperature: -1 },
  'heat per volume': { heat: 1, length: -3 },
  'weight per heat': { weight: 1, heat: -1 },
  money: { money: 1 },
  'money rate': { money: 1, time: -1 },
  'money per area': { money: 1, length: -2 },
  'price of heat': { money: 1, heat: -1 },
  'price per volume': { money: 1, length: -3 },
  'length of a piece': { length: 1, pieces: -1 },
  'area of a piece': { length: 2, pieces: -1 },
  'volume of a piece': { length: 3, pieces: -1 },
  'pieces per volume': { pieces: 1, length: -3 },
  'sound level': { sound: 1 },
  angle: { angle: 1 },
  voltage: { voltage: 1 },
} as const satisfies Record<string, Powers>;

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

const baseNames = [
  'length',
  'weight',
  'time',
  'temperature',
  'heat',
  'pieces',
  'money',
  'reading',
  'sound',
  'angle',
  'voltage',
] as const;

const key = (left: Powers, right: Powers = {}, sign: 1 | -1 = 1): string =>
  baseNames.map((base) => (left[base] ?? 0) + sign * (right[base] ?? 0)).join();

const byPowers = new Map<string, Dimension>(
  (Object.keys(dimensions) as Dimension[]).map((name) => [key(dimensions[name]), name]),
);

/** Each pair that was asked for: a plan multiplies the same few a thousand times. */
const combined = new Map<string, Dimension | undefined>();

function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension | undefined {
  const pair = `${a} ${sign} ${b}`;
  if (!combined.has(pair)) combined.set(pair, byPowers.get(key(dimensions[a], dimensions[b], sign)));
  return combined.get(pair);
}

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
export const productOf = (a: Dimension, b: Dimension): Dimension | undefined => combine(a, b, 1);

/**
 * What a divided by b measures; undefined if nothing here is measured that way.
 * @example quotientOf('volume', 'area') // => 'length'
 */
export const quotientOf = (a: Dimension, b: Dimension): Dimension | undefined => combine(a, b, -1);
