import fc from 'fast-check';
import {
  bowed,
  level,
  measured,
  oneSlope,
  type Profile,
  twoSlope,
} from '../../../src/calc/cavity/profile.ts';

/** A profile of the program, with its depth written again from the geometry alone. */
export interface Known {
  readonly name: string;
  readonly profile: Profile;
  readonly depth: (across: number) => number;
  /** Where the depth has a corner. */
  readonly corners: readonly number[];
  readonly width: number;
  readonly most: number;
  /** The places where the depth passes a height, in rising order. */
  readonly passes: (height: number) => readonly number[];
}

type Maker = (width: number, eave: number, ridge: number) => Known;

const twoSlopes: Maker = (width, eave, ridge) => ({
  name: `two-slope ${width} ${eave} ${ridge}`,
  profile: twoSlope(width, eave, ridge),
  depth: (x) => ridge - ((ridge - eave) * Math.abs(x - width / 2)) / (width / 2),
  corners: [0, width / 2, width],
  width,
  most: ridge,
  passes: (height) => {
    const from = ((height - eave) / (ridge - eave)) * (width / 2);
    return from > 0 && from < width / 2 ? [from, width - from] : [];
  },
});

const one: Maker = (width, eave, ridge) => ({
  name: `one-slope ${width} ${eave} ${ridge}`,
  profile: oneSlope(width, eave, ridge),
  depth: (x) => eave + ((ridge - eave) * x) / width,
  corners: [0, width],
  width,
  most: ridge,
  passes: (height) => {
    const at = ((height - eave) / (ridge - eave)) * width;
    return at > 0 && at < width ? [at] : [];
  },
});

/**
 * The circle through both eaves and the ridge. By Thales' theorem on the chord W and the rise h: (W/2)² = h (2r − h). At u from the
 * middle the arc has fallen by s with u² = s (2r − s), so s = u² / (r + √(r² − u²)).
 */
const bow: Maker = (width, eave, ridge) => {
  const rise = ridge - eave;
  const radius = (width ** 2 / 4 / rise + rise) / 2;
  return {
    name: `bowed ${width} ${eave} ${ridge}`,
    profile: bowed(width, eave, ridge),
    depth: (x) => {
      const u = x - width / 2;
      return ridge - u ** 2 / (radius + Math.sqrt(Math.max(0, radius ** 2 - u ** 2)));
    },
    corners: [0, width / 2, width],
    width,
    most: ridge,
    passes: (height) => {
      const fallen = ridge - height;
      const u = Math.sqrt(Math.max(0, fallen * (2 * radius - fallen)));
      return fallen > 0 && u < width / 2 ? [width / 2 - u, width / 2 + u] : [];
    },
  };
};

const flat: Maker = (width, eave) => ({
  name: `level ${width} ${eave}`,
  profile: level(width, eave),
  depth: () => eave,
  corners: [0, width],
  width,
  most: eave,
  passes: () => [],
});

/** Three depths measured at uneven places: the eave, a third of the way, the other end. */
const points: Maker = (width, eave, ridge) => ({
  name: `measured ${width} ${eave} ${ridge}`,
  profile: measured([
    [0, eave],
    [width / 3, ridge],
    [width, (eave + ridge) / 2],
  ]),
  depth: (x) =>
    x < width / 3
      ? eave + ((ridge - eave) * x * 3) / width
      : ridge - (((ridge - eave) / 2) * (x - width / 3)) / (width - width / 3),
  corners: [0, width / 3, width],
  width,
  most: ridge,
  passes: (height) => {
    const up = ((height - eave) / (ridge - eave)) * (width / 3);
    const down = width / 3 + ((ridge - height) / ((ridge - eave) / 2)) * (width - width / 3);
    return [up, down].filter((x) => x > 0 && x < width && height > eave && height < ridge);
  },
});

export const makers: readonly Maker[] = [twoSlopes, one, bow, flat, points];

/** Cavities as they are built, and some as nobody builds them: up to a half circle, down to a rise of a thousandth of an inch. */
export const builtSizes: readonly (readonly [width: number, eave: number, ridge: number])[] = [
  [166, 3, 15],
  [168, 0, 12],
  [168, 3, 15],
  [120, 2.5, 9.125],
  [480, 4, 30],
  [24, 0, 12],
  [24, 1, 12.999],
  [166, 3, 3.001],
  [166, 3, 3.5],
];

export const known: readonly Known[] = makers.flatMap((make) => builtSizes.map((size) => make(...size)));

/** Any cavity: 1 to 40 ft wide, eave up to 3 ft, the ridge at or above it and never more than a half circle above. */
export const anyKnown: fc.Arbitrary<Known> = fc
  .record({
    make: fc.constantFrom(...makers),
    width: fc.double({ min: 12, max: 480, noNaN: true }),
    eave: fc.double({ min: 0, max: 36, noNaN: true }),
    share: fc.double({ min: 1e-6, max: 1, noNaN: true }),
  })
  .map(({ make, width, eave, share }) => make(width, eave, eave + (share * width) / 2));
