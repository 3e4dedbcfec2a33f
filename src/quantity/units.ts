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
  readonly written: readonly string[];
}

/** A unit of a dimension: its size in base units, its sign, and other ways people write it. */
const unit = <const D extends Dimension>(
  dimension: D,
  size: number,
  sign: string,
  ...written: readonly string[]
) => ({ dimension, size, sign, written });

export const units = {
  '1': unit('number', 1, ''),
  percent: unit('number', 0.01, '%', 'per cent', 'pct'),

  in: unit('length', 1, 'in', 'inch', 'inches', 'ins', 'in.', '"', '″', '”', "''"),
  ft: unit('length', INCHES_PER_FOOT, 'ft', 'foot', 'feet', 'ft.', "'", '′', '’'),
  mm: unit('length', 0.001 / METRES_PER_INCH, 'mm', 'millimetre', 'millimeter'),
  cm: unit('length', 0.01 / METRES_PER_INCH, 'cm', 'centimetre', 'centimeter'),
  m: unit('length', 1 / METRES_PER_INCH, 'm', 'metre', 'meter', 'metres', 'meters'),

  in2: unit('area', 1, 'in²', 'sq in', 'square inch', 'square inches'),
  ft2: unit('area', squareFoot, 'ft²', 'sq ft', 'square foot', 'square feet'),
  m2: unit('area', METRES_PER_INCH ** -2, 'm²', 'sq m'),

  in3: unit('volume', 1, 'in³', 'cu in'),
  ft3: unit('volume', cubicFoot, 'ft³', 'cu ft', 'cubic foot', 'cubic feet'),
  m3: unit('volume', METRES_PER_INCH ** -3, 'm³'),

  lb: unit('weight', 1, 'lb', 'lbs', 'lb.', 'pound', 'pounds', '#'),
  kg: unit('weight', 1 / KILOGRAMS_PER_POUND, 'kg', 'kilogram', 'kilograms'),

  'lb/ft3': unit('density', 1 / cubicFoot, 'lb/ft³', 'lb/cu ft', 'lbs/cu ft', 'pcf', 'lbs/ft3'),
  'kg/m3': unit('density', METRES_PER_INCH ** 3 / KILOGRAMS_PER_POUND, 'kg/m³'),

  'lb/ft2': unit('load', 1 / squareFoot, 'lb/ft²', 'psf', 'lb/sq ft', 'lbs/ft2'),
  'kg/m2': unit('load', METRES_PER_INCH ** 2 / KILOGRAMS_PER_POUND, 'kg/m²'),
  Pa: unit('load', pascal, 'Pa'),
  psi: unit('load', 1, 'psi'),
  'in w.c.': unit('load', 1 / INCHES_OF_WATER_PER_PSI, 'in w.c.', 'inwc', 'in wc'),

  psia: unit('load', 1, 'psia'),
  inHg: unit('load', PASCALS_PER_INCH_OF_MERCURY * pascal, 'inHg', 'in Hg'),
  atm: unit('load', PASCALS_PER_ATMOSPHERE * pascal, 'atm'),

  bag: unit('pieces', 1, 'bags'),
  hole: unit('pieces', 1, 'holes'),
  piece: unit('pieces', 1, 'pieces'),
  push: unit('pieces', 1, 'pushes'),
  screw: unit('pieces', 1, 'screws'),
  cartridge: unit('pieces', 1, 'cartridges'),
  roll: unit('pieces', 1, 'rolls'),
  fibre: unit('pieces', 1, 'fibres', 'fiber', 'fibers'),
  'lb/bag': unit('weight of a piece', 1, 'lb a bag', 'lb per bag', 'lb bag', 'lb bags'),

  'h ft2 F/Btu': unit('thermal resistance', squareFoot, 'h·ft²·°F/Btu', 'R'),
  'm2 K/W': unit('thermal resistance', squareMetreKelvinPerWatt, 'm²·K/W'),
  'h ft2 F/(Btu in)': unit(
    'resistance per length',
    squareFoot,
    'h·ft²·°F/Btu per in',
    'R per in',
    'R/in',
    'per in',
    'per inch',
  ),
  'Btu/(h ft2 F)': unit('thermal transmittance', 1 / squareFoot, 'Btu/(h·ft²·°F)'),
  'W/(m2 K)': unit('thermal transmittance', 1 / squareMetreKelvinPerWatt, 'W/(m²·K)'),
  'Btu in/(h ft2 F)': unit('thermal conductivity', 1 / squareFoot, 'Btu·in/(h·ft²·°F)'),
  'W/(m K)': unit('thermal conductivity', 1 / (squareMetreKelvinPerWatt * METRES_PER_INCH), 'W/(m·K)'),

  h: unit('time', 1, 'h', 'hour', 'hours', 'hr'),
  min: unit('time', 1 / MINUTES_PER_HOUR, 'min', 'minute', 'minutes'),
  s: unit('time', 1 / SECONDS_PER_HOUR, 's', 'second', 'seconds'),
  day: unit('time', HOURS_PER_DAY, 'days'),
  year: unit('time', HOURS_PER_DAY * DAYS_PER_YEAR, 'years', 'yr'),

  F: unit('temperature reading', 1, '°F', 'deg F'),
  C: { ...unit('temperature reading', 1 / KELVINS_PER_FAHRENHEIT, '°C', 'deg C'), zero: CELSIUS_ZERO },
  'F difference': unit('temperature', 1, '°F'),
  K: unit('temperature', 1 / KELVINS_PER_FAHRENHEIT, 'K'),
  'F day': unit('degree-days', HOURS_PER_DAY, '°F·days', 'degree-days', 'degree days', 'F days', 'HDD'),
  'K day': unit('degree-days', HOURS_PER_DAY / KELVINS_PER_FAHRENHEIT, 'K·days', 'K days'),

  'ft/min': unit('speed', INCHES_PER_FOOT * MINUTES_PER_HOUR, 'ft/min', 'fpm'),
  'in/min': unit('speed', MINUTES_PER_HOUR, 'in/min'),
  mph: unit('speed', FEET_PER_MILE * INCHES_PER_FOOT, 'mph'),
  'cfm/ft2': unit('speed', INCHES_PER_FOOT * MINUTES_PER_HOUR, 'cfm per ft²'),
  cfm: unit('air flow', cubicFoot * MINUTES_PER_HOUR, 'cfm', 'ft3/min'),
  'L/s': unit('air flow', (0.001 / METRES_PER_INCH ** 3) * SECONDS_PER_HOUR, 'L/s'),
  'lb/min': unit('weight rate', MINUTES_PER_HOUR, 'lb/min', 'lb a minute', 'lb per minute'),
  'lb/h': unit('weight rate', 1, 'lb/h', 'lb an hour', 'lb per hour'),
  'lb/year': unit('weight rate', 1 / (HOURS_PER_DAY * DAYS_PER_YEAR), 'lb a year', 'lb per year'),
  'lb/ft': unit('weight per length', 1 / INCHES_PER_FOOT, 'lb/ft'),

  gal: unit('volume', CUBIC_INCHES_PER_GALLON, 'gal', 'gallon', 'gallons'),
  'fl oz': unit(
    'volume',
    CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON,
    'fl oz',
    'fluid ounces',
    'fluid ounce',
  ),

  'g/m2': unit('load', (0.001 * METRES_PER_INCH ** 2) / KILOGRAMS_PER_POUND, 'g/m²'),
  'mg/m3': unit('density', (1e-6 * METRES_PER_INCH ** 3) / KILOGRAMS_PER_POUND, 'mg/m³'),
  'lb/(ft2 in)': unit('density', 1 / squareFoot, 'lb/ft² per in', 'lb/ft2 per in', 'psf per in'),
  'fibres/cm3': unit('pieces per volume', (100 * METRES_PER_INCH) ** 3, 'fibres/cm³', 'fibers/cm3', 'f/cc'),
  'ng/(s m2)': unit(
    'vapour flow',
    (1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2,
    'ng/(s·m²)',
  ),
  'grain/(h ft2)': unit('vapour flow', 1 / (GRAINS_PER_POUND * squareFoot), 'grains/(h·ft²)'),
  perm: unit(
    'permeance',
    1 / (GRAINS_PER_POUND * squareFoot * PASCALS_PER_INCH_OF_MERCURY * pascal),
    'perm',
    'perms',
  ),
  'ng/(s m2 Pa)': unit(
    'permeance',
    ((1e-12 / KILOGRAMS_PER_POUND) * SECONDS_PER_HOUR * METRES_PER_INCH ** 2) / pascal,
    'ng/(s·m²·Pa)',
  ),

  Btu: unit('heat', 1, 'Btu'),
  'million Btu': unit('heat', 1_000_000, 'million Btu', 'MMBtu'),
  kWh: unit('heat', BTU_PER_KILOWATT_HOUR, 'kWh'),
  therm: unit('heat', BTU_PER_THERM, 'therms'),
  'Btu/h': unit('heat flow', 1, 'Btu/h'),
  W: unit('heat flow', SECONDS_PER_HOUR / JOULES_PER_BTU, 'W'),
  'million Btu/year': unit('heat flow', 1_000_000 / (HOURS_PER_DAY * DAYS_PER_YEAR), 'million Btu a year'),
  'Btu/(h ft2)': unit('heat flux', 1 / squareFoot, 'Btu/(h·ft²)'),
  'W/cm2': unit('heat flux', (SECONDS_PER_HOUR / JOULES_PER_BTU) * (100 * METRES_PER_INCH) ** 2, 'W/cm²'),
  'Btu/(h F)': unit('heat loss coefficient', 1, 'Btu/(h·°F)'),
  'Btu/gal': unit('heat per volume', 1 / CUBIC_INCHES_PER_GALLON, 'Btu/gal'),
  'Btu/ft3': unit('heat per volume', 1 / cubicFoot, 'Btu/ft³'),
  'kg/million Btu': unit('weight per heat', 1 / (KILOGRAMS_PER_POUND * 1_000_000), 'kg a million Btu'),
  'lb/million Btu': unit('weight per heat', 1 / 1_000_000, 'lb a million Btu'),

  $: unit('money', 1, '$', 'dollar', 'dollars', 'USD'),
  '$/year': unit('money rate', 1 / (HOURS_PER_DAY * DAYS_PER_YEAR), '$ a year', '$ per year'),
  '$/ft2': unit('money per area', 1 / squareFoot, '$ per ft²', '$ a ft2'),
  '$/Btu': unit('price of heat', 1, '$ per Btu'),
  '$/million Btu': unit('price of heat', 1 / 1_000_000, '$ per million Btu'),
  '$/kWh': unit('price of heat', 1 / BTU_PER_KILOWATT_HOUR, '$ per kWh', '$ a kWh'),
  '$/therm': unit('price of heat', 1 / BTU_PER_THERM, '$ per therm', '$ a therm'),
  '$/gal': unit(
    'price per volume',
    1 / CUBIC_INCHES_PER_GALLON,
    '$ per gal',
    '$ a gal',
    '$/gallon',
    '$ a gallon',
    '$ per gallon',
  ),
  '$/ft3': unit('price per volume', 1 / cubicFoot, '$ per ft³', '$ a ft3'),

  'ft/cartridge': unit('length of a piece', INCHES_PER_FOOT, 'ft a cartridge'),
  'ft/roll': unit('length of a piece', INCHES_PER_FOOT, 'ft a roll'),
  'in2/piece': unit('area of a piece', 1, 'in² a piece'),
  'fl oz/cartridge': unit(
    'volume of a piece',
    CUBIC_INCHES_PER_GALLON / FLUID_OUNCES_PER_GALLON,
    'fl oz a cartridge',
  ),
  'in3/cartridge': unit('volume of a piece', 1, 'in³ a cartridge'),

  dBA: unit('sound level', 1, 'dBA', 'dB(A)', 'dB'),
  degree: unit('angle', 1, 'degrees', 'deg'),
  V: unit('voltage', 1, 'V', 'volt', 'volts'),
  kV: unit('voltage', 1000, 'kV', 'kilovolt', 'kilovolts'),
} satisfies Record<string, UnitFacts>;

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

/**
 * Is this text the name of a unit in the closed list?
 * @example isUnitName('feet') // => false
 */
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
  for (const way of [name, facts.sign, ...facts.written]) {
    // The first to claim a writing has it: what is written "°F" is a reading, not a difference.
    const known = plain(way);
    if (known !== '' && !byWriting.has(known)) byWriting.set(known, name);
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
