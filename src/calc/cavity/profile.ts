/**
 * The cavity's height above the ceiling, across the home: plain numbers in inches, the inner part of the cavity section.
 * Places across are counted from the eave on the back side.
 */
export interface Profile {
  readonly width: number;
  /** Height at a place across; the place is held inside the cavity. */
  readonly depthAt: (across: number) => number;
  /** Area of the section from the eave to a place across, in square inches; a closed form. */
  readonly areaUpTo: (across: number) => number;
  /** Places where the profile has a corner or its deepest point, the two ends included, in rising order. */
  readonly corners: readonly number[];
}

/** Two places in inches, or two depths by their share, that floating noise alone may set apart. */
const NOISE = 1e-9;

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Straight lines between points; the points lie in rising order, the first at 0, the last at the width. */
function straightLines(points: readonly (readonly [across: number, depth: number])[]): Profile {
  const width = points[points.length - 1]?.[0] ?? 0;
  const pieceAt = (across: number) => {
    const right = clamp(
      points.findIndex(([place]) => place >= across),
      1,
      points.length - 1,
    );
    return [points[right - 1] ?? [0, 0], points[right] ?? [0, 0]] as const;
  };
  const depthAt = (asked: number): number => {
    const across = clamp(asked, 0, width);
    const [[x0, d0], [x1, d1]] = pieceAt(across);
    // Written so that the ends come out exactly, and nothing below both of them.
    return (d0 * (x1 - across) + d1 * (across - x0)) / (x1 - x0);
  };
  const areaUpTo = (asked: number): number => {
    const end = clamp(asked, 0, width);
    let area = 0;
    for (const [place, [x0, d0]] of points.entries()) {
      const next = points[place + 1];
      if (!next || x0 >= end) break;
      const right = Math.min(next[0], end);
      area += ((d0 + depthAt(right)) / 2) * (right - x0);
    }
    return area;
  };
  return { width, depthAt, areaUpTo, corners: points.map(([place]) => place) };
}

/**
 * Two straight slopes that meet in the middle.
 * By hand: half-way up from 3 in to 15 in.
 * @example twoSlope(168, 3, 15).depthAt(42) // => 9
 */
export const twoSlope = (width: number, eave: number, ridge: number): Profile =>
  straightLines([
    [0, eave],
    [width / 2, ridge],
    [width, eave],
  ]);

/**
 * One straight slope from the eave to the ridge: one section of a double-section home.
 * By hand: a quarter of the way up from 3 in to 15 in.
 * @example oneSlope(168, 3, 15).depthAt(42) // => 6
 */
export const oneSlope = (width: number, eave: number, ridge: number): Profile =>
  straightLines([
    [0, eave],
    [width, ridge],
  ]);

/**
 * The same height everywhere.
 * By hand: 168 in × 6 in.
 * @example level(168, 6).areaUpTo(168) // => 1008
 */
export const level = (width: number, depth: number): Profile => oneSlope(width, depth, depth);

/**
 * Heights measured at places across, with straight lines between.
 * By hand: the mean of 4 in and 10 in, × 60 in.
 * @example measured([[0, 4], [60, 10], [168, 4]]).areaUpTo(60) // => 420
 */
export const measured = (points: readonly (readonly [across: number, depth: number])[]): Profile =>
  straightLines(points);

/**
 * A circular arc from eave to eave, the ridge in the middle.
 * With chord W and rise h the radius is (W²/4 + h²) / 2h; at u from the middle the arc has fallen by u² / (r + √(r² − u²)), which is
 * r − √(r² − u²) without its cancelling where the bow is flat.
 * A rise of 0 is a level cavity; a rise over half the width is more than a half circle, and no roof.
 * By hand: r = 160²/(8 × 20) + 20/2 = 170; 72 in from the middle it has fallen by 170 − √(170² − 72²) = 170 − 154 = 16 of the 24.
 * @example bowed(160, 4, 24).depthAt(80 - 72) // => 8
 */
export function bowed(width: number, eave: number, ridge: number): Profile {
  // Two equal depths told in two units may leave a rise a hair below 0.
  const radius = ridge > eave ? bowRadius(width, ridge - eave) : Number.POSITIVE_INFINITY;
  if (radius === Number.POSITIVE_INFINITY) return level(width, eave);
  const fromMiddle = (across: number) => clamp(across, 0, width) - width / 2;
  const fallen = (u: number): number => (u * u) / (radius + Math.sqrt(Math.max(0, radius * radius - u * u)));
  /** The area under the arc from the middle to u; multiplied in this order, the radius of the flattest bow runs over nothing. */
  const area = (u: number): number => ridge * u - u * (radius * areaFallen(clamp(u / radius, -1, 1)));
  return {
    width,
    // A half circle rises upright from the eave, where a hair of floating noise is a visible height.
    depthAt: (across) =>
      across <= NOISE || across >= width - NOISE ? eave : Math.max(eave, ridge - fallen(fromMiddle(across))),
    areaUpTo: (across) => area(fromMiddle(across)) - area(-width / 2),
    corners: [0, width / 2, width],
  };
}

/**
 * What lies between a circle of radius 1 and its tangent, from the point of touch to t, over t: 1 − (√(1 − t²) + asin(t)/t) / 2.
 * Near the point of touch the first terms of its series stand in, since the closed form then loses its figures to cancelling.
 */
function areaFallen(t: number): number {
  const square = t * t;
  if (square < 4e-4) return square * (1 / 6 + square * (1 / 40 + square * (1 / 112 + (square * 5) / 1152)));
  return 1 - (Math.sqrt(1 - square) + Math.asin(t) / t) / 2;
}

/** The radius of a bow from its chord and its rise, in the unit of both. @example bowRadius(168, 12) // => 300 */
export const bowRadius = (chord: number, rise: number): number => (chord * chord) / 4 / (2 * rise) + rise / 2;

/**
 * The deepest place: between corners every profile here rises or falls all the way, or is an arc with its top at a corner.
 * @example deepest(oneSlope(168, 3, 15)) // => { across: 168, depth: 15 }
 */
export function deepest(profile: Profile): { readonly across: number; readonly depth: number } {
  let best = { across: 0, depth: profile.depthAt(0) };
  for (const across of profile.corners) {
    const depth = profile.depthAt(across);
    if (depth > best.depth * (1 + NOISE)) best = { across, depth };
  }
  return best;
}

/**
 * How deep is it at the most between two places? What lies beyond an end counts as the end.
 * By hand: rising 12 in over 168 in from 3 in, at 84 in.
 * @example deepestBetween(oneSlope(168, 3, 15), 42, 84) // => 9
 */
export function deepestBetween(profile: Profile, from: number, to: number): number {
  const inside = profile.corners.filter((across) => across > from && across < to);
  return Math.max(...[from, ...inside, to].map((across) => profile.depthAt(across)));
}

/**
 * Area of what lies on the ceiling to a given height, where the roof leaves room for it: the integral of the smaller of the two.
 * Old insulation of one thickness fills the shallow eave to the roof, and no more.
 * By hand: a triangle of 50 by 5, then 50 × 5: 125 + 250.
 * @example areaBelow(oneSlope(100, 0, 10), 5).toFixed(6) // => '375.000000'
 */
export function areaBelow(profile: Profile, height: number): number {
  if (height <= 0) return 0;
  let area = 0;
  for (const [place, left] of profile.corners.entries()) {
    const right = profile.corners[place + 1];
    if (right === undefined) break;
    const [a, b] = [profile.depthAt(left), profile.depthAt(right)];
    const whole = profile.areaUpTo(right) - profile.areaUpTo(left);
    if (a >= height && b >= height) area += height * (right - left);
    else if (a <= height && b <= height) area += whole;
    else {
      const meet = placeOfHeight(profile, height, left, right);
      const toMeet = profile.areaUpTo(meet) - profile.areaUpTo(left);
      area += a < height ? toMeet + height * (right - meet) : height * (meet - left) + (whole - toMeet);
    }
  }
  return area;
}

const HALVINGS = 60;

/**
 * Where between two corners does the profile pass a height? By halving, to the last bit that a number can hold.
 * By hand: half of the height is half of the way.
 * @example placeOfHeight(oneSlope(100, 0, 10), 5, 0, 100).toFixed(6) // => '50.000000'
 */
export function placeOfHeight(profile: Profile, height: number, left: number, right: number): number {
  const rising = profile.depthAt(right) > profile.depthAt(left);
  let [low, high] = [left, right];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (profile.depthAt(middle) < height === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
