import type { Quantity } from '../quantity/quantity.ts';
import { line, type Point, text, widthOf } from './lines.ts';
import { type Shape, shape } from './svg.ts';

/** Lengths of the parts of a dimension by ISO 129, in drawing units. */
const EXTENSION_GAP = 3;
const EXTENSION_BEYOND = 4;
const ARROW = 7;
/** Clear of what hangs below a line of words, of the line under a link, and of the halo about both. */
export const TEXT_ABOVE = 6;
const SIZES = [13, 12, 11] as const;
/** A dimension shorter than this has its arrows outside. */
const ROOM_FOR_ARROWS = 2.6 * ARROW;

/** Arrows and words of a dimension this long: inside or out, and how large. */
function fitting(length: number, words: string, largest: number) {
  // Where the text is a little too long for its line, it is set a size or two smaller before it moves outside.
  const size =
    SIZES.find((each) => each <= largest && widthOf(words, each) <= length - 4) ?? Math.min(largest, 12);
  const textLength = widthOf(words, size);
  const overshoot = length >= ROOM_FOR_ARROWS ? 0 : 2 * ARROW;
  const fits = textLength <= length - 4;
  return { size, textLength, fits, overshoot, beyond: fits ? overshoot : textLength + overshoot + 6 };
}

/** How far does a dimension this long reach beyond its second point, with its arrows and words? */
export const reachBeyond = (length: number, words: string, largest = 13): number =>
  fitting(length, words, largest).beyond;

/**
 * A dimension between two points on a horizontal or vertical line, set off from them by `offset` drawing units
 * (up or left if negative), with its text above the line and read from below or from the right.
 * The text moves outside, beyond the second point, where there is no room for it between the arrows. `of` is the quantity it tells.
 */
export function dimension(
  from: Point,
  to: Point,
  offset: number,
  words: string,
  largest = 13,
  of?: Quantity,
): Shape[] {
  const vertical = Math.abs(from[0] - to[0]) < Math.abs(from[1] - to[1]);
  const moved = ([x, y]: Point, by: number): Point => (vertical ? [x + by, y] : [x, y + by]);
  const level = vertical
    ? (offset > 0 ? Math.max(from[0], to[0]) : Math.min(from[0], to[0])) + offset
    : (offset > 0 ? Math.max(from[1], to[1]) : Math.min(from[1], to[1])) + offset;
  const [a, b]: [Point, Point] = vertical
    ? [
        [level, from[1]],
        [level, to[1]],
      ]
    : [
        [from[0], level],
        [to[0], level],
      ];
  const outward = Math.sign(offset) || 1;
  const extensions = (
    [
      [from, a],
      [to, b],
    ] as const
  ).map(([start, end]) =>
    line('thin', moved(start, outward * EXTENSION_GAP), moved(end, outward * EXTENSION_BEYOND)),
  );
  const length = Math.abs(vertical ? b[1] - a[1] : b[0] - a[0]);
  const direction = Math.sign(vertical ? b[1] - a[1] : b[0] - a[0]) || 1;
  const { size, textLength, fits, overshoot, beyond } = fitting(length, words, largest);
  const inside = overshoot === 0;
  const along = (point: Point, by: number): Point =>
    vertical ? [point[0], point[1] + by] : [point[0] + by, point[1]];
  const lineEnd = along(b, direction * beyond);
  const middle: Point = fits
    ? [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
    : along(b, direction * (overshoot + 4 + textLength / 2));
  return [
    ...extensions,
    line('thin', along(a, -direction * overshoot), lineEnd),
    arrow(a, vertical, inside ? direction : -direction),
    arrow(b, vertical, inside ? -direction : direction),
    vertical
      ? text([middle[0] - TEXT_ABOVE, middle[1]], words, { turn: -90, size, ...(of ? { of } : {}) })
      : text([middle[0], middle[1] - TEXT_ABOVE], words, { size, ...(of ? { of } : {}) }),
  ];
}

/** A filled arrow with its point at the given place; `back` tells to which side its tail lies. */
function arrow([x, y]: Point, vertical: boolean, back: number): Shape {
  const half = ARROW / 6;
  const tail = back * ARROW;
  const corners: Point[] = vertical
    ? [
        [x, y],
        [x - half, y + tail],
        [x + half, y + tail],
      ]
    : [
        [x, y],
        [x + tail, y - half],
        [x + tail, y + half],
      ];
  return shape('path', {
    d: `M${corners.map((corner) => corner.map((value) => Math.round(value * 100) / 100).join(' ')).join('L')}Z`,
    fill: 'currentColor',
  });
}
