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

/** A direction as the clock has it. @example clock(290) // => '4:50' */
export function clock(minutes: number): string {
  const hour = Math.floor(minutes / 60) % 12;
  return `${hour === 0 ? 12 : hour}:${String(minutes % 60).padStart(2, '0')}`;
}
