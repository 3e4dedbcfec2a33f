import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blowingRate } from '../../../src/calc/machine/rate/declaration.ts';
import { drawBack, minutesFor, rateOf } from '../../../src/calc/machine/rate/draw-back.ts';
import { amountIn, QuantityError, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, printed, within, worked } from '../told.ts';

const run: Entries = { rate: '12 lb/min', density: '1.5 lb/ft3', area: '2 ft2' };

const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('drawing the hose back', () => {
  test('lays the density: what is blown while the hose passes a length fills that length', () => {
    fc.assert(
      fc.property(
        amount(0.1, 200),
        amount(0.1, 8),
        amount(0.05, 200),
        amount(0.1, 100),
        (rate, density, area, feet) => {
          const { speed, timePerFoot, perLength } = drawBack(
            quantity(rate, 'lb/min'),
            quantity(density, 'lb/ft3'),
            quantity(area, 'ft2'),
          );
          const minutes = feet / amountIn(speed, 'ft/min');
          expect(within(1e-9, rate * minutes, density * area * feet)).toBe(true);
          expect(within(1e-9, amountIn(timePerFoot, 'min') * feet, minutes)).toBe(true);
          expect(within(1e-9, amountIn(perLength, 'lb/ft') * feet, density * area * feet)).toBe(true);
        },
      ),
    );
  });

  test('is never faster for more density or a larger section, nor slower for a faster machine', () => {
    fc.assert(
      fc.property(
        amount(0.1, 200),
        amount(0.1, 8),
        amount(0.05, 200),
        amount(1, 3),
        (rate, density, area, times) => {
          const speed = (r: number, d: number, a: number) =>
            drawBack(quantity(r, 'lb/min'), quantity(d, 'lb/ft3'), quantity(a, 'ft2')).speed.amount;
          const plain = speed(rate, density, area);
          expect(plain).toBeGreaterThan(0);
          expect(speed(rate, density * times, area)).toBeLessThanOrEqual(plain * (1 + 1e-12));
          expect(speed(rate, density, area * times)).toBeLessThanOrEqual(plain * (1 + 1e-12));
          expect(speed(rate * times, density, area)).toBeGreaterThanOrEqual(plain * (1 - 1e-12));
        },
      ),
    );
  });

  test('a weighed run gives the rate that it had: rate times its time is its weight, and back', () => {
    fc.assert(
      fc.property(amount(0.1, 5000), amount(0.01, 1440), (pounds, minutes) => {
        const rate = rateOf(quantity(pounds, 'lb'), quantity(minutes, 'min'));
        expect(within(1e-9, amountIn(rate, 'lb/min') * minutes, pounds)).toBe(true);
        expect(within(1e-9, amountIn(minutesFor(quantity(pounds, 'lb'), rate), 'min'), minutes)).toBe(true);
      }),
    );
  });

  test('an opening by its volume and by the bags of that volume takes the same time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (quarters) => {
        // Bags of 30 lb at 1.5 lb/ft3: 20 ft3 each.
        const byBags = { ...run, bags: `${quarters / 4} bags`, bag_weight: '30 lb/bag' };
        const byVolume = { ...run, volume: `${quarters * 5} ft3` };
        const time = (entries: Entries) => figure(blowingRate, entries, 'opening_time', 'min');
        expect(within(1e-9, time(byBags), time(byVolume))).toBe(true);
        expect(within(1e-9, time(byVolume), (quarters * 5 * 1.5) / 12)).toBe(true);
      }),
    );
  });

  test('what is not told has no time', () => {
    expect(Object.keys(worked(blowingRate, run).figures)).toEqual([
      'speed',
      'time_per_foot',
      'per_length',
      'rate',
    ]);
    expect(
      Object.keys(worked(blowingRate, { ...run, all_bags: '12 bags', bag_weight: '30 lb/bag' }).figures),
    ).toContain('total_time');
  });

  test('with nothing blown or nothing to fill there is no speed', () => {
    for (const [rate, density, area] of [
      [0, 1, 1],
      [1, 0, 1],
      [1, 1, 0],
    ] as const)
      expect(() =>
        drawBack(quantity(rate, 'lb/min'), quantity(density, 'lb/ft3'), quantity(area, 'ft2')),
      ).toThrow(QuantityError);
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  [
    'no rate at all',
    { rate: '' },
    /^Rate of the machine \(rate\): found neither a rate nor a weighed run; expected the rate alone, or the weight and the time of a run\.$/,
  ],
  [
    'half of a weighed run',
    { rate: '', weight: '30 lb' },
    /^Rate of the machine \(rate\): found half of a weighed run; expected/,
  ],
  [
    'a rate beside a weighed run',
    { weight: '30 lb', time: '2 min' },
    /^Rate of the machine \(rate\): found a rate beside a weighed run; expected/,
  ],
  [
    'a rate beside half of one',
    { time: '2 min' },
    /^Rate of the machine \(rate\): found a rate beside a weighed run; expected/,
  ],
  [
    'bags beside a volume',
    { volume: '40 ft3', bags: '2 bags', bag_weight: '30 lb/bag' },
    /^Bags of the opening \(bags\): found bags beside the volume of the opening; expected one of the two\.$/,
  ],
  [
    'bags of no known weight',
    { bags: '2 bags' },
    /^Net weight of a bag \(bag_weight\): found nothing, though bags are given; expected the weight from the bag label, such as 30 lb\/bag\.$/,
  ],
  [
    'all bags of no known weight',
    { all_bags: '2 bags' },
    /^Net weight of a bag \(bag_weight\): found nothing, though bags are given/,
  ],
  [
    'a section of no size',
    { area: '0 ft2' },
    /^Cross-section that the hose fills \(area\): found "0 ft2"; expected more than 0/,
  ],
  ['a rate that is a weight', { rate: '12 lb' }, /^Rate of the machine \(rate\): found "12 lb" \(weight\)/],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(blowingRate, { ...run, ...more })).toEqual([expect.stringMatching(says)]);
  });
});

describe('the table of openings', () => {
  test('gives each its minutes and its speed; where no hose is entered, the cross-section holds', () => {
    const { tables } = printed(blowingRate, {
      ...run,
      openings: [{ what: 'by the hall', volume: '60 ft3', pushed: '20 ft' }, { volume: '40 ft3' }],
    });
    // By hand: 60 ft3 at 1.5 is 90 lb, 7.5 min at 12; 20 ft in 7.5 min is 2.67 ft/min, 22.5 s a foot. 40 ft3 is 60 lb, 5 min; 12 / (1.5 x 2) is 4.
    expect(tables.openings).toEqual([
      'by the hall | 60 ft³ | 7.5 min | 2.67 ft/min | 22.5 s',
      '2 | 40 ft³ | 5 min | 4 ft/min | 15 s',
    ]);
  });

  test('stands only where an opening is entered', () => {
    expect(printed(blowingRate, run).tables).toEqual({});
  });
});
