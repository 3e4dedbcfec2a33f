import { describe, expect, test } from 'vitest';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { celsiusOf } from '../../src/calc/moisture/air.ts';
import { moisture, screenFrom } from '../../src/calc/moisture/declaration.ts';
import { dewPoint as dewPointCalculation } from '../../src/calc/moisture/dew-point-declaration.ts';
import { saturationPressure, vapourPressureByWetBulb } from '../../src/calc/moisture/equations.ts';
import { profile } from '../../src/calc/moisture/profile.ts';
import { whereIs } from '../../src/calc/moisture/screen.ts';
import { amountIn, type Quantity, quantity } from '../../src/quantity/quantity.ts';
import { working } from '../../src/quantity/working.ts';
import { type Entries, printed, rules, worked } from './told.ts';

const film = { what: 'film', resistance: '1 R' };
const board = { what: 'board', resistance: '1 R', permeance: '5 perm' };
const fill = { what: 'fill', resistance: '8 R' };
const deck = { what: 'deck', resistance: '2 R', permeance: '1 perm' };
const outer = { what: 'outer film', resistance: '0.5 R' };
const metal = { what: 'metal', resistance: '0 R', permeance: '0 perm' };

/** in all and 62.5 degrees between: 5 °F for each R, so that it is 20 °F between fill and deck. */
const ceiling: Entries = {
  indoors: '70 F',
  indoor_humidity: '40 %',
  outdoors: '7.5 F',
  outdoor_humidity: '80 %',
  layers: [film, board, fill, deck, outer],
  period: '30 days',
};

function screened(entries: Entries) {
  const read = readFields(moisture.fields, entries);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return screenFrom(read.value, rules);
}

/** The line of a working that ends in a letter: in symbols, in numbers. */
const lineOf = (q: Quantity, symbol: string) => working(q).find((line) => line.symbol === symbol);

describe('the working of a place where water gathers', () => {
  const { flowIn, flowOut } = screened(ceiling);

  test('counts the R from the room as far as there, and the temperature by its share of the whole', () => {
    expect(lineOf(flowIn, 'Rc')).toMatchObject({
      symbols: 'R1 + R2 + R3',
      numbers: 'R1 = R-1, R2 = R-1, R3 = R-8',
      result: 'R-10',
      label: 'R from the room as far as there',
    });
    expect(lineOf(flowIn, 'R')).toMatchObject({ symbols: 'R1 + R2 + R3 + R4 + R5', result: 'R-12.5' });
    const [warm, cold] = ['70', '7.5'].map((degrees) => `${degrees} °F`);
    expect(lineOf(flowIn, 'tc')?.symbols).toBe('ti − (ti − to) · Rc/R');
    expect(lineOf(flowIn, 'tc')?.numbers).toBe(`ti = ${warm}, to = ${cold}, Rc = R-10, R = R-12.5`);
    expect(lineOf(flowIn, 'tc')).toMatchObject({
      label: 'Temperature between fill and deck',
      result: '20 °F',
    });
  });

  test('counts only the layers that hold vapour back, on either side', () => {
    expect(lineOf(flowIn, 'Mi')).toMatchObject({
      symbols: '1/(1/M2)',
      numbers: 'M2 = 5 perm',
      result: '5 perm',
      label: 'Permeance from the room as far as there',
    });
    expect(lineOf(flowOut, 'Mo')).toMatchObject({
      symbols: '1/(1/M4)',
      numbers: 'M4 = 1 perm',
      result: '1 perm',
      label: 'Permeance from there outwards',
    });
    expect(lineOf(flowIn, 'wi')?.symbols).toBe('Mi × (pi − pc)');
    expect(lineOf(flowOut, 'wo')?.symbols).toBe('Mo × (pc − po)');
  });

  test('takes the pressure of saturated air there, and of each air its humidity', () => {
    expect(lineOf(flowIn, 'pc')).toMatchObject({
      symbols: 'pressure of saturated air at tc',
      numbers: 'tc = 20 °F',
      label: 'Vapour pressure between fill and deck',
    });
    expect(lineOf(flowIn, 'pi')?.numbers).toMatch(/^φ.* = 40 %, t.* = 70 °F$/);
    expect(lineOf(flowOut, 'po')?.numbers).toMatch(/^φ.* = 80 %, t.* = 7\.5 °F$/);
  });

  test('by the handbook’s saturation pressures 0.96 grain comes and 0.06 goes on, each hour and square foot', () => {
    // ASHRAE Fundamentals 2017, chapter 1, table 3: 0.7392 inHg at 70 °F, 0.1028 at 20 °F; 0.0555 at 7.5 °F between its rows.
    // 5 x (0.4 x 0.7392 - 0.1028) = 0.964; 1 x (0.1028 - 0.8 x 0.0555) = 0.0584.
    expect(Math.abs(amountIn(flowIn, 'grain/(h ft2)') - 0.964)).toBeLessThan(0.003);
    expect(Math.abs(amountIn(flowOut, 'grain/(h ft2)') - 0.0584)).toBeLessThan(0.001);
  });

  test('behind a layer that lets nothing through nothing goes on, and the working says why', () => {
    const shut = screened({ ...ceiling, layers: [film, board, fill, metal, outer] });
    expect(lineOf(shut.flowOut, 'wo')?.symbols).toBe('nothing passes a layer of no permeance');
    expect(shut.flowOut.amount).toBe(0);
  });

  test('where nothing gathers the way through the whole is told', () => {
    // Permeance of both in line: 1/(1/5 + 1/1) = 0.8333 perm.
    const dry = screened({ ...ceiling, indoor_humidity: '5 %' });
    expect(dry.gatherings).toEqual([]);
    expect(lineOf(dry.flowIn, 'Mi')).toMatchObject({
      symbols: '1/(1/M2 + 1/M4)',
      numbers: 'M2 = 5 perm, M4 = 1 perm',
      result: '0.8333 perm',
    });
    expect(lineOf(dry.flowIn, 'wi')?.symbols).toBe('Mi × (pi − po)');
  });
});

describe('the working of a place inside a layer', () => {
  const thick = { what: 'thick', resistance: '10 R', permeance: '2 perm' };
  /** Between damp rooms and dry cold air the curve of saturation sags below the line inside the one layer that resists both. */
  const { gatherings, flowIn, flowOut } = screened({
    ...ceiling,
    indoor_humidity: '90 %',
    outdoors: '-10 F',
    outdoor_humidity: '70 %',
    layers: [{ what: 'film', resistance: '0.1 R' }, thick, { what: 'outer film', resistance: '0.1 R' }],
  });
  const share = (symbols: string | undefined, pattern: RegExp): number =>
    Number(pattern.exec(symbols ?? '')?.[1] ?? Number.NaN);

  test('is told as inside that layer', () => {
    expect(gatherings.map(({ where }) => where)).toEqual(['inside thick']);
  });

  test('counts the share of the layer before it, in twentieths', () => {
    const [one] = gatherings;
    if (!one) throw new Error('found no place, expected one');
    const heat = share(lineOf(flowIn, 'Rc')?.symbols, /^R1 \+ (0\.\d+)·R2$/);
    const first = share(lineOf(flowIn, 'Mi')?.symbols, /^1\/\((0\.\d+)\/M2\)$/);
    const rest = share(lineOf(flowOut, 'Mo')?.symbols, /^1\/\((0\.\d+)\/M2\)$/);
    expect((first * 20) % 1).toBeCloseTo(0, 9);
    expect(first).toBe(heat);
    // A layer of 2 perm; so much of it lets through 2 over that much.
    const permeance = (q: Quantity, symbol: string) => Number.parseFloat(lineOf(q, symbol)?.result ?? '') / 2;
    expect(permeance(flowIn, 'Mi')).toBeCloseTo(1 / first, 2);
    expect(permeance(flowOut, 'Mo')).toBeCloseTo(1 / rest, 2);
    expect(rest).toBeLessThan(1 - first + 1e-9);
    // 80 degrees over: the temperature of the first place by its share.
    expect(lineOf(flowIn, 'tc')?.result).toBe(
      `${String(Number((70 - (80 * (0.1 + 10 * first)) / 10.2).toPrecision(4))).replace('-', '−')} °F`,
    );
  });
});

describe('the coldest place that vapour reaches, where none gathers', () => {
  /** and 52.5 degrees: 5 °F for each R. */
  const dry = (layers: readonly Entries[], outdoors = '17.5 F'): Entries => ({
    ...ceiling,
    indoor_humidity: '5 %',
    outdoors,
    layers,
  });
  const cases: readonly [what: string, entries: Entries, label: string, reading: string][] = [
    ['before the outermost layer', dry([film, board, fill, outer]), 'between fill and outer film', '20 °F'],
    [
      'as far as a layer that lets nothing through',
      dry([film, board, fill, metal, outer]),
      'between fill and metal',
      '20 °F',
    ],
    [
      'before a tight layer that is itself the outermost',
      dry([film, board, fill, metal], '20 F'),
      'between fill and metal',
      '20 °F',
    ],
    [
      'before an outermost layer that holds some back',
      dry([film, board, fill, { ...deck, resistance: '0.5 R' }]),
      'between fill and deck',
      '20 °F',
    ],
  ];
  test.each(cases)('%s', (_, entries, label, reading) => {
    const { labels, figures } = printed(moisture, entries);
    expect(figures.verdict).toBe('does not gather');
    expect([labels.coldest, figures.coldest]).toEqual([`Temperature ${label}`, reading]);
  });
});

describe('of several places', () => {
  const layers = (kraft: string): readonly Entries[] => [
    { what: 'film', resistance: '0.5 R' },
    { what: 'board', resistance: '0.5 R', permeance: '20 perm' },
    { what: 'fill', resistance: '6 R' },
    { what: 'kraft', resistance: '0 R', permeance: kraft },
    { what: 'more fill', resistance: '12 R' },
    { what: 'deck', resistance: '1 R', permeance: '0.1 perm' },
    { what: 'outdoor film', resistance: '0.17 R' },
  ];
  test.each([
    // The freer the kraft, the more goes on to the deck.
    ['1 perm', 'between fill and kraft'],
    ['12 perm', 'between more fill and deck'],
  ])('behind kraft of %s the wettest is the one told of', (kraft, where) => {
    const screen = screened({
      ...ceiling,
      indoor_humidity: '80 %',
      outdoors: '0 F',
      layers: layers(kraft),
    });
    expect(screen.gatherings.map((each) => each.where)).toEqual([
      'between fill and kraft',
      'between more fill and deck',
    ]);
    const [first, second] = screen.gatherings.map(({ stays }) => stays.amount);
    expect((first ?? 0) > (second ?? 0)).toBe(where === 'between fill and kraft');
    expect(screen.coldest.where).toBe(where);
  });

  test('each has its row: place, temperature, what arrives, goes on and stays', () => {
    const { tables } = printed(moisture, {
      ...ceiling,
      indoor_humidity: '80 %',
      outdoors: '0 F',
      layers: layers('3 perm'),
    });
    // 70 degrees over: at R-7 it is 70 - 24.294 = 45.7, at R-19 70 - 65.94 = 4.06 °F.
    expect(tables.gatherings?.map((row) => row.split(' | ').slice(0, 2))).toEqual([
      ['between fill and kraft', '45.7 °F'],
      ['between more fill and deck', '4.06 °F'],
    ]);
    for (const row of tables.gatherings ?? []) {
      const [arrives = 0, leaves = 0, stays = 0] = row.split(' | ').slice(2).map(Number.parseFloat);
      expect(Math.abs(arrives - leaves - stays)).toBeLessThanOrEqual(0.006 * arrives);
    }
  });

  test('one alone has no table of its own', () => {
    expect(printed(moisture, ceiling).tables.gatherings).toBeUndefined();
  });
});

describe('what is remarked of a ceiling', () => {
  const retarder = amountIn(rules.value('moisture.retarder.ceiling'), 'perm');
  const remarks = (more: Entries) => printed(moisture, { ...ceiling, ...more }).remarks;

  test('that it is colder than the dew point somewhere, or nowhere', () => {
    // Air of 70 °F and 40 % has its dew point at 45 °F, read off a psychrometric chart.
    expect(remarks({})[0]).toMatch(
      /^It is 20 °F between fill and deck, and the dew point of the room’s air is 4[45]\.\d °F/,
    );
    expect(remarks({ indoor_humidity: '30 %', outdoors: '65 F' })[0]).toMatch(
      /^Nowhere within the layers is it colder/,
    );
  });

  test('vapour that seeps inwards, and none that stands still', () => {
    const inwards = 'It is damper outdoors than in the room: vapour seeps inwards.';
    expect(remarks({ indoor_humidity: '5 %', outdoors: '60 F', outdoor_humidity: '90 %' })).toContain(
      inwards,
    );
    expect(remarks({})).not.toContain(inwards);
    expect(remarks({ outdoors: '70 F', outdoor_humidity: '40 %' })).not.toContain(inwards);
  });

  test('a board as tight as a vapour retarder is none too open', () => {
    const open = (permeance: number) =>
      remarks({
        layers: [
          film,
          { ...board, permeance: `${permeance} perm` },
          fill,
          { ...deck, permeance: '0.1 perm' },
          outer,
        ],
      }).some((each) => each.startsWith('From the room as far as there'));
    expect(open(retarder)).toBe(false);
    expect(open(retarder * 1.01)).toBe(true);
  });

  test('nothing of a retarder where nothing gathers', () => {
    expect(remarks({ indoor_humidity: '30 %', outdoors: '65 F', outdoor_humidity: '20 %' })).toHaveLength(1);
  });

  test('frost only where water gathers below freezing, at one of several places too', () => {
    const cautions = (outdoors: string) => worked(moisture, { ...ceiling, outdoors }).cautions;
    expect(cautions('7.5 F')).toContain('caution.moisture.frost');
    // R-10 of: 70 - 0.8 x 47.5 = 32 °F, which is not below freezing.
    expect(cautions('22.5 F')).toContain('caution.moisture.condenses');
    expect(cautions('22.5 F')).not.toContain('caution.moisture.frost');
  });
});

describe('a place in words', () => {
  const layers = [{ name: 'board' }, { name: 'fill' }];
  test.each([
    [-1, 1, 'the room'],
    [0, 1, 'between board and fill'],
    [1, 0.5, 'inside fill'],
    [1, 1, 'outdoors'],
  ])('layer %d, share %d: %s', (layer, share, where) => {
    expect(whereIs({ layer, share }, layers)).toBe(where);
  });
});

describe('what the equations of moist air can’t tell', () => {
  test.each([-100, 200, 250])('at %d °C they do not hold', (celsius) => {
    expect(() => celsiusOf(quantity(celsius, 'C'), 't', 'Temperature')).toThrow(
      'expected more than −148 °F and less than 392 °F',
    );
  });
  test.each([-99, 0, 199])('at %d °C they do', (celsius) => {
    expect(celsiusOf(quantity(celsius, 'C'), 't', 'Temperature')).toBe(celsius);
  });

  test('a wet bulb warmer than the dry, or one whose water would boil, is no reading', () => {
    expect(vapourPressureByWetBulb(20, 20.1, 101_325)).toBeUndefined();
    expect(vapourPressureByWetBulb(20, 20, saturationPressure(20))).toBeUndefined();
    expect(vapourPressureByWetBulb(20, 20, 101_325)).toBeCloseTo(saturationPressure(20), 9);
  });

  test('layers that hold nothing back are told as such', () => {
    expect(() =>
      profile([{ heat: 1, vapour: 0 }], { celsius: 20, pressure: 300 }, { celsius: 0, pressure: 300 }),
    ).toThrow('found no layer that resists vapour, expected one');
  });
});

describe('what is printed of a dew point', () => {
  const most = amountIn(rules.value('moisture.indoor.most'), 'percent');
  test.each([
    [most - 1, []],
    [most, ['caution.moisture.humid']],
  ])('air of %d %% has the cautions %j', (humidity, cautions) => {
    const answer = printed(dewPointCalculation, { temperature: '70 F', humidity: `${humidity} %` });
    expect(answer.cautions).toEqual(cautions);
    expect(answer.remarks).toEqual([expect.stringMatching(/^Any face colder than the dew point/)]);
  });

  test('by a wet bulb the working tells all that went in, at the sea where no pressure is given', () => {
    const { figures } = worked(dewPointCalculation, { temperature: '70 F', wet_bulb: '60 F' });
    const line = lineOf(figures.pressure?.value as Quantity, 'p');
    expect(line?.symbols).toBe('equations of the wet bulb');
    expect(line?.numbers).toBe('t = 70 °F, tw = 60 °F, P = 1 atm');
    const saturation = lineOf(figures.saturation?.value as Quantity, 'ps');
    expect(saturation?.numbers).toBe('t = 70 °F');
  });

  test('a wet bulb as warm as the dry is that of saturated air', () => {
    expect(printed(dewPointCalculation, { temperature: '70 F', wet_bulb: '70 F' }).figures).toMatchObject({
      dew_point: '70 °F',
      humidity: '100 %',
    });
  });
});
