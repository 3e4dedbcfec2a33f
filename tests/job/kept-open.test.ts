import { describe, expect, test } from 'vitest';
import { hotPlaces } from '../../src/job/kept-open.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const flue = (side: string, from_peak = '1 ft 6 in', what = 'furnace flue') => [
  { what, along: '46 ft 6 in', side, from_peak, across: '12 in' },
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

/** Half of a double-section home that is level, or deepest before the marriage line: its peak stands over that line all the same. */
const half = (cavity: Readonly<Record<string, unknown>>) => ({ 'home.sections': 'double', cavity });
const level = { shape: 'level', width: '14 ft', eave: '12 in' };

/** The places across, in inches from the eave, of all that is hot in the example with some changes. */
function placesIn(changes: Readonly<Record<string, unknown>>): number[] {
  const plan = planOf(exampleWith(changes));
  return hotPlaces(plan.job, { section: plan.section, old: plan.oldOnceFilled }, rules).map(({ at }) =>
    amountIn(at, 'in'),
  );
}

/**
 * By hand, in inches from the eave. A flue 18 in down from the peak: of two slopes over 168 in the peak is at 84, so 66 on the back side and
 * 102 on the front; measured with its deepest place at 108, 90 and 126; of half a double-section home, and of a single slope, which rise to their far
 * end, 168 - 18 = 150 on either side. 85 in down a slope of 84 in it stands at the eave: at 0 on the back side, at 168 on the front.
 */
describe('where a flue stands across the cavity, from the peak that holes are measured from', () => {
  test.each<
    [
      title: string,
      changes: Readonly<Record<string, unknown>>,
      side: string,
      byHand: number,
      from_peak?: string,
    ]
  >([
    ['two slopes, on the back side', sloped('two-slope'), 'back', 66],
    ['two slopes, on the front side', sloped('two-slope'), 'front', 102],
    ['two slopes, at the very eave of the back side', sloped('two-slope'), 'back', 0, '85 in'],
    ['two slopes, at the very eave of the front side', sloped('two-slope'), 'front', 168, '85 in'],
    ['measured, deepest off the middle, on the back side', measured, 'back', 90],
    ['measured, deepest off the middle, on the front side', measured, 'front', 126],
    ['a single slope', sloped('one-slope'), 'back', 150],
    ['a single slope, on its other side', sloped('one-slope'), 'front', 150],
    ['the back section of a double-section home, level', half(level), 'back', 150],
    ['the front section of a double-section home, level', half(level), 'front', 150],
    ['half a double-section home, deepest before the marriage line', half(measured.cavity), 'front', 150],
  ])('%s', (_, changes, side, byHand, from_peak) => {
    expect(placesIn({ ...changes, 'roof.obstacles': flue(side, from_peak) })).toEqual([byHand]);
  });

  test('a flue of any kind that gets hot, and no vent that does not', () => {
    expect(
      placesIn({ ...sloped('two-slope'), 'roof.obstacles': flue('back', undefined, 'other hot flue') }),
    ).toEqual([66]);
    const vent = flue('back', undefined, 'plumbing vent');
    expect(placesIn({ ...sloped('two-slope'), 'roof.obstacles': vent, 'survey.flues': 'none' })).toEqual([]);
  });
});

/** By hand, 4 ft from the eave of its own side, in inches from the back eave: 48 on the back side, 168 - 48 = 120 on the front; a section of a double-section home has one eave. */
describe('where a recessed light stands across the cavity, from the eave of its own side', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, side: string, byHand: number]>([
    ['two slopes, on the back side', sloped('two-slope'), 'back', 48],
    ['two slopes, on the front side', sloped('two-slope'), 'front', 120],
    ['a single slope, on its other side', sloped('one-slope'), 'front', 48],
    ['the front section of a double-section home', half(level), 'front', 48],
  ])('%s', (_, changes, side, byHand) => {
    const light = {
      kind: 'light, not rated for contact',
      along: '12 ft',
      side,
      from_eave: '4 ft',
      across: '7 in',
    };
    expect(
      placesIn({
        ...changes,
        'roof.obstacles': [],
        'survey.flues': 'none',
        'survey.lights': 'not rated, held clear',
        'ceiling.lights': [light],
      }),
    ).toEqual([byHand]);
  });
});

test('a flue that stands where old insulation fills the cavity to the roof takes no new fill away', () => {
  // By hand: 1 in from the eave the cavity of 3 in has risen to 3 + 12/84 in, less than the 4 in of batts.
  const changes = {
    ...sloped('two-slope'),
    'old.depth': '4 in',
    heat: {},
    'roof.obstacles': flue('back', '83 in'),
  };
  const [place] = planOf(exampleWith(changes)).hot;
  expect(place?.thing.depth.amount).toBeCloseTo(3 + 12 / 84, 9);
  expect(place?.space.takenOff.amount).toBe(0);
});

test('each place bears its own number in the working', () => {
  const two = [...flue('back', '3 ft'), ...flue('front', '3 ft')];
  const { hot } = planOf(exampleWith({ ...sloped('two-slope'), 'roof.obstacles': two }));
  expect(
    hot.map(({ thing: { depth, cavity } }) => [depth.symbol, depth.label, cavity?.symbol, cavity?.label]),
  ).toEqual([
    ['d1', 'Depth of the fill at 1', 'dc1', 'Height of the cavity at 1'],
    ['d2', 'Depth of the fill at 2', 'dc2', 'Height of the cavity at 2'],
  ]);
});

/**
 * By hand, in inches: two slopes over 168, from 3 to 15 at 84, so 12/84 up for each inch across; a flue 12 wide with 2 kept clear about it
 * opens 16, 8 on each side of its middle.
 */
describe('a shield is as high as the roof where it stands highest over the open space', () => {
  test.each([
    ['down the slope: 18 from the peak its upper side is at 74, and 3 + 74 × 12/84', '18 in', 13.571],
    ['where the open space reaches over the peak: 6 from it', '6 in', 15],
  ])('%s', (_, from_peak, byHand) => {
    const plan = planOf(exampleWith({ ...sloped('two-slope'), 'roof.obstacles': flue('back', from_peak) }));
    const [place] = hotPlaces(plan.job, { section: plan.section, old: plan.oldOnceFilled }, rules);
    const shield = place?.space.shield;
    expect(place?.space.toTheRoof).toBe(true);
    // To the thousandth that the sum is written to.
    expect(shield && amountIn(shield, 'in')).toBeCloseTo(byHand, 3);
  });
});
