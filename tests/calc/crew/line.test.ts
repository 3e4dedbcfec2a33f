import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { line } from '../../../src/calc/crew/line/declaration.ts';
import { complaints, type Entries, figure, within, worked } from '../told.ts';

const inches = (kilovolts: number, name: string): number =>
  figure(line, { voltage: `${kilovolts} kV` }, name, 'in');

describe('the distance from a line', () => {
  test('is 10 ft to 50 kV, and 4 in more for each 10 kV above, a part adding its part', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12_000 }), (tenths) => {
        const kilovolts = tenths / 10;
        const expected = 120 + (kilovolts > 50 ? ((kilovolts - 50) / 10) * 4 : 0);
        expect(within(1e-9, inches(kilovolts, 'clearance'), expected)).toBe(true);
        const keep = inches(kilovolts, 'keep');
        expect(keep).toBe(Math.round(keep));
        expect(keep).toBeGreaterThanOrEqual(expected - 1e-6);
        expect(keep).toBeLessThan(expected + 1);
      }),
    );
  });

  test('never falls as the voltage rises', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6000 }), fc.integer({ min: 1, max: 6000 }), (a, more) => {
        for (const name of ['keep', 'clearance'])
          expect(inches((a + more) / 10, name)).toBeGreaterThanOrEqual(inches(a / 10, name));
      }),
    );
  });

  /**
   * 69 kV asks for 120 + 1.9 x 4 = 127.6 in, so 128 in are kept, which is 325.12 cm; 60.5 kV for 120 + 1.05 x 4 = 124.2 in, so 125 in, which is
   * 10 ft 5 in. The plan is held against what is kept: the crew is told no other distance.
   */
  test.each([
    ['69 kV', '127.5 in', 'too near'],
    ['69 kV', '127.6 in', 'too near'],
    ['69 kV', '128 in', 'far enough'],
    ['69 kV', '325.12 cm', 'far enough'],
    ['69 kV', '0 in', 'too near'],
    ['60.5 kV', '10 ft 4 1/4 in', 'too near'],
    ['60.5 kV', '10 ft 5 in', 'far enough'],
  ])('from a line of %s %s is %s', (voltage, gap, verdict) => {
    const { figures, cautions } = worked(line, { voltage, gap });
    expect(figures.verdict?.value).toBe(verdict);
    expect(cautions[0] === 'caution.line.too-near').toBe(verdict === 'too near');
  });

  test('of no known voltage is not guessed, however far', () => {
    for (const entries of [{}, { gap: '400 ft' }]) {
      const { figures, cautions } = worked(line, entries);
      expect(Object.keys(figures)).toEqual(['keep']);
      expect(figures.keep?.value).toBe('not known: ask the power company');
      expect(cautions[0]).toBe('caution.line.unknown');
    }
  });
});

const bad: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'no voltage at all',
    { voltage: '0 kV' },
    /^Voltage of the line \(voltage\): found "0 kV"; expected more than 0/,
  ],
  [
    'lightning',
    { voltage: '1201 kV' },
    /^Voltage of the line \(voltage\): found "1201 kV"; expected 1200 kV at most: this entry takes no more\.$/,
  ],
  ['a voltage in feet', { voltage: '69 ft' }, /^Voltage of the line \(voltage\): found "69 ft" \(length\)/],
  [
    'a gap below nought',
    { voltage: '69 kV', gap: '-1 ft' },
    /^Nearest that anything comes to it \(gap\): found "-1 ft"; expected an amount above 0/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, entries, says) => {
    expect(complaints(line, entries)).toEqual([expect.stringMatching(says)]);
  });
});
