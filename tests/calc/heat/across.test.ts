import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bowed,
  level,
  measured,
  oneSlope,
  type Profile,
  twoSlope,
} from '../../../src/calc/cavity/profile.ts';
import { type Layering, meanAcross, meanThicknesses, resistanceAt } from '../../../src/calc/heat/across.ts';
import { integral as doubleExponential } from '../../../src/calc/heat/quadrature.ts';
import { integral, integralOver, within } from '../quadrature.ts';

/** R at a depth written again, from what lies there: the old insulation first, the fill above it. */
const rAt = (constant: number, old: number, oldPerInch: number, perInch: number, depth: number): number =>
  constant + Math.min(old, depth) * oldPerInch + Math.max(0, depth - old) * perInch;

const layering = (constant: number, old: number, oldPerInch: number, perInch: number): Layering => ({
  constant,
  layers: [
    { thickness: old, perInch: oldPerInch },
    { thickness: Number.POSITIVE_INFINITY, perInch },
  ],
});

interface Case {
  readonly title: string;
  readonly profile: Profile;
  readonly straight: boolean;
  readonly depth: (across: number) => number;
  /** Where the roof has a corner or passes 4 in, found by hand. */
  readonly ends: readonly number[];
}

/** The arc by Pythagoras from its centre below the ridge: W 168, rise 12, so r = (84² + 12²) / 24 = 300. */
const arc = (across: number): number => Math.sqrt(300 ** 2 - (across - 84) ** 2) - 300 + 15;
/** 11 in below the top of that arc: u² = 300² − 289². */
const fourInchPlace = Math.sqrt(300 ** 2 - 289 ** 2);

const cases: readonly Case[] = [
  {
    title: 'two slopes from 3 to 15 in, which pass 4 in a twelfth of the way up',
    profile: twoSlope(168, 3, 15),
    straight: true,
    depth: (x) => 15 - (Math.abs(x - 84) * 12) / 84,
    ends: [0, 7, 84, 161, 168],
  },
  {
    title: 'one slope from 0 to 12 in',
    profile: oneSlope(120, 0, 12),
    straight: true,
    depth: (x) => x / 10,
    ends: [0, 40, 120],
  },
  {
    title: 'a level cavity of 9 in',
    profile: level(150, 9),
    straight: true,
    depth: () => 9,
    ends: [0, 150],
  },
  {
    title: 'measured depths with a dip to 2 in',
    profile: measured([
      [0, 6],
      [40, 2],
      [100, 14],
    ]),
    straight: true,
    depth: (x) => (x < 40 ? 6 - x / 10 : 2 + (x - 40) / 5),
    ends: [0, 20, 40, 50, 100],
  },
  {
    title: 'a bow from 3 to 15 in',
    profile: bowed(168, 3, 15),
    straight: false,
    depth: arc,
    ends: [0, 84 - fourInchPlace, 84, 84 + fourInchPlace, 168],
  },
  {
    title: 'half a circle, upright at both eaves',
    profile: bowed(60, 0, 30),
    straight: false,
    depth: (x) => Math.sqrt(Math.max(0, 30 ** 2 - (x - 30) ** 2)),
    ends: [0, 30 - Math.sqrt(900 - 16), 30, 30 + Math.sqrt(900 - 16), 60],
  },
];

const stacks: readonly (readonly [constant: number, old: number, oldPerInch: number, perInch: number])[] = [
  [1.23, 0, 3, 3.5],
  [1.23, 4, 3.07, 3.7],
  [0.78, 4, 5, 0],
  [0.2, 4, 0, 8],
];

describe.each(cases)('$title', ({ profile, straight, depth, ends }) => {
  // Closed forms, which all shares and thicknesses are, to a part in 10^9; the U of a bow, a quadrature, to one in 10^8. All of them are held
  // against Simpson's rule over pieces cut by hand.
  test.each(stacks)('the mean of 1/R with R0 %d, %d in at %d, the rest at %d', (...stack) => {
    const expected = integralOver((x) => 1 / rAt(...stack, depth(x)), ends) / profile.width;
    const found = meanAcross(profile, straight, layering(...stack))?.transmittance ?? Number.NaN;
    expect(within(straight ? 1e-9 : 1e-8, found, expected)).toBe(true);
  });

  test('the part below 4 in, and no part below 0', () => {
    const stack = [1.23, 0, 3, 3.5] as const;
    const [share, heat] = ends.slice(1).reduce(
      ([width, sum], end, place) => {
        const start = ends[place] ?? 0;
        if (depth((start + end) / 2) >= 4) return [width, sum] as const;
        return [width + end - start, sum + integral((x) => 1 / rAt(...stack, depth(x)), start, end)] as const;
      },
      [0, 0] as readonly [number, number],
    );
    const found = meanAcross(profile, straight, layering(...stack), 4);
    if (share === 0) expect(found).toBeUndefined();
    else {
      expect(within(1e-9, found?.share ?? 0, share / profile.width)).toBe(true);
      expect(within(straight ? 1e-9 : 1e-8, found?.transmittance ?? 0, heat / share)).toBe(true);
    }
    expect(meanAcross(profile, straight, layering(...stack), 0)).toBeUndefined();
  });

  test('the mean thicknesses of old insulation of 4 in and of the fill above it add up to the mean depth', () => {
    const [old = 0, fill = 0] = meanThicknesses(profile, layering(1, 4, 3, 3.5));
    expect(within(1e-9, old, integralOver((x) => Math.min(4, depth(x)), ends) / profile.width)).toBe(true);
    expect(within(1e-9, old + fill, integralOver(depth, ends) / profile.width)).toBe(true);
  });
});

/** Antiderivatives of school; tolerance a part in 10^12. */
const integrals: readonly [title: string, f: (x: number) => number, from: number, to: number, is: number][] =
  [
    ['1/x from 1 to e', (x) => 1 / x, 1, Math.E, 1],
    ['a quarter circle', (x) => Math.sqrt(1 - x * x), 0, 1, Math.PI / 4],
    ['a root that rises upright', (x) => Math.sqrt(x), 0, 1, 2 / 3],
    ['a steep start, 1/(0.001 + x)', (x) => 1 / (0.001 + x), 0, 1, Math.log(1.001 / 0.001)],
    ['a constant', () => 3, -2, 2, 12],
  ];

describe('the quadrature', () => {
  test.each(integrals)('%s', (_, f, from, to, is) => {
    expect(within(1e-12, doubleExponential(f, from, to), is)).toBe(true);
  });

  test('over nothing, or the wrong way round, is 0', () => {
    expect(doubleExponential(() => 1, 2, 2)).toBe(0);
    expect(doubleExponential(() => 1, 2, 1)).toBe(0);
  });
});

const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyProfile = fc
  .tuple(fc.constantFrom('two', 'one', 'bow'), amount(60, 200), amount(0, 6), amount(0, 24))
  .map(([kind, width, eave, rise]) =>
    kind === 'two'
      ? { profile: twoSlope(width, eave, eave + rise), straight: true }
      : kind === 'one'
        ? { profile: oneSlope(width, eave, eave + rise), straight: true }
        : { profile: bowed(width, eave, eave + rise), straight: false },
  );
const NOISE = 1e-9;

describe('any roof', () => {
  const u = ({ profile, straight }: { profile: Profile; straight: boolean }, of: Layering): number =>
    meanAcross(profile, straight, of)?.transmittance ?? Number.NaN;

  test('lies between its thinnest and its thickest, and is never as good as its mean depths claim', () => {
    fc.assert(
      fc.property(
        anyProfile,
        amount(0.3, 5),
        amount(0, 8),
        amount(0, 5),
        amount(0, 5),
        (roof, c, old, ro, rn) => {
          const stack = layering(c, old, ro, rn);
          const effective = 1 / u(roof, stack);
          const depths = roof.profile.corners.map((x) => roof.profile.depthAt(x));
          const [mo = 0, mn = 0] = meanThicknesses(roof.profile, stack);
          return (
            effective >= resistanceAt(stack, Math.min(...depths)) * (1 - NOISE) &&
            effective <= resistanceAt(stack, Math.max(...depths)) * (1 + NOISE) &&
            effective <= (c + ro * mo + rn * mn) * (1 + NOISE)
          );
        },
      ),
    );
  });

  test('never lets more heat through for more R anywhere', () => {
    fc.assert(
      fc.property(
        anyProfile,
        fc.array(amount(0.1, 5), { minLength: 4, maxLength: 4 }),
        fc.array(amount(0, 3), { minLength: 3, maxLength: 3 }),
        (roof, [c = 1, old = 1, ro = 1, rn = 1], [mc = 0, mo = 0, mn = 0]) =>
          u(roof, layering(c + mc, old, ro + mo, rn + mn)) <= u(roof, layering(c, old, ro, rn)) * (1 + NOISE),
      ),
    );
  });
});
