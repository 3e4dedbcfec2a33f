import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heat } from '../../../src/calc/crew/heat/declaration.ts';
import { complaints, type Entries, figure, within, worked } from '../told.ts';

const bands = ['caution', 'moderate', 'high', 'very high'];
const at = (index: string, place = 'in the shade') => worked(heat, { index, place });
const band = (index: string, place?: string) => String(at(index, place).figures.band?.value);

/** The guide's table by its words: under 91, 91 to 103, 103 to 115, above 115; on a border the graver, but for the last. */
const byTheTable = (felt: number): string =>
  felt < 91 ? 'caution' : felt < 103 ? 'moderate' : felt <= 115 ? 'high' : 'very high';

const tenths = fc.integer({ min: -300, max: 1600 });

describe('the band of a heat index', () => {
  test('follows the guide’s table in the shade, and 15 F higher in full sun', () => {
    fc.assert(
      fc.property(tenths, (of) => {
        expect(band(`${of / 10} F`)).toBe(byTheTable(of / 10));
        expect(band(`${of / 10} F`, 'in full sun')).toBe(byTheTable(of / 10 + 15));
      }),
    );
  });

  test('never falls as it gets warmer, nor in the sun', () => {
    fc.assert(
      fc.property(tenths, fc.integer({ min: 0, max: 300 }), (of, more) => {
        const place = (index: number, where?: string) => bands.indexOf(band(`${index / 10} F`, where));
        const warmer = Math.min(1600, of + more);
        expect(place(warmer)).toBeGreaterThanOrEqual(place(of));
        expect(place(of, 'in full sun')).toBeGreaterThanOrEqual(place(of));
      }),
    );
  });

  test('as far as to the next is as far as it takes to get there, but for the last band', () => {
    fc.assert(
      fc.property(tenths, (of) => {
        const now = band(`${of / 10} F`);
        if (now === 'very high') {
          expect(at(`${of / 10} F`).figures.to_next).toBeUndefined();
          return;
        }
        const more = figure(
          heat,
          { index: `${of / 10} F`, place: 'in the shade' },
          'to_next',
          'F difference',
        );
        expect(more).toBeGreaterThanOrEqual(0);
        expect(band(`${(of / 10 + more + 1e-6).toFixed(7)} F`)).toBe(bands[bands.indexOf(now) + 1]);
        if (more > 1e-4) expect(band(`${(of / 10 + more - 1e-4).toFixed(7)} F`)).toBe(now);
      }),
    );
  });

  /** C = (F − 32) · 5/9. */
  test.each([
    ['91 F', '32.77777777777778 C', 'moderate'],
    ['103 F', '39.44444444444444 C', 'high'],
    ['115 F', '46.11111111111111 C', 'high'],
    ['115.1 F', '46.16666666666667 C', 'very high'],
  ])('%s and %s are both %s', (fahrenheit, celsius, expected) => {
    expect([band(fahrenheit), band(celsius)]).toEqual([expected, expected]);
  });

  test('what is felt is told in Fahrenheit, with the sun in it', () => {
    expect(within(1e-9, figure(heat, { index: '30 C', place: 'in full sun' }, 'felt', 'F'), 86 + 15)).toBe(
      true,
    );
  });

  test('every band has its cautions, the graver ones those of the milder too', () => {
    const cautions = ['80 F', '95 F', '110 F', '120 F'].map((index) => at(index).cautions);
    expect(cautions.map(([first]) => first)).toEqual([
      'caution.heat.basic',
      'caution.heat.sick',
      'caution.heat.sick',
      'caution.heat.very-high',
    ]);
    for (const place of [1, 2])
      expect(cautions[place + 1]).toEqual(expect.arrayContaining([...(cautions[place] ?? [])]));
  });
});

const bad: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'no index',
    { place: 'in the shade' },
    /^Heat index \(index\): found nothing; expected text with a unit, such as "88 F"\.$/,
  ],
  [
    'an oven',
    { index: '161 F', place: 'in the shade' },
    /^Heat index \(index\): found "161 F"; expected 160 °F at most: this entry takes no more\.$/,
  ],
  [
    'a difference of temperatures',
    { index: '20 K', place: 'in the shade' },
    /^Heat index \(index\): found "20 K" \(temperature\)/,
  ],
  [
    'a place that there is not',
    { index: '88 F', place: 'indoors' },
    /\(place\): found "indoors"; expected one of: in full sun; in the shade\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, entries, says) => {
    expect(complaints(heat, entries)).toEqual([expect.stringMatching(says)]);
  });
});
