import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaBelow,
  bowed,
  bowRadius,
  deepest,
  level,
  measured,
  twoSlope,
} from '../../../src/calc/cavity/profile.ts';
import { integralOver, within } from '../quadrature.ts';
import { anyKnown, type Known, known } from './shapes.ts';

/** The closed forms and the quadrature, which know nothing of each other, agree to this share. */
const SAME = 1e-9;

const areaTo = ({ depth, corners }: Known, end: number): number =>
  integralOver(depth, [...corners.filter((x) => x < end), end]);

/** The integral of the smaller of depth and height, its corners found from the geometry. */
const areaUnder = ({ depth, corners, passes }: Known, height: number): number =>
  integralOver(
    (x) => Math.min(height, depth(x)),
    [...new Set([...corners, ...passes(height)])].sort((a, b) => a - b),
  );

describe('the area of a section is the integral of its depth, to a part in 10^9', () => {
  test.each(known)('$name', (each) => {
    for (const share of [0.1, 1 / 3, 0.5, 0.77, 1]) {
      const end = share * each.width;
      expect(within(SAME, each.profile.areaUpTo(end), areaTo(each, end)), `up to ${end}`).toBe(true);
    }
  });
});

describe('the area that old insulation takes is the integral of the smaller of its depth and the cavity’s, to a part in 10^9', () => {
  test.each(known)('$name', (each) => {
    for (const share of [0.05, 0.3, 0.5, 0.9, 1, 1.2]) {
      const height = share * each.most;
      expect(within(SAME, areaBelow(each.profile, height), areaUnder(each, height)), `at ${height}`).toBe(
        true,
      );
    }
  });
});

describe('depths are those of the geometry', () => {
  test.each(known)('$name', (each) => {
    for (let place = 0; place <= 20; place++) {
      const across = (place / 20) * each.width;
      expect(Math.abs(each.profile.depthAt(across) - each.depth(across))).toBeLessThan(1e-9);
    }
    expect(Math.abs(deepest(each.profile).depth - each.most)).toBeLessThan(1e-12);
  });
});

describe('a bow of chord 14 ft and rise 12 in', () => {
  const bow = bowed(168, 0, 12);
  test('has a radius of 300 in: (84² + 12²) / (2 · 12) = 7200 / 24', () => {
    expect(bowRadius(168, 12)).toBeCloseTo(300, 12);
  });
  test('has an area of 9.3713 ft2: 300²/2 · (t − sin t) with t = 2 asin(84/300), to half of the last figure', () => {
    expect(Math.abs(bow.areaUpTo(168) / 144 - 9.3713)).toBeLessThan(5e-5);
  });
  test('rises 8.033 in on the mean, to half of the last figure', () => {
    expect(Math.abs(bow.areaUpTo(168) / 168 - 8.033)).toBeLessThan(5e-4);
  });
  test('is deepest in the middle, at 12 in', () => {
    expect(deepest(bow)).toEqual({ across: 84, depth: 12 });
  });
});

describe('the ends of what a bow can be', () => {
  test('a rise of 0 is a level cavity', () => {
    expect(bowed(168, 3, 3).areaUpTo(168)).toBe(level(168, 3).areaUpTo(168));
    expect(bowed(168, 3, 3).depthAt(40)).toBe(3);
  });
  test('a half circle has its eave at the eave itself, however upright it rises there', () => {
    const half = bowed(200, 3, 103);
    for (const across of [0, 1e-10, 200 - 1e-10, 200]) expect(half.depthAt(across)).toBe(3);
  });

  // r²·(asin t − t·√(1 − t²)) with r = 50/t, and the rise r − √(r² − 50²), both by mpmath 1.3 at 40 digits, rounded to what a number holds.
  test.each([
    [0.49754926349865203, 33.17060780230879],
    [0.37502109612338064, 25.001687703433685],
    [0.12500078125976577, 8.3333958341704],
  ])('a bow of 100 in that rises %d in has the area of its circle to the twelfth figure', (rise, area) => {
    expect(within(1e-12, bowed(100, 0, rise).areaUpTo(100), area)).toBe(true);
  });

  test('a half circle has the area π r² / 2', () => {
    expect(within(1e-12, bowed(24, 0, 12).areaUpTo(24), (Math.PI * 144) / 2)).toBe(true);
  });
  /** A flat bow is a parabola: its mean rise is two thirds of its rise, and the next term is below (rise / width)². */
  test.each([1, 1e-3, 1e-6, 1e-9, 1e-12])('a rise of %d in adds two thirds of it on the mean', (rise) => {
    const area = bowed(168, 3, 3 + rise).areaUpTo(168);
    expect(Math.abs(area / 168 - 3 - (2 / 3) * rise)).toBeLessThan(rise * (rise / 168) ** 2 + 1e-13);
  });
  test('an eave and a ridge that differ only by the rounding of two units are level', () => {
    expect(bowed(168, 3 - 4e-16, 3).areaUpTo(168)).toBeCloseTo(504, 9);
  });
});

describe('measured points', () => {
  test('of a two-slope cavity give its area, however many are measured', () => {
    const slope = twoSlope(166, 3, 15);
    for (const between of [1, 2, 7]) {
      const places = Array.from({ length: 2 * between + 1 }, (_, place) => (place / (2 * between)) * 166);
      const points = measured(places.map((x) => [x, slope.depthAt(x)]));
      expect(within(1e-12, points.areaUpTo(166), slope.areaUpTo(166))).toBe(true);
    }
  });
  test('make trapezoids: 10 in wide with 2 and 4 in, then 20 in wide with 4 and 1 in, are 30 + 50 in2', () => {
    expect(
      measured([
        [0, 2],
        [10, 4],
        [30, 1],
      ]).areaUpTo(30),
    ).toBeCloseTo(80, 12);
  });
});

/** A flat bow is a parabola: two thirds of its rise on the mean. */
describe('the flattest bow that a number can tell', () => {
  test.each([1e-307, 1e-300, 1e-154, 1e-12, 1e-6])(
    '%d in high over 168 in holds 112 times its rise',
    (rise) => {
      expect(Math.abs(bowed(168, 0, rise).areaUpTo(168) - 112 * rise)).toBeLessThanOrEqual(
        1e-9 * rise + 1e-290,
      );
    },
  );
  test('a rise that floating noise turns below nothing is none', () => {
    const profile = bowed(168, 3, 3 - 4e-16);
    expect([profile.areaUpTo(168), profile.depthAt(40), profile.depthAt(84)]).toEqual([504, 3, 3]);
  });
});

describe('whatever the size', () => {
  const check = <T>(property: fc.IProperty<T>) => fc.assert(property, { numRuns: 500 });
  /** A millionth is as fine as anything measured; a share of 10^-300 would only test the reach of floating numbers. */
  const share = fc.integer({ min: 0, max: 1_000_000 }).map((millionths) => millionths / 1_000_000);

  test('the depth is never negative and never NaN', () => {
    check(fc.property(anyKnown, share, ({ profile, width }, at) => profile.depthAt(at * width) >= 0));
  });
  test('no place is deeper than the deepest', () => {
    check(
      fc.property(
        anyKnown,
        share,
        ({ profile, width }, at) => profile.depthAt(at * width) <= deepest(profile).depth + 1e-9,
      ),
    );
  });
  test('the area to a place never shrinks as the place moves on', () => {
    check(
      fc.property(anyKnown, share, share, ({ profile, width }, a, b) => {
        const [near, far] = [Math.min(a, b) * width, Math.max(a, b) * width];
        return profile.areaUpTo(near) <= profile.areaUpTo(far) + 1e-9;
      }),
    );
  });
  test('a place outside counts as the end it lies beyond', () => {
    check(
      fc.property(anyKnown, ({ profile, width }) => {
        const ends = [
          profile.depthAt(-1) === profile.depthAt(0),
          profile.depthAt(width + 1) === profile.depthAt(width),
        ];
        return (
          ends.every(Boolean) &&
          profile.areaUpTo(-1) === 0 &&
          profile.areaUpTo(width + 1) === profile.areaUpTo(width)
        );
      }),
    );
  });
  test('old insulation never takes more than the section, nor less than nothing, nor less where it is deeper', () => {
    check(
      fc.property(anyKnown, share, share, ({ profile, width, most }, a, b) => {
        const [thin, thick] = [Math.min(a, b) * 1.2 * most, Math.max(a, b) * 1.2 * most];
        const whole = profile.areaUpTo(width);
        const [little, much] = [areaBelow(profile, thin), areaBelow(profile, thick)];
        const noise = SAME * whole;
        return little >= -noise && little <= much + noise && much <= whole + noise;
      }),
    );
  });
  test('a higher ridge never makes the section smaller', () => {
    const size = {
      width: fc.double({ min: 12, max: 480, noNaN: true }),
      eave: fc.double({ min: 0, max: 36, noNaN: true }),
    };
    check(
      fc.property(
        fc.record(size),
        share,
        share,
        fc.constantFrom(twoSlope, bowed),
        ({ width, eave }, a, b, make) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b)].map((part) => eave + (part * width) / 2);
          const area = (ridge = 0) => make(width, eave, ridge).areaUpTo(width);
          return area(low) <= area(high) * (1 + SAME);
        },
      ),
    );
  });
});
