/**
 * What kinds of thing can be measured here, and what two of them multiplied together make.
 *
 * Weight is the trade's pound: it stands for the mass on a bag label and for the load it puts on a ceiling,
 * so lb/ft2 and Pa are one dimension (standard gravity joins them).
 */

/** Powers of the base dimensions: length, weight, time, temperature difference, heat, pieces. */
export interface Powers {
  readonly length?: number;
  readonly weight?: number;
  readonly time?: number;
  readonly temperature?: number;
  readonly heat?: number;
  readonly pieces?: number;
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
  temperature: { temperature: 1 },
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

const baseNames = ['length', 'weight', 'time', 'temperature', 'heat', 'pieces'] as const;

const key = (powers: Powers): string => baseNames.map((base) => powers[base] ?? 0).join(',');

const byPowers = new Map<string, Dimension>(
  (Object.keys(dimensions) as Dimension[]).map((name) => [key(dimensions[name]), name]),
);

function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension | undefined {
  const left: Powers = dimensions[a];
  const right: Powers = dimensions[b];
  const powers = Object.fromEntries(
    baseNames.map((base) => [base, (left[base] ?? 0) + sign * (right[base] ?? 0)]),
  );
  return byPowers.get(key(powers));
}

/** What a times b measures; undefined if nothing here is measured that way. */
export const productOf = (a: Dimension, b: Dimension): Dimension | undefined => combine(a, b, 1);

/** What a divided by b measures; undefined if nothing here is measured that way. */
export const quotientOf = (a: Dimension, b: Dimension): Dimension | undefined => combine(a, b, -1);
