import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { boxVolume, testBox } from '../../../src/calc/machine/test-box/box.ts';
import { testBoxCheck } from '../../../src/calc/machine/test-box/declaration.ts';
import { amountIn, QuantityError, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, rules, within, worked } from '../told.ts';

const box: Entries = {
  length: '24 in',
  width: '24 in',
  height: '12 in',
  fills: [
    { gross: '16.1 lb', tare: '10 lb' },
    { gross: '15.8 lb', tare: '10 lb' },
    { gross: '16.4 lb', tare: '10 lb' },
  ],
  target: '1.5 lb/ft3',
};

const NEAR = amountIn(rules.value('fill.bag.near-enough'), '1');
const ASKED_FOR = rules.value('fill.test-box.fills').amount;
const weights = fc.array(fc.integer({ min: 1, max: 4000 }), { minLength: 1, maxLength: 12 });

const run = (hundredths: readonly number[], cubicFeet: number, target: number, allowed?: number) =>
  testBox(
    quantity(cubicFeet, 'ft3'),
    hundredths.map((net) => ({ gross: quantity(10 + net / 100, 'lb'), tare: quantity(10, 'lb') })),
    quantity(target, 'lb/ft3'),
    allowed === undefined ? undefined : quantity(allowed, 'percent'),
    rules,
  );

describe('a box that is filled and weighed', () => {
  test('has a weight and a density of each fill, by its number', () => {
    // 600 and 500 hundredths of a pound in 4 ft3.
    const { fills } = run([600, 500], 4, 1.5);
    expect(fills.map(({ net, density }) => [net, density].map((q) => [q.symbol, q.label, q.amount]))).toEqual(
      [
        [
          ['w1', 'Net weight of fill 1', 6],
          ['ρ1', 'Density of fill 1', 1.5],
        ],
        [
          ['w2', 'Net weight of fill 2', 5],
          ['ρ2', 'Density of fill 2', 1.25],
        ],
      ],
    );
  });

  test('gives the mean, the ends and the deviation of its densities, worked by sums of squares', () => {
    fc.assert(
      fc.property(weights, fc.integer({ min: 1, max: 40 }), (nets, cubic) => {
        const found = run(nets, cubic, 1.5);
        const n = nets.length;
        const sum = nets.reduce((a, b) => a + b, 0) / 100 / cubic;
        const squares = nets.reduce((a, b) => a + (b / 100 / cubic) ** 2, 0);
        expect(within(1e-9, found.mean.amount, sum / n)).toBe(true);
        expect(within(1e-9, found.lowest.amount, Math.min(...nets) / 100 / cubic)).toBe(true);
        expect(within(1e-9, found.highest.amount, Math.max(...nets) / 100 / cubic)).toBe(true);
        expect(found.deviation === undefined).toBe(n === 1);
        // The sums of squares lose figures to cancelling where the fills are alike, so variances are held, not their roots.
        if (found.deviation)
          expect(within(1e-9, found.deviation.amount ** 2, (squares - (sum * sum) / n) / (n - 1))).toBe(true);
        if (found.spread)
          expect(
            within(
              1e-9,
              amountIn(found.spread, '1'),
              (Math.max(...nets) - Math.min(...nets)) / (nets.reduce((a, b) => a + b, 0) / n),
            ),
          ).toBe(true);
      }),
    );
  });

  test('is light, on target or heavy by the usual share either way, and each fill by itself', () => {
    fc.assert(
      fc.property(
        weights,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 20, max: 400 }),
        (nets, cubic, hundredths) => {
          const target = hundredths / 100;
          const judged = (net: number) => {
            const off = net / 100 / cubic / target - 1;
            return Math.abs(Math.abs(off) - NEAR) < 1e-7
              ? undefined
              : off < -NEAR
                ? 'light'
                : off > NEAR
                  ? 'heavy'
                  : 'on target';
          };
          const mean = nets.reduce((a, b) => a + b, 0) / nets.length;
          const expected = judged(mean);
          const found = run(nets, cubic, target);
          if (expected && expected !== 'on target') expect(found.verdict).toBe(expected);
          if (expected === 'on target') expect(found.verdict).toMatch(/^on target/);
          expect(within(1e-9, amountIn(found.departure, '1'), mean / 100 / cubic / target - 1)).toBe(true);
          const each = nets.map(judged);
          if (each.includes(undefined)) return;
          const off = each.filter((word) => word !== 'on target').length;
          expect(found.offTarget).toBe(off);
          if (expected === 'on target')
            expect(found.verdict).toBe(
              off > 0
                ? 'on target in the mean, but uneven'
                : nets.length < ASKED_FOR
                  ? 'on target so far, by too few fills'
                  : 'on target',
            );
        },
      ),
    );
  });

  test('never turns lighter as more is weighed in it, nor heavier as more is wanted', () => {
    const order = [/^light/, /^on target/, /^heavy/];
    fc.assert(
      fc.property(
        weights,
        fc.integer({ min: 0, max: 500 }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (nets, more, times) => {
          const place = (of: readonly number[], target: number) =>
            order.findIndex((aim) => aim.test(run(of, 4, target).verdict));
          expect(
            place(
              nets.map((net) => net + more),
              1.5,
            ),
          ).toBeGreaterThanOrEqual(place(nets, 1.5));
          expect(place(nets, 1.5 * times)).toBeLessThanOrEqual(place(nets, 1.5));
        },
      ),
    );
  });

  /** By hand: 6 lb and 6.6 lb in 4 ft3 are 1.5 and 1.65, a spread of 0.15/1.575 = 9.5238 %. */
  test.each([
    [9.6, false],
    [9.5, true],
  ])('a spread of 9.52 %% where %d %% is allowed is uneven: %s', (allowed, uneven) => {
    expect(run([600, 660, 630], 4, 1.5, allowed).cautions.includes('caution.machine.uneven')).toBe(uneven);
  });

  test('fewer than three fills are cautioned of, three are not', () => {
    expect(run([600, 610], 4, 1.5).cautions).toContain('caution.machine.few-fills');
    expect(run([600, 610, 605], 4, 1.5).cautions).not.toContain('caution.machine.few-fills');
    expect(
      worked(testBoxCheck, { ...box, fills: [{ gross: '16 lb', tare: '10 lb' }] }).remarks.map(remarkText),
    ).toEqual([
      'One fill has no spread: fill and weigh the box again.',
      'Of the 3 fills that are asked for, one was weighed.',
    ]);
  });

  test('light and heavy have cautions of their own, and the maker’s word stands with all', () => {
    expect(run([500, 500, 500], 4, 1.5).cautions).toEqual([
      'caution.machine.light',
      'caution.fill.maker-governs',
    ]);
    expect(run([700, 700, 700], 4, 1.5).cautions).toEqual([
      'caution.machine.heavy',
      'caution.fill.maker-governs',
    ]);
    expect(run([600, 600, 600], 4, 1.5).cautions).toEqual(['caution.fill.maker-governs']);
  });

  test('has a volume, in whatever units: 50 x 40 x 30 cm are 60 litres, 2.118880003289315 ft3', () => {
    const volume = boxVolume(quantity(50, 'cm'), quantity(400, 'mm'), quantity(0.3, 'm'));
    expect(amountIn(volume, 'm3')).toBeCloseTo(0.06, 15);
    expect(amountIn(volume, 'ft3')).toBeCloseTo(2.118880003289315, 12);
  });

  test('that weighs nothing is refused by the work itself', () => {
    expect(() => run([0], 4, 1.5)).toThrow(QuantityError);
    expect(() => run([], 4, 1.5)).toThrow(QuantityError);
  });

  test('tells the scales’ own tare apart: a tare of nought is the net weight itself', () => {
    const net = { ...box, fills: [{ gross: '6 lb', tare: '0 lb' }] };
    expect(figure(testBoxCheck, net, 'mean', 'lb/ft3')).toBeCloseTo(1.5, 12);
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  [
    'no fill',
    { fills: [] },
    /^Fills \(fills\): found no fill; expected one or more, each with its gross and tare weight\.$/,
  ],
  [
    'a box heavier than the box and its fill',
    {
      fills: [
        { gross: '10 lb', tare: '9 lb' },
        { gross: '10 lb', tare: '11 lb' },
      ],
    },
    /^Tare weight \(fill 2\) \(fills\.1\.tare\): found 11 lb beside a gross weight of 10 lb; expected a tare below the gross weight\.$/,
  ],
  [
    'a fill that weighs nothing',
    { fills: [{ gross: '10 lb', tare: '10 lb' }] },
    /^Tare weight \(fill 1\) \(fills\.0\.tare\): found 10 lb beside a gross weight of 10 lb; expected a tare below/,
  ],
  [
    'a fill without its tare',
    { fills: [{ gross: '10 lb' }] },
    /^Tare weight \(fill 1\) \(fills\.0\.tare\): found nothing; expected text with a unit, such as "10 lb"\.$/,
  ],
  [
    'more fills than a day has',
    { fills: Array(31).fill({ gross: '2 lb', tare: '1 lb' }) },
    /^Fills \(fills\): found 31 entries; expected 30 at most\.$/,
  ],
  [
    'a box without height',
    { height: '0 in' },
    /^Inside height of the box \(height\): found "0 in"; expected more than 0/,
  ],
  [
    'a target in pounds',
    { target: '1.5 lb' },
    /^Target density \(target\): found "1\.5 lb" \(weight\); expected a density such as 1\.5 lb\/ft³\.$/,
  ],
  [
    'a spread above the whole',
    { allowed_spread: '101 %' },
    /^Spread you allow \(allowed_spread\): found "101 %"; expected 100 % at most: this entry takes no more\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(testBoxCheck, { ...box, ...more })).toEqual([expect.stringMatching(says)]);
  });
});
