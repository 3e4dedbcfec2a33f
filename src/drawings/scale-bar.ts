import { line, type Point, text } from './lines.ts';
import { type Shape, shape } from './svg.ts';

/** How long a bar may be, in inches, with its name. */
const bars = [
  { inches: 96, name: '8 ft' },
  { inches: 24, name: '2 ft' },
  { inches: 12, name: '1 ft' },
  { inches: 3, name: '3 in' },
] as const;

/** A section is told in inches: its bar need not be longer than two feet. */
export const MOST_BAR = 24;

/** The names of the two ends, and a gap between them. */
const ROOM_FOR_NAMES = 24;

/**
 * A scale bar of four equal parts, every other one filled, with its ends named: the longest that is no longer than `most` inches.
 * What is too small for any has none; nor has what is drawn so small that the names of the ends would meet.
 */
export function scaleBar([x, y]: Point, most: number, perInch: number): Shape[] {
  const bar = bars.find(({ inches }) => inches <= most);
  if (!bar) return [];
  const part = (bar.inches / 4) * perInch;
  if (4 * part < ROOM_FOR_NAMES) return [];
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
    text([x, y + 18], '0', { size: 13 }),
    text([x + 4 * part, y + 18], bar.name, { size: 13 }),
  ];
}
