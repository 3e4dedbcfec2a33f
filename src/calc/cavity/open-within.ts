import { byMethod, inches, inUnit, type Quantity } from '../../quantity/quantity.ts';
import type { Section } from './section.ts';

/** A round space kept open from ceiling to roof, about a flue or the like. */
export interface KeptOpen {
  /** How wide the open space is. */
  readonly across: Quantity<'length'>;
  /** Its place, from the eave. */
  readonly at: Quantity<'length'>;
}

/** A round space kept open, with its place along the roof. */
export interface PlacedOpen extends KeptOpen {
  readonly along: Quantity<'length'>;
}

/** A part of the cavity seen from above: across from the eave, and along from the starting end, in inches. */
export interface Part {
  readonly across: readonly [from: number, to: number];
  readonly along: readonly [from: number, to: number];
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** So many slices of a ring that overlaps another: what they share is then told to some hundred-thousandths of it. */
const SLICES = 1000;

/** Area of a circle of radius 1 on the left of a line at t from its middle. @example leftOf(0) === Math.PI / 2 // => true */
export function leftOf(t: number): number {
  if (t <= -1) return 0;
  if (t >= 1) return Math.PI;
  return Math.PI / 2 + Math.asin(t) + t * Math.sqrt(1 - t * t);
}

/** Area of a circle of radius 1 on the left of x and below y, both from its middle. @example cornerOf(0, 0) === Math.PI / 4 // => true */
export function cornerOf(x: number, y: number): number {
  const [left, below] = [leftOf(x), leftOf(y)];
  if (x >= 1) return below;
  if (y >= 1) return left;
  if (x * x + y * y < 1) return x * y + (left + below) / 2 - Math.PI / 4;
  // The corner lies off the circle, which either line then cuts by itself, or both.
  if (x < 0) return y < 0 ? 0 : left;
  return y < 0 ? below : left + below - Math.PI;
}

function within({ x, y, radius }: Disc, { across, along }: Part): number {
  const [left, right] = across.map((place) => (place - x) / radius) as [number, number];
  const [low, high] = along.map((place) => (place - y) / radius) as [number, number];
  const whole = cornerOf(right, high) - cornerOf(left, high) - cornerOf(right, low) + cornerOf(left, low);
  return whole * radius * radius;
}

/** What of a disc within a part others cover too, slice by slice across. */
function shared(disc: Disc, others: readonly Disc[], { across, along }: Part): number {
  const { x, y, radius } = disc;
  let area = 0;
  for (let slice = 0; slice < SLICES; slice++) {
    const turn = ((slice + 0.5) / SLICES - 0.5) * Math.PI;
    const at = x + radius * Math.sin(turn);
    if (at < across[0] || at > across[1]) continue;
    const half = radius * Math.cos(turn);
    let [from, to] = [Math.max(along[0], y - half), Math.min(along[1], y + half)];
    const met = others.flatMap((other) => {
      const reach = Math.sqrt(Math.max(0, other.radius ** 2 - (at - other.x) ** 2));
      return [[other.y - reach, other.y + reach] as const];
    });
    for (const [low, high] of met.sort((a, b) => a[0] - b[0])) {
      const end = Math.min(high, to);
      if (end > Math.max(low, from)) {
        area += ((end - Math.max(low, from)) * half * Math.PI) / SLICES;
        from = end;
      }
    }
  }
  return area;
}

/**
 * What does each of some round spaces leave out of a part of the cavity, above the old insulation, in cubic inches? Where two overlap the first
 * alone counts; the height of each is that at its middle.
 * By hand: the half of π/4 × 20² × 12 that lies past 60 in along.
 * @example openWithin(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), [{ across: quantity(20, 'in'), at: quantity(50, 'in'), along: quantity(60, 'in') }], { across: [0, 120], along: [60, 120] })[0].toFixed(2) // => '1884.96'
 */
export function openWithin(
  { profile }: Section,
  spaces: readonly PlacedOpen[],
  part: Part,
  oldDepth?: Quantity<'length'>,
): number[] {
  const discs = spaces.map(({ at, along, across }) => ({
    x: inches(at),
    y: inches(along),
    radius: inches(across) / 2,
  }));
  return discs.map((disc, place) => {
    const near = discs
      .slice(0, place)
      .filter(({ x, y, radius }) => Math.hypot(x - disc.x, y - disc.y) < radius + disc.radius);
    const height = Math.max(0, profile.depthAt(disc.x) - (oldDepth ? inches(oldDepth) : 0));
    return (within(disc, part) - (near.length > 0 ? shared(disc, near, part) : 0)) * height;
  });
}

/**
 * The same as volumes with their working, of those that reach into a stretch of the roof.
 * By hand: π/4 × 2 ft × 2 ft × 1 ft, and half of it lies before its middle.
 * @example keptWithin(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), [{ across: quantity(2, 'ft'), at: quantity(5, 'ft'), along: quantity(6, 'ft') }], [quantity(0, 'ft'), quantity(6, 'ft')], undefined)[0].amount.toFixed(4) // => '1.5708'
 */
export function keptWithin(
  section: Section,
  spaces: readonly PlacedOpen[],
  [from, to]: readonly [Quantity<'length'>, Quantity<'length'>],
  oldDepth: Quantity<'length'> | undefined,
): Quantity<'volume'>[] {
  const part: Part = { across: [0, section.profile.width], along: [inches(from), inches(to)] };
  return openWithin(section, spaces, part, oldDepth).flatMap((amount, place) => {
    const space = spaces[place];
    if (!space || !(amount > 0)) return [];
    const { across, at, along } = space;
    return [
      inUnit(
        byMethod(
          'round column from the old insulation to the roof, as far as it stands in the stretch and in no column before it: π/4 · D² · depth there',
          [across, at, along, from, to, ...section.told, ...(oldDepth ? [oldDepth] : [])],
          amount,
          'in3',
        ),
        'ft3',
      ),
    ];
  });
}
