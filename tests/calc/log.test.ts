import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer, EntriesClash } from '../../src/calc/declare/calculation.ts';
import { openingLog } from '../../src/calc/log/declaration.ts';
import { inQuarters, openingSoFar, openingStates } from '../../src/calc/log/opening.ts';
import { amountIn, inUnit, quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { printed } from './told.ts';

const rules = openRulebook(theProject().data);

describe('bags are counted in quarters', () => {
  test.each([
    [0, true],
    [0.25, true],
    [7.75, true],
    [0.3, false],
    [7.999, false],
    [1e6 + 0.25, true],
  ])('%s: %s', (bags, whole) => {
    expect(inQuarters(quantity(bags, 'bag'))).toBe(whole);
  });
});

describe('what can’t be true is said in a sentence', () => {
  const given = {
    volume: '140 ft3',
    density: '1.5 lb/ft3',
    bag_weight: '30 lb/bag',
    bags: '5 bags',
    state: 'full',
  };
  test.each([
    [{ bags: '5.3 bags' }, 'bags', '5.3 bags', 'whole quarters of a bag, such as 2.25 bags or 2 1/2 bags'],
    [{ bags: '-1 bags' }, 'bags', '"-1 bags"', 'an amount above 0, such as 3.25 bags'],
    [{ state: 'nearly' }, 'state', '"nearly"', 'one of: filling; full'],
    [{ volume: '0 ft3' }, 'volume', '"0 ft3"', 'more than 0, such as 140 ft³'],
  ])('%j', (change, field, found, expected) => {
    const read = answer(openingLog, { ...given, ...change }, rules);
    expect(read).toMatchObject({ ok: false, problems: [{ field, found, expected }] });
  });
  test('a stretch without volume is refused where it is worked out too', () => {
    const plan = {
      volume: quantity(0, 'ft3'),
      density: quantity(1.5, 'lb/ft3'),
      bagWeight: quantity(30, 'lb/bag'),
    };
    expect(() => openingSoFar(plan, quantity(1, 'bag'), 'full', rules)).toThrow(EntriesClash);
  });
});

test('a density above what the ceiling carries stops the opening, even where the bags are as planned', () => {
  const plan = {
    volume: quantity(140, 'ft3'),
    density: quantity(1.5, 'lb/ft3'),
    bagWeight: quantity(30, 'lb/bag'),
    highestDensity: quantity(1.5, 'lb/ft3'),
  };
  // By hand: 7 bags of 30 lb in 140 ft3 are 1.5 lb/ft3, just carried; a quarter more is 1.554.
  expect(openingSoFar(plan, quantity(7, 'bag'), 'full', rules).cautions).toEqual([]);
  expect(openingSoFar(plan, quantity(7.25, 'bag'), 'full', rules).cautions).toEqual([
    'caution.log.overloaded',
  ]);
  // By hand: 5 of 7 bags are more than a tenth short, and 5 x 30 / 140 is 1.07 lb/ft3: no more fill on a ceiling that carries 1.
  const weak = { ...plan, highestDensity: quantity(1, 'lb/ft3') };
  expect(openingSoFar(weak, quantity(5, 'bag'), 'full', rules)).toMatchObject({
    verdict: 'full, light',
    cautions: ['caution.log.overloaded'],
  });
  // 4.5 x 30 / 140 = 0.964.
  expect(openingSoFar(weak, quantity(4.5, 'bag'), 'full', rules).cautions).toEqual(['caution.log.light']);
});

describe('bags as a crew counts them', () => {
  /** 140 ft3 and bags of 30 lb: by hand, a density of 1 lb/ft3 is 4.667 bags. */
  test.each<[title: string, density: number, highest: number | undefined, target: number]>([
    ['to the nearest quarter, above', 1.5 * (5.9 / 7), undefined, 6],
    ['to the nearest quarter, below', 1.5 * (6.1 / 7), undefined, 6],
    [
      'the quarter below, where the nearest is more than the ceiling carries',
      1.5 * (5.9 / 7),
      1.5 * (5.95 / 7),
      5.75,
    ],
    ['the nearest, where the ceiling just carries it', 1.5 * (5.9 / 7), 1.5 * (6 / 7), 6],
    ['the nearest, where it lies below a plan that is too heavy already', 1.5 * (6.1 / 7), 1.5 * (5 / 7), 6],
    [
      'nothing, of a plan of less than a quarter that the ceiling does not carry as one',
      1.5 * (0.2 / 7),
      1.5 * (0.22 / 7),
      0,
    ],
  ])('%s', (_, density, highest, target) => {
    const found = openingSoFar(
      {
        volume: quantity(140, 'ft3'),
        density: quantity(density, 'lb/ft3'),
        bagWeight: quantity(30, 'lb/bag'),
        highestDensity: highest === undefined ? undefined : quantity(highest, 'lb/ft3'),
      },
      quantity(0, 'bag'),
      'filling',
      rules,
    );
    expect(found.target.amount).toBe(target);
  });
});

describe('a small opening is counted no nearer than a quarter of a bag', () => {
  // By hand: 8 ft3 at 1.5 lb/ft3 are 12 lb, 0.4 bags of 30 lb. The nearest quarters, 1/4 and 1/2, are 37 % and 25 % off.
  const plan = {
    volume: quantity(8, 'ft3'),
    density: quantity(1.5, 'lb/ft3'),
    bagWeight: quantity(30, 'lb/bag'),
  };
  test.each([
    [0, 'full', 'full, light'],
    [0.25, 'full', 'full, light'],
    [0.5, 'full', 'full, as planned'],
    [0.5, 'filling', 'filling'],
    [0.75, 'full', 'full, heavy'],
    [0.75, 'filling', 'over the plan and not full'],
  ] as const)('0.4 bags planned, %s in, %s: %s', (bags, state, verdict) => {
    expect(openingSoFar(plan, quantity(bags, 'bag'), state, rules).verdict).toBe(verdict);
  });

  test('of a tenth of a bag, nothing at all is light, though it is within half a quarter', () => {
    const tenth = { ...plan, volume: quantity(2, 'ft3') };
    expect(openingSoFar(tenth, quantity(0, 'bag'), 'full', rules).verdict).toBe('full, light');
    expect(openingSoFar(tenth, quantity(0.25, 'bag'), 'full', rules).verdict).toBe('full, heavy');
  });
});

describe('whatever the plan', () => {
  const plans = fc.record({
    volume: fc.double({ min: 0.01, max: 5000, noNaN: true }),
    density: fc.double({ min: 0.1, max: 8, noNaN: true }),
    bagWeight: fc.double({ min: 1, max: 200, noNaN: true }),
    quarters: fc.nat({ max: 400 }),
    state: fc.constantFrom(...openingStates),
  });
  type Plan = typeof plans extends fc.Arbitrary<infer P> ? P : never;
  const soFar = ({ volume, density, bagWeight, quarters, state }: Plan, more = 0) =>
    openingSoFar(
      {
        volume: quantity(volume, 'ft3'),
        density: quantity(density, 'lb/ft3'),
        bagWeight: quantity(bagWeight, 'lb/bag'),
      },
      quantity((quarters + more) / 4, 'bag'),
      state,
      rules,
    );

  test('nothing is NaN or negative, and another quarter never makes it less dense or leaves more to do', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const now = soFar(plan);
        const later = soFar(plan, 1);
        for (const { amount } of [now.density, now.weight, now.left, now.planned]) {
          expect(Number.isFinite(amount)).toBe(true);
          expect(amount).toBeGreaterThanOrEqual(0);
        }
        expect(later.density.amount).toBeGreaterThan(now.density.amount);
        expect(later.left.amount).toBeLessThanOrEqual(now.left.amount);
      }),
    );
  });

  test('it reads the same in metric units', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const metric = openingSoFar(
          {
            volume: inUnit(quantity(plan.volume, 'ft3'), 'm3'),
            density: inUnit(quantity(plan.density, 'lb/ft3'), 'kg/m3'),
            bagWeight: quantity(plan.bagWeight, 'lb/bag'),
          },
          quantity(plan.quarters / 4, 'bag'),
          plan.state,
          rules,
        );
        const here = soFar(plan);
        expect(amountIn(metric.density, 'lb/ft3')).toBeCloseTo(here.density.amount, 9);
        expect(metric.planned.amount / here.planned.amount).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('what is printed of an opening', () => {
  const given = {
    volume: '130 ft3',
    density: '1.5 lb/ft3',
    bag_weight: '35 lb/bag',
    bags: '5.5 bags',
    state: 'full',
  };

  test('bags and density to three figures', () => {
    // 130 x 1.5 / 35 = 5.5714 bags planned, 0.0714 left; 5.5 x 35 / 130 = 1.4808 lb/ft3.
    const { figures, cautions } = printed(openingLog, given);
    expect(figures).toEqual({
      verdict: 'full, as planned',
      density: '1.48 lb/ft³',
      planned: '5.57 bags',
      left: '0.0714 bags',
      weight: '192.5 lb',
    });
    expect(cautions).toEqual([]);
  });

  /** Near enough is a tenth: of 6.5 bags, 130 ft3 at 1.5 lb/ft3 in bags of 30 lb, from 5.85 to 7.15. */
  const bounds: readonly [bags: string, state: string, verdict: string, cautions: readonly string[]][] = [
    ['0 bags', 'filling', 'not begun', []],
    ['7 bags', 'filling', 'filling', []],
    ['7.25 bags', 'filling', 'over the plan and not full', ['caution.log.over-plan']],
    ['5.75 bags', 'full', 'full, light', ['caution.log.light']],
    ['6 bags', 'full', 'full, as planned', []],
    ['7 bags', 'full', 'full, as planned', []],
    ['7.25 bags', 'full', 'full, heavy', ['caution.log.heavy']],
  ];
  test.each(bounds)('%s, %s: %s', (bags, state, verdict, cautions) => {
    const found = printed(openingLog, { ...given, bag_weight: '30 lb/bag', bags, state });
    expect([found.figures.verdict, found.cautions]).toEqual([verdict, cautions]);
  });

  test('a tenth more than 5 bags is near enough to the last bit', () => {
    // 100 ft3 at 1.5 lb/ft3 in bags of 30 lb are 5 bags; 5.5 are a tenth more, 4.5 a tenth less.
    const near = { ...given, volume: '100 ft3', bag_weight: '30 lb/bag' };
    for (const bags of ['5.5 bags', '4.5 bags'])
      expect(printed(openingLog, { ...near, bags }).figures.verdict).toBe('full, as planned');
  });

  // A count to the nearest quarter may be off by 0.125 either way, more than a tenth of so little.
  // 12 ft3 at 1.5 lb/ft3 are 18 lb, 0.6 of a bag of 30 lb: from 0.475 to 0.725. 13 ft3 are 0.65: from 0.525 to 0.775.
  test.each([
    ['12 ft3', '0.25 bags', 'full, light'],
    ['12 ft3', '0.5 bags', 'full, as planned'],
    ['12 ft3', '0.75 bags', 'full, heavy'],
    ['13 ft3', '0.5 bags', 'full, light'],
    ['13 ft3', '0.75 bags', 'full, as planned'],
  ])('%s with %s is %s', (volume, bags, verdict) => {
    const found = printed(openingLog, { ...given, bag_weight: '30 lb/bag', volume, bags, state: 'full' });
    expect(found.figures.verdict).toBe(verdict);
  });
});
