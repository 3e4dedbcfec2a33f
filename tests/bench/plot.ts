import { line, type Point, path, text } from '../../src/drawings/lines.ts';
import type { Drawing, Shape } from '../../src/drawings/svg.ts';

/** Points of one thing that grows, in the order of x. */
export interface Series {
  readonly name: string;
  readonly points: readonly Point[];
}

export interface Panel {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly series: readonly Series[];
}

const WIDTH = 700;
const HEIGHT = 200;
const PANEL = HEIGHT + 110;
const LEFT = 70;
/** Room at the right for the names of the curves. */
const RIGHT = 190;
const TOP = 40;

const types = ['outline', 'hidden', 'centre'] as const;

/** A round number at or above the largest value, so that its tenths are round too. @example roundAbove(34) // => 50 */
export function roundAbove(value: number): number {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return power * ([1, 2, 5, 10].find((each) => each * power >= value) ?? 10);
}

function panelShapes({ title, x, y, series }: Panel, from: number): Shape[] {
  const all = series.flatMap(({ points }) => points);
  const [right, top] = [
    Math.max(...all.map(([each]) => each)),
    roundAbove(Math.max(...all.map(([, each]) => each))),
  ];
  const at = ([across, up]: Point): Point => [
    LEFT + (across / (right || 1)) * (WIDTH - LEFT - RIGHT),
    from + TOP + HEIGHT - (up / top) * HEIGHT,
  ];
  const places = [...new Set(all.map(([each]) => each))].sort((a, b) => a - b);
  // Names of neighbours at the left end would stand on each other.
  const told = places.filter(
    (place, count) => count === 0 || at([place, 0])[0] - at([places[count - 1] ?? 0, 0])[0] > 30,
  );
  return [
    text([LEFT, from + 20], title, { anchor: 'start', bold: true, size: 14 }),
    line('thin', at([0, 0]), at([right, 0])),
    line('thin', at([0, 0]), at([0, top])),
    ...[0, 0.5, 1].flatMap((part) => {
      const [left, level] = at([0, top * part]);
      return [
        line('thin', [left - 4, level], [left, level]),
        text([left - 8, level + 4], String(top * part), { anchor: 'end', size: 12 }),
      ];
    }),
    ...told.flatMap((place) => [
      line('thin', at([place, 0]), [at([place, 0])[0], at([place, 0])[1] + 4]),
      text([at([place, 0])[0], at([place, 0])[1] + 18], String(place), { size: 12 }),
    ]),
    text([(LEFT + WIDTH - RIGHT) / 2, from + TOP + HEIGHT + 38], x, { size: 12 }),
    text([LEFT - 8, from + TOP - 8], y, { anchor: 'end', size: 12 }),
    ...series.flatMap(({ name, points }, count) => {
      const last = points.at(-1);
      const [endX, endY] = last ? at(last) : [0, 0];
      return [
        path(types[count % types.length] ?? 'outline', points.map(at)),
        text([endX + 8, endY + 4], name, { anchor: 'start', size: 12 }),
      ];
    }),
  ];
}

/** Curves in panels, one below the other, each axis from nought. */
export const plot = (title: string, description: string, panels: readonly Panel[]): Drawing => ({
  width: WIDTH,
  height: panels.length * PANEL,
  title,
  description,
  shapes: panels.flatMap((panel, place) => panelShapes(panel, place * PANEL)),
});
