import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { amountIn, minus, number, plus, quantity, times, warmerBy } from '../../src/quantity/quantity.ts';
import { isUnitName, type UnitName, units, unitWritten } from '../../src/quantity/units.ts';

/** Each conversion as mathjs 15 writes it; its unit library is independent of ours. Tolerance 1e-12 of the amount. */
const pairs: readonly [from: UnitName, to: UnitName, mathjsFrom: string, mathjsTo: string][] = [
  ['ft', 'in', 'ft', 'in'],
  ['m', 'in', 'm', 'in'],
  ['cm', 'ft', 'cm', 'ft'],
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
  ['lb/ft', 'lb/ft', 'lbm/ft', 'lbm/ft'],
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
];

describe('unit sizes agree with mathjs', () => {
  test.each(pairs)('%s to %s', (from, to, mathjsFrom, mathjsTo) => {
    const expected = mathjsUnit(1, mathjsFrom).toNumber(mathjsTo);
    const got = amountIn(quantity(1, from) as never, to as never);
    expect(Math.abs(got - expected) / expected).toBeLessThan(1e-12);
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
    ['″', 'in'],
    ['lbs', 'lb'],
    ['PCF', 'lb/ft3'],
    ['lb/ft³', 'lb/ft3'],
    ['psf', 'lb/ft2'],
    ['%', 'percent'],
    ['  Feet ', 'ft'],
    ['Btu  in/(h  ft2  F)', 'Btu in/(h ft2 F)'],
    ['furlong', undefined],
    ['', undefined],
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
