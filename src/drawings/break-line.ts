import { type Point, path } from './lines.ts';
import type { Shape } from './svg.ts';

/** How far the zigzag of a break line leaves its line, and how long it is, in drawing units. */
const OUT = 6;
const LONG = 8;

/** The thin line with a zigzag by ISO 128, at which a part goes on that is not drawn; `share` is where along it the zigzag stands. */
export function breakLine(from: Point, to: Point, share = 0.5): Shape {
  const [length, x, y] = [Math.hypot(to[0] - from[0], to[1] - from[1]), to[0] - from[0], to[1] - from[1]];
  const on = (along: number, aside: number): Point => [
    from[0] + (x * along - y * aside) / length,
    from[1] + (y * along + x * aside) / length,
  ];
  const middle = length * share;
  return path('thin', [
    from,
    on(middle - LONG / 2, 0),
    on(middle - LONG / 4, OUT),
    on(middle + LONG / 4, -OUT),
    on(middle + LONG / 2, 0),
    to,
  ]);
}
