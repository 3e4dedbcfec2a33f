import { line, type Point, path } from './lines.ts';
import type { Shape } from './svg.ts';

const LONG = 8;
const HALF = 3;

/** A thin line with an open arrow at its end: which way something moves. */
export function arrowLine(from: Point, to: Point): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const barb = (aside: number): Point => [to[0] - ux * LONG - uy * aside, to[1] - uy * LONG + ux * aside];
  return [line('thin', from, to), path('thin', [barb(HALF), to, barb(-HALF)])];
}
