import { describe, expect, test } from 'vitest';
import { hotPlaces } from '../../src/job/kept-open.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const flue = (side: string) => [
  { what: 'furnace flue', along: '46 ft 6 in', side, from_peak: '1 ft 6 in', across: '12 in' },
];

const sloped = (shape: string) => ({ cavity: { shape, width: '14 ft', eave: '3 in', ridge: '15 in' } });

const measured = {
  cavity: {
    shape: 'measured',
    width: '14 ft',
    points: [
      { from_eave: '0 in', depth: '3 in' },
      { from_eave: '9 ft', depth: '15 in' },
      { from_eave: '14 ft', depth: '3 in' },
    ],
  },
};

/**
 * By hand, in inches from the eave. A flue 18 in down from the peak: of two slopes over 168 in the peak is at 84, so 66 on the back side and
 * 102 on the front; measured with its deepest place at 108, 90 and 126; of half a double home, which rises to its far end, 168 - 18 = 150.
 */
describe('where a flue stands across the cavity, from the peak that holes are measured from', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, side: string, byHand: number]>([
    ['two slopes, on the back side', sloped('two-slope'), 'back', 66],
    ['two slopes, on the front side', sloped('two-slope'), 'front', 102],
    ['measured, deepest off the middle, on the back side', measured, 'back', 90],
    ['measured, deepest off the middle, on the front side', measured, 'front', 126],
    ['a single slope', sloped('one-slope'), 'back', 150],
  ])('%s', (_, changes, side, byHand) => {
    const plan = planOf(exampleWith({ ...changes, 'roof.obstacles': flue(side) }));
    expect(
      hotPlaces(plan.job, { section: plan.section, old: plan.oldOnceFilled }, rules).map(({ at }) =>
        amountIn(at, 'in'),
      ),
    ).toEqual([byHand]);
  });
});
