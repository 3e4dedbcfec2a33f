import { describe, expect, test } from 'vitest';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { rulesBehind } from '../../src/quantity/working.ts';
import { exampleEntries, planOf } from './entries.ts';

const plan = planOf(exampleEntries);
const [row] = plan.rows;
const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');

/**
 * By hand, in inches and pounds, from the file and the rules alone; worked to ten figures and more with thirty carried.
 *
 * The arc: chord W = 166, rise h = 15 − 3 = 12. r = (83² + 12²) / 24 = 7033/24 = 293.0416666667. t = 2 asin(83/r) = 0.5743335745859.
 * Over the eaves r²/2 (t − sin t) = 1333.535343255; with 3 · 166 = 498 under them the section is
 * 1831.535343255 in2.
 * The old insulation, 2 in, lies 1.5 in deep under the new fill, and is lower than the eave: 1.5 · 166 = 249. It covers the lower chord
 * of 1.5 in; the upper takes 1.5 in too, for which there is room above the old insulation even at the eaves: 1.5 · 166 · 1.5/24 =
 * 15.5625. Free: 1566.972843255 in2.
 * The flue of 12 in keeps 2 in clear all round: a column 16 in wide. It stands 18 in from the ridge, where the roof is
 * 3 + √(r² − 18²) − (r − 12) = 14.44665515624 high; less 1.5, times π/4 · 16²: 2603.079470553 in3.
 * Volume: (1566.972843255 · 792 − 2603.079470553) / 1728 = 716.6894747610 ft3. At 1.5 lb/ft3: 1075.0342121415 lb. In bags of
 * 30 lb: 35.83447373805.
 * A tenth more are 39.42 bags: 40 on the truck.
 * On the ceiling at the ridge: (15 − 1.5)/12 · 1.5 = 1.6875, and 2/12 · 0.51 = 0.085 of the old batts, which weigh the same pressed:
 * 1.7725 lb/ft2, of 2.2 allowed. Left for the fill 2.115: over 13.5/12 ft it is 1.88 lb/ft3; over 1.5 lb/ft3 it is 1.41 ft = 16.92 in.
 */
const figures: readonly [what: string, found: number, byHand: number][] = [
  ['area of the section, in2', amountIn(plan.section.area, 'in2'), 1831.535343255],
  ['free of it for new fill, in2', amountIn(plan.free.free, 'in2'), 1566.972843255],
  ['volume, ft3', amountIn(plan.volume, 'ft3'), 716.689474761],
  ['weight, lb', amountIn(plan.weight, 'lb'), 1075.0342121415],
  ['bags', amountIn(plan.bags, 'bag'), 35.83447373805],
  ['bags to load', amountIn(plan.bagsToLoad, 'bag'), 40],
  // The machine blows (6.1 + 5.8 + 6.4)/3 lb into 4 ft3, 1.525 lb/ft3: 13.5/12 · 1.525 + 2/12 · 0.51.
  ['weight on the ceiling, lb/ft2', amountIn(plan.load.total, 'lb/ft2'), 1.800625],
  ['what the board may carry, lb/ft2', plan.load.limit ? amountIn(plan.load.limit, 'lb/ft2') : 0, 2.2],
  [
    'highest density, lb/ft3',
    plan.load.highestDensity ? amountIn(plan.load.highestDensity, 'lb/ft3') : 0,
    1.88,
  ],
  [
    'greatest depth, in',
    plan.load.greatestDepth ? inches(plan.load.greatestDepth) : 0,
    (12 * (2.2 - 0.085)) / 1.525,
  ],
  // 1 / (0.268 − 0.02221 · 1.5 + 0.05046/1.5) = 1 / 0.268325
  ['R per inch', plan.resistance?.value.amount ?? 0, 3.726823814404],
];

describe('the example job comes out as by hand', () => {
  test.each(figures)('%s: within a part in a thousand million', (_, found, byHand) => {
    expect(Math.abs(found - byHand)).toBeLessThanOrEqual(1e-9 * byHand);
  });

  test('the ceiling carries it, and nothing is held back', () => {
    expect(plan.load.verdict).toBe('carries it');
    expect(plan.cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'caution.ceiling.sound-first',
        'caution.flue.keep-clear',
        'caution.layout.framing',
      ]),
    );
  });

  test('paint of 1979 is not taken to hold lead, paint of 1977 is', () => {
    const old = (built: number) =>
      planOf({ ...exampleEntries, home: { built, sections: 'single', length: '66 ft' } }).cautions.some(
        ({ id }) => id === 'caution.before.old-paint',
      );
    expect([old(1979), old(1978), old(1977)]).toEqual([false, false, true]);
  });
});

describe('the holes of the example job', () => {
  /**
   * n holes span at most 8 + 16 (n − 1) + 8 = 16 n ft and at least 12 n ft. Four span 64 ft at most, and the roof is 66 ft; five
   * span from 60 to 80 ft. So it takes five, if the trusses, seams and obstacles leave five places; the tests below show that they do.
   */
  test('are five', () => {
    expect(row?.holes).toHaveLength(5);
    expect(row?.outcome).toBe('meets every rule');
  });

  const along = (row?.holes ?? []).map((hole) => inches(hole.along));

  test('are told with the way from each to the next, and bear their numbers in the working', () => {
    expect(row?.gaps.map(inches)).toEqual(along.slice(1).map((at, place) => at - (along[place] ?? 0)));
    expect(row?.holes.map((hole) => [hole.along.symbol, hole.along.label])).toEqual(
      [1, 2, 3, 4, 5].map((number) => [`x${number}`, `Hole ${number}, from the starting end`]),
    );
  });

  test('stand on the eighths of the tape', () => {
    for (const place of along) expect(place * 8).toBe(Math.round(place * 8));
  });
  test('keep 6 to 8 ft from either end and 12 to 16 ft from each other', () => {
    const [first = 0, last = 0] = [along[0], along.at(-1)];
    for (const end of [first, 792 - last]) expect(end >= 72 && end <= 96).toBe(true);
    for (const [place, at] of along.slice(1).entries()) {
      const gap = at - (along[place] ?? 0);
      expect(gap >= 144 && gap <= 192).toBe(true);
    }
  });
  /** Half of the hole and half of a truss member: 3 + 0.75 in. The trusses stand at every 24 in from 0. */
  test('clear every truss by more than 3.75 in from middle to middle', () => {
    for (const at of along) expect(Math.min(at % 24, 24 - (at % 24))).toBeGreaterThan(3.75);
  });
  /** The metal patch is 10 in wide; the seams run at every 48 in from 0. */
  test('keep the metal patch off every seam', () => {
    for (const at of along) expect(Math.min(at % 48, 48 - (at % 48))).toBeGreaterThanOrEqual(5);
    expect(row?.holes.every((hole) => !hole.overSeam)).toBe(true);
  });
  /**
   * The vent, 8 in wide and 8 in down the slope from the row, and the flue, 12 in and 2 in from it, each keep off half of themselves and
   * half of the membrane of 14 in; the flue 2 in more: 11 in and 15 in along the roof.
   */
  test('keep clear of the vent at 20 ft 2 in and of the flue at 46 ft 6 in', () => {
    for (const at of along) {
      expect(Math.abs(at - 242)).toBeGreaterThanOrEqual(11);
      expect(Math.abs(at - 558)).toBeGreaterThanOrEqual(15);
    }
  });

  test('a place names the rules it answers to', () => {
    const [hole] = row?.holes ?? [];
    expect(hole && rulesBehind(hole.along)).toEqual([
      'access.roof-holes.first',
      'access.roof-holes.spacing',
      'access.roof-holes.below-peak',
      'access.roof-holes.diameter',
      'framing.truss.member-width',
      'patch.layers.metal-side',
      'patch.layers.membrane-side',
      'clearance.flue.to-combustibles',
    ]);
  });

  test('the bags of a hole follow from the length of its stretch: the first, half way to the second', () => {
    const [hole] = row?.holes ?? [];
    // 1566.972843255 in2 of free section, at 1.5 lb/ft3 in bags of 30 lb; no flue stands in the first stretch.
    const bags = (1566.972843255 * ((along[0] ?? 0) + (along[1] ?? 0))) / 2 / 1728 / 20;
    expect(Math.abs((hole?.bags.amount ?? 0) - bags)).toBeLessThan(1e-9);
    expect(hole?.kept).toEqual([]);
  });

  test('the flue stands in one stretch, and takes its column from that one', () => {
    const with_flue = (row?.holes ?? []).filter((hole) => hole.kept.length > 0);
    expect(with_flue.map((hole) => hole.number)).toEqual([4]);
    const [hole] = with_flue;
    const length = hole ? inches(hole.to) - inches(hole.from) : 0;
    expect(
      hole && Math.abs(amountIn(hole.volume, 'in3') - (1566.972843255 * length - 2603.079470553)),
    ).toBeLessThan(1e-6);
  });
});
