import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, formatTape } from '../../src/quantity/format.ts';
import { isBareNumber, ParseError, parseQuantity } from '../../src/quantity/parse.ts';
import { amountIn, quantity } from '../../src/quantity/quantity.ts';
import { type UnitName, units } from '../../src/quantity/units.ts';

/** By hand. */
const lengths: readonly [written: string, inches: number][] = [
  ['13 ft 10 in', 166],
  ['13\' 10 1/2"', 166.5],
  ['13\'10"', 166],
  ['13’ 10″', 166],
  ['13 ft 10', 166],
  ['13 feet, 10 inches', 166],
  ['3 1/2 in', 3.5],
  ['3-1/2 in', 3.5],
  ['3½ in', 3.5],
  ['½ in', 0.5],
  ['13⅞ in', 13.875],
  ['1⁄2 in', 0.5],
  ['⅓ ft', 4],
  ['1/8 in', 0.125],
  ['.5 in', 0.5],
  ['2.5 ft', 30],
  ['66 ft', 792],
  ['0 in', 0],
  ['0', 0],
  ['0.0', 0],
  ['-3 in', -3],
  ['−3 in', -3],
  ['  7   in ', 7],
  ['25.4 mm', 1],
  ['2.54 cm', 1],
  ['13\'-2"', 158],
  ["13' 2-1/2", 158.5],
  ['13 ft, 2 in', 158],
  ['10- 1/2 in', 10.5],
  ['5-½ in', 5.5],
  ['3/2 in', 1.5],
  ['3 ft 1 1/2 in', 37.5],
  ['-5-1/2 in', -5.5],
  ['+3 in', 3],
  // What a phone makes of straight marks and hyphens, and what other keyboards write for them.
  ['5’-6”', 66],
  ['5‘ 6“', 66],
  ['5´6´´', 66],
  ['5’6’’', 66],
  ['6′′', 6],
  ['5’ 6½”', 66.5],
  ['5\'–6"', 66],
  ['5‑1/2 in', 5.5],
  ['–3 in', -3],
  ['3 1∕2 in', 3.5],
  // Commas between thousands.
  ['1,500 in', 1500],
  ['-1,500.5 in', -1500.5],
  ['1,234,567 in', 1234567],
  ['1,000 ft 6 in', 12006],
  [`2${' '.repeat(70)}ft`, 24],
  // Sixty characters, the most that are read.
  [`2.${'0'.repeat(55)} in`, 2],
];

describe('a length is read as people write it', () => {
  test.each(lengths)('%s', (written, inches) => {
    expect(amountIn(parseQuantity(written, { dimension: 'length' }), 'in')).toBeCloseTo(inches, 12);
  });
});

const refused: readonly [written: string, message: RegExp][] = [
  ['', /found nothing/],
  ['   ', /found nothing/],
  ['2.5', /no unit.*such as 13 ft 10 in/],
  ['1,5 in', /could mean two things, expected a length such as 13 ft 10 in, with no comma or loose hyphen$/],
  // A comma anywhere but between thousands may stand for the point.
  ['1,50 in', /could mean two things/],
  ['0,500 in', /could mean two things/],
  ['12,3456 in', /could mean two things/],
  ['1234,567 in', /could mean two things/],
  ['1,234,56 in', /could mean two things/],
  ['1.5,000 in', /could mean two things/],
  ['5’ – 6”', /could mean two things/],
  ['5–6', /could mean two things, expected 5 ft 6 in$/],
  ['5–6 ft', /unknown unit "-6 ft"/],
  ['13 lb', /13 lb" \(weight\)/],
  ['13 furlongs', /unknown unit "furlongs"/],
  ['13 ft 12 in', /less than 12 in/],
  ['1/0 in', /found "1\/0 in"/],
  ['ft', /found "ft"/],
  ['NaN in', /found "NaN in"/],
  ['Infinity ft', /found/],
  ['1e3 in', /unknown unit "e3 in"/],
  ['1 2 3 in', /unknown unit/],
  ['--3 in', /found/],
  ['<script>alert(1)</script>', /found/],
  [`${'9'.repeat(70)} in`, /73 characters/],
  [`2.${'0'.repeat(56)} in`, /61 characters/],
  ['0/0 in', /found "0\/0 in"/],
  ['1/0 ft 3 in', /found "1\/0 ft 3 in", expected a length/],
  ['13 ft 1/0 in', /found "13 ft 1\/0 in", expected a length/],
  [
    '13.10 ft 6 in',
    /found "13\.10 ft 6 in", which could mean two things, expected whole feet before the inches$/,
  ],
  ['13.5\' 6"', /expected whole feet before the inches$/],
  ['.5 ft 6 in', /expected whole feet before the inches$/],
  ['13-8', /found "13-8", which could mean two things, expected 13 ft 8 in$/],
  ['13-11', /which could mean two things, expected 13 ft 11 in$/],
  // No foot has so many inches.
  ['16-24', /found "16-24" with the unknown unit/],
  ['13 ft -2 in', /which could mean two things, expected a length/],
  ['13 ft - 2 in', /which could mean two things, expected a length/],
  ['13\' -2"', /which could mean two things, expected a length/],
  ['5 - 1/2 in', /which could mean two things, expected a length/],
  ['5 -1/2 in', /which could mean two things, expected a length/],
  ['5 -½ in', /which could mean two things, expected a length/],
  ['3 ft 14/2 in', /^found "3 ft 14\/2 in", expected a length/],
  ['3 ft 3/2 in', /^found "3 ft 3\/2 in", expected a length/],
  ['3 ft 1 3/2 in', /^found "3 ft 1 3\/2 in", expected a length/],
  ['1 3/2 in', /^found "1 3\/2 in", expected a length/],
  ['1 2/2 in', /^found "1 2\/2 in", expected a length/],
  ['13.0 ft 6 in', /expected whole feet before the inches$/],
];

describe('what could be mistaken is refused, with what was found and what is expected', () => {
  test.each(refused)('"%s"', (written, message) => {
    const attempt = () => parseQuantity(written, { dimension: 'length', example: '13 ft 10 in' });
    expect(attempt).toThrow(ParseError);
    expect(attempt).toThrow(message);
  });

  test.each([
    ['  13 lb ', '"13 lb" (weight)'],
    [' 1,5 in ', '"1,5 in", which could mean two things'],
    [' 2.5 ', '"2.5", a number with no unit'],
    [' 13 furlongs ', '"13 furlongs" with the unknown unit "furlongs"'],
    [' 13 ft 12 in ', '"13 ft 12 in"'],
    [' ft ', '"ft"'],
  ])('"%s" is told without the spaces around it', (written, found) => {
    expect(() => parseQuantity(written, { dimension: 'length' })).toThrow(
      expect.objectContaining({ found, name: 'ParseError' }),
    );
  });

  test.each([
    ['pieces', 'a count'],
    ['area', 'an area'],
    ['length', 'a length'],
    ['money', 'an amount of money'],
    ['price of heat', 'a price of heat'],
  ] as const)('of %s is expected %s', (dimension, expected) => {
    expect(() => parseQuantity('', { dimension })).toThrow(expect.objectContaining({ expected }));
  });

  test('a unit that measures something else is not assumed', () => {
    expect(() => parseQuantity('2', { dimension: 'length', assume: 'lb' as 'in' })).toThrow(
      'found 2 lb, expected a length',
    );
  });

  test('a number without a unit is read where the field states one', () => {
    expect(parseQuantity('2.5', { dimension: 'length', assume: 'ft' })).toMatchObject({
      amount: 2.5,
      unit: 'ft',
    });
  });
  test('a pure number needs no unit', () => {
    expect(parseQuantity('0.75', { dimension: 'number' }).amount).toBe(0.75);
  });
  test.each([
    ['density', 'lb/ft3'],
    ['time', 'h'],
    ['air flow', 'cfm'],
  ] as const)('no %s is none in any unit', (dimension, unit) => {
    expect(amountIn(parseQuantity('0', { dimension }), unit)).toBe(0);
  });
  test.each(['temperature reading', 'sound level'] as const)(
    'a %s of 0 is another on each scale, and asks for its unit',
    (dimension) => {
      expect(() => parseQuantity('0', { dimension })).toThrow('found "0", a number with no unit');
    },
  );
  test.each([
    ['0.5.1', '"0.5.1" with the unknown unit ".1"'],
    ['5 1', '"5 1" with the unknown unit "1"'],
    ['5.1.', '"5.1." with the unknown unit "."'],
  ])('"%s" is no pure number', (written, found) => {
    expect(() => parseQuantity(written, { dimension: 'number' })).toThrow(expect.objectContaining({ found }));
  });
  test('a percentage is a number', () => {
    expect(amountIn(parseQuantity('10 %', { dimension: 'number' }), '1')).toBeCloseTo(0.1, 12);
  });
});

describe('a spacing is read as framers say it, on center', () => {
  test.each([
    '16 in o.c.',
    '16" oc',
    '16 in OC',
    '16 inches on center',
    '1 ft 4 in on centre',
    '1\' 4" o.c.',
  ])('%s', (written) => {
    expect(amountIn(parseQuantity(written, { dimension: 'length' }), 'in')).toBe(16);
  });
  test.each(['o.c.', '16 oc', '16 lb oc'])('%s is no length', (written) => {
    expect(() => parseQuantity(written, { dimension: 'length' })).toThrow(ParseError);
  });
});

describe('a tenth of a foot, or ten inches?', () => {
  test.each(['13.10 ft', "13.10'", '-13.10 feet'])('%s may be either, and is refused', (written) => {
    expect(() => parseQuantity(written, { dimension: 'length' })).toThrow('expected 13.1 ft or 13 ft 10 in');
  });
  test.each([
    ['13.1 ft', 157.2],
    ['13.100 ft', 157.2],
    ['3.10 in', 3.1],
    ['113.10 in', 113.1],
  ] as const)('%s is not', (written, inches) => {
    expect(amountIn(parseQuantity(written, { dimension: 'length' }), 'in')).toBeCloseTo(inches, 12);
  });
});

describe('what a bag’s label says is read as it stands there', () => {
  // By hand; a kilogram is 1/0.45359237 lb, by definition of the pound.
  test.each([
    ['R-19', 'thermal resistance', 'h ft2 F/Btu', 19],
    ['R19', 'thermal resistance', 'h ft2 F/Btu', 19],
    ['R-3.7 per in', 'resistance per length', 'h ft2 F/(Btu in)', 3.7],
    ['28 lb', 'weight of a piece', 'lb/bag', 28],
    ['28#', 'weight of a piece', 'lb/bag', 28],
    ['300 #', 'weight', 'lb', 300],
    ['3.7 per inch', 'resistance per length', 'h ft2 F/(Btu in)', 3.7],
    ['1.5 lbs/cu ft', 'density', 'lb/ft3', 1.5],
    ['1200 sqft', 'area', 'ft2', 1200],
    ['1,200 sq ft', 'area', 'ft2', 1200],
    ['1200 ft²', 'area', 'ft2', 1200],
    ['1200sf', 'area', 'ft2', 1200],
    ['28.5 lb/bag', 'weight of a piece', 'lb/bag', 28.5],
    ['28 lb bag', 'weight of a piece', 'lb/bag', 28],
    ['12.7 kg', 'weight of a piece', 'lb/bag', 12.7 / 0.45359237],
    ['13.6 kg/bag', 'weight of a piece', 'kg/bag', 13.6],
    ['50 ft/roll', 'length of a piece', 'ft/roll', 50],
    ['50 ft', 'length of a piece', 'ft/cartridge', 50],
    ['$1800', 'money', '$', 1800],
    ['$1,800', 'money', '$', 1800],
    ['-$12,345.67', 'money', '$', -12345.67],
    ['6,000 F day', 'degree-days', 'F day', 6000],
    ['95 ºF', 'temperature reading', 'F', 95],
    ['95˚ F', 'temperature reading', 'F', 95],
    ['$ 1800.50', 'money', '$', 1800.5],
    ['−$5.50', 'money', '$', -5.5],
    ['-$5.50', 'money', '$', -5.5],
    ['1800 $', 'money', '$', 1800],
    ['$2.50/gal', 'price per volume', '$/gal', 2.5],
    ['$2.5 per gal', 'price per volume', '$/gal', 2.5],
    ['$1.20 per ccf', 'price per volume', '$/ccf', 1.2],
    ['$0.12 per kWh', 'price of heat', '$/kWh', 0.12],
    ['2 $/kWh', 'price of heat', '$/kWh', 2],
  ] as const)('%s, as a %s', (written, dimension, unit, amount) => {
    expect(amountIn(parseQuantity<typeof dimension>(written, { dimension }), unit)).toBeCloseTo(amount, 12);
  });

  test.each([
    ['R-3', 'length'],
    ['R--3', 'thermal resistance'],
    ['R', 'thermal resistance'],
    ['R-19 in', 'thermal resistance'],
    // The R of a whole batt is no R per inch.
    ['R-7', 'resistance per length'],
    ['19', 'thermal resistance'],
    ['28 lb', 'load'],
    ['28 in', 'weight of a piece'],
    ['28', 'weight of a piece'],
    ['28 lb/roll', 'weight of a piece'],
    ['50 lb', 'length of a piece'],
    ['1.5 lb', 'density'],
    ['$5', 'length'],
    ['$', 'money'],
    ['$$5', 'money'],
    ['$5 $', 'money'],
    // On a bag # is the weight; of a fill the trade means a density by it, which is not guessed.
    ['1.5#', 'density'],
  ] as const)('%s is no %s', (written, dimension) => {
    expect(() => parseQuantity(written, { dimension })).toThrow(ParseError);
  });
});

test.each(['2.5', ' 2 1/2 ', '3½', '-4', '– 4', '6,000', '1–1/2'])(
  '"%s" is a number without a unit, which is given the one beside its box',
  (written) => expect(isBareNumber(written)).toBe(true),
);
test.each(['', '6 ft', '1,5', '5 - 6', '5’'])('"%s" is none', (written) =>
  expect(isBareNumber(written)).toBe(false),
);

describe('reading never surprises', () => {
  test('whatever is written, it is read as a finite amount or refused with a ParseError', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-\d ./'"½ftin,]{0,20}$/)), (written) => {
        try {
          return Number.isFinite(parseQuantity(written, { dimension: 'length' }).amount);
        } catch (error) {
          return error instanceof ParseError;
        }
      }),
      { numRuns: 5000 },
    );
  });
  test('the piece that is left out is that of the example', () => {
    for (const [example, unit] of [
      ['50 ft/roll', 'ft/roll'],
      ['20 ft/cartridge', 'ft/cartridge'],
    ] as const)
      expect(parseQuantity('40 ft', { dimension: 'length of a piece', example })).toMatchObject({
        amount: 40,
        unit,
      });
  });
  // A difference of temperature is printed as a reading is, and nobody types one.
  const typed = (Object.keys(units) as UnitName[]).filter((unit) => unit !== 'F difference');
  test.each(typed)('what is printed in the unit %s is read back in it', (unit) => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999, max: 999_999 }),
        fc.integer({ min: 0, max: 3 }),
        (digits, places) => {
          const { dimension } = units[unit];
          // No R is below nought.
          const amount = (/resistance/.test(dimension) ? Math.abs(digits) : digits) / 10 ** places;
          const read = parseQuantity(format(quantity(amount, unit), { figures: 7 }), { dimension });
          const halfACent = /^money( rate)?$/.test(dimension) ? 0.005 : 0;
          expect(read.unit).toBe(unit);
          expect(Math.abs(read.amount - amount)).toBeLessThanOrEqual(halfACent + 1e-9);
        },
      ),
      { numRuns: 100 },
    );
  });
  test('a tape reading that is printed is read back as the same mark', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 * 12 * 16 }), (marks) => {
        const printed = formatTape(quantity(marks / 16, 'in'), 16);
        return amountIn(parseQuantity(printed, { dimension: 'length' }), 'in') === marks / 16;
      }),
      { numRuns: 3000 },
    );
  });
});

test('what is asked for is named as people name it, with an article or as many', () => {
  const asked = { dimension: 'degree-days', example: '6000 F day' } as const;
  expect(() => parseQuantity('cold', asked)).toThrow(/expected degree-days such as 6000 F day/);
});
