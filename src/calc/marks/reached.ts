import type { Ray, Stretch } from './directions.ts';

/** A piece of a line, from one place on it to another, in inches. */
export type Span = readonly [from: number, to: number];

const NOISE = 1e-9;
/** Spans that touch but for a rounding error leave nothing between them, in inches. */
const TOUCH = 1e-6;

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

/** The least number that, times a slope, lies between two bounds: without end where any does, beyond all where none does. */
const least = (slope: number, from: number, to: number): number =>
  slope > 0 ? from / slope : slope < 0 ? to / slope : from <= 0 && to >= 0 ? -Infinity : Infinity;

/**
 * What of a level line, so far up the slope from the opening, does the stream come to from a push, its two ends included? Undefined where it comes to none of it.
 * All places within the stream's reach of a push make a round-ended strip, which a line cuts in one piece: from the first to the last of what
 * it cuts out of the two round ends and of the strip between them.
 * By hand: 4 past the end of a push of 2 up the slope, a stream of 5 comes 3 to either side.
 * @example reachedAlong({ x: 0, y: 1, length: 2 }, 6, 5).map((end) => end.toFixed(6)).join() // => '-3.000000,3.000000'
 */
export function reachedAlong(
  { x, y, length }: Pick<Ray, 'x' | 'y' | 'length'>,
  up: number,
  streamReach: number,
): Span | undefined {
  const reach = streamReach * (1 + NOISE);
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  if (Math.abs(up) <= reach) {
    to = Math.sqrt(reach * reach - up * up);
    from = -to;
  }
  const past = up - y * length;
  if (Math.abs(past) <= reach) {
    const half = Math.sqrt(reach * reach - past * past);
    from = Math.min(from, x * length - half);
    to = Math.max(to, x * length + half);
  }
  // Between the ends: neither behind its start nor past its end, and beside it no farther than the reach.
  const low = Math.max(least(x, -up * y, length - up * y), least(y, up * x - reach, up * x + reach));
  const high = Math.min(-least(x, up * y - length, up * y), -least(y, -up * x - reach, reach - up * x));
  if (low <= high) {
    from = Math.min(from, low);
    to = Math.max(to, high);
  }
  return from <= to ? [from, to] : undefined;
}

/**
 * What of a span do others leave uncovered, in order? What is left between two that touch is none.
 * @example uncovered([0, 10], [[6, 8], [-1, 4]]) // => [[4, 6], [8, 10]]
 */
export function uncovered([from, to]: Span, spans: readonly Span[]): Span[] {
  const gaps: Span[] = [];
  let done = from;
  for (const [low, high] of [...spans].sort((a, b) => a[0] - b[0])) {
    if (low >= to) break;
    if (low > done + TOUCH) gaps.push([done, low]);
    if (high > done) done = high;
  }
  if (to > done + TOUCH) gaps.push([done, to]);
  return gaps;
}

/** What of a level line does the stream come to, push by push? */
export function reachedBy(rays: readonly Ray[], up: number, streamReach: number): Span[] {
  const spans: Span[] = [];
  for (const each of rays) {
    const reached = reachedAlong(each, up, streamReach);
    if (reached) spans.push(reached);
  }
  return spans;
}

/** What of the four sides of a stretch do pushes not bring the stream to, a side at a time? The farthest first: what is left out lies there. */
function* sidesUnreached(
  { left, right, up, down }: Stretch,
  rays: readonly Ray[],
  streamReach: number,
): Generator<readonly Span[]> {
  // A side that runs up the slope is a level one, once all is turned over its diagonal.
  const turned = rays.map((each) => ({ ...each, x: each.y, y: each.x }));
  const [across, along]: [Span, Span] = [
    [-left, right],
    [-down, up],
  ];
  const sides = [
    { at: up, span: across, of: rays },
    { at: -down, span: across, of: rays },
    { at: right, span: along, of: turned },
    { at: -left, span: along, of: turned },
  ];
  for (const { at, span, of } of sides.sort((a, b) => Math.abs(b.at) - Math.abs(a.at)))
    yield uncovered(span, reachedBy(of, at, streamReach));
}

/**
 * How much of the stretch's edge does no push bring the stream to, in inches?
 * The edge stands for all of the stretch: along a line from the opening the distance to a push never falls, so what lies nearer than the
 * edge is nearer to the push too.
 * By hand: a push along the foot of a stretch of 20 by 10, its stream 2, leaves all of the top and 8 of either side.
 * @example edgeUnreached({ left: 0, right: 20, up: 10, down: 0 }, [{ minutes: 180, x: 1, y: 0, length: 20 }], 2).toFixed(6) // => '36.000000'
 */
export function edgeUnreached(stretch: Stretch, rays: readonly Ray[], streamReach: number): number {
  let missed = 0;
  for (const gaps of sidesUnreached(stretch, rays, streamReach))
    for (const [from, to] of gaps) missed += to - from;
  return missed;
}

/**
 * Do pushes bring the stream to all of a stretch?
 * By hand: from the opening in its middle to a corner of a square of 2 it is 1.414.
 * @example [1.41, 1.42].map((stream) => coversStretch({ left: 1, right: 1, up: 1, down: 1 }, [{ minutes: 0, x: 0, y: 1, length: 0 }], stream)) // => [false, true]
 */
export function coversStretch(stretch: Stretch, rays: readonly Ray[], streamReach: number): boolean {
  for (const gaps of sidesUnreached(stretch, rays, streamReach)) if (gaps.length > 0) return false;
  return true;
}
