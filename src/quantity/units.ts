import type { Dimension } from './dimension.ts';

/**
 * The closed list of units, each with its exact size in the base units: inch, pound, hour, degree Fahrenheit,
 * Btu, piece. The inch is the base length because every reading of a tape (1/16, 1/8, a foot) is then exact.
 *
 * Exact by definition: ft 0.3048 m, lb 0.45359237 kg, standard gravity 9.80665 m/s2, Btu(IT) 1055.05585262 J.
 */
const INCHES_PER_FOOT = 12;
const METRES_PER_INCH = 0.0254;
const KILOGRAMS_PER_POUND = 0.45359237;
const STANDARD_GRAVITY = 9.80665;
const JOULES_PER_BTU = 1055.05585262;
const SECONDS_PER_HOUR = 3600;
const KELVINS_PER_FAHRENHEIT = 5 / 9;

/** Inches of water column in one psi, water at 39 F. */
const INCHES_OF_WATER_PER_PSI = 27.6799;

const squareFoot = INCHES_PER_FOOT ** 2;
const cubicFoot = INCHES_PER_FOOT ** 3;
/** h m2 K/J in one m2 K/W, then each metric unit turned into its base unit. */
const squareMetreKelvinPerWatt =
  JOULES_PER_BTU / SECONDS_PER_HOUR / (METRES_PER_INCH ** 2 * KELVINS_PER_FAHRENHEIT);

interface UnitFacts {
  readonly dimension: Dimension;
  /** How many base units make one of these. */
  readonly size: number;
  /** As printed after a number. */
  readonly sign: string;
  /** Other ways people write it; the name and the sign are understood as well. */
  readonly written?: readonly string[];
}

export const units = {
  '1': { dimension: 'number', size: 1, sign: '' },
  percent: { dimension: 'number', size: 0.01, sign: '%', written: ['per cent', 'pct'] },

  in: {
    dimension: 'length',
    size: 1,
    sign: 'in',
    written: ['inch', 'inches', 'ins', 'in.', '"', '″', '”', "''"],
  },
  ft: {
    dimension: 'length',
    size: INCHES_PER_FOOT,
    sign: 'ft',
    written: ['foot', 'feet', 'ft.', "'", '′', '’'],
  },
  mm: {
    dimension: 'length',
    size: 0.001 / METRES_PER_INCH,
    sign: 'mm',
    written: ['millimetre', 'millimeter'],
  },
  cm: {
    dimension: 'length',
    size: 0.01 / METRES_PER_INCH,
    sign: 'cm',
    written: ['centimetre', 'centimeter'],
  },
  m: {
    dimension: 'length',
    size: 1 / METRES_PER_INCH,
    sign: 'm',
    written: ['metre', 'meter', 'metres', 'meters'],
  },

  in2: { dimension: 'area', size: 1, sign: 'in²', written: ['sq in', 'square inch', 'square inches'] },
  ft2: { dimension: 'area', size: squareFoot, sign: 'ft²', written: ['sq ft', 'square foot', 'square feet'] },
  m2: { dimension: 'area', size: METRES_PER_INCH ** -2, sign: 'm²', written: ['sq m'] },

  in3: { dimension: 'volume', size: 1, sign: 'in³', written: ['cu in'] },
  ft3: { dimension: 'volume', size: cubicFoot, sign: 'ft³', written: ['cu ft', 'cubic foot', 'cubic feet'] },
  m3: { dimension: 'volume', size: METRES_PER_INCH ** -3, sign: 'm³' },

  lb: { dimension: 'weight', size: 1, sign: 'lb', written: ['lbs', 'lb.', 'pound', 'pounds'] },
  kg: { dimension: 'weight', size: 1 / KILOGRAMS_PER_POUND, sign: 'kg', written: ['kilogram', 'kilograms'] },

  'lb/ft3': {
    dimension: 'density',
    size: 1 / cubicFoot,
    sign: 'lb/ft³',
    written: ['lb/cu ft', 'pcf', 'lbs/ft3'],
  },
  'kg/m3': {
    dimension: 'density',
    size: METRES_PER_INCH ** 3 / KILOGRAMS_PER_POUND,
    sign: 'kg/m³',
  },

  'lb/ft2': {
    dimension: 'load',
    size: 1 / squareFoot,
    sign: 'lb/ft²',
    written: ['psf', 'lb/sq ft', 'lbs/ft2'],
  },
  'kg/m2': { dimension: 'load', size: METRES_PER_INCH ** 2 / KILOGRAMS_PER_POUND, sign: 'kg/m²' },
  Pa: {
    dimension: 'load',
    size: METRES_PER_INCH ** 2 / (KILOGRAMS_PER_POUND * STANDARD_GRAVITY),
    sign: 'Pa',
  },
  psi: { dimension: 'load', size: 1, sign: 'psi' },
  'in w.c.': {
    dimension: 'load',
    size: 1 / INCHES_OF_WATER_PER_PSI,
    sign: 'in w.c.',
    written: ['inwc', 'in wc'],
  },

  bag: { dimension: 'pieces', size: 1, sign: 'bags', written: ['bags'] },
  hole: { dimension: 'pieces', size: 1, sign: 'holes', written: ['holes'] },
  'lb/bag': { dimension: 'weight of a piece', size: 1, sign: 'lb a bag', written: ['lb per bag'] },

  'h ft2 F/Btu': {
    dimension: 'thermal resistance',
    size: squareFoot,
    sign: 'h·ft²·°F/Btu',
    written: ['R'],
  },
  'm2 K/W': { dimension: 'thermal resistance', size: squareMetreKelvinPerWatt, sign: 'm²·K/W' },
  'h ft2 F/(Btu in)': {
    dimension: 'resistance per length',
    size: squareFoot,
    sign: 'h·ft²·°F/Btu per in',
    written: ['R per in', 'R/in', 'per in'],
  },
  'Btu/(h ft2 F)': { dimension: 'thermal transmittance', size: 1 / squareFoot, sign: 'Btu/(h·ft²·°F)' },
  'W/(m2 K)': { dimension: 'thermal transmittance', size: 1 / squareMetreKelvinPerWatt, sign: 'W/(m²·K)' },
  'Btu in/(h ft2 F)': { dimension: 'thermal conductivity', size: 1 / squareFoot, sign: 'Btu·in/(h·ft²·°F)' },
} as const satisfies Record<string, UnitFacts>;

export type UnitName = keyof typeof units;

/** The units that measure one dimension, as a type: a `UnitOf<'length'>` is `'in' | 'ft' | ...`. */
export type UnitOf<D extends Dimension> = Dimension extends D
  ? UnitName
  : { [U in UnitName]: (typeof units)[U]['dimension'] extends D ? U : never }[UnitName];

/** The unit a computed result is given in when nobody asked for another. */
export const usualUnit: { readonly [D in Dimension]?: UnitName } = {
  number: '1',
  length: 'in',
  area: 'ft2',
  volume: 'ft3',
  weight: 'lb',
  density: 'lb/ft3',
  load: 'lb/ft2',
  pieces: 'bag',
  'weight of a piece': 'lb/bag',
  'thermal resistance': 'h ft2 F/Btu',
  'resistance per length': 'h ft2 F/(Btu in)',
  'thermal transmittance': 'Btu/(h ft2 F)',
  'thermal conductivity': 'Btu in/(h ft2 F)',
};

/** Is this text the name of a unit in the closed list? */
export const isUnitName = (text: string): text is UnitName => Object.hasOwn(units, text);

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('·', ' ')
    .replaceAll('°', '')
    .replace(/\s+/g, ' ');

const byWriting = new Map<string, UnitName>();
for (const [name, facts] of Object.entries(units) as [UnitName, UnitFacts][]) {
  for (const way of [name, facts.sign, ...(facts.written ?? [])]) {
    if (way !== '') byWriting.set(plain(way), name);
  }
}

/** Which unit did somebody mean by this text? Undefined if none is known by it. */
export const unitWritten = (text: string): UnitName | undefined => byWriting.get(plain(text));
