import { toEdge } from '../calc/marks/directions.ts';
import type { HoseMark, HoseMarks } from '../calc/marks/marks.ts';
import { line, type Point, text } from './lines.ts';
import { spread } from './spread.ts';
import { type Shape, shape } from './svg.ts';

/** From the edge of the zone to the middle of a number, and to the row behind it. */
const OUT = 12;
const ROW = 19;
/** Two numbers of two digits side by side, and one over the other, with a gap to tell them apart by. */
const APART = { beside: 19, over: 14 } as const;
/** A number keeps so far off a line or a ring, and off the opening. */
const CLEAR = 9;
const SIZE = 12;

type Side = 'up' | 'down' | 'left' | 'right';
type At = (x: number, y: number) => Point;

/** A push on its sheet: where it starts, where it ends, where its way meets the zone's edge, and on which side. */
interface DrawnPush {
  readonly mark: HoseMark;
  readonly end: Point;
  readonly edge: Point;
  readonly side: Side;
}

function drawnPush(mark: HoseMark, zone: HoseMarks['zone'], at: At): DrawnPush {
  const { ray } = mark;
  const along = (length: number): Point => at(ray.x * length, ray.y * length);
  const length = toEdge(zone, ray.minutes);
  const [x, y] = [ray.x * length, ray.y * length];
  const gaps: readonly (readonly [Side, number])[] = [
    ['right', zone.right - x],
    ['left', zone.left + x],
    ['up', zone.up - y],
    ['down', zone.down + y],
  ];
  const [side] = gaps.reduce((a, b) => (b[1] < a[1] - 1e-6 ? b : a));
  return { mark, end: along(ray.length), edge: along(length), side };
}

const number = ([x, y]: Point, { order }: HoseMark): Shape =>
  text([x, y + 4], String(order), { size: SIZE, bold: true });

/** A line a push and a dot where the hose ends; then its number beyond the edge of the zone, or beside a push that stops before a ring. */
export function rayShapes(
  { marks, zone, rings }: HoseMarks,
  at: At,
  perInch: number,
  across: readonly [from: number, to: number],
): Shape[] {
  const pushes = marks.map((mark) => drawnPush(mark, zone, at));
  const reaching = pushes.filter(({ mark }) => !mark.stopsAtRing);
  const onSide = (side: Side): DrawnPush[] => reaching.filter((each) => each.side === side);
  const from = at(0, 0);
  const open = rings.map(({ x, y, radius }) => ({ centre: at(x, y), radius: radius * perInch }));
  return [
    ...pushes.flatMap(({ end }) => [
      line('thin', from, end),
      shape('circle', { cx: end[0], cy: end[1], r: 2.4, fill: 'currentColor' }),
    ]),
    ...(['up', 'down'] as const).flatMap((side) =>
      inRows(onSide(side), side === 'up' ? -1 : 1, side === 'up' ? across : under(zone, at, across)),
    ),
    ...(['left', 'right'] as const).flatMap((side) =>
      inColumn(onSide(side), side === 'left' ? -1 : 1, [at(0, zone.up)[1], at(0, -zone.down)[1]]),
    ),
    ...besideRings(pushes, from, open, [at(0, zone.up)[1], at(0, -zone.down)[1]]),
  ];
}

/** Numbers under the zone begin no farther left than this: the dimension across hangs there. */
const BESIDE_ZONE = 6;

const under = (zone: HoseMarks['zone'], at: At, [from, to]: readonly [number, number]) =>
  [Math.max(from, at(-zone.left, 0)[0] - BESIDE_ZONE), to] as const;

/** How much farther down do the dimensions under the zone begin, for numbers that stand apart? */
export function roomUnder({ marks, zone }: HoseMarks, at: At, across: readonly [number, number]): number {
  const pushes = marks.filter(({ stopsAtRing }) => !stopsAtRing).map((mark) => drawnPush(mark, zone, at));
  return placed(
    pushes.filter(({ side }) => side === 'down'),
    under(zone, at, across),
  ).moved
    ? ROW
    : 0;
}

/** Where numbers go side by side, in how many rows, and whether any had to move. */
function placed(pushes: readonly DrawnPush[], [from, to]: readonly [number, number]) {
  const sorted = [...pushes].sort((a, b) => a.edge[0] - b.edge[0]);
  const wanted = sorted.map(({ edge }) => edge[0]);
  const rows = (wanted.length - 1) * APART.beside > to - from ? 2 : 1;
  const places = spread(wanted, APART.beside / rows, from, to);
  return {
    sorted,
    places,
    rows,
    moved: places.some((place, each) => Math.abs(place - (wanted[each] ?? place)) > 2),
  };
}

/** Over or under the zone: each at its push where all have room, else apart with leaders, in two rows where one is too short. */
function inRows(pushes: readonly DrawnPush[], way: 1 | -1, across: readonly [number, number]): Shape[] {
  const { sorted, places, rows, moved } = placed(pushes, across);
  return sorted.flatMap(({ mark, edge: [x, y] }, each): Shape[] => {
    const place = places[each] ?? x;
    const out = OUT + (moved && (rows === 1 || each % 2 === 1) ? ROW : 0);
    return [
      ...(moved ? [line('thin', [x, y], [place, y + way * (out - 7)])] : []),
      number([place, y + way * out], mark),
    ];
  });
}

/** Beside the zone: one over the other, with a leader where a number had to move. */
function inColumn(
  pushes: readonly DrawnPush[],
  way: 1 | -1,
  [top, foot]: readonly [number, number],
): Shape[] {
  const sorted = [...pushes].sort((a, b) => a.edge[1] - b.edge[1]);
  const places = spread(
    sorted.map(({ edge }) => edge[1]),
    APART.over,
    Math.min(top + 4, foot),
    Math.max(foot - 4, top),
  );
  return sorted.flatMap(({ mark, edge: [x, y] }, each): Shape[] => {
    const place = places[each] ?? y;
    return [
      ...(Math.abs(place - y) > 2 ? [line('thin', [x, y], [x + way * (OUT - 7), place])] : []),
      number([x + way * (OUT + 1), place], mark),
    ];
  });
}

/** How far is a place from a line between two others? */
function fromLine([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1);
  const near = Math.min(1, Math.max(0, share));
  return Math.hypot(x - ax - near * dx, y - ay - near * dy);
}

const TURNS = Array.from({ length: 16 }, (_, turn) => (turn * Math.PI) / 8);

/** The numbers of pushes that stop before a ring: beside their line, else round their end with a leader, where nothing else is. */
function besideRings(
  pushes: readonly DrawnPush[],
  from: Point,
  open: readonly { readonly centre: Point; readonly radius: number }[],
  [top, foot]: readonly [number, number],
): Shape[] {
  const taken: Point[] = [];
  return pushes.flatMap(({ mark, end }): Shape[] => {
    if (!mark.stopsAtRing) return [];
    const { ray } = mark;
    const beside = [0.75, 0.55, 0.9].flatMap((share) =>
      [11, -11].map(
        (aside): Point => [
          from[0] + (end[0] - from[0]) * share + ray.y * aside,
          from[1] + (end[1] - from[1]) * share + ray.x * aside,
        ],
      ),
    );
    const round = [26, 38, 52].flatMap((far) =>
      TURNS.map((turn): Point => [end[0] + far * Math.cos(turn), end[1] + far * Math.sin(turn)]),
    );
    const room = (spot: Point): number =>
      Math.min(
        Math.hypot(spot[0] - from[0], spot[1] - from[1]) - 5,
        // Beyond the eaves stand the numbers of the others.
        spot[1] - top,
        foot - spot[1],
        ...open.map(({ centre, radius }) => Math.hypot(spot[0] - centre[0], spot[1] - centre[1]) - radius),
        ...pushes.map((each) => fromLine(spot, from, each.end)),
        ...taken.map((other) => Math.hypot(spot[0] - other[0], spot[1] - other[1]) - CLEAR),
      );
    const spots = [...beside, ...round];
    const spot =
      spots.find((each) => room(each) >= CLEAR) ?? spots.reduce((a, b) => (room(b) > room(a) ? b : a));
    taken.push(spot);
    const [dx, dy] = [spot[0] - end[0], spot[1] - end[1]];
    const short = 1 - 8 / Math.hypot(dx, dy);
    return [
      ...(beside.includes(spot) ? [] : [line('thin', end, [end[0] + dx * short, end[1] + dy * short])]),
      number(spot, mark),
    ];
  });
}
