import type { HoseMarks } from '../calc/marks/marks.ts';
import { circle, line, type Point } from './lines.ts';
import type { Shape } from './svg.ts';

/** A vent or flue from above, crossed. */
export function crossed([x, y]: Point, arm: number): Shape[] {
  return [
    line('thin', [x - arm, y - arm], [x + arm, y + arm]),
    line('thin', [x - arm, y + arm], [x + arm, y - arm]),
  ];
}

/** A flue as on the roof's plan: itself thick and crossed, what is kept open about it dashed; nothing where it lies beyond the zone. */
export function ringShapes(
  { x, y, radius, flue }: HoseMarks['rings'][number],
  { left, right, up, down }: HoseMarks['zone'],
  at: (x: number, y: number) => Point,
  perInch: number,
): Shape[] {
  if (x + radius <= -left || x - radius >= right || y + radius <= -down || y - radius >= up) return [];
  const centre = at(x, y);
  const r = Math.max(3, radius * perInch);
  const own = flue === undefined ? r : flue * perInch;
  return [
    circle('hidden', centre, r),
    ...(flue === undefined ? [] : [circle('outline', centre, own)]),
    ...crossed(centre, own * Math.SQRT1_2),
  ];
}
