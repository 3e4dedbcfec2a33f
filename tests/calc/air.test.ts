import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exhaustDuctCalculation, freshAirCalculation } from '../../src/calc/air/declaration.ts';
import { type DuctKind, type DuctWord, ductKinds, exhaustDuct } from '../../src/calc/air/duct.ts';
import { roomKinds, runningWays } from '../../src/calc/air/fields.ts';
import { freshAir } from '../../src/calc/air/fresh-air.ts';
import { type Room, roomExhaust } from '../../src/calc/air/rooms.ts';
import { factoryRate, wholeHouseRate } from '../../src/calc/air/whole-house.ts';
import { type Answer, answer } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { amountIn, inUnit, number, type Quantity, quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { complaints, printed } from './told.ts';

const { data } = theProject();
const rules = openRulebook(data);
const cfm = (q: Quantity<'air flow'> | undefined): number => amountIn(q as Quantity<'air flow'>, 'cfm');
const ft2 = (amount: number) => quantity(amount, 'ft2');

const worked = (entries: Readonly<Record<string, unknown>>): Answer => {
  const read = answer(freshAirCalculation, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

/** By hand from 0.03 cfm a square foot and 7.5 cfm a person, bedrooms and one more. */
const rates: readonly [floor: number, bedrooms: number, expected: number][] = [
  [1000, 1, 45],
  [1000, 2, 52.5],
  [924, 3, 57.72],
  [320, 0, 24.6],
  [1500, 5, 90],
];

test.each(rates)('%d square feet with %d bedrooms need %d cfm', (floor, bedrooms, expected) => {
  expect(cfm(wholeHouseRate(ft2(floor), number(bedrooms), rules))).toBeCloseTo(expected, 10);
});

/** By hand: 50/0.035 is 1,428.6 and 90/0.035 is 2,571.4 square feet, where the ends take over. */
const factoryRates: readonly [floor: number, expected: number][] = [
  [924, 50],
  [1428, 50],
  [1429, 50.015],
  [1800, 63],
  [2571, 89.985],
  [2572, 90],
  [2800, 90],
];

test.each(factoryRates)('the factory rule for %d square feet is %d cfm', (floor, expected) => {
  expect(cfm(factoryRate(ft2(floor), rules))).toBeCloseTo(expected, 10);
});

interface Found {
  readonly room: Room['room'];
  readonly flow?: number;
  readonly runs?: Room['runs'];
  readonly window?: boolean;
}

const roomOf = ({ room, flow, runs = 'on demand', window = false }: Found): Room => ({
  name: room,
  room,
  flow: flow === undefined ? undefined : quantity(flow, 'cfm'),
  runs,
  windowOpens: window,
});

/** By hand: bath 50 on demand or 20 all the time, kitchen 100 on demand; a window takes 20 off, never below 0. */
const rooms: readonly [title: string, found: Found, asked: number, shortfall: number][] = [
  ['a bath without a fan', { room: 'bath' }, 50, 50],
  ['a bath without a fan, with a window', { room: 'bath', window: true }, 50, 30],
  ['a bath with a weak fan', { room: 'bath', flow: 35 }, 50, 15],
  ['a window forgives no more than is lacked', { room: 'bath', flow: 35, window: true }, 50, 0],
  ['a bath with a fan that is just enough', { room: 'bath', flow: 50 }, 50, 0],
  ['a strong fan lacks nothing, and gives nothing back', { room: 'bath', flow: 90 }, 50, 0],
  ['a bath whose fan runs all the time', { room: 'bath', flow: 20, runs: 'all the time' }, 20, 0],
  [
    'one that runs all the time, but too weakly, is held against the rate on demand',
    { room: 'bath', flow: 19, runs: 'all the time' },
    20,
    31,
  ],
  ['a kitchen without a fan', { room: 'kitchen' }, 100, 100],
  ['a kitchen with a window and a weak fan', { room: 'kitchen', flow: 60, window: true }, 100, 20],
  [
    'a kitchen whose fan runs all the time is held against the rate on demand',
    { room: 'kitchen', flow: 60, runs: 'all the time' },
    100,
    40,
  ],
];

describe('what a room lacks', () => {
  test.each(rooms)('%s', (_, found, asked, shortfall) => {
    const exhaust = roomExhaust(roomOf(found), 1, rules);
    expect(cfm(exhaust.asked)).toBe(asked);
    expect(cfm(exhaust.shortfall)).toBe(shortfall);
  });

  test('the factory rule asked a kitchen for 100 and a bath for 50', () => {
    expect(cfm(roomExhaust(roomOf({ room: 'kitchen' }), 1, rules).factory)).toBe(100);
    expect(cfm(roomExhaust(roomOf({ room: 'bath' }), 1, rules).factory)).toBe(50);
  });
});

describe('the answer', () => {
  test('without rooms is the whole-house rate, with no word of the recalled path', () => {
    const { figures, tables, cautions } = worked({ floor: '1000 ft2', bedrooms: '2' });
    expect(Object.keys(figures)).toEqual(['to_install', 'whole_house', 'factory']);
    expect(tables).toBeUndefined();
    expect(cautions).not.toContain('caution.air.recalled');
  });

  test('with a single room says that the path is recalled', () => {
    const rooms = [{ name: 'bath', room: 'bath', runs: 'on demand', window: 'opens' }];
    expect(worked({ floor: '1000 ft2', bedrooms: '2', rooms }).cautions).toContain('caution.air.recalled');
  });

  test('with rooms says that the path is recalled, and that nothing may end in the roof cavity', () => {
    const { cautions, tables } = worked(freshAirCalculation.example);
    expect(cautions).toContain('caution.air.recalled');
    expect(cautions[0]).toBe('caution.air.outdoors');
    expect(data.cautions['caution.air.outdoors']?.level).toBe('stop');
    expect(tables?.rooms?.rows).toHaveLength(2);
    for (const id of ['ventilation.local.shortfall-share', 'ventilation.local.window-credit'])
      expect(data.rules[id]?.source.kind).toBe('memory');
  });

  test('a fan that is there and does enough leaves nothing to install, not less than nothing', () => {
    const { figures, remarks } = worked({ floor: '1000 ft2', bedrooms: '2', existing: '80 cfm' });
    expect(figures.to_install).toMatchObject({ value: { amount: 0 } });
    expect(remarks.map(remarkText).join(' ')).toContain('nothing is to be added');
  });

  test('rooms without a name are told apart by their number', () => {
    const { tables } = worked({
      floor: '1000 ft2',
      bedrooms: '2',
      rooms: [{ room: 'bath' }, { room: 'bath', runs: 'all the time', flow: '20 cfm' }],
    });
    expect(tables?.rooms?.rows.map(({ name }) => name)).toEqual(['bath 1', 'bath 2']);
  });

  test('a kitchen fan that runs all the time is told to be held against the rate on demand', () => {
    const { remarks } = worked({
      floor: '1000 ft2',
      bedrooms: '2',
      rooms: [{ room: 'kitchen', runs: 'all the time', flow: '40 cfm' }],
    });
    expect(remarks.map(remarkText).join(' ')).toContain('100 cfm on demand');
  });

  test.each([
    ['kitchen', true],
    ['bath', false],
  ])(
    'that the rate is one of a hood over the range is told of a %s, whatever it is called: %s',
    (room, told) => {
      const { remarks } = worked({ floor: '1000 ft2', bedrooms: '2', rooms: [{ name: 'back room', room }] });
      expect(/^100 cfm is the rate of a hood/m.test(remarks.map(remarkText).join('\n'))).toBe(told);
    },
  );

  test.each([
    ['19 cfm', true],
    ['20 cfm', false],
  ])('a bath fan that moves %s all the time is told what it is held against: %s', (flow, told) => {
    const { remarks } = worked({
      floor: '1000 ft2',
      bedrooms: '2',
      rooms: [{ name: 'bath', room: 'bath', runs: 'all the time', flow }],
    });
    const said = remarks.map(remarkText).join(' ');
    expect(
      said.includes(
        'The fan of the bath moves less than the 20 cfm asked of one that runs all the time, so it is compared with 50 cfm on demand. One that moves 20 cfm lacks nothing.',
      ),
    ).toBe(told);
  });
});

const refused: readonly [title: string, entries: Readonly<Record<string, unknown>>, says: RegExp][] = [
  ['no floor', { bedrooms: '2' }, /^Floor area \(floor\): found nothing; expected text with a unit/],
  ['a floor of nought', { floor: '0 ft2', bedrooms: '2' }, /found "0 ft2"; expected more than 0/],
  [
    'half a bedroom',
    { floor: '900 ft2', bedrooms: '2.5' },
    /Bedrooms \(bedrooms\): found "2\.5"; expected a whole number/,
  ],
  [
    'a room that is neither',
    { floor: '900 ft2', bedrooms: '2', rooms: [{ room: 'attic' }] },
    /Room \(bath or kitchen 1\) \(rooms\.0\.room\): found "attic"; expected one of: bath; kitchen/,
  ],
  [
    'a flow in feet',
    { floor: '900 ft2', bedrooms: '2', existing: '30 ft' },
    /Whole-house fan that is there \(existing\): found .*; expected /,
  ],
];

test.each(refused)('%s is refused in a sentence', (_, entries, says) => {
  const read = answer(freshAirCalculation, entries, rules);
  expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
});

const floor = fc.double({ min: 1, max: 5000, noNaN: true });
const bedrooms = fc.integer({ min: 0, max: 8 });
const anyRoom = fc.record({
  room: fc.constantFrom(...roomKinds),
  flow: fc.option(fc.double({ min: 0, max: 300, noNaN: true }), { nil: undefined }),
  runs: fc.constantFrom(...runningWays),
  window: fc.boolean(),
});
const home = fc.record({
  floor,
  bedrooms,
  rooms: fc.array(anyRoom, { maxLength: 5 }),
  existing: fc.option(fc.double({ min: 0, max: 300, noNaN: true }), { nil: undefined }),
});
type Home = typeof home extends fc.Arbitrary<infer T> ? T : never;

const aired = (each: Home) =>
  freshAir(
    {
      floor: ft2(each.floor),
      bedrooms: number(each.bedrooms),
      rooms: each.rooms.map(({ flow, ...rest }) =>
        roomOf({ ...rest, ...(flow === undefined ? {} : { flow }) }),
      ),
      existing: each.existing === undefined ? undefined : quantity(each.existing, 'cfm'),
    },
    rules,
  );
const NOISE = 1e-9;

describe('whatever the home', () => {
  test('every rate is a number and none is below 0; the parts make up the whole', () => {
    fc.assert(
      fc.property(home, (each) => {
        const air = aired(each);
        const all = [air.wholeHouse, air.factory, air.shortfall, air.madeUp, air.total, air.toInstall].map(
          cfm,
        );
        const whole = Math.max(0, cfm(air.total) - (each.existing ?? 0));
        return (
          all.every((rate) => Number.isFinite(rate) && rate >= 0) &&
          Math.abs(cfm(air.toInstall) - whole) <= NOISE * 1000
        );
      }),
    );
  });

  test('a larger floor, one bedroom or one room more never asks for a smaller fan', () => {
    fc.assert(
      fc.property(home, anyRoom, fc.double({ min: 1, max: 3, noNaN: true }), (each, room, more) => {
        const before = cfm(aired(each).toInstall) * (1 - NOISE);
        return [
          { ...each, floor: each.floor * more },
          { ...each, bedrooms: each.bedrooms + 1 },
          { ...each, rooms: [...each.rooms, room] },
        ].every((next) => cfm(aired(next).toInstall) >= before);
      }),
    );
  });

  test('a stronger fan on demand, a window, or a stronger fan that is there never asks for more', () => {
    fc.assert(
      fc.property(home, fc.double({ min: 0, max: 100, noNaN: true }), (each, more) => {
        const before = cfm(aired(each).toInstall) + NOISE * 1000;
        const onDemand = each.rooms.map((room) => ({ ...room, runs: 'on demand' as const }));
        const demand = cfm(aired({ ...each, rooms: onDemand }).toInstall) + NOISE * 1000;
        return (
          cfm(aired({ ...each, rooms: each.rooms.map((room) => ({ ...room, window: true })) }).toInstall) <=
            before &&
          cfm(aired({ ...each, existing: (each.existing ?? 0) + more }).toInstall) <= before &&
          cfm(
            aired({ ...each, rooms: onDemand.map((room) => ({ ...room, flow: (room.flow ?? 0) + more })) })
              .toInstall,
          ) <= demand
        );
      }),
    );
  });

  test('the same home in square metres and litres a second needs the same', () => {
    fc.assert(
      fc.property(home, (each) => {
        const metric = freshAir(
          {
            floor: inUnit(ft2(each.floor), 'm2'),
            bedrooms: number(each.bedrooms),
            rooms: each.rooms.map(({ room, flow, runs, window }) => ({
              ...roomOf({ room, runs, window }),
              flow: flow === undefined ? undefined : inUnit(quantity(flow, 'cfm'), 'L/s'),
            })),
            existing: each.existing === undefined ? undefined : inUnit(quantity(each.existing, 'cfm'), 'L/s'),
          },
          rules,
        );
        return Math.abs(cfm(metric.total) - cfm(aired(each).total)) <= NOISE * cfm(metric.total);
      }),
    );
  });
});

const duct = (flow: number, size: number, kind: DuctKind, elbows: number) =>
  exhaustDuct(quantity(flow, 'cfm'), quantity(size, 'in'), kind, number(elbows), rules);

describe('the length of a duct', () => {
  // Whatever fits the table: it ends outdoors, a cooker's is of its own kind, and one that is kinked lets through less than the table has.
  test.each([
    ['that the table has', 80, 4],
    ['that the table has not', 80, 2],
  ])('of a size %s, comes with the three cautions of every duct', (_, flow, size) => {
    expect([...duct(flow, size, 'smooth', 0).cautions].sort()).toEqual([
      'caution.air.grease',
      'caution.air.length',
      'caution.air.outdoors',
    ]);
  });

  /** The table’s own lengths, flexible and smooth; by hand 15 ft off for each elbow. */
  const lengths: readonly [
    flow: number,
    size: number,
    kind: DuctKind,
    elbows: number,
    feet: number | DuctWord,
  ][] = [
    [50, 3, 'smooth', 0, 5],
    [50, 4, 'flexible', 0, 56],
    [50, 4, 'smooth', 2, 84],
    [80, 4, 'flexible', 0, 4],
    [80, 4, 'flexible', 1, 0],
    [51, 4, 'smooth', 0, 31],
    [81, 4, 'smooth', 0, 10],
    [80, 5, 'flexible', 0, 81],
    [80, 5, 'flexible', 3, 36],
    [100, 5, 'smooth', 1, 76],
    [101, 5, 'smooth', 0, 51],
    [300, 8, 'smooth', 1, 118],
    // A size between two rows is taken for the smaller; the last row is for what is wider too.
    [50, 4.5, 'smooth', 0, 114],
    [300, 12, 'smooth', 0, 133],
    [50, 3, 'flexible', 0, 'not allowed'],
    [81, 4, 'flexible', 0, 'not allowed'],
    [50, 5, 'flexible', 3, 'no limit'],
    [100, 6, 'smooth', 0, 'no limit'],
    [301, 8, 'smooth', 0, 'none in the table'],
    [50, 2.5, 'smooth', 0, 'none in the table'],
  ];
  test.each(lengths)('%d cfm, %d in, %s, %d elbows: %s', (flow, size, kind, elbows, feet) => {
    const { allowed, word } = duct(flow, size, kind, elbows);
    expect(allowed ? amountIn(allowed, 'ft') : word).toBe(feet);
  });

  const inWords: readonly [
    title: string,
    more: Readonly<Record<string, string>>,
    verdict: string,
    says: string,
  ][] = [
    ['a row that is not there', { size: '2 in' }, 'none in the table', '80 cfm through 2 in'],
    [
      'a duct that the table rules out',
      { kind: 'flexible', size: '3 in' },
      'not allowed',
      'allows no length',
    ],
    ['a duct without limit', { size: '6 in' }, 'no limit', 'sets no limit'],
  ];
  test.each(inWords)('%s is told in words, and the stop stands all the same', (_, more, verdict, says) => {
    const entries = { flow: '80 cfm', size: '4 in', kind: 'smooth', elbows: '1', ...more };
    const read = answer(exhaustDuctCalculation, entries, rules);
    if (!read.ok) throw new Error('found a problem, expected an answer in words');
    expect(Object.keys(read.value.figures)).toEqual(['verdict']);
    expect(read.value.figures.verdict?.value).toBe(verdict);
    expect(read.value.remarks.map(remarkText).join(' ')).toContain(says);
    expect(read.value.cautions).toContain('caution.air.outdoors');
  });

  test('elbows that use up the length are told', () => {
    const read = answer(
      exhaustDuctCalculation,
      { flow: '80 cfm', size: '4 in', kind: 'flexible', elbows: '1' },
      rules,
    );
    expect(read.ok && read.value.remarks.map(remarkText).join(' ')).toContain('use up all the length');
  });

  /** From none at all to no limit, as one scale; beyond the table’s end nothing is known, which is no more than not allowed. */
  const allowance = ({ allowed, word }: ReturnType<typeof duct>): number =>
    allowed ? amountIn(allowed, 'ft') : word === 'no limit' ? Number.POSITIVE_INFINITY : -1;

  test('is never longer for one elbow, a stronger fan or a narrower duct more, and the same in metric', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 350, noNaN: true }),
        fc.double({ min: 2.5, max: 9, noNaN: true }),
        fc.constantFrom(...ductKinds),
        fc.integer({ min: 0, max: 10 }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (flow, size, kind, elbows, more, wider) => {
          const it = duct(flow, size, kind, elbows);
          const most = allowance(it);
          const metric = exhaustDuct(
            inUnit(quantity(flow, 'cfm'), 'L/s'),
            inUnit(quantity(size, 'in'), 'mm'),
            kind,
            number(elbows),
            rules,
          );
          return (
            (it.allowed === undefined || most >= 0) &&
            allowance(duct(flow, size, kind, elbows + 1)) <= most &&
            allowance(duct(flow + more, size, kind, elbows)) <= most &&
            allowance(duct(flow, size + wider, kind, elbows)) >= most &&
            allowance(metric) === most
          );
        },
      ),
    );
  });
});

test('rooms, ways of running and kinds of duct are those of the rulebook', () => {
  const table = (id: string) => {
    const value = data.rules[id]?.value;
    if (value?.kind !== 'table') throw new Error(`found no table "${id}"`);
    return value;
  };
  const { rows } = table('ventilation.local.exhaust');
  expect(new Set(rows.map(([room]) => room))).toEqual(new Set(roomKinds));
  expect(new Set(rows.map(([, runs]) => runs))).toEqual(new Set(runningWays));
  expect(table('ventilation.duct.length').columns.flatMap(({ key, name }) => (key ? [] : [name]))).toEqual([
    ...ductKinds,
  ]);
});

describe('what is printed of the fresh air', () => {
  const rooms = [
    { name: 'kitchen', room: 'kitchen', flow: '60 cfm', window: 'opens' },
    { room: 'bath' },
    { name: 'small bath', room: 'bath', flow: '20 cfm', runs: 'all the time' },
  ];
  const home = { floor: '924 ft2', bedrooms: '3', rooms };

  test('each figure, and a row a room', () => {
    // 0.03 x 924 + 7.5 x 4 = 57.72. The kitchen lacks 100 - 60 - 20 for its window, the bath all 50, the small bath none of the
    // 20 asked all the time: 70. A quarter is 17.5; 57.72 + 17.5 = 75.22. The factory rule, 0.035 x 924 = 32.34, asks 50 at least.
    // What a fan has to move is rounded up.
    const { figures, tables, remarks } = printed(freshAirCalculation, home);
    expect(figures).toEqual({
      to_install: '75.3 cfm',
      whole_house: '57.8 cfm',
      shortfall: '70 cfm',
      made_up: '17.5 cfm',
      total: '75.3 cfm',
      factory: '50 cfm',
    });
    expect(tables.rooms).toEqual([
      'kitchen | 100 cfm | on demand | 60 cfm | opens | 20 cfm | 100 cfm',
      'bath 2 | 50 cfm | on demand | none | none that opens | 50 cfm | 50 cfm',
      'small bath | 20 cfm | all the time | 20 cfm | none that opens | 0 cfm | 50 cfm',
    ]);
    expect(remarks).toEqual([
      expect.stringMatching('asked less than the standard asks now'),
      expect.stringMatching('a fan that does what is asked in each room'),
      expect.stringMatching('100 cfm is the rate of a hood over the range'),
    ]);
  });

  test('a shortfall is printed to three figures, upwards', () => {
    const [row] =
      printed(freshAirCalculation, {
        ...home,
        rooms: [{ room: 'bath', flow: '37.654 cfm' }],
      }).tables.rooms ?? [];
    // 50 - 37.654 = 12.346.
    expect(row).toBe('bath 1 | 50 cfm | on demand | 37.65 cfm | none that opens | 12.4 cfm | 50 cfm');
  });

  test('without rooms nothing is said of them', () => {
    const { figures, tables, cautions, remarks } = printed(freshAirCalculation, { ...home, rooms: [] });
    expect(figures).toEqual({ to_install: '57.8 cfm', whole_house: '57.8 cfm', factory: '50 cfm' });
    expect(tables).toEqual({});
    expect(cautions).toEqual(['caution.air.outdoors', 'caution.air.backdraft', 'caution.air.adopted']);
    expect(remarks).toHaveLength(1);
  });

  /** 0.03 a square foot and 7.5 a person against 0.035 and no less than 50: by hand. */
  const compared: readonly [
    what: string,
    more: Readonly<Record<string, unknown>>,
    says: readonly string[],
  ][] = [
    [
      '320 ft2 without bedrooms need 24.6 cfm',
      { floor: '320 ft2', bedrooms: '0', rooms: [] },
      ['asked no less'],
    ],
    ['500 ft2 with 3 bedrooms need 45 cfm', { floor: '500 ft2', rooms: [] }, ['asked no less']],
    // 0.03 x 2000/3 is 20, and 7.5 x 4 is 30.
    ['a rate alike is no less', { floor: '666.6666666666666 ft2', rooms: [] }, ['asked no less']],
    [
      'a fan that does more than all of it leaves nothing to add',
      { rooms: [], existing: '60 cfm' },
      ['asked less', 'nothing is to be added'],
    ],
    [
      'rooms that lack nothing have no other way',
      { rooms: [{ room: 'bath', flow: '50 cfm' }] },
      ['asked less'],
    ],
    [
      'one room of two that lacks some has it',
      { rooms: [{ room: 'bath', flow: '50 cfm' }, { room: 'bath' }] },
      ['asked less', 'the other way'],
    ],
    [
      'a kitchen fan that runs all the time is held against the rate on demand, and its name is told',
      { rooms: [{ room: 'kitchen', name: 'galley', flow: '100 cfm', runs: 'all the time' }] },
      [
        'asked less',
        'the rate of a hood over the range',
        'fan of the galley that runs all the time: it is compared with 100 cfm',
      ],
    ],
  ];
  test.each(compared)('%s', (_, more, says) => {
    expect(printed(freshAirCalculation, { ...home, ...more }).remarks).toEqual(
      says.map((words) => expect.stringMatching(new RegExp(words, 'i'))),
    );
  });

  test('a fan that is there is named in what is still to install: 57.72 - 50.5 = 7.22 cfm', () => {
    const { figures, labels } = printed(freshAirCalculation, { ...home, rooms: [], existing: '50.5 cfm' });
    expect(figures.to_install).toBe('7.22 cfm');
    expect(labels.to_install).toMatch(/^Still to install/);
  });

  test('the working of a room carries its number', () => {
    const { rooms: found } = freshAir(
      {
        floor: ft2(924),
        bedrooms: number(3),
        rooms: [1, 2].map((at) => ({
          name: `bath ${at}`,
          room: 'bath',
          flow: undefined,
          runs: 'on demand',
          windowOpens: false,
        })),
        existing: undefined,
      },
      rules,
    );
    expect(found.map(({ shortfall }) => shortfall.symbol)).toEqual(['qs1', 'qs2']);
  });
});

describe('what is said of an exhaust duct', () => {
  const duct = (more: Readonly<Record<string, unknown>>) =>
    printed(exhaustDuctCalculation, { flow: '80 cfm', size: '4 in', kind: 'smooth', elbows: '1', ...more });

  test('nothing where it may have a length', () => {
    expect(duct({}).remarks).toEqual([]);
  });
  test.each([
    [
      'a size between two rows',
      { size: '4.5 in', elbows: '0' },
      /^The row for 4 in duct answers for 4\.5 in duct/,
    ],
    [
      'a size wider than the last row',
      { size: '10 in', flow: '300 cfm' },
      /^The row for 8 in duct answers for 10 in/,
    ],
  ])('%s is told which row it takes', (_, more, says) => {
    expect(duct(more).remarks).toEqual([expect.stringMatching(says)]);
  });
  test('elbows that use up all of it are told', () => {
    expect(duct({ elbows: '20' })).toMatchObject({
      figures: { allowed: '0 ft' },
      remarks: [expect.stringMatching('use up all the length')],
    });
  });
  test.each([
    ['more elbows than a run of duct has', { elbows: '21' }],
    ['a duct wider than two feet', { size: '25 in' }],
  ])('%s are refused', (_, more) => {
    expect(
      complaints(exhaustDuctCalculation, {
        flow: '80 cfm',
        size: '4 in',
        kind: 'smooth',
        elbows: '1',
        ...more,
      }),
    ).toHaveLength(1);
  });
});
