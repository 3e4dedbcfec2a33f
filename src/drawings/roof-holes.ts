import type { PlannedHole, PlannedRow, WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches } from '../quantity/quantity.ts';
import { circle, type Point, square, text } from './lines.ts';
import type { RoofView } from './roof-view.ts';
import { holeName } from './roof-words.ts';
import { type Box, boxAbout, leastCovering, type Spot, type Taken } from './room.ts';
import type { Shape } from './svg.ts';

const NUMBER = 15;
const BAGS = 14;

/** A hole of the plan on its sheet. */
export interface RoofHole {
  readonly hole: PlannedHole;
  readonly row: PlannedRow;
  readonly centre: Point;
}

/** How large a hole and the squares of its patch are drawn. */
export interface HoleSizes {
  readonly radius: number;
  readonly metal: number;
  readonly membrane: number;
}

/** Which way from the ridge a row's own edge lies. */
export const sideOf = ({ side }: PlannedRow): 1 | -1 => (side === 'back' ? -1 : 1);

/** Every hole, so far from the ridge. */
export const roofHoles = ({ rows }: WorkedJob, { at }: RoofView, belowPeak: number): RoofHole[] =>
  rows.flatMap((row) =>
    row.holes.map((hole) => ({ hole, row, centre: at(inches(hole.along), sideOf(row) * belowPeak) })),
  );

/** Bold words set where they cover least, and what they cover. */
function setBold(
  words: string,
  spots: readonly [Spot, ...Spot[]],
  size: number,
  taken: readonly Taken[],
  room: Box,
): { readonly shape: Shape; readonly box: Box } {
  const spot = leastCovering(words, spots, { size, face: 'bold', taken, room });
  return {
    shape: text(spot.at, words, {
      anchor: spot.anchor,
      size,
      bold: true,
      ...(spot.turned ? { turn: -90 } : {}),
    }),
    box: boxAbout(words, spot, size, 'bold'),
  };
}

/** A hole with its patch and its number, and what the number covers. */
export function holeShapes(
  { hole, row, centre }: RoofHole,
  { radius, metal, membrane }: HoleSizes,
  view: RoofView,
  taken: readonly Taken[],
  room: Box,
): { readonly shapes: Shape[]; readonly box: Box } {
  const name = holeName(hole.number, row, view.double);
  const { shape, box } = setBold(name, besideHole(centre, membrane / 2, view, row), NUMBER, taken, room);
  return {
    shapes: [
      square('thin', centre, membrane),
      square('thin', centre, metal),
      circle('outline', centre, radius),
      shape,
    ],
    box,
  };
}

/** Beyond the patch as seen from the ridge, else beside it along the roof, else towards the ridge. */
function besideHole(
  [x, y]: Point,
  half: number,
  { upright, out }: RoofView,
  row: PlannedRow,
): readonly [Spot, ...Spot[]] {
  const away = out * sideOf(row);
  const level = (way: number): Spot => ({
    at: [x + way * (half + 6), y + NUMBER * 0.36],
    anchor: way > 0 ? 'start' : 'end',
  });
  const above = (way: number): Spot => ({
    at: [x, y + way * (half + 6) + (way > 0 ? NUMBER * 0.75 : 0)],
    anchor: 'middle',
  });
  const [first, second] = upright ? [level, above] : [above, level];
  return [first(away), { ...second(1), cost: 1 }, { ...second(-1), cost: 1 }, { ...first(-away), cost: 2 }];
}

/** The bags of a stretch, and what they cover. */
export const bagsShape = (
  { hole, row }: RoofHole,
  view: RoofView,
  taken: readonly Taken[],
  room: Box,
): { readonly shape: Shape; readonly box: Box } =>
  setBold(format(hole.bags, { figures: 3 }), bagSpots(hole, row, view), BAGS, taken, room);

/** How far from the ridge the bags stand, as a share of the way to the edge, where they leave the holes their room. */
const OUT = { ownSide: { across: 0.72, upright: 0.6 }, otherSide: { across: 0.62, upright: 0.5 } } as const;

/** In the middle of the stretch on the side that the holes leave free, or a little along; turned where a roof is too narrow for them. */
function bagSpots(
  hole: PlannedHole,
  row: PlannedRow,
  { at, back, front, double, upright, perInch }: RoofView,
): readonly [Spot, ...Spot[]] {
  const lies = upright ? 'upright' : 'across';
  const ownSide = double || front === 0;
  const edge = ownSide ? (row.side === 'back' ? -back : front) : front;
  const across = edge * OUT[ownSide ? 'ownSide' : 'otherSide'][lies];
  const middle = (inches(hole.from) + inches(hole.to)) / 2;
  const spot = (by: number, turned: boolean): Spot => {
    const [x, y] = at(middle + by / perInch, across);
    return {
      at: turned ? [x + BAGS * 0.27, y] : [x, y],
      anchor: 'middle',
      turned,
      cost: Math.abs(by) * 0.05 + (turned ? 20 : 0),
    };
  };
  const steps = [6, 12, 18, 24, 32, 40, 50].flatMap((by) => [by, -by]);
  return [
    spot(0, false),
    ...steps.map((by) => spot(by, false)),
    ...(upright ? [0, ...steps].map((by) => spot(by, true)) : []),
  ];
}
