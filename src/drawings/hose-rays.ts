import { toEdge } from '../calc/marks/directions.ts';
import type { HoseMarks } from '../calc/marks/marks.ts';
import { circle, line, type Point, text } from './lines.ts';
import { type Shape, shape } from './svg.ts';

type At = (x: number, y: number) => Point;

/** From the edge of the zone to the middle of a number, in two rows, and how far apart numbers stand. */
const ROWS = [12, 29] as const;
const APART = 17;
/** A number keeps so far off rings and lines where it stands among them, and off the edges of the sheet. */
const CLEAR = 13;
/** Round an end, ever farther out. */
const ROUND = Array.from({ length: 80 }, (_, place) => place);
/** Places along a push, finer than a number is wide. */
const STEPS = Array.from({ length: 25 }, (_, step) => step / 24);
const ASIDE = Array.from(
  { length: 23 },
  (_, place) => (place % 2 === 0 ? -1 : 1) * Math.ceil(place / 2) * 8.5,
);

const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);

/** A flue as on the roof's plan: itself thick and crossed, what is kept open about it dashed; nothing where it lies beyond the zone. */
export function ringShapes({ rings, zone }: HoseMarks, at: At, perInch: number): Shape[] {
  return rings.flatMap(({ x, y, radius, flue = radius }) => {
    if (x + radius <= -zone.left || x - radius >= zone.right) return [];
    const [cx, cy] = at(x, y);
    const r = flue * perInch;
    const arm = r * Math.SQRT1_2;
    return [
      circle('hidden', [cx, cy], radius * perInch),
      circle('outline', [cx, cy], r),
      line('thin', [cx - arm, cy - arm], [cx + arm, cy + arm]),
      line('thin', [cx - arm, cy + arm], [cx + arm, cy - arm]),
    ];
  });
}

/** Which way is out of the zone at a place of its edge? */
function outward({ left, right, up, down }: HoseMarks['zone'], x: number, y: number): Point {
  const gaps = [
    { gap: right - x, out: [1, 0] },
    { gap: left + x, out: [-1, 0] },
    { gap: up - y, out: [0, 1] },
    { gap: down + y, out: [0, -1] },
  ] as const;
  return gaps.reduce((a, b) => (b.gap < a.gap - 1e-6 ? b : a)).out;
}

/**
 * A line a push, a dot where the hose ends, and its number: beyond the edge of the zone, where there is room for it; of a push that stops
 * before a ring round its end, clear of all else. A number that stands away from its push has a leader.
 */
export function rayShapes(
  { marks, zone, rings }: HoseMarks,
  at: At,
  perInch: number,
  width: number,
): Shape[] {
  const taken: Point[] = [];
  const hole = at(0, 0);
  const ends = marks.map(({ ray }) => at(ray.x * ray.length, ray.y * ray.length));
  const beside = at(-zone.left, 0)[0] - ROWS[0] - 2;
  /** Is a place inside the zone clear of rings, the opening and every push? */
  const inClear = (spot: Point): boolean =>
    rings.every(({ x, y, radius }) => apart(spot, at(x, y)) > radius * perInch + CLEAR) &&
    ends.every((end) =>
      STEPS.every(
        (share) =>
          apart(spot, [hole[0] + (end[0] - hole[0]) * share, hole[1] + (end[1] - hole[1]) * share]) > CLEAR,
      ),
    );
  return marks.flatMap(({ ray, stopsAtRing, order }, place): Shape[] => {
    const end = ends[place] ?? hole;
    const edge = toEdge(zone, ray.minutes);
    const [ex, ey] = at(ray.x * edge, ray.y * edge);
    const [nx, ny] = outward(zone, ray.x * edge, ray.y * edge);
    const foot = stopsAtRing ? end : ([ex, ey] as const);
    const spots: Point[] = stopsAtRing
      ? ROUND.map((place): Point => {
          const far = 24 + place / 2;
          return [end[0] + far * Math.cos(place * 0.4), end[1] + far * Math.sin(place * 0.4)];
        })
      : ASIDE.flatMap((by) => ROWS.map((out): Point => [ex + nx * out + ny * by, ey - ny * out + nx * by]));
    const spot =
      spots.find(
        (each) =>
          each[0] >= beside &&
          each[0] <= width - 10 &&
          taken.every((other) => apart(each, other) >= APART) &&
          (!stopsAtRing || inClear(each)),
      ) ?? foot;
    taken.push(spot);
    const far = apart(spot, foot);
    const share = (far - 8) / far;
    return [
      line('thin', hole, end),
      shape('circle', { cx: end[0], cy: end[1], r: 2.4, fill: 'currentColor' }),
      ...(far > ROWS[0] + 1
        ? [line('thin', foot, [foot[0] + (spot[0] - foot[0]) * share, foot[1] + (spot[1] - foot[1]) * share])]
        : []),
      text([spot[0], spot[1] + 4], String(order), { size: 12, bold: true }),
    ];
  });
}
