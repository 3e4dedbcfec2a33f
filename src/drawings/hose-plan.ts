import type { Stretch } from '../calc/marks/directions.ts';
import type { HoseMarks } from '../calc/marks/marks.ts';
import { seenFrom } from '../calc/marks/opening.ts';
import type { Skylight } from '../job/wells.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity, quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { rayShapes, ringShapes } from './hose-rays.ts';
import { circle, line, type Point, path, text, widthOf } from './lines.ts';
import { scaleBar } from './scale-bar.ts';
import { type Drawing, type Shape, shape } from './svg.ts';

/** `wide` prints on half a Letter page on its side, `narrow` on a phone held upright. */
export type CardSize = 'wide' | 'narrow';

/** What the plan may say besides the marks. */
export interface CardWords {
  /** Which opening it is for. */
  readonly title?: string;
  /** Where across the ridge lies, from the opening's own eave. */
  readonly ridge?: Quantity<'length'>;
  /** Skylights that reach into the stretch; places across are from the opening's own eave. */
  readonly skylights?: readonly Skylight[];
  /** How far the plan draws, where a push goes on past the end of the stretch. */
  readonly drawn?: Stretch;
}

const tape = (amount: number): string => format(quantity(amount, 'in'), { tape: 8 });

/** Where the plan lies, in drawing units. */
const sheets = {
  wide: { width: 700, left: 88, top: 90, planHeight: 300, right: 40 },
  narrow: { width: 340, left: 82, top: 90, planHeight: 300, right: 24 },
} as const;
/** The words over a plan reach no farther than this. */
const HEADED = 290;
/** From the edge of the plan to its dimensions, to their extension lines (beyond the numbers), and to the scale bar. */
const DIMENSIONS = { from: 20, inner: 38, outer: 62 } as const;
const SCALE_BAR = 98;
/** A second row of numbers under the plan. */
const UNDER = 14;
/** A plan drawn lower than this has no room for a chain beside it. */
const CHAIN = 150;

/**
 * The stretch of one opening from above with 12 o'clock at the top, to scale and dimensioned, and a ray for each push with its number.
 * @param beside how much of the sheet’s width, at its right, is kept for what stands beside the plan, in drawing units
 */
export function hosePlan(
  found: HoseMarks,
  rules: Rulebook,
  size: CardSize,
  words: CardWords = {},
  beside = 0,
): Drawing {
  const stretch = words.drawn ?? found.stretch;
  const drawn = { ...found, stretch };
  const sheet = sheets[size];
  const title = words.title ?? `Opening at ${format(found.opening.along, { tape: 8 })}`;
  const [long, high] = [stretch.left + stretch.right, stretch.up + stretch.down];
  const room = sheet.width - sheet.left - beside - sheet.right;
  const perInch = Math.min(room / long, sheet.planHeight / high);
  const origin: Point = [sheet.left + stretch.left * perInch, sheet.top + stretch.up * perInch];
  const at = (x: number, y: number): Point => [origin[0] + x * perInch, origin[1] - y * perInch];
  // No wider than plan and words ask for.
  const width =
    size === 'wide'
      ? Math.min(sheet.width - beside, Math.max(at(stretch.right, 0)[0] + 44, HEADED))
      : sheet.width;
  const foot = sheet.top + high * perInch;
  const skylights = (words.skylights ?? []).map((each) => skylightOf(found, each, at));
  return {
    width: width + beside,
    height: foot + SCALE_BAR + 48,
    title: `Hose marks. ${title}`,
    description: [descriptionOf(found), ...skylights.map(({ told }) => told)].join(' '),
    shapes: [
      ...stretchShapes(found, at, words.ridge, stretch),
      ...ringShapes(drawn, at, perInch),
      ...skylights.flatMap(({ shapes }) => shapes),
      ...rayShapes(found, at, perInch, width),
      shape('circle', { cx: origin[0], cy: origin[1], r: 2, fill: 'currentColor' }),
      circle(
        'outline',
        origin,
        Math.max(4, (inches(rules.value('access.roof-holes.diameter')) / 2) * perInch),
      ),
      ...dimensions(found, at, perInch, stretch.left),
      ...aboutThePlan(drawn, at, size, foot),
      ...scaleBar([sheet.left, foot + SCALE_BAR], long, perInch),
      text([12, 24], title, { anchor: 'start', size: 15, bold: true }),
    ],
  };
}

/** Eaves as visible edges, as far as the plan draws, the ends of the stretch as boundaries, the ridge as a centre line. */
export function stretchShapes(
  { stretch, opening }: HoseMarks,
  at: (x: number, y: number) => Point,
  ridge: Quantity<'length'> | undefined,
  drawn = stretch,
): Shape[] {
  const { left, right, up, down } = stretch;
  const height = ridge === undefined ? undefined : inches(ridge) - inches(opening.across);
  return [
    line('outline', at(-drawn.left, up), at(drawn.right, up)),
    line('outline', at(-drawn.left, -down), at(drawn.right, -down)),
    line('boundary', at(-left, -down), at(-left, up)),
    line('boundary', at(right, -down), at(right, up)),
    ...(height !== undefined && height > -down && height < up
      ? [line('centre', at(-drawn.left, height), at(drawn.right, height))]
      : []),
  ];
}

/** A skylight in the stretch, crossed as on the roof, and how it is told; what of it lies beyond the stretch is left out. */
function skylightOf(
  { stretch: { left, right, up, down }, opening }: HoseMarks,
  { across, ...place }: Skylight,
  at: (x: number, y: number) => Point,
): { readonly shapes: Shape[]; readonly told: string } {
  const { x, y } = seenFrom(opening, place);
  const half = inches(across) / 2;
  const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
  const [west, east] = [within(x - half, -left, right), within(x + half, -left, right)];
  const [south, north] = [within(y - half, -down, up), within(y + half, -down, up)];
  const corners = [at(west, south), at(east, south), at(east, north), at(west, north)] as const;
  return {
    shapes: [
      path('outline', corners, true),
      line('thin', corners[0], corners[2]),
      line('thin', corners[1], corners[3]),
    ],
    told: `A skylight at ${format(place.along, { tape: 8 })} along the roof, ${format(place.at, { tape: 8 })} from the eave.`,
  };
}

/** The stretch and the place of the opening in it; a part of no length has no dimension. */
function dimensions(
  { stretch }: HoseMarks,
  at: (x: number, y: number) => Point,
  perInch: number,
  /** How far the plan draws to the left: the dimensions across stand beside that. */
  drawn: number,
): Shape[] {
  const { left, right, up, down } = stretch;
  const { from: gap, inner, outer } = DIMENSIONS;
  const below = (a: number, b: number, offset: number): Shape[] => {
    const [[ax, y], [bx]] = [at(a, -down), at(b, -down)];
    return dimension([ax, y + UNDER + gap], [bx, y + UNDER + gap], offset - gap, tape(b - a), 12);
  };
  const beside = (a: number, b: number, offset: number): Shape[] => {
    const [[x, ay], [, by]] = [at(-drawn, a), at(-drawn, b)];
    return dimension([x - gap, ay], [x - gap, by], gap - offset, tape(a - b), 12);
  };
  const split = (a: number, b: number): boolean => Math.min(a, b) > 0 && (a + b) * perInch >= CHAIN;
  const [chainBelow, chainBeside] = [split(left, right), split(up, down)];
  return [
    ...(chainBelow ? [...below(-left, 0, inner), ...below(0, right, inner)] : []),
    ...below(-left, right, chainBelow ? outer : inner),
    ...(chainBeside ? [...beside(up, 0, inner), ...beside(0, -down, inner)] : []),
    ...beside(up, -down, chainBeside ? outer : inner),
  ];
}

const UP = '12 o’clock: up the slope, over the ridge';

/** Which way is up, and where the starting end lies. */
function aboutThePlan(
  { stretch, opening }: HoseMarks,
  at: (x: number, y: number) => Point,
  size: CardSize,
  foot: number,
): Shape[] {
  const [x, top] = at((stretch.right - stretch.left) / 2, stretch.up);
  const words = opening.startingEnd === 'left hand' ? '← starting end' : 'starting end →';
  const right =
    size === 'wide' ? Math.max(at(stretch.right, 0)[0], sheets.wide.left + 200) : sheets.narrow.width - 14;
  const arrow: Point = [x, top - 44];
  return [
    text([Math.max(x, 8 + widthOf(UP, 12) / 2), top - 49], UP, { size: 12 }),
    path('thin', [[arrow[0] - 3, arrow[1] + 6], arrow, [arrow[0] + 3, arrow[1] + 6]]),
    text([right, foot + SCALE_BAR + 38], words, { anchor: 'end', size: 12 }),
  ];
}

function descriptionOf({ marks: [first, ...more], stretch }: HoseMarks): string {
  return `The stretch of an opening, ${tape(stretch.left + stretch.right)} along the home and ${tape(stretch.up + stretch.down)} across. ${
    first ? `${more.length + 1} pushes, the farthest at ${first.clock}.` : 'No push is needed.'
  }`;
}
