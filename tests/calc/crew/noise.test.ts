import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noise } from '../../../src/calc/crew/noise/declaration.ts';
import { allowedTime, noiseDose, timeLeft } from '../../../src/calc/crew/noise/dose.ts';
import { amountIn, number, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, rules, within, worked } from '../told.ts';

/** The formula behind the table, which its rows round down: 8 h at 90 dBA, halved for each 5 dBA. */
const hours = (level: number): number => 8 / 2 ** ((level - 90) / 5);
/** The rows of 29 CFR 1926.52, table D-2. */
const rows: readonly [level: number, hours: number][] = [
  [90, 8],
  [92, 6],
  [95, 4],
  [97, 3],
  [100, 2],
  [102, 1.5],
  [105, 1],
  [110, 0.5],
  [115, 0.25],
];
const allowed = (level: number): number => {
  const found = allowedTime(quantity(level, 'dBA'), rules);
  if (typeof found === 'string') throw new Error(`found ${found} at ${level} dBA, expected a time`);
  return amountIn(found, 'h');
};

describe('the time that a level is allowed', () => {
  test.each(rows)('%d dBA: %d h, and no more than the formula behind the table', (level, time) => {
    expect(allowed(level)).toBe(time);
    expect(time).toBeLessThanOrEqual(hours(level) * (1 + 1e-12));
    // A row rounds the formula down by no more than a part in fifty.
    expect(time).toBeGreaterThan(hours(level) * 0.98);
  });

  test('between two rows is never more than the formula gives, nor less than the next louder row', () => {
    fc.assert(
      fc.property(fc.integer({ min: 9000, max: 11_500 }), (hundredths) => {
        const level = hundredths / 100;
        const louder = rows.find(([row]) => row >= level)?.[1] ?? Number.NaN;
        expect(allowed(level)).toBe(louder);
        expect(allowed(level)).toBeLessThanOrEqual(hours(level) * (1 + 1e-12));
      }),
    );
  });

  test('is any below the table, and none above it', () => {
    for (const level of [0, 89.99]) expect(allowedTime(quantity(level, 'dBA'), rules)).toBe('any');
    for (const level of [115.01, 160]) expect(allowedTime(quantity(level, 'dBA'), rules)).toBe('none');
  });
});

const periods = fc.array(
  fc.record({ level: fc.integer({ min: 60, max: 115 }), minutes: fc.integer({ min: 1, max: 120 }) }),
  {
    minLength: 1,
    maxLength: 8,
  },
);
type Periods = readonly { readonly level: number; readonly minutes: number }[];
const given = (all: Periods) =>
  all.map(({ level, minutes }) => ({ level: quantity(level, 'dBA'), time: quantity(minutes, 'min') }));
const doseOf = (all: Periods): number =>
  amountIn(noiseDose(given(all), rules).dose ?? number(Number.MAX_VALUE), '1');

describe('the dose of a day', () => {
  test('is each time over the time of the first row as loud, all added, and within the limit up to 1', () => {
    fc.assert(
      fc.property(periods, (all) => {
        const expected = all.reduce((sum, { level, minutes }) => {
          const row = level < 90 ? undefined : rows.find(([at]) => at >= level);
          return sum + (row ? minutes / 60 / row[1] : 0);
        }, 0);
        const { verdict } = noiseDose(given(all), rules);
        expect(within(1e-9, doseOf(all), expected)).toBe(true);
        if (Math.abs(expected - 1) > 1e-9)
          expect(verdict).toBe(expected < 1 ? 'within the limit' : 'over the limit');
      }),
    );
  });

  test('is never less than by the formula behind the table', () => {
    fc.assert(
      fc.property(periods, (all) => {
        const formula = all.reduce(
          (sum, { level, minutes }) => sum + (level < 90 ? 0 : minutes / 60 / hours(level)),
          0,
        );
        expect(doseOf(all)).toBeGreaterThanOrEqual(formula * (1 - 1e-9));
      }),
    );
  });

  test('never falls for more time, more noise or another period, and does not mind their order', () => {
    fc.assert(
      fc.property(periods, fc.nat({ max: 7 }), fc.integer({ min: 1, max: 20 }), (all, at, more) => {
        const place = at % all.length;
        const changed = (of: (each: Periods[number]) => Periods[number]) =>
          doseOf(all.map((each, n) => (n === place ? of(each) : each)));
        const plain = doseOf(all);
        expect(changed((each) => ({ ...each, minutes: each.minutes + more }))).toBeGreaterThanOrEqual(
          plain - 1e-12,
        );
        expect(
          changed((each) => ({ ...each, level: Math.min(115, each.level + more) })),
        ).toBeGreaterThanOrEqual(plain - 1e-12);
        expect(doseOf([...all, { level: 90, minutes: more }])).toBeGreaterThan(plain);
        expect(within(1e-12, doseOf([...all].reverse()), plain)).toBe(true);
      }),
    );
  });

  test('is not told where a period is louder than the table goes, however short', () => {
    const found = noiseDose(given([{ level: 116, minutes: 1 }]), rules);
    expect([found.dose, found.verdict, found.cautions[0]]).toEqual([
      undefined,
      'too loud for any time',
      'caution.noise.above-table',
    ]);
  });
});

describe('the time left at a level', () => {
  test('uses up the day exactly', () => {
    fc.assert(
      fc.property(periods, fc.constantFrom(...rows), (all, [level]) => {
        const dose = noiseDose(given(all), rules).dose;
        const left = timeLeft(dose, quantity(level, 'dBA'), rules);
        if (!left) throw new Error('found no time, expected one');
        expect(left.amount).toBeGreaterThanOrEqual(0);
        if (left.amount === 0) {
          expect(doseOf(all)).toBeGreaterThanOrEqual(1 - 1e-9);
          return;
        }
        expect(within(1e-9, doseOf([...all, { level, minutes: amountIn(left, 'min') }]), 1)).toBe(true);
      }),
    );
  });

  test('is none above the table, and does not count below it', () => {
    expect(timeLeft(number(0), quantity(116, 'dBA'), rules)?.amount).toBe(0);
    expect(timeLeft(number(0), quantity(89, 'dBA'), rules)).toBeUndefined();
    expect(timeLeft(undefined, quantity(95, 'dBA'), rules)?.amount).toBe(0);
  });

  test('is told for a day that has no noise in it yet: 2 h at 100 dBA', () => {
    expect(figure(noise, { periods: [], next_level: '100 dBA' }, 'left', 'min')).toBe(120);
    expect(worked(noise, { periods: [], next_level: '89 dBA' }).figures.left?.value).toBe(
      'too quiet to count',
    );
  });

  test('is none above the last row of the table, 115 dBA, and the stop of that row is tripped once, whatever the day had', () => {
    const stops = (level: string, ...periods: Entries[]) =>
      worked(noise, { periods, next_level: level }).cautions.filter(
        (id) => id === 'caution.noise.above-table',
      );
    expect(stops('115 dBA')).toHaveLength(0);
    expect(stops('115.1 dBA')).toHaveLength(1);
    expect(stops('116 dBA', { level: '116 dBA', time: '1 min' })).toHaveLength(1);
  });
});

const one = { level: '95 dBA', time: '2 h' };
const bad: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'nothing at all',
    {},
    /^Times in noise \(periods\): found none; expected one or more, with level and time\.$/,
  ],
  [
    'a day of 25 hours',
    {
      periods: [
        { ...one, time: '12 h' },
        { ...one, time: '13 h' },
      ],
    },
    /^Times in noise \(periods\): found 25 h in all; expected no more than the hours of one day\.$/,
  ],
  [
    'a time without a level',
    { periods: [{ time: '2 h' }] },
    /^Level \(time in noise 1\) \(periods\.0\.level\): found nothing; expected text with a unit/,
  ],
  [
    'a level without a time',
    { periods: [one, { level: '95 dBA' }] },
    /^Time \(time in noise 2\) \(periods\.1\.time\): found nothing; expected text with a unit/,
  ],
  [
    'a rocket',
    { periods: [{ ...one, level: '161 dBA' }] },
    /^Level \(time in noise 1\) \(periods\.0\.level\): found "161 dBA"; expected 160 dBA at most: this entry takes no more\.$/,
  ],
  [
    'a level in hours',
    { periods: [{ ...one, level: '2 h' }] },
    /^Level \(time in noise 1\) \(periods\.0\.level\): found "2 h" \(time\)/,
  ],
  [
    'more periods than a day has',
    { periods: Array(31).fill({ ...one, time: '1 min' }) },
    /^Times in noise \(periods\): found 31 entries; expected 30 at most\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, entries, says) => {
    expect(complaints(noise, entries)).toEqual([expect.stringMatching(says)]);
  });
});

test('a day of 3 and 21 hours is a day, though floating arithmetic makes it a hair longer', () => {
  const whole = [
    { level: '80 dBA', time: '3 h' },
    { level: '80 dBA', time: '1260 min' },
  ];
  expect(complaints(noise, { periods: whole })).toEqual([]);
});
