import type { PatchLayers } from '../calc/patch/layers.ts';
import type { Screw } from '../calc/patch/screw-map.ts';
import { inches } from '../quantity/quantity.ts';
import { line, type Point, path, text } from './lines.ts';
import { cutSize } from './patch-words.ts';
import { type Drawing, type Shape, shape } from './svg.ts';

/** A CSS inch, which a printer at 100 % makes a true one. */
export const PX_PER_INCH = 96;

/**
 * What both Letter and A4 hold on their side inside a margin of 10 mm, in inches: 11 in by 8.27 in less the margins, a little kept free.
 */
const SHEET = { width: 10.15, height: 7.4 } as const;
/** Room over the template, and under it for the bars and the words, in inches. */
const OVER = 0.08;
const UNDER = 2.1;

/**
 * Half of the square of metal at full size, with its screws in driving order, the half of the hole, and a bar of one inch both ways to measure
 * the print by. The other half is marked with the sheet turned about the middle. Undefined where the half does not fit on one sheet.
 */
export function patchTemplate(layers: PatchLayers): Drawing | undefined {
  const side = inches(layers.metal);
  const half = side / 2;
  if (side > SHEET.width || OVER + half + UNDER > SHEET.height) return undefined;
  const middle: Point = [(SHEET.width / 2) * PX_PER_INCH, (OVER + half) * PX_PER_INCH];
  const at = (x: number, y: number): Point => [middle[0] + x * PX_PER_INCH, middle[1] - y * PX_PER_INCH];
  const hole = inches(layers.diameter) / 2;
  const { screws } = layers.map;
  const shown = screws.filter(({ y }) => y > -0.001);
  const bars: Point = [at(-SHEET.width / 2, 0)[0] + 6, middle[1] + 150];
  const words = sentences(layers);
  return {
    width: SHEET.width * PX_PER_INCH,
    height: (OVER + half + UNDER) * PX_PER_INCH,
    title: `Marking template for a patch over a hole of ${cutSize(layers.diameter)}, full size`,
    description: `The upper half of a square of metal ${cutSize(layers.metal)} a side, with ${shown.length} screws numbered in driving order and the half of the hole. ${words.join(' ')}`,
    shapes: [
      path('outline', [at(-half, 0), at(-half, half), at(half, half), at(half, 0)]),
      line('centre', at(-half, 0), at(half, 0)),
      shape('path', {
        d: arc(at(-hole, 0), at(hole, 0), hole * PX_PER_INCH),
        stroke: 'currentColor',
        'stroke-width': 0.7,
      }),
      line('thin', at(0, 0), at(0, Math.min(0.35, half))),
      ...shown.flatMap((each) => mark(each, turned(each, screws), at)),
      text(at(0, (half + hole) / 2 - 0.1), 'top: towards the peak', { size: 15, bold: true }),
      text(at(0, hole - 0.35), `hole ${cutSize(layers.diameter)}`, { size: 14 }),
      text(at(0, 0.45), 'middle', { size: 13 }),
      ...checkBars(bars),
      ...words.map((each, place) =>
        text([bars[0] + PX_PER_INCH + 60, middle[1] + 30 + place * 21], each, {
          anchor: 'start',
          size: 14,
          bold: place < 2,
        }),
      ),
    ],
  };
}

/** What is said on the sheet itself, since it goes on the roof without its page. */
const sentences = (layers: PatchLayers): string[] => [
  'Print at 100 %, on its side, not fitted to the page. Lay a tape on both bars.',
  'If either bar is not 1 in long, don’t use this sheet.',
  'Cut along the thick line and the dash-dot line.',
  'Lay the dash-dot edge across the middle of the metal. Mark the screws.',
  'Turn the sheet half round about the middle. Mark the others.',
  'The numbers are the driving order. After the stroke: with the sheet turned.',
  `The metal is ${cutSize(layers.metal)} square. The membrane reaches ${cutSize(layers.overlap)} beyond it on every side: ${cutSize(layers.membrane)} square.`,
];

const arc = ([x1, y1]: Point, [x2, y2]: Point, r: number): string =>
  `M${x1} ${y1}A${r} ${r} 0 0 1 ${x2} ${y2}`;

/** The screw that lies where this mark lies once the sheet is turned. */
const turned = ({ x, y }: Screw, screws: readonly Screw[]): Screw | undefined =>
  screws.find((other) => Math.abs(other.x + x) < 0.001 && Math.abs(other.y + y) < 0.001);

const ARM = 7;

/** A cross to punch through, with its numbers on the inner side. */
function mark(screw: Screw, other: Screw | undefined, at: (x: number, y: number) => Point): Shape[] {
  const [x, y] = at(screw.x, screw.y);
  const words = `${screw.number}/${other?.number ?? ''}`;
  const options = { size: 13, bold: screw.fromMiddle === 0 };
  const onMiddle = screw.y < 0.001;
  const number =
    screw.on === 'right' || screw.on === 'left'
      ? text([x - Math.sign(screw.x) * 12, y + (onMiddle ? -8 : 4.5)], words, {
          ...options,
          anchor: screw.x > 0 ? 'end' : 'start',
        })
      : text([x - (screw.on === 'top' ? 0 : Math.sign(screw.x) * 22), y + 23], words, options);
  return [
    line('thin', [x - ARM, y], [x + ARM, y]),
    line('thin', [x, y - ARM], [x, y + ARM]),
    shape('circle', { cx: x, cy: y, r: 2, fill: 'currentColor' }),
    number,
  ];
}

/** A bar of one inch across and one up, with their ends marked. */
function checkBars([x, y]: Point): Shape[] {
  const long = PX_PER_INCH;
  const bar = (way: 'across' | 'up', attributes: Readonly<Record<string, number>>): Shape =>
    shape('rect', { ...attributes, 'data-bar': way, fill: 'currentColor' });
  return [
    bar('across', { x, y, width: long, height: 5 }),
    bar('up', { x, y: y + 5 - long, width: 5, height: long }),
    line('thin', [x, y], [x, y + 14]),
    line('thin', [x + long, y], [x + long, y + 14]),
    text([x + long / 2, y + 22], '1 in', { size: 14, bold: true }),
    text([x + 22, y - long / 2 + 8], '1 in', { size: 14, bold: true, turn: -90 }),
  ];
}
