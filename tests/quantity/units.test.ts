import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { amountIn, minus, number, plus, quantity, times, warmerBy } from '../../src/quantity/quantity.ts';
import { isUnitName, type UnitName, units, unitWritten } from '../../src/quantity/units.ts';

/**
 * Each conversion as mathjs 15 writes it; its unit library is independent of ours. Tolerance 1e-12 of the amount. Its definitions: inch 0.0254 m,
 * pound 0.45359237 kg, lbf at 9.80665 m/s2, BTU 1055.05585262 J, degR 5/9 K, gallon 231 in3, year 365.25 days. Its own psi is rounded in the eleventh
 * figure, so a psi is written lbf/in^2. Dollars it doesn't know; a price is written without them.
 */
const pairs: readonly [from: UnitName, to: UnitName, mathjsFrom: string, mathjsTo: string][] = [
  ['ft', 'in', 'ft', 'in'],
  ['m', 'in', 'm', 'in'],
  ['cm', 'ft', 'cm', 'ft'],
  ['kg/bag', 'lb/bag', 'kg', 'lbm'],
  ['mm', 'in', 'mm', 'in'],
  ['ft2', 'in2', 'ft^2', 'in^2'],
  ['m2', 'ft2', 'm^2', 'ft^2'],
  ['ft3', 'in3', 'ft^3', 'in^3'],
  ['m3', 'ft3', 'm^3', 'ft^3'],
  ['kg', 'lb', 'kg', 'lbm'],
  ['kg/m3', 'lb/ft3', 'kg/m^3', 'lbm/ft^3'],
  ['kg/m2', 'lb/ft2', 'kg/m^2', 'lbm/ft^2'],
  ['lb/ft2', 'Pa', 'lbf/ft^2', 'Pa'],
  ['atm', 'Pa', 'atm', 'Pa'],
  ['psia', 'Pa', 'lbf/in^2', 'Pa'],
  ['h', 's', 'hour', 's'],
  ['day', 'min', 'day', 'minute'],
  ['year', 'day', 'year', 'day'],
  ['K', 'F difference', 'K', 'degR'],
  ['K day', 'F day', 'K day', 'degR day'],
  ['ft/min', 'mph', 'ft/minute', 'mi/hour'],
  ['in/min', 'ft/min', 'in/minute', 'ft/minute'],
  ['cfm', 'L/s', 'ft^3/minute', 'liter/s'],
  ['lb/min', 'lb/h', 'lbm/minute', 'lbm/hour'],
  ['lb/year', 'lb/h', 'lbm/year', 'lbm/hour'],
  ['gal', 'in3', 'gallon', 'in^3'],
  ['fl oz', 'in3', 'floz', 'in^3'],
  ['lb/(ft2 in)', 'lb/ft3', 'lbm/(ft^2 in)', 'lbm/ft^3'],
  ['g/m2', 'lb/ft2', 'g/m^2', 'lbm/ft^2'],
  ['mg/m3', 'lb/ft3', 'mg/m^3', 'lbm/ft^3'],
  ['grain/(h ft2)', 'ng/(s m2)', 'grain/(hour ft^2)', 'ng/(s m^2)'],
  ['Btu', 'kWh', 'BTU', 'kWh'],
  ['Btu/h', 'W', 'BTU/hour', 'W'],
  ['Btu/(h ft2)', 'W/cm2', 'BTU/(hour ft^2)', 'W/cm^2'],
  ['W/(m K)', 'Btu in/(h ft2 F)', 'W/(m K)', 'BTU in/(hour ft^2 degR)'],
  ['Btu/gal', 'Btu/ft3', 'BTU/gallon', 'BTU/ft^3'],
  ['kg/million Btu', 'lb/million Btu', 'kg/BTU', 'lbm/BTU'],
  ['kV', 'V', 'kV', 'V'],
  ['percent', '1', 'cm', 'm'],
  ['ppm', '1', 'mm', 'km'],
  ['psi', 'lb/ft2', 'lbf/in^2', 'lbf/ft^2'],
  ['psi', 'Pa', 'lbf/in^2', 'Pa'],
  ['h ft2 F/Btu', 'm2 K/W', 'hour ft^2 degR/BTU', 'm^2 K/W'],
  ['Btu/(h ft2 F)', 'W/(m2 K)', 'BTU/(hour ft^2 degR)', 'W/(m^2 K)'],
  ['cfm/ft2', 'in/min', 'ft^3/(minute ft^2)', 'in/minute'],
  ['$/kWh', '$/Btu', 'kWh^-1', 'BTU^-1'],
  ['$/gal', '$/ft3', 'gallon^-1', 'ft^-3'],
  ['fl oz/cartridge', 'in3/cartridge', 'floz', 'in^3'],
];

/** An inch of mercury at 32 F in pascals, as tables of conversion factors print it; the perm rests on it. */
const INCH_OF_MERCURY = 3386.389;
/** Inches of water in a psi, as handbooks print it. */
const INCHES_OF_WATER = 27.6799;
/** A therm in Btu(IT), as fuel is sold. */
const THERM = 100_000;
/** Cubic feet in a ccf and in an Mcf, as gas is billed. */
const CCF = 100;
const MCF = 1000;

/** Units that mathjs doesn't have, or has by another convention, made of its own by a published number. */
const composed: readonly [
  from: UnitName,
  to: UnitName,
  times: number,
  mathjsFrom: string,
  mathjsTo: string,
][] = [
  ['inHg', 'Pa', INCH_OF_MERCURY, 'Pa', 'Pa'],
  ['inHg', 'psia', INCH_OF_MERCURY, 'Pa', 'lbf/in^2'],
  ['perm', 'ng/(s m2 Pa)', 1 / INCH_OF_MERCURY, 'grain/(hour ft^2 Pa)', 'ng/(s m^2 Pa)'],
  ['in w.c.', 'Pa', 1 / INCHES_OF_WATER, 'lbf/in^2', 'Pa'],
  ['in w.c.', 'lb/ft2', 1 / INCHES_OF_WATER, 'lbf/in^2', 'lbf/ft^2'],
  ['therm', 'kWh', THERM, 'BTU', 'kWh'],
  ['$/therm', '$/kWh', 1 / THERM, 'BTU^-1', 'kWh^-1'],
  ['$/ccf', '$/ft3', 1 / CCF, 'ft^-3', 'ft^-3'],
  ['$/Mcf', '$/gal', 1 / MCF, 'ft^-3', 'gallon^-1'],
  ['million Btu', 'kWh', 1e6, 'BTU', 'kWh'],
  ['million Btu/year', 'W', 1e6, 'BTU/year', 'W'],
  ['$/million Btu', '$/kWh', 1e-6, 'BTU^-1', 'kWh^-1'],
];

/** Units that are the only ones of their kind here are held in a product with another. */
const products: readonly [a: UnitName, b: UnitName, unit: UnitName, mathjsA: string, mathjsUnit: string][] = [
  ['h ft2 F/(Btu in)', 'mm', 'm2 K/W', 'hour ft^2 degR mm/(BTU in)', 'm^2 K/W'],
  ['Btu/(h F)', 'K', 'W', 'BTU K/(hour degR)', 'W'],
  ['fibres/cm3', 'ft3', 'fibre', 'ft^3', 'cm^3'],
  ['lb/bag', 'bag', 'kg', 'lbm', 'kg'],
  ['in2/piece', 'piece', 'm2', 'in^2', 'm^2'],
  ['$/ft2', 'm2', '$', 'm^2', 'ft^2'],
  ['$/year', 'h', '$', 'hour', 'year'],
  ['lb/ft', 'm', 'kg', 'lbm m/ft', 'kg'],
  ['ft/roll', 'roll', 'm', 'ft', 'm'],
  ['ft/cartridge', 'cartridge', 'm', 'ft', 'm'],
];

/** What mathjs has nothing to say of: things that are counted, money, and scales that nothing is turned into. */
const unheld = ['bag', 'hole', 'piece', 'push', 'screw', 'cartridge', 'roll', 'fibre', '$', 'dBA', 'degree'];

const close = (got: number, expected: number) =>
  expect(Math.abs(got - expected) / Math.abs(expected)).toBeLessThan(1e-12);

describe('unit sizes agree with mathjs', () => {
  test.each(pairs)('%s to %s', (from, to, mathjsFrom, mathjsTo) => {
    close(amountIn(quantity(1, from) as never, to as never), mathjsUnit(1, mathjsFrom).toNumber(mathjsTo));
    close(amountIn(quantity(1, to) as never, from as never), mathjsUnit(1, mathjsTo).toNumber(mathjsFrom));
  });

  test.each(composed)('%s to %s, by a published number', (from, to, size, mathjsFrom, mathjsTo) => {
    const expected = mathjsUnit(size, mathjsFrom).toNumber(mathjsTo);
    close(amountIn(quantity(1, from) as never, to as never), expected);
    close(amountIn(quantity(1, to) as never, from as never), 1 / expected);
  });

  test.each(products)('%s times %s in %s', (a, b, unit, mathjsA, mathjsIn) => {
    const product = times(quantity(1, a), quantity(1, b));
    close(amountIn(product as never, unit as never), mathjsUnit(1, mathjsA).toNumber(mathjsIn));
  });

  test('readings of a thermometer', () => {
    for (const reading of [-270, -40, -6.6, 0, 14, 21, 32, 70, 100.4, 1100]) {
      for (const [from, to] of [
        ['F', 'C'],
        ['C', 'F'],
      ] as const) {
        const expected = mathjsUnit(reading, `deg${from}`).toNumber(`deg${to}`);
        const got = amountIn(quantity(reading, from), to);
        // It goes by way of kelvins, so the share is one of the absolute temperature.
        const absolute = mathjsUnit(reading, `deg${from}`).toNumber(to === 'C' ? 'K' : 'degR');
        expect(Math.abs(got - expected)).toBeLessThan(1e-12 * Math.max(1, absolute));
      }
    }
  });

  test('inches of water and of mercury are those of mathjs too, as far as its conventions are printed', () => {
    // Its cmH2O is 98.0665 Pa, water of 1000 kg/m3; its mmHg 133.322 Pa, cut off after six figures.
    const water = mathjsUnit(2.54, 'cmH2O').toNumber('Pa');
    expect(Math.abs(amountIn(quantity(1, 'in w.c.'), 'Pa') / water - 1)).toBeLessThan(
      0.00005 / INCHES_OF_WATER,
    );
    const mercury = mathjsUnit(25.4, 'mmHg').toNumber('Pa');
    expect(Math.abs(amountIn(quantity(1, 'inHg'), 'Pa') / mercury - 1)).toBeLessThan(0.0005 / 133.322);
  });

  test('every unit is held, but those of which it has nothing to say', () => {
    const held = new Set<string>([
      ...[...pairs, ...composed, ...products].map(([from]) => from),
      ...[...pairs, ...composed].map(([, to]) => to),
      ...['F', 'C'],
    ]);
    expect(
      Object.keys(units)
        .filter((name) => !held.has(name))
        .sort(),
    ).toEqual([...unheld].sort());
  });
});

/** Printed factors; tolerance is the last printed figure. Origin: ASHRAE Handbook conversion factors, by way of common tables. */
const printed: readonly [from: UnitName, to: UnitName, factor: number, tolerance: number][] = [
  ['h ft2 F/Btu', 'm2 K/W', 0.176110184, 5e-10],
  ['lb/ft3', 'kg/m3', 16.01846337, 5e-9],
  ['lb/ft2', 'Pa', 47.88025898, 5e-9],
  ['psi', 'in w.c.', 27.6799, 5e-5],
  ['perm', 'ng/(s m2 Pa)', 57.2135, 5e-4],
  ['Btu/(h ft2 F)', 'W/(m2 K)', 5.678263341, 5e-9],
];

describe('unit sizes agree with printed factors', () => {
  test.each(printed)('%s to %s', (from, to, factor, tolerance) => {
    expect(Math.abs(amountIn(quantity(1, from) as never, to as never) - factor)).toBeLessThanOrEqual(
      tolerance,
    );
  });
  test('1 psi is 144 lb/ft2, by definition', () => {
    expect(amountIn(quantity(1, 'psi'), 'lb/ft2')).toBeCloseTo(144, 10);
  });
  test('0.25 in w.c. is about 1.3 lb/ft2, 1 in w.c. being 5.20 (by hand: 144 / 27.6799 = 5.2023)', () => {
    expect(amountIn(quantity(1, 'in w.c.'), 'lb/ft2')).toBeCloseTo(5.2023, 4);
  });
});

describe('a thermometer’s reading is turned from scale to scale, its 0 with it', () => {
  test.each([
    [0, 'C', 32],
    [100, 'C', 212],
    [-40, 'C', -40],
    [21, 'C', 69.8],
  ] as const)('%s %s', (amount, unit, fahrenheit) => {
    expect(amountIn(quantity(amount, unit), 'F')).toBeCloseTo(fahrenheit, 12);
    expect(amountIn(quantity(fahrenheit, 'F'), 'C')).toBeCloseTo(amount, 12);
  });
  test('two readings are never added, multiplied or taken from one another as amounts', () => {
    const reading = quantity(70, 'F');
    for (const slip of [
      () => plus(reading, reading),
      () => minus(reading, reading),
      () => times(reading, number(2)),
    ])
      expect(slip).toThrow(/is a reading of a scale/);
    const loud = quantity(85, 'dBA');
    expect(() => plus(loud, loud)).toThrow(/is a reading of a scale/);
    expect(warmerBy(quantity(70, 'F'), quantity(10, 'F')).dimension).toBe('temperature');
  });
});

describe('a unit is known by what people write', () => {
  const written: readonly [string, UnitName | undefined][] = [
    ['feet', 'ft'],
    ["'", 'ft'],
    ['"', 'in'],
    ['lbs', 'lb'],
    ['lb.', 'lb'],
    ['pounds', 'lb'],
    ['#', 'lb'],
    ['inches', 'in'],
    ['ins.', 'in'],
    ['foot', 'ft'],
    ['ft.', 'ft'],
    ['millimetres', 'mm'],
    ['Millimeters', 'mm'],
    ['centimeters', 'cm'],
    ['metre', 'm'],
    ['meters', 'm'],
    ['kilograms', 'kg'],
    ['kgs', 'kg'],
    ['hrs', 'h'],
    ['hour', 'h'],
    ['mins', 'min'],
    ['minutes', 'min'],
    ['sec', 's'],
    ['seconds', 's'],
    ['yrs', 'year'],
    ['days', 'day'],
    ['sq. ft.', 'ft2'],
    ['square feet', 'ft2'],
    ['sq in', 'in2'],
    ['square meters', 'm2'],
    ['cu ft', 'ft3'],
    ['cubic foot', 'ft3'],
    ['ft^3', 'ft3'],
    ['gallons', 'gal'],
    ['fluid ounces', 'fl oz'],
    ['lb per cubic foot', 'lb/ft3'],
    ['lbs / cu ft', 'lb/ft3'],
    ['pounds per square foot', 'lb/ft2'],
    ['psf per inch', 'lb/(ft2 in)'],
    ['lbs/bag', 'lb/bag'],
    ['lb per bag', 'lb/bag'],
    ['lb bags', 'lb/bag'],
    ['kg a bag', 'kg/bag'],
    ['feet per roll', 'ft/roll'],
    ['fluid ounces per cartridge', 'fl oz/cartridge'],
    ['per inch', 'h ft2 F/(Btu in)'],
    ['R per inch', 'h ft2 F/(Btu in)'],
    ['feet per minute', 'ft/min'],
    ['fpm', 'ft/min'],
    ['lb an hour', 'lb/h'],
    ['degrees F', 'F'],
    ['deg. C', 'C'],
    ['°', 'degree'],
    ['degrees', 'degree'],
    ['degree days', 'F day'],
    ['°F days', 'F day'],
    ['in. w.c.', 'in w.c.'],
    ['fibers per cm³', 'fibres/cm3'],
    ['perms', 'perm'],
    ['pct', 'percent'],
    ['per cent', 'percent'],
    ['dB(A)', 'dBA'],
    ['volts', 'V'],
    ['dollars', '$'],
    ['$ a gallon', '$/gal'],
    ['$ per sq ft', '$/ft2'],
    ['sqft', 'ft2'],
    ['sq.ft.', 'ft2'],
    ['Sq. Ft', 'ft2'],
    ['square feet', 'ft2'],
    ['SF', 'ft2'],
    ['sqin', 'in2'],
    ['cuft', 'ft3'],
    ['lbs/cuft', 'lb/ft3'],
    ['$/sf', '$/ft2'],
    ['sq', undefined],
    // To a roofer a hundred square feet, to others one: it is not guessed.
    ['squares', undefined],
    ['cups', undefined],
    ['$/MMBtu', '$/million Btu'],
    ['$ per Mcf', '$/Mcf'],
    // A thousandth of a second is no metre, and a letter alone has no plural.
    ['ms', undefined],
    ['PCF', 'lb/ft3'],
    ['lb/ft³', 'lb/ft3'],
    ['psf', 'lb/ft2'],
    ['%', 'percent'],
    ['  Feet ', 'ft'],
    ['Btu  in/(h  ft2  F)', 'Btu in/(h ft2 F)'],
    ['furlong', undefined],
    ['', undefined],
    ['1', undefined],
    ['.1', undefined],
  ];
  test.each(written)('"%s"', (text, expected) => {
    expect(unitWritten(text)).toBe(expected);
  });
  test('every name and every sign leads back to its unit', () => {
    for (const name of Object.keys(units).filter((each) => each !== '1')) {
      expect(isUnitName(name) && unitWritten(name)).toBe(name);
      // A difference of temperature is printed like a reading, and read as one: nobody types a difference.
      if (name === 'F difference') continue;
      expect(unitWritten(units[name as UnitName].sign)).toBe(name);
    }
  });
});
