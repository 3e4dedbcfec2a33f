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

const MINUTES_PER_HOUR = 60;
const HOURS_PER_DAY = 24;
/** The Julian year, as general unit tables have it. */
const DAYS_PER_YEAR = 365.25;
const CUBIC_INCHES_PER_GALLON = 231;
const FLUID_OUNCES_PER_GALLON = 128;
const FEET_PER_MILE = 5280;
const GRAINS_PER_POUND = 7000;
/** Pascals in an inch of mercury at 32 F, the conventional figure of the perm. */
const PASCALS_PER_INCH_OF_MERCURY = 3386.389;
const PASCALS_PER_ATMOSPHERE = 101325;
const BTU_PER_THERM = 100_000;
const BTU_PER_KILOWATT_HOUR = 3_600_000 / JOULES_PER_BTU;
/** Where 0 of a thermometer's scale stands above the 0 of the Fahrenheit scale, in Fahrenheit degrees. */
const CELSIUS_ZERO = 32;

/** Inches of water column in one psi, as printed: water by convention of 1000 kg/m3, which is near that at 39 F. */
const INCHES_OF_WATER_PER_PSI = 27.6799;

const pascal = METRES_PER_INCH ** 2 / (KILOGRAMS_PER_POUND * STANDARD_GRAVITY);
const squareFoot = INCHES_PER_FOOT ** 2;
const cubicFoot = INCHES_PER_FOOT ** 3;
/** h m2 K/J in one m2 K/W, then each metric unit turned into its base unit. */
const squareMetreKelvinPerWatt =
  JOULES_PER_BTU / SECONDS_PER_HOUR / (METRES_PER_INCH ** 2 * KELVINS_PER_FAHRENHEIT);

interface UnitFacts {
  readonly dimension: Dimension;
  /** How many base units make one of these. */
  readonly size: number;
  /** Where its 0 stands, in base units; only a thermometer's scale has a 0 of its own. */
  readonly zero?: number;
  /** As printed after a number; after 1 the name itself, where the sign is its plural. */
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
    size: pascal,
    sign: 'Pa',
  },
  psi: { dimension: 'load', size: 1, sign: 'psi' },
  'in w.c.': {
    dimension: 'load',
    size: 1 / INCHES_OF_WATER_PER_PSI,
    sign: 'in w.c.',
    written: ['inwc', 'in wc'],
  },

  psia: { dimension: 'load', size: 1, sign: 'psia' },
  inHg: { dimension: 'load', size: PASCALS_PER_INCH_OF_MERCURY * pascal, sign: 'inHg', written: ['in Hg'] },
  atm: { dimension: 'load', size: PASCALS_PER_ATMOSPHERE * pascal, sign: 'atm' },

  bag: { dimension: 'pieces', size: 1, sign: 'bags' },
  hole: { dimension: 'pieces', size: 1, sign: 'holes' },
  piece: { dimension: 'pieces', size: 1, sign: 'pieces' },
  push: { dimension: 'pieces', size: 1, sign: 'pushes' },
  screw: { dimension: 'pieces', size: 1, sign: 'screws' },
  cartridge: { dimension: 'pieces', size: 1, sign: 'cartridges' },
  roll: { dimension: 'pieces', size: 1, sign: 'rolls' },
  fibre: {
    dimension: 'pieces',
    size: 1,
    sign: 'fibres',
    written: ['fiber', 'fibers'],
  },
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
  'W/(m K)': {
    dimension: 'thermal conductivity',
    size: 1 / (squareMetreKelvinPerWatt * METRES_PER_INCH),
    sign: 'W/(m·K)',
  },

  h: { dimension: 'time', size: 1, sign: 'h', written: ['hour', 'hours', 'hr'] },
  min: { dimension: 'time', size: 1 / MINUTES_PER_HOUR, sign: 'min', written: ['minute', 'minutes'] },
  s: { dimension: 'time', size: 1 / SECONDS_PER_HOUR, sign: 's', written: ['second', 'seconds'] },
  day: { dimension: 'time', size: HOURS_PER_DAY, sign: 'days' },
  year: {
    dimension: 'time',
    size: HOURS_PER_DAY * DAYS_PER_YEAR,
    sign: 'years',
    written: ['yr'],
  },

  F: { dimension: 'temperature reading', size: 1, sign: '°F', written: ['deg F'] },
  C: {
    dimension: 'temperature reading',
    size: 1 / KELVINS_PER_FAHRENHEIT,
    zero: CELSIUS_ZERO,
    sign: '°C',
    written: ['deg C'],
  },
  'F difference': { dimension: 'temperature', size: 1, sign: '°F' },
  K: { dimension: 'temperature', size: 1 / KELVINS_PER_FAHRENHEIT, sign: 'K' },
  'F day': {
    dimension: 'degree-days',
    size: HOURS_PER_DAY,
    sign: '°F·days',
    written: ['degree-days', 'degree days', 'F days', 'HDD'],
  },
  'K day': {
    dimension: 'degree-days',
    size: HOURS_PER_DAY / KELVINS_PER_FAHRENHEIT,
    sign: 'K·days',
    written: ['K days'],
  },

  'ft/min': {
    dimension: 'speed',
    size: INCHES_PER_FOOT * MINUTES_PER_HOUR,
    sign: 'ft/min',
    written: ['fpm'],
  },
  'in/min': { dimension: 'speed', size: MINUTES_PER_HOUR, sign: 'in/min' },
  mph: { dimension: 'speed', size: FEET_PER_MILE * INCHES_PER_FOOT, sign: 'mph' },
  'cfm/ft2': { dimension: 'speed', size: INCHES_PER_FOOT * MINUTES_PER_HOUR, sign: 'cfm per ft²' },
  cfm: { dimension: 'air flow', size: cubicFoot * MINUTES_PER_HOUR, sign: 'cfm', written: ['ft3/min'] },
  'L/s': {
    dimension: 'air flow',
    size: (0.001 / METRES_PER_INCH ** 3) * SECONDS_PER_HOUR,
    sign: 'L/s',
  },
  'lb/min': {
    dimension: 'weight rate',
    size: MINUTES_PER_HOUR,
    sign: 'lb/min',
    written: ['lb a minute', 'lb per minute'],
  },
  'lb/h': { dimension: 'weight rate', size: 1, sign: 'lb/h', written: ['lb an hour', 'lb per hour'] },
  'lb/year': {
    dimension: 'weight rate',
    size: 1 / (HOURS_PER_DAY * DAYS_PER_YEAR),
    sign: 'lb a year',
    written: ['lb per year'],
  },
  'lb/ft': { dimension: 'weight per length', size: 1 / INCHES_PER_FOOT, sign: 'lb/ft' },

  gal: {
    dimension: 'volume',
    size: CUBIC_INCHES_PER_GALLON,
    sign: 'gal',
    written: ['gallon', 'gallons'],
  },
  'fl oz': {
    dimension: 'volume',
    size: CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON,
    sign: 'fl oz',
    written: ['fluid ounces', 'fluid ounce'],
  },

  'g/m2': { dimension: 'load', size: (0.001 * METRES_PER_INCH ** 2) / KILOGRAMS_PER_POUND, sign: 'g/m²' },
  'mg/m3': { dimension: 'density', size: (1e-6 * METRES_PER_INCH ** 3) / KILOGRAMS_PER_POUND, sign: 'mg/m³' },
  'lb/(ft2 in)': {
    dimension: 'density',
    size: 1 / squareFoot,
    sign: 'lb/ft² per in',
    written: ['lb/ft2 per in', 'psf per in'],
  },
  'fibres/cm3': {
    dimension: 'pieces per volume',
    size: (100 * METRES_PER_INCH) ** 3,
    sign: 'fibres/cm³',
    written: ['fibers/cm3', 'f/cc'],
  },
  'ng/(s m2)': {
    dimension: 'vapour flow',
    size: (1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2,
    sign: 'ng/(s·m²)',
  },
  'grain/(h ft2)': {
    dimension: 'vapour flow',
    size: 1 / (GRAINS_PER_POUND * squareFoot),
    sign: 'grains/(h·ft²)',
  },
  perm: {
    dimension: 'permeance',
    size: 1 / (GRAINS_PER_POUND * squareFoot * PASCALS_PER_INCH_OF_MERCURY * pascal),
    sign: 'perm',
    written: ['perms'],
  },
  'ng/(s m2 Pa)': {
    dimension: 'permeance',
    size: ((1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2) / pascal,
    sign: 'ng/(s·m²·Pa)',
  },

  Btu: { dimension: 'heat', size: 1, sign: 'Btu' },
  'million Btu': { dimension: 'heat', size: 1_000_000, sign: 'million Btu', written: ['MMBtu'] },
  kWh: { dimension: 'heat', size: BTU_PER_KILOWATT_HOUR, sign: 'kWh' },
  therm: { dimension: 'heat', size: BTU_PER_THERM, sign: 'therms' },
  'Btu/h': { dimension: 'heat flow', size: 1, sign: 'Btu/h' },
  W: { dimension: 'heat flow', size: SECONDS_PER_HOUR / JOULES_PER_BTU, sign: 'W' },
  'million Btu/year': {
    dimension: 'heat flow',
    size: 1_000_000 / (HOURS_PER_DAY * DAYS_PER_YEAR),
    sign: 'million Btu a year',
  },
  'Btu/(h ft2)': { dimension: 'heat flux', size: 1 / squareFoot, sign: 'Btu/(h·ft²)' },
  'W/cm2': {
    dimension: 'heat flux',
    size: (SECONDS_PER_HOUR / JOULES_PER_BTU) * (100 * METRES_PER_INCH) ** 2,
    sign: 'W/cm²',
  },
  'Btu/(h F)': { dimension: 'heat loss coefficient', size: 1, sign: 'Btu/(h·°F)' },
  'Btu/gal': { dimension: 'heat per volume', size: 1 / CUBIC_INCHES_PER_GALLON, sign: 'Btu/gal' },
  'Btu/ft3': { dimension: 'heat per volume', size: 1 / cubicFoot, sign: 'Btu/ft³' },
  'kg/million Btu': {
    dimension: 'weight per heat',
    size: 1 / (KILOGRAMS_PER_POUND * 1_000_000),
    sign: 'kg a million Btu',
  },
  'lb/million Btu': { dimension: 'weight per heat', size: 1 / 1_000_000, sign: 'lb a million Btu' },

  $: { dimension: 'money', size: 1, sign: '$', written: ['dollar', 'dollars', 'USD'] },
  '$/year': {
    dimension: 'money rate',
    size: 1 / (HOURS_PER_DAY * DAYS_PER_YEAR),
    sign: '$ a year',
    written: ['$ per year'],
  },
  '$/ft2': { dimension: 'money per area', size: 1 / squareFoot, sign: '$ per ft²', written: ['$ a ft2'] },
  '$/Btu': { dimension: 'price of heat', size: 1, sign: '$ per Btu' },
  '$/million Btu': { dimension: 'price of heat', size: 1 / 1_000_000, sign: '$ per million Btu' },
  '$/kWh': {
    dimension: 'price of heat',
    size: 1 / BTU_PER_KILOWATT_HOUR,
    sign: '$ per kWh',
    written: ['$ a kWh'],
  },
  '$/therm': {
    dimension: 'price of heat',
    size: 1 / BTU_PER_THERM,
    sign: '$ per therm',
    written: ['$ a therm'],
  },
  '$/gal': {
    dimension: 'price per volume',
    size: 1 / CUBIC_INCHES_PER_GALLON,
    sign: '$ per gal',
    written: ['$ a gal', '$/gallon', '$ a gallon', '$ per gallon'],
  },
  '$/ft3': { dimension: 'price per volume', size: 1 / cubicFoot, sign: '$ per ft³', written: ['$ a ft3'] },

  'ft/cartridge': { dimension: 'length of a piece', size: INCHES_PER_FOOT, sign: 'ft a cartridge' },
  'ft/roll': { dimension: 'length of a piece', size: INCHES_PER_FOOT, sign: 'ft a roll' },
  'in2/piece': { dimension: 'area of a piece', size: 1, sign: 'in² a piece' },
  'fl oz/cartridge': {
    dimension: 'volume of a piece',
    size: CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON,
    sign: 'fl oz a cartridge',
  },
  'in3/cartridge': { dimension: 'volume of a piece', size: 1, sign: 'in³ a cartridge' },

  dBA: { dimension: 'sound level', size: 1, sign: 'dBA', written: ['dB(A)', 'dB'] },
  degree: { dimension: 'angle', size: 1, sign: 'degrees', written: ['deg'] },
  V: { dimension: 'voltage', size: 1, sign: 'V', written: ['volt', 'volts'] },
  kV: { dimension: 'voltage', size: 1000, sign: 'kV', written: ['kilovolt', 'kilovolts'] },
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
  time: 'h',
  temperature: 'F difference',
  'temperature reading': 'F',
  'degree-days': 'F day',
  speed: 'ft/min',
  'air flow': 'cfm',
  'weight rate': 'lb/min',
  'weight per length': 'lb/ft',
  'vapour flow': 'grain/(h ft2)',
  permeance: 'perm',
  heat: 'Btu',
  'heat flow': 'Btu/h',
  'heat flux': 'Btu/(h ft2)',
  'heat loss coefficient': 'Btu/(h F)',
  'heat per volume': 'Btu/gal',
  'weight per heat': 'lb/million Btu',
  money: '$',
  'money rate': '$/year',
  'money per area': '$/ft2',
  'price of heat': '$/million Btu',
  'price per volume': '$/gal',
  'length of a piece': 'ft/cartridge',
  'area of a piece': 'in2/piece',
  'volume of a piece': 'in3/cartridge',
  'pieces per volume': 'fibres/cm3',
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
    // The first to claim a writing has it: what is written "°F" is a reading, not a difference.
    const known = plain(way);
    if (known !== '' && !byWriting.has(known)) byWriting.set(known, name);
  }
}

/** Which unit did somebody mean by this text? Undefined if none is known by it. */
export const unitWritten = (text: string): UnitName | undefined => byWriting.get(plain(text));
