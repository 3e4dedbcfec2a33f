import { circle, line, type Point } from './lines.ts';
import type { Shape } from './svg.ts';

/** A flue from above: itself thick and crossed, what is kept open about it dashed. Half widths, in drawing units. */
export function flueFromAbove(
  [x, y]: Point,
  { ring, flue }: { readonly ring: number; readonly flue: number },
): Shape[] {
  const arm = flue * Math.SQRT1_2;
  return [
    circle('hidden', [x, y], ring),
    circle('outline', [x, y], flue),
    line('thin', [x - arm, y - arm], [x + arm, y + arm]),
    line('thin', [x - arm, y + arm], [x + arm, y - arm]),
  ];
}
