import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ladder } from '../../../src/calc/crew/ladder/declaration.ts';
import { complaints, type Entries, figure, within, worked } from '../told.ts';

/** Heights in hundredths of a foot, to the most that the field takes. */
const heights = fc.integer({ min: 10, max: 6000 }).map((hundredths) => hundredths / 100);
/** The angle whose cosine is a quarter, by halving: no arc cosine is asked. */
const ANGLE = (() => {
  let [low, high] = [0, 90];
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (Math.cos((middle * Math.PI) / 180) > 0.25) low = middle;
    else high = middle;
  }
  return low;
})();
const feet = (entries: Entries, name: string): number => figure(ladder, entries, name, 'ft');

describe('a ladder that leans', () => {
  test('makes a right triangle whose foot is a quarter of its length, and stands at the angle of that', () => {
    fc.assert(
      fc.property(heights, (height) => {
        const entries = { height: `${height} ft` };
        const [foot, working] = [feet(entries, 'foot'), feet(entries, 'working')];
        expect(within(1e-9, Math.hypot(foot, height), working)).toBe(true);
        expect(within(1e-9, working, 4 * foot)).toBe(true);
        expect(within(1e-9, height / foot, Math.tan((ANGLE * Math.PI) / 180))).toBe(true);
        expect(within(1e-9, figure(ladder, entries, 'angle', 'degree'), ANGLE)).toBe(true);
      }),
    );
  });

  test('has 3 ft of its rails, measured upright, above the edge, and is whole feet long enough for them', () => {
    fc.assert(
      fc.property(heights, (height) => {
        const entries = { height: `${height} ft` };
        const [used, needed] = [feet(entries, 'in_use'), feet(entries, 'needed')];
        expect(within(1e-9, used * Math.sin((ANGLE * Math.PI) / 180), height + 3)).toBe(true);
        expect(Math.abs(needed - Math.round(needed))).toBeLessThan(1e-9);
        expect(needed).toBeGreaterThanOrEqual(used - 1e-9);
        expect(needed).toBeLessThan(used + 1);
      }),
    );
  });

  test('told by its working length, stands as told by the height of that length', () => {
    fc.assert(
      fc.property(heights, (length) => {
        const byLength = { working: `${length} ft` };
        const byHeight = { height: `${feet(byLength, 'height').toFixed(12)} ft` };
        for (const name of ['foot', 'working', 'height', 'in_use', 'needed'])
          expect(within(1e-9, feet(byHeight, name), feet(byLength, name))).toBe(true);
      }),
    );
  });

  test('never stands nearer or is shorter for a higher edge', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 1, max: 1000 }), (height, hundredths) => {
        const more = Math.min(60, height + hundredths / 100);
        for (const name of ['foot', 'working', 'in_use', 'needed'])
          expect(feet({ height: `${more} ft` }, name)).toBeGreaterThanOrEqual(
            feet({ height: `${height} ft` }, name),
          );
      }),
    );
  });

  test('is cautioned of, with falls and lines, whatever it is', () => {
    expect(worked(ladder, { height: '9 ft' }).cautions).toEqual([
      'caution.ladder.set',
      'caution.roof.falls',
      'caution.roof.electric',
    ]);
  });
});

const bad: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'neither of the two',
    {},
    /^Height of the edge \(height\): found neither a height nor a working length; expected one of the two\.$/,
  ],
  [
    'both of them',
    { height: '9 ft', working: '10 ft' },
    /^Height of the edge \(height\): found a height beside a working length; expected one of the two\.$/,
  ],
  ['no height', { height: '0 ft' }, /^Height of the edge \(height\): found "0 ft"; expected more than 0/],
  [
    'a tower',
    { height: '61 ft' },
    /^Height of the edge \(height\): found "61 ft"; expected 60 ft at most: this entry takes no more\.$/,
  ],
  ['a weight', { working: '9 lb' }, /^Working length \(working\): found "9 lb" \(weight\)/],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, entries, says) => {
    expect(complaints(ladder, entries)).toEqual([expect.stringMatching(says)]);
  });
});
