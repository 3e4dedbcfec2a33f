import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer, cellValue, type Figure } from '../../src/calc/declare/calculation.ts';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { moisture, screenFrom } from '../../src/calc/moisture/declaration.ts';
import { dewPoint as dewPointCalculation } from '../../src/calc/moisture/dew-point-declaration.ts';
import { dewPoint, saturationPressure } from '../../src/calc/moisture/equations.ts';
import { materials } from '../../src/calc/moisture/fields.ts';
import { NothingHoldsBack, profile, taut } from '../../src/calc/moisture/profile.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { working } from '../../src/quantity/working.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();
const rules = openRulebook(data);
type Entries = Readonly<Record<string, unknown>>;

function answered(entries: Entries) {
  const read = answer(moisture, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
}
function screened(entries: Entries) {
  const read = readFields(moisture.fields, entries);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return screenFrom(read.value, rules);
}
const problems = (declared: typeof moisture | typeof dewPointCalculation, entries: Entries): string[] => {
  const read = answer(declared as typeof moisture, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
};
/** The number of a figure, in its own unit. */
function numberOf(figure: Figure | undefined): number {
  if (!figure || typeof figure.value === 'string') throw new Error('found no figure with a number');
  return figure.value.amount;
}

/** ASHRAE Fundamentals, chapter 27, example 8. */
const wall: Entries = {
  indoors: '21 C',
  indoor_humidity: '40 %',
  outdoors: '-6.6 C',
  outdoor_humidity: '50 %',
  layers: [
    { resistance: '0.12 m2 K/W', permeance: '9200 ng/(s m2 Pa)' },
    { resistance: '0.08 m2 K/W', permeance: '290 ng/(s m2 Pa)' },
    { resistance: '1.90 m2 K/W', permeance: '1700 ng/(s m2 Pa)' },
    { resistance: '0.11 m2 K/W', permeance: '29 ng/(s m2 Pa)' },
    { resistance: '0.18 m2 K/W', permeance: '2010 ng/(s m2 Pa)' },
    { resistance: '0.03 m2 K/W', permeance: '57000 ng/(s m2 Pa)' },
  ],
  period: '30 days',
};

const roof: Entries = moisture.example;
const roofLayers = roof.layers as readonly Entries[];
const withLayers = (layers: readonly Entries[], more: Entries = {}): Entries => ({
  ...roof,
  layers,
  ...more,
});

describe('the handbook’s example of vapour flow', () => {
  test('gives its temperatures, face by face, to its rounding of a tenth', () => {
    // Printed in the example; by the printed resistances the third is −2.95, which the book rounds up.
    const printed = [21, 19.6, 18.7, -2.9, -4.2, -6.3, -6.6];
    const found = screened(wall).faces.map(({ temperature }) => amountIn(temperature, 'C'));
    expect(found).toHaveLength(printed.length);
    for (const [face, celsius] of found.entries())
      expect(Math.abs(celsius - (printed[face] ?? 0)), `face ${face}`).toBeLessThanOrEqual(0.06);
  });

  test('is saturated at one face, and below saturation at every other', () => {
    const full = screened(wall).faces.flatMap(({ pressure, saturation }, face) =>
      amountIn(pressure, 'Pa') > amountIn(saturation, 'Pa') * (1 - 1e-6) ? [face] : [],
    );
    expect(full).toEqual([3]);
  });

  test('has its dew point at every face: the room’s at the first, and its own temperature where it is saturated', () => {
    const dewPoints = screened(wall).faces.map(({ dewPoint: each }) => each && amountIn(each, 'C'));
    // Saturated air has 2487 Pa at 21 °C, 935 at 6 and 1002 at 7: 40 % of 2487 is 995, nine tenths of the way, 6.9 °C. And −2.95 °C as above.
    expect(Math.abs((dewPoints[0] ?? 99) - 6.9)).toBeLessThan(0.05);
    expect(Math.abs((dewPoints[3] ?? 99) + 2.95)).toBeLessThan(0.02);
    expect(dewPoints).toHaveLength(7);
    // The pressure falls on the way outwards, and the dew point with it.
    expect(dewPoints.toSorted((a = 99, b = 99) => b - a)).toEqual(dewPoints);
  });

  test('tells none at a face too dry for one', () => {
    // A ten-millionth of some 350 Pa: saturated air has as little only below −100 °C, where the equations end.
    const { faces } = screened({ ...wall, outdoor_humidity: '0.00001 %' });
    expect(faces.map(({ dewPoint: each }) => each !== undefined)).toEqual([...Array(6).fill(true), false]);
  });

  test('names in the permeance outwards the layers that lie outwards, and no other', () => {
    const [line] = working(screened(wall).flowOut).filter(({ symbol }) => symbol === 'Mo');
    expect(line?.symbols).toBe('1/(1/M4 + 1/M5 + 1/M6)');
  });
});

describe('saturation and dew point', () => {
  // ASHRAE Fundamentals 2017, chapter 1, table 3, as quoted; psia of 6894.757 Pa, within 3 parts in 10,000.
  test.each([
    [23, 0.058268],
    [41, 0.12656],
    [77, 0.45973],
    [122, 1.7914],
  ])('at %d °F', (fahrenheit, psia) => {
    const found = saturationPressure((fahrenheit - 32) / 1.8) / 6894.757;
    expect(Math.abs(found / psia - 1)).toBeLessThan(3e-4);
  });

  test('each undoes the other, to a thousandth of a degree', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        (celsius) => Math.abs((dewPoint(61, saturationPressure(celsius)) ?? 99) - celsius) < 1e-3,
      ),
    );
  });

  test('air without any water has no dew point', () => expect(dewPoint(20, 0)).toBeUndefined());
});

describe('a string drawn taut below points', () => {
  const points = (...pressures: number[]) => pressures.map((pressure, vapour) => ({ vapour, pressure }));
  test.each([
    ['passes points that lie above it', points(9, 20, 20, 0), [0, 3]],
    ['passes a point that lies on it', points(9, 6, 3, 0), [0, 3]],
    ['touches the lowest', points(9, 1, 5, 0), [0, 1, 3]],
    ['touches two, if the second lies below the line from the first', points(9, 3, 1, 0.5, 0), [0, 1, 2, 4]],
    ['goes by one that a lower one relieves', points(9, 7.4, 1, 0), [0, 2, 3]],
    ['is its two ends where nothing lies between', points(9, 0), [0, 1]],
    ['is one point where there is one', points(9), [0]],
  ])('%s', (_, given, touched) => expect(taut(given, 1e-9)).toEqual(touched));
});

describe('odd cases, decided', () => {
  test('a metal roof ends the way: the room’s dew point reigns up to it if nothing gathers, and nothing goes on', () => {
    const screen = screened({ ...roof, indoor_humidity: '10 %' });
    expect(screen.gatherings).toEqual([]);
    expect([screen.flowIn.amount, screen.flowOut.amount, screen.stays.amount]).toEqual([0, 0, 0]);
    const [room, ...others] = screen.faces.map(({ pressure }) => amountIn(pressure, 'Pa'));
    expect(others.slice(0, 4)).toEqual([room, room, room, room]);
  });

  test('behind a metal roof the pressure is that of the outdoor air', () => {
    const { faces } = screened(roof);
    expect(faces[5]?.pressure.amount).toBe(faces[6]?.pressure.amount);
    expect(faces[4]?.pressure.amount).toBeGreaterThan(faces[5]?.pressure.amount ?? 9);
  });

  test('what lies between two layers that let nothing through takes no part', () => {
    const foil = { what: 'foil', resistance: '0 R', permeance: '0 perm' };
    const [film, ...rest] = roofLayers as [Entries, ...Entries[]];
    const screen = screened(withLayers([film, foil, ...rest]));
    expect(screen.gatherings).toEqual([]);
    expect(screen.stays.amount).toBe(0);
  });

  test('a tight layer on the ceiling keeps the same roof dry; taken off, water gathers', () => {
    expect(answered(roof).figures.verdict?.value).toBe('gathers as water');
    const tight = roofLayers.map((each, place) =>
      place === 1 ? { what: 'board', resistance: '0.45 R', permeance: '0 perm' } : each,
    );
    expect(answered(withLayers(tight)).figures.verdict?.value).toBe('does not gather');
  });

  test('a room colder than the dew point of damp air outdoors lets vapour in, and says so', () => {
    const layers = [
      { resistance: '1 R', permeance: '2 perm' },
      { resistance: '1 R', permeance: '2 perm' },
    ];
    const found = answered(
      withLayers(layers, { indoor_humidity: '5 %', outdoors: '60 F', outdoor_humidity: '90 %' }),
    );
    expect(found.figures.verdict?.value).toBe('does not gather');
    expect(numberOf(found.figures.flow_in)).toBeLessThan(0);
    expect(found.remarks.map(remarkText).join(' ')).toContain('vapour seeps inwards');
  });

  test('no time, no water', () => {
    const { figures } = answered({ ...roof, period: '0 days' });
    expect(numberOf(figures.gathered)).toBe(0);
    expect(figures.verdict?.value).toBe('gathers as water');
  });

  test('the same temperature on both sides: nothing gathers', () => {
    expect(answered({ ...wall, outdoors: '21 C', outdoor_humidity: '40 %' }).figures.verdict?.value).toBe(
      'does not gather',
    );
  });

  test('an open ceiling under fill that resists vapour: water gathers inside the fill too', () => {
    const { figures } = answered(
      withLayers(
        [
          { what: 'film', resistance: '0.61 R' },
          { what: 'panel', resistance: '1.2 R', material: 'wood-fibre board' },
          { what: 'fill', resistance: '25 R', permeance: '12 perm' },
          { what: 'deck', resistance: '1 R', permeance: '1 perm' },
          { what: 'outdoor film', resistance: '0.17 R' },
        ],
        { outdoors: '-10 F', indoor_humidity: '60 %' },
      ),
    );
    expect(figures.where?.value).toBe('in the outer part of fill, as far as deck');
  });

  /**
   * By hand, a degree of 40 to each R of 40: 18 °C outside the board, −15 at the fill, −18 at the deck, where saturated air has 2064, 165.3 and
   * 124.9 Pa. The room has 60 % of 2339, 1403 Pa, so that nothing condenses at the board. Each R of batt and fill resists 1/165 rep: 0.1 + 33/165 =
   * 0.3 rep up to the fill. A straight fall to it from 1403 Pa, 4126 a rep, would at −10 °C, 5/165 rep before it, stand at 290 Pa, above the 259.9
   * that saturated air has: so water gathers inside the batt, and from there on all along the curve, through the fill as far as the deck.
   */
  test('a wet stretch over two layers is told from where it begins to where it ends', () => {
    const { figures } = answered({
      indoors: '20 C',
      indoor_humidity: '60 %',
      outdoors: '-20 C',
      outdoor_humidity: '80 %',
      period: '30 days',
      layers: [
        { what: 'board', resistance: '2 R', permeance: '10 perm' },
        { what: 'batt', resistance: '33 R', permeance: '5 perm' },
        { what: 'fill', resistance: '3 R', permeance: '55 perm' },
        { what: 'deck', resistance: '2 R', permeance: '0.5 perm' },
      ],
    });
    expect(figures.where?.value).toBe('from inside batt to between fill and deck');
  });

  test('a place that reads alike twice is told once: the curve of saturation bends at freezing, and the string leaves it there', () => {
    const { figures } = answered({
      indoors: '65 F',
      indoor_humidity: '90 %',
      outdoors: '0 F',
      outdoor_humidity: '100 %',
      period: '30 days',
      layers: [
        { what: 'batt', resistance: '10 R', permeance: '100 perm' },
        { what: 'air', resistance: '0.17 R' },
        { what: 'film', resistance: '0 R', permeance: '0.01 perm' },
        { what: 'board', resistance: '0.61 R', permeance: '0.06 perm' },
      ],
    });
    expect(figures.where?.value).toBe('at 2 places inside batt; between air and film');
  });

  test('two tight stretches each catch their own', () => {
    const { figures, tables } = answered(
      withLayers(
        [
          { what: 'film', resistance: '0.5 R' },
          { what: 'board', resistance: '0.5 R', permeance: '20 perm' },
          { what: 'fill', resistance: '6 R' },
          { what: 'kraft', resistance: '0 R', permeance: '3 perm' },
          { what: 'more fill', resistance: '12 R' },
          { what: 'deck', resistance: '1 R', permeance: '0.1 perm' },
          { what: 'outdoor film', resistance: '0.17 R' },
        ],
        { outdoors: '0 F', indoor_humidity: '80 %' },
      ),
    );
    expect(figures.where?.value).toBe('between fill and kraft; between more fill and deck');
    const rows = tables?.gatherings?.rows ?? [];
    const stays = rows.map((row) => (row.stays as Quantity).amount);
    expect(stays).toHaveLength(2);
    const whole = numberOf(figures.stays);
    expect(Math.abs(stays.reduce((sum, each) => sum + each, 0) / whole - 1)).toBeLessThan(1e-9);
  });

  test('every material of the choice is in the rulebook', () => {
    for (const material of materials)
      expect(rules.find('moisture.permeance.materials', { material }, 'permeance'), material).toBeDefined();
  });

  test.each([
    ['warmer outdoors', { celsius: 30, pressure: 500 }, [{ heat: 1, vapour: 1 }], RangeError],
    ['nothing that resists heat', { celsius: 0, pressure: 300 }, [{ heat: 0, vapour: 1 }], RangeError],
    ['nothing that resists vapour', { celsius: 0, pressure: 300 }, [{ heat: 1, vapour: 0 }], RangeError],
    [
      'nothing before a place too cold',
      { celsius: 0, pressure: 300 },
      [
        { heat: 1, vapour: 0 },
        { heat: 0, vapour: 1 },
      ],
      NothingHoldsBack,
    ],
  ])('the plain profile refuses %s', (_, outdoors, layers, kind) => {
    expect(() => profile(layers, { celsius: 20, pressure: 1000 }, outdoors)).toThrow(kind);
  });
});

describe('cautions and remarks', () => {
  test('it is always said to be a screen, and that leaks come first', () => {
    for (const entries of [roof, wall, { ...roof, indoor_humidity: '10 %' }]) {
      const { cautions, remarks } = answered(entries);
      expect(cautions).toEqual(expect.arrayContaining(['caution.moisture.leaks', 'caution.moisture.screen']));
      expect(remarks.map(remarkText)[0]).toMatch(/[Ss]ealing the ceiling/);
    }
  });

  test.each([
    ['water that gathers', roof, 'caution.moisture.condenses', true],
    ['water that does not gather', { ...roof, indoor_humidity: '10 %' }, 'caution.moisture.condenses', false],
    ['a metal roof', roof, 'caution.moisture.tight', true],
    ['a wall that lets vapour through', wall, 'caution.moisture.tight', false],
    ['water below freezing', roof, 'caution.moisture.frost', true],
    ['water above freezing', { ...roof, outdoors: '38 F' }, 'caution.moisture.frost', false],
    // The page of the source asks for below 60 %.
    ['59.9 % indoors', { ...roof, indoor_humidity: '59.9 %' }, 'caution.moisture.humid', false],
    ['60 % indoors', { ...roof, indoor_humidity: '60 %' }, 'caution.moisture.humid', true],
    ['61 % indoors', { ...roof, indoor_humidity: '61 %' }, 'caution.moisture.humid', true],
  ])('%s', (_, entries, caution, trips) => {
    expect((answered(entries).cautions as readonly string[]).includes(caution)).toBe(trips);
  });

  test('a ceiling more open than a vapour retarder is told of, a tighter one is not', () => {
    const tighter = roofLayers.map((each, place) =>
      place === 1 ? { resistance: '0.45 R', permeance: '0.9 perm' } : each,
    );
    expect(answered(roof).remarks.map(remarkText).join(' ')).toContain('let through 7 perm');
    expect(answered(withLayers(tighter)).remarks.map(remarkText).join(' ')).not.toContain('vapour retarder');
  });

  test.each([
    ['29 %', true],
    ['30 %', false],
    ['50 %', false],
    ['51 %', true],
  ])('%s indoors', (indoor_humidity, told) => {
    expect(
      answered({ ...roof, indoor_humidity })
        .remarks.map(remarkText)
        .some((each) => each.includes('usual humidity')),
    ).toBe(told);
  });
});

test('one temperature told in two units is no warmer outdoors, though the Celsius is rounded up by a trillionth', () => {
  // 50.1 °F is 10.0555… °C.
  const even = { ...roof, indoors: '50.1 F', outdoors: '10.055555555556 C' };
  expect(answered(even).figures.verdict?.value).toBe('does not gather');
});

test('each material with a published range is told of once; a single figure, a typed permeance and a tight roof are not', () => {
  const layers = [
    { resistance: '1 R', material: 'kraft facing' },
    { resistance: '1 R', material: 'kraft facing' },
    { resistance: '1 R', material: 'vapour-retarder paint' },
    { resistance: '1 R', permeance: '3 perm' },
    { resistance: '0.17 R' },
  ];
  expect(
    answered(withLayers(layers))
      .remarks.map(remarkText)
      .filter((each) => each.includes('is published')),
  ).toEqual([expect.stringContaining('For kraft facing 0.4 perm to 4 perm is published')]);
});

const clashes: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'warmer outdoors',
    { ...roof, outdoors: '90 F' },
    /\(outdoors\): found 90 °F, warmer than the room; expected no warmer.*heating season/,
  ],
  ['no layers', withLayers([]), /\(layers\): found no layers; expected two or more/],
  [
    'one layer',
    withLayers([{ resistance: '1 R', permeance: '1 perm' }]),
    /\(layers\): found one layer; expected two or more/,
  ],
  [
    'no R at all',
    withLayers([{ resistance: '0 R', permeance: '1 perm' }, { resistance: '0 R' }]),
    /\(layers\): found layers with no R at all/,
  ],
  [
    'no permeance at all',
    withLayers([{ resistance: '1 R' }, { resistance: '2 R' }]),
    /\(layers\): found no permeance on any layer; expected one at least/,
  ],
  [
    'nothing that holds vapour back on the warm side',
    withLayers(roofLayers.map((each, place) => (place === 1 ? { resistance: '0.45 R' } : each))),
    /\(layers\): found nothing that holds vapour back before a face colder than the dew point.*permeance of a layer/,
  ],
  [
    'a permeance beside a material',
    withLayers([{ resistance: '1 R', permeance: '1 perm', material: 'metal roof' }, { resistance: '1 R' }]),
    /\(layers\.0\.permeance\): found 1 perm beside metal roof; expected one of the two/,
  ],
  [
    'a layer without R',
    withLayers([{ permeance: '1 perm' }, { resistance: '1 R' }]),
    /\(layers\.0\.resistance\): found nothing; expected/,
  ],
  [
    'air too dry',
    { ...roof, indoors: '-140 F', outdoors: '-145 F', indoor_humidity: '1 %' },
    /\(indoor_humidity\): found 1 % at −140 °F; expected air damp enough/,
  ],
  [
    'too cold for the equations',
    { ...roof, outdoors: '-200 F' },
    /\(outdoors\): found −200 °F; expected more than −148 °F and less than 392 °F/,
  ],
  ['no humidity', { ...roof, indoor_humidity: '' }, /\(indoor_humidity\): found nothing/],
  [
    'a humidity of nought',
    { ...roof, outdoor_humidity: '0 %' },
    /\(outdoor_humidity\): found "0 %"; expected more than 0/,
  ],
  [
    'more than saturated',
    { ...roof, indoor_humidity: '101 %' },
    /\(indoor_humidity\): found "101 %"; expected 100 % at most/,
  ],
  ['a temperature without a unit', { ...roof, indoors: '70' }, /\(indoors\): found "70"/],
  [
    'a permeance below nought',
    withLayers([{ resistance: '1 R', permeance: '-1 perm' }, { resistance: '1 R' }]),
    /\(layers\.0\.permeance\): found "-1 perm"/,
  ],
  [
    'an unknown material',
    withLayers([{ resistance: '1 R', material: 'paper' }, { resistance: '1 R' }]),
    /\(layers\.0\.material\): found "paper"; expected one of/,
  ],
  ['time that runs back', { ...roof, period: '-1 day' }, /\(period\): found "-1 day"/],
];

describe('bad entries are one sentence that names the field', () => {
  test.each(clashes)('%s', (_, entries, says) => {
    expect(problems(moisture, entries)).toEqual([expect.stringMatching(says)]);
  });
});

const dewClashes: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'neither humidity nor wet bulb',
    { temperature: '70 F' },
    /\(wet_bulb\): found neither a wet bulb nor a relative humidity/,
  ],
  [
    'both',
    { temperature: '70 F', humidity: '40 %', wet_bulb: '60 F' },
    /\(wet_bulb\): found 60 °F beside a relative humidity/,
  ],
  [
    'a wet bulb above the dry',
    { temperature: '70 F', wet_bulb: '71 F' },
    /\(wet_bulb\): found 71 °F, warmer than the dry 70 °F/,
  ],
  [
    'a wet bulb that no air gives',
    { temperature: '100 F', wet_bulb: '40 F' },
    /\(wet_bulb\): found 40 °F beside 100 °F; expected a reading that some air gives/,
  ],
  [
    'an air pressure beside a humidity',
    { temperature: '70 F', humidity: '40 %', air_pressure: '14 psia' },
    /\(air_pressure\): found 14 psia beside a relative humidity/,
  ],
  ['air too cold', { temperature: '-150 F', humidity: '40 %' }, /\(temperature\): found −150 °F/],
  ['air too dry', { temperature: '-140 F', humidity: '1 %' }, /\(humidity\): found air too dry/],
];

describe('a dew point that can’t be told', () => {
  test.each(dewClashes)('%s', (_, entries, says) => {
    expect(problems(dewPointCalculation, entries)).toEqual([expect.stringMatching(says)]);
  });
});

const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((n) => Number(n.toFixed(4)));
interface PlainLayerEntry {
  readonly r: number;
  readonly perm: number | undefined;
}
const anyLayer: fc.Arbitrary<PlainLayerEntry> = fc.record({
  r: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 4, arbitrary: between(0.05, 30) }),
  perm: fc.oneof(
    { weight: 5, arbitrary: between(0.05, 60) },
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 2, arbitrary: fc.constant(undefined) },
  ),
});
const anyCeiling = fc.record({
  inside: between(50, 80),
  colder: between(0, 120),
  indoorHumidity: between(1, 100),
  outdoorHumidity: between(1, 100),
  board: between(0.05, 30),
  layers: fc.array(anyLayer, { minLength: 1, maxLength: 6 }),
});
type Ceiling = typeof anyCeiling extends fc.Arbitrary<infer T> ? T : never;

/** The first layer always resists heat and vapour, so that nothing comes freely to a cold face. */
const entriesOf = (any: Ceiling, metric = false): Entries => {
  const reading = (fahrenheit: number) => (metric ? `${(fahrenheit - 32) / 1.8} C` : `${fahrenheit} F`);
  const layers = [{ r: 0.5, perm: any.board as number | undefined }, ...any.layers];
  return {
    indoors: reading(any.inside),
    indoor_humidity: `${any.indoorHumidity} %`,
    outdoors: reading(any.inside - any.colder),
    outdoor_humidity: `${any.outdoorHumidity} %`,
    layers: layers.map(({ r, perm }) => ({
      // R of 1 h ft2 F/Btu is 0.176110184 m2 K/W; 1 perm is 57.2135 ng/(s m2 Pa).
      resistance: metric ? `${r * 0.1761101838} m2 K/W` : `${r} R`,
      ...(perm === undefined
        ? {}
        : { permeance: metric ? `${perm * 57.213475} ng/(s m2 Pa)` : `${perm} perm` }),
    })),
    period: metric ? `${30 * 24} h` : '30 days',
  };
};

const RUNS = { numRuns: 150 };

describe('any ceiling', () => {
  test('has figures that are numbers, and water and its flows are never below nought', () => {
    fc.assert(
      fc.property(anyCeiling, (any) => {
        const { figures, tables } = answered(entriesOf(any));
        const amounts = [
          ...Object.values(figures).map(({ value }) => value),
          ...Object.values(tables ?? {}).flatMap(({ rows }) =>
            rows.flatMap((row) => Object.values(row).map(cellValue)),
          ),
        ].flatMap((value) => (typeof value === 'string' ? [] : value.amount));
        expect(amounts.every(Number.isFinite)).toBe(true);
        const wet = figures.verdict?.value === 'gathers as water';
        for (const name of wet ? ['gathered', 'flow_in', 'flow_out', 'stays'] : ['stays'])
          expect(numberOf(figures[name]), name).toBeGreaterThanOrEqual(0);
      }),
      RUNS,
    );
  });

  test('has a vapour pressure nowhere above saturation, and nowhere above what it would be if nothing gathered', () => {
    fc.assert(
      fc.property(anyCeiling, (any) => {
        for (const { pressure, saturation, unchecked } of screened(entriesOf(any)).profile.places) {
          expect(pressure).toBeLessThanOrEqual(saturation * (1 + 1e-6));
          expect(pressure).toBeLessThanOrEqual(Math.max(unchecked * (1 + 1e-9), 0));
          expect(pressure).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });

  test('keeps at each wet stretch what arrives less what leaves, and all of them together the whole', () => {
    fc.assert(
      fc.property(anyCeiling, (any) => {
        const { gatherings, stays } = screened(entriesOf(any));
        for (const each of gatherings)
          expect(each.arrives.amount - each.leaves.amount).toBeGreaterThanOrEqual(0);
        const sum = gatherings.reduce((all, each) => all + each.stays.amount, 0);
        expect(Math.abs(sum - stays.amount)).toBeLessThanOrEqual(1e-9 * Math.max(1, sum));
      }),
      RUNS,
    );
  });

  test('gathers no less for more humidity indoors, and no less for a more open board', () => {
    fc.assert(
      fc.property(anyCeiling, between(1, 3), (any, more) => {
        const stays = (one: Ceiling) => screened(entriesOf(one)).stays.amount;
        const least = stays(any) - 1e-9 * Math.max(1, stays(any));
        expect(
          stays({ ...any, indoorHumidity: Math.min(100, any.indoorHumidity * more) }),
        ).toBeGreaterThanOrEqual(least);
        expect(stays({ ...any, board: any.board * more })).toBeGreaterThanOrEqual(least);
      }),
      RUNS,
    );
  });

  test('is the same in SI units, to a part in a million of the vapour that comes', () => {
    fc.assert(
      fc.property(anyCeiling, (any) => {
        const [imperial, metric] = [screened(entriesOf(any)), screened(entriesOf(any, true))];
        const scale = Math.abs(imperial.flowIn.amount) + 1e-6;
        expect(Math.abs(imperial.stays.amount - metric.stays.amount) / scale).toBeLessThan(1e-5);
        expect(
          Math.abs(amountIn(imperial.coldest.temperature, 'F') - amountIn(metric.coldest.temperature, 'F')),
        ).toBeLessThan(1e-6);
      }),
      RUNS,
    );
  });
});

test('the amount in a month is thirty times that of a day', () => {
  const of = (entries: Entries) => numberOf(answered(entries).figures.gathered);
  expect(Math.abs(of(roof) / of({ ...roof, period: '1 day' }) - 30)).toBeLessThan(1e-9);
});
