import { line, type Point, text } from './lines.ts';
import { type Shape, shape } from './svg.ts';

/** A scale bar of four equal parts, every other one filled, with its ends named. */
export function scaleBar([x, y]: Point, partInches: number, perInch: number, name: string): Shape[] {
  const part = partInches * perInch;
  const parts = [0, 1, 2, 3].map((place) =>
    shape('rect', {
      x: x + place * part,
      y,
      width: part,
      height: 5,
      stroke: 'currentColor',
      'stroke-width': 0.7,
      ...(place % 2 === 0 ? { fill: 'currentColor' } : {}),
    }),
  );
  return [
    ...parts,
    line('thin', [x, y], [x, y + 5]),
    text([x, y + 18], '0', { size: 12 }),
    text([x + 4 * part, y + 18], name, { size: 12 }),
  ];
}
