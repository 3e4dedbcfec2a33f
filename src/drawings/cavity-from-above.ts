import type { Ring } from '../calc/ways/flue-ring.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { dimension } from './dimension.ts';
import { flueFromAbove } from './flue-from-above.ts';
import { line, type Point, text } from './lines.ts';
import { type PageSize, tape } from './page-sheet.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './svg.ts';

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

/** The cavity of a home, and the flues in it. */
export interface CavityOn {
  readonly length: Quantity<'length'>;
  readonly width: Quantity<'length'>;
  readonly rings: readonly Ring[];
}

/** How long and how wide a cavity is drawn at the most, and the room before its starting end, after its far end, and beside it, in drawing units. */
export interface CavitySheet {
  readonly along: number;
  readonly across: number;
  readonly before: number;
  readonly after: number;
  readonly near: number;
  readonly far: number;
}

/** A sheet is no narrower than this: a smaller one would be shown enlarged. */
const NARROWEST = { wide: 300, narrow: 340 } as const;
/** What a scale bar takes with the names of its ends, and a line of words under it. */
const BAR = 30;
const NOTE = 18;

/** The words of such a drawing. */
export const WORDS = 12;

/**
 * A cavity from above, to scale, with its edges, its flues, how long and how wide it is, and a scale bar; in it what is drawn of a way in.
 */
export function cavityDrawing(
  on: CavityOn,
  sheets: { readonly [size in PageSize]: CavitySheet },
  size: PageSize,
  {
    within,
    notes = [],
    ...words
  }: Pick<Drawing, 'title' | 'description'> & {
    readonly within: (view: CavityView) => readonly Shape[];
    /** What is told under the scale bar, a line each. */
    readonly notes?: readonly string[];
  },
): Drawing {
  const sheet = sheets[size];
  const upright = size === 'narrow';
  const view = viewOn(on, sheet, upright);
  const [long, high] = [view.length * view.perInch, view.width * view.perInch];
  const foot = upright ? sheet.before + long + sheet.after : sheet.near + high + sheet.far;
  return {
    ...words,
    width: Math.max(
      NARROWEST[size],
      upright ? sheet.near + high + sheet.far : sheet.before + long + sheet.after,
    ),
    height: foot + BAR + notes.length * NOTE,
    shapes: [
      ...cavityShapes(view, on),
      ...within(view),
      ...scaleBar(
        [upright ? sheet.near : sheet.before, foot],
        Math.min(view.length, view.width),
        view.perInch,
      ),
      ...notes.map((note, place) =>
        text([12, foot + BAR + 12 + place * NOTE], note, { anchor: 'start', size: WORDS }),
      ),
    ],
  };
}

/** Where the parts of a cavity lie on a sheet. */
function viewOn(on: CavityOn, sheet: CavitySheet, upright: boolean): CavityView {
  const [length, width] = [inches(on.length), inches(on.width)];
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
const cavityShapes = (
  { upright, length, width, perInch, at }: CavityView,
  { rings, ...size }: CavityOn,
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
