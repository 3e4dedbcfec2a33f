import { toEdge } from '../calc/marks/directions.ts';
import type { HoseMarks } from '../calc/marks/marks.ts';
import { flueFromAbove } from './flue-from-above.ts';
import { line, type Point, text } from './lines.ts';
import { type Shape, shape } from './svg.ts';

type At = (x: number, y: number) => Point;

/** From the edge of the stretch to the middle of a number, in two rows, and how far apart numbers stand. */
const ROWS = [12, 29] as const;
const APART = 17;
/** A number keeps so far off rings and lines where it stands among them, and off the edges of the sheet. */
const CLEAR = 13;
/** Left of this stand the dimensions across. */
const FROM = 68;
/** Places to try one after the other, round an end or along an edge; and the parts of a push, finer than a number is wide. */
const TRIED = Array.from({ length: 80 }, (_, place) => place);

const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);

/** A place on the way from one to another. */
const between = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + (bx - ax) * share,
  ay + (by - ay) * share,
];

/** The flues of a stretch; nothing where one lies beyond it. */
export function ringShapes({ rings, stretch }: HoseMarks, at: At, perInch: number): Shape[] {
  return rings.flatMap(({ x, y, radius, flue = radius }) => {
    if (x + radius <= -stretch.left || x - radius >= stretch.right) return [];
    return flueFromAbove(at(x, y), { ring: radius * perInch, flue: flue * perInch });
  });
}

/** Which way is out of the stretch at a place of its edge? */
const outward = ({ left, right }: HoseMarks['stretch'], x: number, y: number): Point =>
  x > right - 1e-6 ? [1, 0] : x < 1e-6 - left ? [-1, 0] : [0, Math.sign(y)];

/** Two leaders that cross are longer together than with their places changed for one another. Once no change shortens any two, none cross. */
function uncrossed(feet: readonly Point[], places: readonly Point[]): Point[] {
  const spots = [...places];
  const swap = (): boolean =>
    feet.some((a, i) =>
      feet.some((b, j) => {
        const [from, to] = [spots[i] ?? a, spots[j] ?? b];
        if (apart(a, to) + apart(b, from) > apart(a, from) + apart(b, to) - 0.01) return false;
        [spots[i], spots[j]] = [to, from];
        return true;
      }),
    );
  while (swap());
  return spots;
}

/**
 * A line a push, a dot where the hose ends, and its number: beyond the edge of the stretch, where there is room for it; of a push that stops
 * before a ring round its end, clear of all else. A number that stands away from its push has a leader.
 */
export function rayShapes(
  { marks, stretch, rings }: HoseMarks,
  at: At,
  perInch: number,
  width: number,
): Shape[] {
  const taken: Point[] = [];
  const hole = at(0, 0);
  const ends = marks.map(({ ray }) => at(ray.x * ray.length, ray.y * ray.length));
  /** Is a place inside the stretch clear of rings, the opening and every push? */
  const inClear = (spot: Point): boolean =>
    rings.every(({ x, y, radius }) => apart(spot, at(x, y)) > radius * perInch + CLEAR) &&
    ends.every((end) => TRIED.every((step) => apart(spot, between(hole, end, step / 79)) > CLEAR));
  const feet = marks.map(({ ray, stopsAtRing }, place): Point => {
    const end = ends[place] ?? hole;
    const edge = toEdge(stretch, ray.minutes);
    const [ex, ey] = at(ray.x * edge, ray.y * edge);
    const [nx, ny] = outward(stretch, ray.x * edge, ray.y * edge);
    const foot: Point = stopsAtRing ? end : [ex, ey];
    const spots: Point[] = stopsAtRing
      ? TRIED.map((place): Point => {
          const far = 24 + place / 2;
          return [end[0] + far * Math.cos(place * 0.4), end[1] + far * Math.sin(place * 0.4)];
        })
      : TRIED.flatMap((place) => {
          const by = (place % 2 === 0 ? 8.5 : -8.5) * Math.ceil(place / 2);
          return ROWS.map((out): Point => [ex + nx * out + ny * by, ey - ny * out + nx * by]);
        });
    taken.push(
      spots.find(
        (each) =>
          each[0] >= FROM &&
          each[0] <= width - 10 &&
          taken.every((other) => apart(each, other) >= APART) &&
          (!stopsAtRing || inClear(each)),
      ) ?? foot,
    );
    return foot;
  });
  const spots = uncrossed(feet, taken);
  return marks.flatMap(({ order }, place): Shape[] => {
    const [end, foot, spot] = [ends, feet, spots].map((each) => each[place] ?? hole) as [Point, Point, Point];
    const far = apart(spot, foot);
    return [
      line('thin', hole, end),
      shape('circle', { cx: end[0], cy: end[1], r: 2.4, fill: 'currentColor' }),
      ...(far > ROWS[0] + 1 ? [line('thin', foot, between(foot, spot, 1 - 8 / far))] : []),
      text([spot[0], spot[1] + 4], String(order), { size: 12, bold: true }),
    ];
  });
}
