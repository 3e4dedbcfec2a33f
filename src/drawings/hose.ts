import { type Point, path, pathText } from './lines.ts';
import { type Shape, shape } from './svg.ts';
import type { At } from './truss-members.ts';

/** How steeply a hose goes in through the roof; it only illustrates. */
const STEEP = Math.PI / 3;
const BEND = 12;

/** Where a hose goes in, in inches. */
export interface WayIn {
  /** The place of the hole across, and the height of the roof there. */
  readonly at: number;
  readonly roof: number;
  /** How high the middle of the hose lies in the cavity, and where its end comes to lie. */
  readonly lies: number;
  readonly end: number;
  /** How much of it is seen above the roof. */
  readonly above: number;
}

/** The middle line of a hose: from above the roof through the middle of its hole, in a bend, and level to its end. */
export function inwards({ at, roof, lies, end, above }: WayIn): Point[] {
  // Half of the way down goes into the bend.
  const radius = (roof - lies) / 2 / (1 - Math.cos(STEEP));
  const bend: Point = [at + (roof - lies) / 2 / Math.tan(STEEP) + radius * Math.sin(STEEP), lies + radius];
  const round = Array.from({ length: BEND + 1 }, (_, step): Point => {
    const angle = STEEP * (1 - step / BEND);
    return [bend[0] - radius * Math.sin(angle), bend[1] - radius * Math.cos(angle)];
  });
  return [[at - above / Math.tan(STEEP), roof + above], ...round, [end, lies]];
}

/** Where a hose as wide comes through the roof: the corners of a band of tape round it. */
export function bandAt({ at, roof }: Pick<WayIn, 'at' | 'roof'>, half: number): Point[] {
  const [ux, uy] = [Math.cos(STEEP), -Math.sin(STEEP)];
  return (
    [
      [-1, -1],
      [-1, 1],
      [1, 1],
      [1, -1],
    ] as const
  ).map(
    ([along, aside]): Point => [
      at + ux * along * half * 0.5 - uy * aside * half,
      roof + uy * along * half * 0.5 + ux * aside * half,
    ],
  );
}

/** A band filled with ink. */
export const inked = (corners: readonly Point[], at: At): Shape =>
  shape('path', {
    d: pathText(
      corners.map(([x, y]) => at(x, y)),
      true,
    ),
    fill: 'currentColor',
  });

/** Both sides of a hose along its middle line, closed at its far end. */
export function hoseAlong(middle: readonly Point[], half: number, at: At): Shape[] {
  const side = (aside: number): Point[] =>
    middle.map(([x, y], place) => {
      const [ax, ay] = middle[Math.max(0, place - 1)] ?? [x, y];
      const [bx, by] = middle[Math.min(middle.length - 1, place + 1)] ?? [x, y];
      const length = Math.hypot(bx - ax, by - ay);
      return at(x - ((by - ay) / length) * aside, y + ((bx - ax) / length) * aside);
    });
  const round = [...side(half), ...side(-half).reverse()];
  // What lies behind a hose is not seen through it.
  return [shape('path', { d: pathText(round, true), fill: 'var(--paper, #fff)' }), path('outline', round)];
}
