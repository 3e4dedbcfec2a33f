import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { trappedAirLoad } from '../../../src/calc/machine/pressure/declaration.ts';
import { trappedAir } from '../../../src/calc/machine/pressure/trapped-air.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, figure, rules, within, worked } from '../told.ts';

const ceiling: Entries = {
  board: 'gypsum 1/2 in',
  framing: '16 in',
  pressure: '0.1 in w.c.',
  insulation: '1.6 lb/ft2',
};

/** The published rows: half-inch board 2.2 to 16 in and 1.3 to 24 in, five-eighths 2.2 to 24 in. */
const limitOf = (board: string, framing: number): number | undefined =>
  board === 'gypsum 1/2 in' && framing <= 16
    ? 2.2
    : board === 'gypsum 1/2 in' && framing <= 24
      ? 1.3
      : board === 'gypsum 5/8 in' && framing <= 24
        ? 2.2
        : undefined;

const anyBoard = fc.constantFrom('gypsum 1/2 in', 'gypsum 5/8 in', 'gypsum 3/8 in', 'wood-fibre panel');
const run = (board: string, framing: number, pascals: number, pounds: number) =>
  trappedAir(board, quantity(framing, 'in'), quantity(pascals, 'Pa'), quantity(pounds, 'lb/ft2'), rules);

/** A pound-force over a square foot in pascals, from the definitions of pound, gravity and foot. */
const PASCALS = (0.45359237 * 9.80665) / 0.3048 ** 2;

describe('air and insulation on a ceiling', () => {
  test('are held together against the published limit, and without one are never said to be carried', () => {
    fc.assert(
      fc.property(
        anyBoard,
        fc.integer({ min: 12, max: 30 }),
        fc.integer({ min: 0, max: 2000 }),
        fc.integer({ min: 0, max: 300 }),
        (board, framing, tenths, hundredths) => {
          const [pascals, pounds] = [tenths / 10, hundredths / 100];
          const found = run(board, framing, pascals, pounds);
          const total = pascals / PASCALS + pounds;
          const limit = limitOf(board, framing);
          expect(within(1e-9, amountIn(found.air, 'lb/ft2'), pascals / PASCALS)).toBe(true);
          expect(within(1e-9, amountIn(found.total, 'lb/ft2'), total)).toBe(true);
          expect(found.limit && amountIn(found.limit, 'lb/ft2')).toBe(limit);
          if (limit === undefined) {
            expect([found.verdict, found.highestPressure]).toEqual(['unrated', undefined]);
            expect(found.cautions[0]).toBe('caution.ceiling.unrated');
          } else if (Math.abs(total - limit) > 1e-6)
            expect(found.verdict).toBe(total < limit ? 'carries it' : 'does not carry it');
          expect(found.cautions).toContain('caution.ceiling.trapped-air');
        },
      ),
    );
  });

  test('more pressure, more insulation or wider framing never turn a ceiling that does not carry it into one that does', () => {
    const amounts = fc.integer({ min: 0, max: 1000 });
    fc.assert(
      fc.property(
        fc.constantFrom('gypsum 1/2 in', 'gypsum 5/8 in'),
        amounts,
        amounts,
        amounts,
        (board, a, b, more) => {
          const carries = (framing: number, pascals: number, pounds: number) =>
            run(board, framing, pascals, pounds / 400).verdict === 'carries it';
          if (carries(16, a, b)) return;
          expect(carries(16, a + more, b)).toBe(false);
          expect(carries(16, a, b + more)).toBe(false);
          expect(carries(24, a, b)).toBe(false);
        },
      ),
    );
  });

  test('the highest pressure that passes does pass, and a thousandth more does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 129 }), (hundredths) => {
        const most = run('gypsum 1/2 in', 24, 0, hundredths / 100).highestPressure;
        if (!most) throw new Error('found no pressure, expected one');
        const at = amountIn(most, 'Pa');
        expect(run('gypsum 1/2 in', 24, at, hundredths / 100).verdict).toBe('carries it');
        expect(run('gypsum 1/2 in', 24, at * 1.001, hundredths / 100).verdict).toBe('does not carry it');
      }),
    );
  });

  /** Water weighs 62.426 lb/ft3 at 39 F, so an inch of it over a square foot 62.426/12 = 5.2022 lb. */
  test('an inch of water is the weight of an inch of water', () => {
    const pounds = figure(trappedAirLoad, { ...ceiling, pressure: '1 in w.c.' }, 'air', 'lb/ft2');
    expect(Math.abs(pounds - 62.426 / 12)).toBeLessThan(2e-4);
  });

  test('grave is told by what is to blame: the machine, or the insulation by itself', () => {
    const first = (more: Entries) => worked(trappedAirLoad, { ...ceiling, ...more }).cautions[0];
    expect(first({})).toBe('caution.ceiling.sound-first');
    expect(first({ pressure: '1 in w.c.' })).toBe('caution.machine.pressed');
    expect(first({ insulation: '2.3 lb/ft2' })).toBe('caution.ceiling.overloaded');
    expect(
      worked(trappedAirLoad, { ...ceiling, insulation: '2.3 lb/ft2' }).figures.highest_pressure,
    ).toBeUndefined();
  });
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  [
    'no pressure',
    { pressure: '' },
    /^Pressure under the roof \(pressure\): found nothing; expected text with a unit/,
  ],
  [
    'a pressure below nought',
    { pressure: '-1 Pa' },
    /^Pressure under the roof \(pressure\): found "-1 Pa"; expected an amount above 0/,
  ],
  [
    'a pressure of a boiler',
    { pressure: '201 in w.c.' },
    /^Pressure under the roof \(pressure\): found "201 in w\.c\."; expected 200 in w\.c\. at most: this entry takes no more\.$/,
  ],
  [
    'insulation in inches',
    { insulation: '10 in' },
    /^Weight of all insulation at the deepest place \(insulation\): found "10 in" \(length\)/,
  ],
  ['a board that there is not', { board: 'plaster' }, /\(board\): found "plaster"; expected one of: /],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(trappedAirLoad, { ...ceiling, ...more })).toEqual([expect.stringMatching(says)]);
  });
});
