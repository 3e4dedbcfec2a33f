/**
 * The pushes of an opening, worked again from the words of the method alone: degrees in place of minutes, the straight line to the
 * edge by stepping through its four sides, the distance to a push by its end and its foot. Plain numbers in inches.
 */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly up: number;
  readonly down: number;
}

export interface Push {
  /** Degrees from up the slope, to the right. */
  readonly turned: number;
  readonly length: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** So many directions evenly round, each to the nearest 2.5 degrees, the left a mirror of the right. */
export function turnsOf(count: number): number[] {
  const turns: number[] = [];
  for (let step = 0; step < count; step++) {
    const right = step * 2 <= count;
    const share = (360 / count) * (right ? step : count - step);
    const tidy = Math.floor(share / 2.5 + 0.5) * 2.5;
    turns.push(right ? tidy : 360 - tidy);
  }
  return turns;
}

/** How far it is to the edge: the first side that the line meets. */
export function edgeFrom({ left, right, up, down }: Box, turned: number): number {
  const [x, y] = [Math.sin(radians(turned)), Math.cos(radians(turned))];
  const sides = [right / x, -left / x, up / y, -down / y].filter((at, side) => {
    const towards = [x, -x, y, -y][side] ?? 0;
    return towards > 1e-12 && Number.isFinite(at);
  });
  return Math.min(...sides);
}

/** From a place to a push, by the law of cosines. */
export function distance(x: number, y: number, { turned, length }: Push): number {
  const [far, bearing] = [Math.hypot(x, y), Math.atan2(x, y) - radians(turned)];
  const foot = far * Math.cos(bearing);
  if (foot <= 0) return far;
  if (foot <= length) return Math.abs(far * Math.sin(bearing));
  return Math.sqrt(Math.max(0, far * far + length * length - 2 * far * length * Math.cos(bearing)));
}

/** Places all over the stretch, its edge included, no farther than a step from the next. */
export function places({ left, right, up, down }: Box, step: number): [number, number][] {
  const across = Math.max(1, Math.ceil((left + right) / step));
  const along = Math.max(1, Math.ceil((up + down) / step));
  return Array.from({ length: across + 1 }, (_, i) =>
    Array.from({ length: along + 1 }, (_, j): [number, number] => [
      -left + ((left + right) * i) / across,
      -down + ((up + down) * j) / along,
    ]),
  ).flat();
}

/** How far from every push is the place that is worst served? */
export const worst = (pushes: readonly Push[], all: readonly (readonly [number, number])[]): number =>
  Math.max(...all.map(([x, y]) => Math.min(...pushes.map((push) => distance(x, y, push)))));

/** So many pushes round the clock, each to the edge less the stand-off. */
export const round = (box: Box, count: number, standOff: number): Push[] =>
  turnsOf(count).map((turned) => ({ turned, length: Math.max(0, edgeFrom(box, turned) - standOff) }));
