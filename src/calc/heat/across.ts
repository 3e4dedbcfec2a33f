import { areaBelow, type Profile, placeOfHeight } from '../cavity/profile.ts';
import { meanTransmittance } from '../taper/transmittance.ts';
import { integral } from './quadrature.ts';

/**
 * What lies at a place, in plain numbers: R that is the same everywhere (h ft2 F/Btu), then layers from the ceiling up, each to
 * its thickness (in) or to the roof where that is lower. Above the last one lies nothing that resists.
 */
export interface Layering {
  readonly constant: number;
  readonly layers: readonly { readonly thickness: number; readonly perInch: number }[];
}

/** R at a depth of the cavity. @example resistanceAt({ constant: 1, layers: [{ thickness: 2, perInch: 3 }, { thickness: Infinity, perInch: 4 }] }, 5) // => 19 */
export function resistanceAt({ constant, layers }: Layering, depth: number): number {
  let left = depth;
  let resistance = constant;
  for (const { thickness, perInch } of layers) {
    const part = Math.min(left, thickness);
    resistance += part * perInch;
    left -= part;
    if (left <= 0) break;
  }
  return resistance;
}

/** Heights at which one layer ends and the next begins. */
function heightsOf({ layers }: Layering): number[] {
  let height = 0;
  return layers.map(({ thickness }) => {
    height += thickness;
    return height;
  });
}

/** The places between which both the roof and the layers run without a corner, in rising order. */
function places(profile: Profile, heights: readonly number[]): number[] {
  const all = profile.corners.flatMap((left, at) => {
    const right = profile.corners[at + 1];
    if (right === undefined) return [left];
    const [a, b] = [profile.depthAt(left), profile.depthAt(right)];
    const between = heights.filter((height) => Math.min(a, b) < height && height < Math.max(a, b));
    return [left, ...between.map((height) => placeOfHeight(profile, height, left, right))];
  });
  return all.sort((a, b) => a - b);
}

export interface MeanAcross {
  /** Mean of 1/R over the part, in Btu/(h ft2 F). */
  readonly transmittance: number;
  /** The part's share of the width. */
  readonly share: number;
}

/**
 * What is the mean transmittance across the cavity, or over the part of it that is less deep than `below`?
 * Where the roof is straight each piece is a straight taper with its closed form; over a bow a quadrature takes its place.
 * Undefined where no part is so shallow. R must be above 0 everywhere.
 * By hand: R runs straight from 1 to 2, and the mean of 1/R is ln 2.
 * @example meanAcross(oneSlope(100, 0, 1), true, { constant: 1, layers: [{ thickness: Infinity, perInch: 1 }] }).transmittance.toFixed(4) // => '0.6931'
 */
export function meanAcross(
  profile: Profile,
  straight: boolean,
  layering: Layering,
  below = Number.POSITIVE_INFINITY,
): MeanAcross | undefined {
  const at = places(profile, [...heightsOf(layering), below].filter(Number.isFinite));
  const resistance = (across: number): number => resistanceAt(layering, profile.depthAt(across));
  let [heat, width] = [0, 0];
  for (const [place, left] of at.entries()) {
    const right = at[place + 1];
    if (right === undefined || right <= left) continue;
    if (profile.depthAt((left + right) / 2) >= below) continue;
    width += right - left;
    heat += straight
      ? (right - left) * taperBetween(resistance(left), resistance(right))
      : integral((across) => 1 / resistance(across), left, right);
  }
  return width > 0 ? { transmittance: heat / width, share: width / profile.width } : undefined;
}

const taperBetween = (a: number, b: number): number =>
  meanTransmittance('straight taper', Math.min(a, b), Math.abs(a - b));

/**
 * How thick is each layer in the mean across the cavity, in inches?
 * By hand: 375 in2 lie below 5 in and 125 in2 above, each over the width of 100 in.
 * @example meanThicknesses(oneSlope(100, 0, 10), { constant: 0, layers: [{ thickness: 5, perInch: 3 }, { thickness: Infinity, perInch: 4 }] }).map((mean) => mean.toFixed(4)) // => ['3.7500', '1.2500']
 */
export function meanThicknesses(profile: Profile, layering: Layering): number[] {
  let before = 0;
  return heightsOf(layering).map((height) => {
    const area = Number.isFinite(height) ? areaBelow(profile, height) : profile.areaUpTo(profile.width);
    const mean = (area - before) / profile.width;
    before = area;
    return Math.max(0, mean);
  });
}
