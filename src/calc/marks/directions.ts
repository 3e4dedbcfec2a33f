/**
 * Which ways round the clock is the hose pushed from an opening, so that the stream comes to everything in its stretch? Plain numbers in
 * inches, the opening at 0, 0, x to the right hand and y up the slope of one who stands at the opening and faces the ridge.
 * Directions are told in minutes of the clock's face: 0 is 12 o'clock, up the slope; 180 is 3 o'clock, to the right.
 */
export interface Stretch {
  readonly left: number;
  readonly right: number;
  readonly up: number;
  readonly down: number;
}

/** A straight push from the opening. */
export interface Ray {
  readonly minutes: number;
  /** Its direction, of length 1. */
  readonly x: number;
  readonly y: number;
  /** How long it is. */
  readonly length: number;
}

/** Minutes of the hour hand's whole round, and the step a direction is told in. */
const ROUND = 720;
const TIDY = 5;
/**
 * Limits of the search, and no rules: what is asked of a plan is that the stream comes everywhere, in however many pushes. Fewer than four leave out a side.
 * Of 36 two stand twenty minutes of the clock apart, and another one brings them nearer by less than a thirtieth: a stretch that these leave a part of wants to be
 * shorter, or a stream that reaches farther.
 */
export const FEWEST = 4;
export const MOST = 36;
/** Places on the stretch's edge that are looked at stand this close, in inches: what lies between two is off by half of it at most. */
export const EDGE_STEP = 1 / 4;
const NOISE = 1e-9;

/** A rounding error in a sine is no direction. */
const clean = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);

/** The direction of a reading of the clock. @example towards(180) // => { x: 1, y: 0 } */
export function towards(minutes: number): { readonly x: number; readonly y: number } {
  const angle = (minutes / ROUND) * 2 * Math.PI;
  return { x: clean(Math.sin(angle)), y: clean(Math.cos(angle)) };
}

/** What does the clock read, to the nearest five minutes, towards a place? @example readingTowards(1, 0) // => 180 */
export function readingTowards(x: number, y: number): number {
  const turned = Math.atan2(x, y) / (2 * Math.PI);
  return (Math.round((turned * ROUND) / TIDY) * TIDY + ROUND) % ROUND;
}

/**
 * So many directions evenly round the clock from 12, each to the nearest five minutes; the left half mirrors the right.
 * @example evenly(5) // => [0, 145, 290, 430, 575]
 */
export function evenly(count: number): number[] {
  const tidy = (step: number): number => Math.round((step * ROUND) / count / TIDY) * TIDY;
  return Array.from({ length: count }, (_, step) =>
    2 * step <= count ? tidy(step) : ROUND - tidy(count - step),
  );
}

/** How far is it from the opening to the edge of the stretch? @example toEdge({ left: 3, right: 4, up: 5, down: 6 }, 180) // => 4 */
export function toEdge({ left, right, up, down }: Stretch, minutes: number): number {
  const { x, y } = towards(minutes);
  return Math.min(
    x > 0 ? right / x : x < 0 ? left / -x : Number.POSITIVE_INFINITY,
    y > 0 ? up / y : y < 0 ? down / -y : Number.POSITIVE_INFINITY,
  );
}

/**
 * The push in a direction, which stops short of the stretch's edge.
 * By hand: 4 to the edge on the right, less 1.
 * @example ray({ left: 3, right: 4, up: 5, down: 6 }, 180, 1).length // => 3
 */
export function ray(stretch: Stretch, minutes: number, standOff: number): Ray {
  return { minutes, ...towards(minutes), length: Math.max(0, toEdge(stretch, minutes) - standOff) };
}

/**
 * Places on the edge of the stretch, its corners among them; none farther than a step from the next.
 * By hand: 8 in round, at a quarter of an inch.
 * @example edgePlaces({ left: 1, right: 1, up: 1, down: 1 }).length // => 32
 */
export function edgePlaces({ left, right, up, down }: Stretch): [x: number, y: number][] {
  const places: [number, number][] = [];
  for (const [x0, y0, x1, y1] of [
    [-left, up, right, up],
    [right, up, right, -down],
    [right, -down, -left, -down],
    [-left, -down, -left, up],
  ] as const) {
    // Floating noise in a length is no reason for another step.
    const steps = Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / EDGE_STEP - NOISE));
    for (let step = 0; step < steps; step++)
      places.push([x0 + (step / steps) * (x1 - x0), y0 + (step / steps) * (y1 - y0)]);
  }
  return places;
}

/**
 * How far is a place from a push, its two ends included, squared? A root for each of some ten thousand places took the time.
 * @example fromRay({ minutes: 0, x: 0, y: 1, length: 2 }, 3, 6) // => 25
 */
export function fromRay({ x, y, length }: Ray, px: number, py: number): number {
  const along = Math.min(length, Math.max(0, px * x + py * y));
  return (px - along * x) ** 2 + (py - along * y) ** 2;
}

/**
 * Does the stream come to a place from a push, its two ends included?
 * @example comesTo({ minutes: 0, x: 0, y: 1, length: 2 }, 3, 6, 5) // => true
 */
export const comesTo = (ray: Ray, px: number, py: number, reach: number): boolean =>
  fromRay(ray, px, py) <= (reach * (1 + NOISE)) ** 2;

/**
 * The places of the stretch's edge that no push comes within the stream's reach of.
 * The edge stands for all of the stretch: along a line from the opening the distance to a push never falls, so what lies nearer than the
 * edge is nearer to the push too.
 * By hand: from the end of the push at 0, 2 the places lie √(3² + 4²) = 5 and √(3² + 6²) = 6.7 away.
 * @example outOfReach([{ minutes: 0, x: 0, y: 1, length: 2 }], [[3, 6], [3, 8]], 5) // => [[3, 8]]
 */
export const outOfReach = (
  rays: readonly Ray[],
  places: readonly (readonly [x: number, y: number])[],
  streamReach: number,
): (readonly [x: number, y: number])[] =>
  places.filter(([x, y]) => !rays.some((each) => comesTo(each, x, y, streamReach)));

export interface Fewest {
  readonly rays: readonly Ray[];
  /** Does the stream come to all of the stretch? If not even the most directions do, those are given. */
  readonly covers: boolean;
}

/**
 * The fewest directions evenly round the clock from which the stream comes to all of the stretch.
 * By hand: four pushes end in the middles of the sides, 1 from each corner.
 * @example fewestDirections({ left: 1, right: 1, up: 1, down: 1 }, 1, 0).rays.length // => 4
 */
export function fewestDirections(stretch: Stretch, streamReach: number, standOff: number): Fewest {
  const places = edgePlaces(stretch);
  const around = (count: number): Ray[] => evenly(count).map((minutes) => ray(stretch, minutes, standOff));
  const covered = (rays: readonly Ray[]): boolean => {
    // What came to a place likely comes to the next one.
    let near = rays[0];
    return places.every(([x, y]) => {
      if (!near || !comesTo(near, x, y, streamReach))
        near = rays.find((each) => comesTo(each, x, y, streamReach));
      return near !== undefined;
    });
  };
  for (let count = FEWEST; count <= MOST; count++) {
    const rays = around(count);
    if (covered(rays)) return { rays, covers: true };
  }
  return { rays: around(MOST), covers: false };
}

/** A direction as the clock has it. @example clock(290) // => '4:50' */
export function clock(minutes: number): string {
  const hour = Math.floor(minutes / 60) % 12;
  return `${hour === 0 ? 12 : hour}:${String(minutes % 60).padStart(2, '0')}`;
}
