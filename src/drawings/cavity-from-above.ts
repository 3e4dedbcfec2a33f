import type { Ring } from '../calc/ways/flue-ring.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { dimension } from './dimension.ts';
import { flueFromAbove } from './flue-from-above.ts';
import { line, type Point, text } from './lines.ts';
import { tape } from './page-sheet.ts';
import type { Shape } from './svg.ts';

/** A cavity from above: along a wide sheet, the eave that is counted from on top; down an upright one, that eave on the right. */
export interface CavityView {
  readonly upright: boolean;
  /** How long and how wide the cavity is, in inches. */
  readonly length: number;
  readonly width: number;
  readonly perInch: number;
  /** A place in it on the sheet: along it from the starting end and across it from the eave, in inches. */
  readonly at: (along: number, across: number) => Point;
}

/** How long and how wide a cavity is drawn at the most, the room before its starting end and beside it, in drawing units. */
export interface CavitySheet {
  readonly along: number;
  readonly across: number;
  readonly before: number;
  readonly near: number;
}

/** The words of such a drawing. */
export const WORDS = 12;

/** Where the parts of a cavity lie on a sheet. */
export function cavityView(
  size: { readonly length: Quantity<'length'>; readonly width: Quantity<'length'> },
  sheet: CavitySheet,
  upright: boolean,
): CavityView {
  const [length, width] = [inches(size.length), inches(size.width)];
  const perInch = Math.min(sheet.along / length, sheet.across / width);
  return {
    upright,
    length,
    width,
    perInch,
    at: (along, across) =>
      upright
        ? [sheet.near + (width - across) * perInch, sheet.before + along * perInch]
        : [sheet.before + along * perInch, sheet.near + across * perInch],
  };
}

/** Its edges, the flues in it, and how long and how wide it is. */
export const cavityShapes = (
  { upright, length, width, perInch, at }: CavityView,
  rings: readonly Ring[],
  size: { readonly length: Quantity<'length'>; readonly width: Quantity<'length'> },
): Shape[] => [
  ...[0, width].map((across) => line('outline', at(0, across), at(length, across))),
  ...[0, length].map((along) => line('outline', at(along, 0), at(along, width))),
  ...rings.flatMap(({ along, at: across, across: open, flue }) =>
    flueFromAbove(at(inches(along), inches(across)), {
      ring: (inches(open) / 2) * perInch,
      flue: (inches(flue ?? open) / 2) * perInch,
    }),
  ),
  ...dimension(at(0, width), at(length, width), upright ? -22 : 26, tape(size.length), WORDS),
  ...dimension(...acrossTheEnd(upright, at, length, width), 24, tape(size.width), WORDS),
];

/** The two corners of the far end, in the order that its dimension is read. */
const acrossTheEnd = (
  upright: boolean,
  at: CavityView['at'],
  length: number,
  width: number,
): [Point, Point] => (upright ? [at(length, width), at(length, 0)] : [at(length, 0), at(length, width)]);

/** Words beside a place: so far along and across from it in drawing units, set along the home whichever way it lies. */
export function alongTheHome(
  { upright, at }: CavityView,
  [along, across]: readonly [number, number],
  [by, aside]: readonly [number, number],
  words: string,
  anchor: 'start' | 'middle' | 'end',
): Shape {
  const [x, y] = at(along, across);
  // Turned words run from below upwards, so that they begin where level ones end.
  const turned = anchor === 'start' ? 'end' : anchor === 'end' ? 'start' : 'middle';
  return upright
    ? text([x - aside, y + by], words, { anchor: turned, size: WORDS, turn: -90 })
    : text([x + by, y - aside], words, { anchor, size: WORDS });
}
