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
  sign: string;
  /** Other ways people write it; name and sign are understood as well, and all that `plain` takes for one and the same. */
  readonly written: readonly string[];
}

/** Its sign follows from its name: see `signOf`. */
const BY_RULE = '';

/** A unit of a dimension: its size in base units, its sign, and other ways people write it. */
const unit = <const D extends Dimension>(
  dimension: D,
  size: number,
  sign = BY_RULE,
  ...written: readonly string[]
) => ({ dimension, size, sign, written });

/** The first of each dimension is its usual one. */
export const units = {
  '1': unit('number', 1),
  percent: unit('number', 0.01, '%', 'per cent', 'pct'),
  ppm: unit('number', 1e-6),

  in: unit('length', 1, BY_RULE, '"'),
  ft: unit('length', INCHES_PER_FOOT, BY_RULE, "'"),
  mm: unit('length', 0.001 / METRES_PER_INCH),
  cm: unit('length', 0.01 / METRES_PER_INCH),
  m: unit('length', 1 / METRES_PER_INCH),

  ft2: unit('area', squareFoot),
  in2: unit('area', 1),
  m2: unit('area', METRES_PER_INCH ** -2),

  ft3: unit('volume', cubicFoot),
  in3: unit('volume', 1),
  m3: unit('volume', METRES_PER_INCH ** -3),

  lb: unit('weight', 1),
  kg: unit('weight', 1 / KILOGRAMS_PER_POUND),

  'lb/ft3': unit('density', 1 / cubicFoot),
  'kg/m3': unit('density', METRES_PER_INCH ** 3 / KILOGRAMS_PER_POUND),

  'lb/ft2': unit('load', 1 / squareFoot),
  'kg/m2': unit('load', METRES_PER_INCH ** 2 / KILOGRAMS_PER_POUND),
  Pa: unit('load', pascal),
  psi: unit('load', 1),
  'in w.c.': unit('load', 1 / INCHES_OF_WATER_PER_PSI, BY_RULE, 'inwc'),

  psia: unit('load', 1),
  inHg: unit('load', PASCALS_PER_INCH_OF_MERCURY * pascal, BY_RULE, 'in Hg'),
  atm: unit('load', PASCALS_PER_ATMOSPHERE * pascal),

  bag: unit('pieces', 1),
  hole: unit('pieces', 1),
  piece: unit('pieces', 1),
  push: unit('pieces', 1, 'pushes'),
  screw: unit('pieces', 1),
  cartridge: unit('pieces', 1),
  roll: unit('pieces', 1),
  fibre: unit('pieces', 1),
  'lb/bag': unit('weight of a piece', 1, BY_RULE, 'lb bag'),
  'kg/bag': unit('weight of a piece', 1 / KILOGRAMS_PER_POUND, BY_RULE, 'kg bag'),

  'h ft2 F/Btu': unit('thermal resistance', squareFoot, 'h·ft²·°F/Btu', 'R'),
  'm2 K/W': unit('thermal resistance', squareMetreKelvinPerWatt, 'm²·K/W'),
  'h ft2 F/(Btu in)': unit('resistance per length', squareFoot, 'h·ft²·°F/Btu per in', 'R/in', 'per in'),
  'Btu/(h ft2 F)': unit('thermal transmittance', 1 / squareFoot, 'Btu/(h·ft²·°F)'),
  'W/(m2 K)': unit('thermal transmittance', 1 / squareMetreKelvinPerWatt, 'W/(m²·K)'),
  'Btu in/(h ft2 F)': unit('thermal conductivity', 1 / squareFoot, 'Btu·in/(h·ft²·°F)'),
  'W/(m K)': unit('thermal conductivity', 1 / (squareMetreKelvinPerWatt * METRES_PER_INCH), 'W/(m·K)'),

  h: unit('time', 1),
  min: unit('time', 1 / MINUTES_PER_HOUR),
  s: unit('time', 1 / SECONDS_PER_HOUR),
  day: unit('time', HOURS_PER_DAY, 'days'),
  year: unit('time', HOURS_PER_DAY * DAYS_PER_YEAR, 'years'),

  F: unit('temperature reading', 1, '°F'),
  C: { ...unit('temperature reading', 1 / KELVINS_PER_FAHRENHEIT, '°C'), zero: CELSIUS_ZERO },
  'F difference': unit('temperature', 1, '°F'),
  K: unit('temperature', 1 / KELVINS_PER_FAHRENHEIT),
  'F day': unit('degree-days', HOURS_PER_DAY, '°F·days', 'degree-days', 'HDD'),
  'K day': unit('degree-days', HOURS_PER_DAY / KELVINS_PER_FAHRENHEIT, 'K·days'),

  'ft/min': unit('speed', INCHES_PER_FOOT * MINUTES_PER_HOUR),
  'in/min': unit('speed', MINUTES_PER_HOUR),
  mph: unit('speed', FEET_PER_MILE * INCHES_PER_FOOT),
  'cfm/ft2': unit('speed', INCHES_PER_FOOT * MINUTES_PER_HOUR, 'cfm per ft²'),
  cfm: unit('air flow', cubicFoot * MINUTES_PER_HOUR, BY_RULE, 'ft3/min'),
  'L/s': unit('air flow', (0.001 / METRES_PER_INCH ** 3) * SECONDS_PER_HOUR),
  'lb/min': unit('weight rate', MINUTES_PER_HOUR),
  'lb/h': unit('weight rate', 1),
  'lb/year': unit('weight rate', 1 / (HOURS_PER_DAY * DAYS_PER_YEAR)),
  'lb/ft': unit('weight per length', 1 / INCHES_PER_FOOT),

  gal: unit('volume', CUBIC_INCHES_PER_GALLON),
  'fl oz': unit('volume', CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON),

  'g/m2': unit('load', (0.001 * METRES_PER_INCH ** 2) / KILOGRAMS_PER_POUND),
  'mg/m3': unit('density', (1e-6 * METRES_PER_INCH ** 3) / KILOGRAMS_PER_POUND),
  'lb/(ft2 in)': unit('density', 1 / squareFoot, 'lb/ft² per in'),
  'fibres/cm3': unit('pieces per volume', (100 * METRES_PER_INCH) ** 3, BY_RULE, 'f/cc'),
  'grain/(h ft2)': unit('vapour flow', 1 / (GRAINS_PER_POUND * squareFoot), 'grains/(h·ft²)'),
  'ng/(s m2)': unit(
    'vapour flow',
    (1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2,
    'ng/(s·m²)',
  ),
  perm: unit('permeance', 1 / (GRAINS_PER_POUND * squareFoot * PASCALS_PER_INCH_OF_MERCURY * pascal)),
  'ng/(s m2 Pa)': unit(
    'permeance',
    ((1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2) / pascal,
    'ng/(s·m²·Pa)',
  ),

  Btu: unit('heat', 1),
  'million Btu': unit('heat', 1_000_000),
  kWh: unit('heat', BTU_PER_KILOWATT_HOUR),
  therm: unit('heat', BTU_PER_THERM, 'therms'),
  'Btu/h': unit('heat flow', 1),
  W: unit('heat flow', SECONDS_PER_HOUR / JOULES_PER_BTU),
  'million Btu/year': unit('heat flow', 1_000_000 / (HOURS_PER_DAY * DAYS_PER_YEAR)),
  'Btu/(h ft2)': unit('heat flux', 1 / squareFoot, 'Btu/(h·ft²)'),
  'W/cm2': unit('heat flux', (SECONDS_PER_HOUR / JOULES_PER_BTU) * (100 * METRES_PER_INCH) ** 2),
  'Btu/(h F)': unit('heat loss coefficient', 1, 'Btu/(h·°F)'),
  'Btu/gal': unit('heat per volume', 1 / CUBIC_INCHES_PER_GALLON),
  'Btu/ft3': unit('heat per volume', 1 / cubicFoot),
  'lb/million Btu': unit('weight per heat', 1 / 1_000_000),
  'kg/million Btu': unit('weight per heat', 1 / (KILOGRAMS_PER_POUND * 1_000_000)),

  $: unit('money', 1),
  '$/year': unit('money rate', 1 / (HOURS_PER_DAY * DAYS_PER_YEAR)),
  '$/ft2': unit('money per area', 1 / squareFoot),
  '$/million Btu': unit('price of heat', 1 / 1_000_000),
  '$/Btu': unit('price of heat', 1),
  '$/kWh': unit('price of heat', 1 / BTU_PER_KILOWATT_HOUR),
  '$/therm': unit('price of heat', 1 / BTU_PER_THERM),
  '$/gal': unit('price per volume', 1 / CUBIC_INCHES_PER_GALLON),
  '$/ft3': unit('price per volume', 1 / cubicFoot),
  '$/ccf': unit('price per volume', 1 / (100 * cubicFoot)),
  '$/Mcf': unit('price per volume', 1 / (1000 * cubicFoot)),

  'ft/cartridge': unit('length of a piece', INCHES_PER_FOOT),
  'ft/roll': unit('length of a piece', INCHES_PER_FOOT),
  'in2/piece': unit('area of a piece', 1),
  'in3/cartridge': unit('volume of a piece', 1),
  'fl oz/cartridge': unit('volume of a piece', CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON),

  dBA: unit('sound level', 1, BY_RULE, 'dB(A)', 'dB'),
  degree: unit('angle', 1, 'degrees'),
  V: unit('voltage', 1),
  kV: unit('voltage', 1000),
} satisfies Record<string, UnitFacts>;

export type UnitName = keyof typeof units;

/** The units that measure one dimension, as a type: a `UnitOf<'length'>` is `'in' | 'ft' | ...`. */
export type UnitOf<D extends Dimension> = Dimension extends D
  ? UnitName
  : { [U in UnitName]: (typeof units)[U]['dimension'] extends D ? U : never }[UnitName];

/** The unit a computed result is given in when nobody asked for another: the first of its dimension in the list. */
export const usualUnit: { readonly [D in Dimension]?: UnitName } = {};

/**
 * Is this text the name of a unit in the closed list?
 * @example isUnitName('feet') // => false
 */
export const isUnitName = (text: string): text is UnitName => Object.keys(units).includes(text);

/** Words for the signs of the table. One of each is enough: plurals lose their ending first. */
export const signs: Readonly<Record<string, string>> = {
  inch: 'in',
  foot: 'ft',
  feet: 'ft',
  millimetre: 'mm',
  centimetre: 'cm',
  metre: 'm',
  pound: 'lb',
  kilogram: 'kg',
  hour: 'h',
  hr: 'h',
  minute: 'min',
  second: 's',
  sec: 's',
  yr: 'year',
  gallon: 'gal',
  fluid: 'fl',
  ounce: 'oz',
  fiber: 'fibre',
  deg: 'degree',
  dollar: '$',
  usd: '$',
  volt: 'v',
  kilovolt: 'kv',
  mmbtu: 'million btu',
  sf: 'ft2',
  psf: 'lb/ft2',
  pcf: 'lb/ft3',
  fpm: 'ft/min',
};

/** One way of writing for all that mean one unit: "lbs per cubic foot" is "lb/ft3". */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[.^]/g, '')
    .replace(/°/g, ' degree ')
    .replace(/#/g, ' lb ')
    .replace(/[a-z]+/g, (word) => {
      const one = word.replace(/(ch|sh)es$|(..)s$/, '$1$2').replace(/meter$/, 'metre');
      return signs[one] ?? one;
    })
    .replace(/[-·\s]+/g, ' ')
    .trim()
    .replace(
      /\b(sq|cu)(?:[a-z]* )?([a-z]+)/g,
      (_, power: string, of: string) => of + (power === 'sq' ? 2 : 3),
    )
    .replace(/(?:^| )(?:per|an?) | ?\/ ?/g, '/')
    .replace(/\bdegree (?=[fck]\b)/g, '');

/** The sign of a unit that gives none: its name as printed, "$/gal" as "$ per gal", "lb/bag" as "lb a bag", "ft2" as "ft²". */
const signOf = (name: UnitName, dimension: Dimension): string =>
  name === '1'
    ? ''
    : name
        .replace(/^\$\/(?!year)/, '$$ per ')
        .replace(/\/(year|bag|roll|cartridge|piece|million Btu)$/, ' a $1')
        .replace('2', '²')
        .replace('3', '³') + (dimension === 'pieces' ? 's' : '');

const byWriting = new Map<string, UnitName>();
for (const [name, facts] of Object.entries(units) as [UnitName, UnitFacts][]) {
  facts.sign ||= signOf(name, facts.dimension);
  if (!/^(sound|angle|voltage)/.test(facts.dimension))
    (usualUnit as Record<string, UnitName>)[facts.dimension] ??= name;
  for (const way of [name, facts.sign, ...facts.written]) {
    // The first to claim a writing has it: what is written "°F" is a reading, not a difference.
    const known = plain(way);
    // A pure number has no sign, and nobody writes its name: a 1 after a number is a slip.
    if (/\D/.test(known) && !byWriting.has(known)) byWriting.set(known, name);
  }
}

/**
 * Which unit did somebody mean by this text? Undefined if none is known by it.
 * @example unitWritten('Sq Ft') // => 'ft2'
 */
export const unitWritten = (text: string): UnitName | undefined => byWriting.get(plain(text));

/**
 * The units of each dimension, by their names, in the order of the list.
 * @example unitsByDimension()[1] // => ['length', ['in', 'ft', 'mm', 'cm', 'm']]
 */
export function unitsByDimension(): [Dimension, UnitName[]][] {
  const found = new Map<Dimension, UnitName[]>();
  for (const name of Object.keys(units) as UnitName[]) {
    const { dimension } = units[name];
    found.set(dimension, [...(found.get(dimension) ?? []), name]);
  }
  return [...found];
}
