import type { PatchLayers } from '../calc/patch/layers.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { circle, hatched, line, type Point, path, square, text } from './lines.ts';
import { cutSize } from './patch-words.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './svg.ts';

/** How wide the membrane is drawn, and where the plan and the section stand. */
const sheets = {
  wide: { width: 850, drawn: 400, left: 76, legend: 550 },
  narrow: { width: 340, drawn: 206, left: 70, legend: undefined },
} as const;

/** A hole drawn with less than this from its middle has no room for its words. */
const NAME_IN = 34;

/** Thicknesses in the section, in drawing units: a few hundredths of an inch would not be seen. */
const THICK = { metal: 3, bead: 7, cap: 16, step: 26 } as const;
/** How far the lip of the cap is drawn beyond the hole, as a share of the overlap: its width is the maker's. */
const LIP = 0.3;

/**
 * The layers of a patch: from above to scale, and in a section across the middle whose widths are to the same scale and whose
 * thicknesses are made larger, so that they are seen.
 */
export function patchLayersDrawing(layers: PatchLayers, size: keyof typeof sheets, name: string): Drawing {
  const sheet = sheets[size];
  const [hole, metal, membrane, overlap] = [
    inches(layers.diameter),
    inches(layers.metal),
    inches(layers.membrane),
    inches(layers.overlap),
  ];
  const perInch = sheet.drawn / membrane;
  const middle: Point = [sheet.left + sheet.drawn / 2, 58 + sheet.drawn / 2];
  const at = (x: number, y: number): Point => [middle[0] + x * perInch, middle[1] - y * perInch];
  const half = { hole: hole / 2, metal: metal / 2, membrane: membrane / 2 };
  // In a hole too small for them the words would hide it: they stand over its centre line.
  const nameUp = half.hole * perInch < NAME_IN ? half.hole + overlap / 2 + 7 / perInch : half.hole * 0.45;
  const foot = at(0, -half.membrane)[1];
  const section = sectionShapes(layers, perInch, [middle[0], foot + 194], name);
  const words = legend(layers);
  // Beside the plan where there is room, else under the section.
  const [legendLeft, legendAt] = sheet.legend ? [sheet.legend, middle[1] - 60] : [10, section.bottom + 30];
  return {
    width: sheet.width,
    height: sheet.legend ? section.bottom + 12 : legendAt + words.length * 20,
    secondFrom: foot + 60,
    title: 'The layers of a patch, from above and in cross-section',
    description: descriptionOf(layers),
    shapes: [
      hatches(name),
      text([sheet.left - 8, 20], 'from above', { anchor: 'start', size: 13, bold: true }),
      square('outline', middle, membrane * perInch),
      square('hidden', middle, metal * perInch),
      circle('hidden', middle, half.hole * perInch),
      circle('hidden', middle, (half.hole + overlap * LIP) * perInch),
      line('centre', at(-half.hole - overlap / 2, 0), at(half.hole + overlap / 2, 0)),
      line('centre', at(0, -half.hole - overlap / 2), at(0, half.hole + overlap / 2)),
      text(at(0, nameUp), `hole ${cutSize(layers.diameter)}`, { size: 13, of: layers.diameter }),
      ...dimension(
        at(-half.membrane, half.membrane),
        at(half.membrane, half.membrane),
        -14,
        cutSize(layers.membrane),
        13,
        layers.membrane,
      ),
      ...dimension(
        at(-half.membrane, -half.metal),
        at(-half.membrane, half.metal),
        -34,
        cutSize(layers.metal),
        13,
        layers.metal,
      ),
      ...dimension(
        at(-half.membrane, -half.hole),
        at(-half.membrane, half.hole),
        -12,
        cutSize(layers.diameter),
        13,
        layers.diameter,
      ),
      ...dimension(
        at(half.membrane, half.metal),
        at(half.membrane, half.membrane),
        26,
        cutSize(layers.overlap),
        12,
        layers.overlap,
      ),
      ...dimension(
        at(half.membrane, half.hole),
        at(half.membrane, half.metal),
        48,
        cutSize(layers.overlap),
        12,
        layers.overlap,
      ),
      ...scaleBar([sheet.left, foot + 22], membrane / 2, perInch),
      text([sheet.left - 8, foot + 76], 'across the middle', { anchor: 'start', size: 13, bold: true }),
      text([sheet.left - 8, foot + 93], 'thicknesses not to scale', { anchor: 'start', size: 13 }),
      ...section.shapes,
      ...words.map(([each, of], place) =>
        text([legendLeft, legendAt + place * 20], each, { anchor: 'start', size: 13, ...(of ? { of } : {}) }),
      ),
    ],
  };
}

/** What each number of the section stands for, from the roof up, with the size that the words tell. */
const legend = (layers: PatchLayers): (readonly [words: string, of?: Quantity])[] => [
  ['1 the roof, with the hole'],
  ['2 the cap, its lip (as made) on a bead'],
  [`3 the metal, ${cutSize(layers.metal)} square, on a bead`, layers.metal],
  ['4 a screw through metal, bead and roof'],
  [`5 the membrane, ${cutSize(layers.membrane)} square`, layers.membrane],
  ['6 the last bead, round the membrane'],
];

/** The section: roof, cap, beads, metal, screws, membrane. `floor` is the middle of the roof's upper face. */
function sectionShapes(
  layers: PatchLayers,
  perInch: number,
  [middle, floor]: Point,
  name: string,
): { readonly shapes: Shape[]; readonly bottom: number } {
  const x = (fromMiddle: number): number => middle + fromMiddle * perInch;
  const [hole, metal, membrane] = [
    inches(layers.diameter) / 2,
    inches(layers.metal) / 2,
    inches(layers.membrane) / 2,
  ];
  const lip = hole + inches(layers.overlap) * LIP;
  const screw = metal - inches(layers.inset);
  const reach = membrane + inches(layers.overlap) * 0.4;
  const lipTop = floor - THICK.bead;
  const metalUnder = floor - THICK.step;
  const metalTop = metalUnder - THICK.metal;
  const over = metalTop - 6;
  const rect = (from: number, to: number, top: number, bottom: number): Point[] => [
    [x(from), top],
    [x(to), top],
    [x(to), bottom],
    [x(from), bottom],
  ];
  const both = (draw: (side: 1 | -1) => Shape[]): Shape[] => [...draw(-1), ...draw(1)];
  const bead = (from: number, to: number, top: number, bottom: number): Shape[] => [
    hatched(rect(from, to, top, bottom), hatchId(name, 'old-insulation')),
    path('thin', rect(from, to, top, bottom), true),
  ];
  const tag = (words: string, at: Point, to: Point): Shape[] => [
    line('thin', at, to),
    text([at[0], at[1] + (at[1] < to[1] ? -4 : 14)], words, { size: 13, bold: true }),
  ];
  const up = 32;
  const beadWide = 7 / perInch;
  return {
    bottom: floor + 48,
    shapes: [
      ...both((side) => [
        path('outline', rect(side * hole, side * reach, floor, floor + THICK.metal), true),
        ...bead(side * (lip - beadWide * 1.6), side * lip, lipTop, floor),
        ...bead(
          side * (screw - beadWide / 2 - 0.06),
          side * (screw + beadWide / 2 + 0.06),
          metalUnder,
          floor,
        ),
        ...bead(side * membrane, side * (membrane + beadWide), floor - THICK.bead, floor),
        // The screw: head above the metal, point below the roof.
        line('outline', [x(side * screw), metalTop - 3], [x(side * screw), floor + 14]),
        line('outline', [x(side * screw) - 4, metalTop - 3], [x(side * screw) + 4, metalTop - 3]),
      ]),
      // The cap: a pan with its lip on the roof.
      path('outline', [
        [x(-lip), lipTop],
        [x(-hole) + 3, lipTop],
        [x(-hole) + 3, floor + THICK.cap],
        [x(hole) - 3, floor + THICK.cap],
        [x(hole) - 3, lipTop],
        [x(lip), lipTop],
      ]),
      path('outline', rect(-metal, metal, metalTop, metalUnder), true),
      path('outline', [
        [x(-membrane), floor - 2],
        [x(-metal) - 8, floor - 2],
        [x(-metal) - 4, over],
        [x(metal) + 4, over],
        [x(metal) + 8, floor - 2],
        [x(membrane), floor - 2],
      ]),
      line('centre', [middle, over - 14], [middle, floor + 30]),
      ...tag('5', [x(-metal * 0.3), over - up], [x(-metal * 0.3), over]),
      ...tag('3', [x(metal * 0.3), over - up], [x(metal * 0.3), metalTop + 1]),
      ...tag('2', [x(hole * 0.55), floor + 32], [x(hole * 0.55), floor + THICK.cap]),
      ...tag('4', [x(screw), over - up], [x(screw), metalTop - 5]),
      ...tag('6', [x(membrane) + 4, over - up], [x(membrane) + 4, floor - THICK.bead]),
      ...tag('1', [x(-reach) + 6, over - up], [x(-reach) + 6, floor]),
    ],
  };
}

function descriptionOf(layers: PatchLayers): string {
  const reach = `reaching ${cutSize(layers.overlap)} beyond what lies below it on every side`;
  return `A round hole ${cutSize(layers.diameter)} across, closed by a cap of that size whose lip lies in a bead on the roof; over it a square of metal ${cutSize(layers.metal)} a side, ${reach}, screwed down through a bead near its edge; over that a square of membrane ${cutSize(layers.membrane)} a side, ${reach}, with a bead round it.`;
}
