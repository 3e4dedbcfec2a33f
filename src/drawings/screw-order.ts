import type { PatchLayers } from '../calc/patch/layers.ts';
import type { CornerRun, Screw } from '../calc/patch/screw-map.ts';
import { inches } from '../quantity/quantity.ts';
import { dimension } from './dimension.ts';
import { circle, line, type Point, path, square, text } from './lines.ts';
import { cutSize, onTape } from './patch-words.ts';
import { type Drawing, type Shape, shape } from './svg.ts';

/** How wide the square is drawn, and the room about it for numbers and dimensions. */
const sheets = {
  wide: { width: 740, drawn: 540, left: 100, top: 74, foot: 92 },
  narrow: { width: 340, drawn: 248, left: 46, top: 68, foot: 92 },
} as const;

const DOT = 2.6;
/** Half the cross at the middle of the metal. */
const MARK = 9;
/** From the edge of the metal to over its numbers. */
const OVER = 18;
/** From the edge of the metal out to the middle of a number. */
const OUT = 13;
/** From the screws of a side to the numbers of a run that ends there, past the arrow. */
const BESIDE = { wide: 34, narrow: 20 } as const;
/** A circle of the hole smaller than this would run through words at its middle. */
const WORDS_IN = 50;
/** Two numbers, a size of 12, stand legibly at this distance or more: of two digits, of three. */
const ROOM = [21, 28] as const;

/**
 * The square of metal with its screws numbered in driving order. Where they stand too close to be numbered each, the middles, and of each
 * run the first, the last and every few between are; the order between them goes on by the same step.
 */
export function screwOrderDrawing(layers: PatchLayers, size: keyof typeof sheets): Drawing {
  const sheet = sheets[size];
  const side = inches(layers.metal);
  const perInch = sheet.drawn / side;
  const middle: Point = [sheet.left + sheet.drawn / 2, sheet.top + sheet.drawn / 2];
  const at = (x: number, y: number): Point => [middle[0] + x * perInch, middle[1] - y * perInch];
  const half = side / 2;
  const inset = inches(layers.inset);
  const spacing = inches(layers.spacing);
  const { screws, runs } = layers.map;
  const step = Math.max(1, Math.ceil(ROOM[screws.length > 99 ? 1 : 0] / (spacing * perInch)));
  const numbered = screws.filter((each) => isNumbered(each, runs, step, spacing));
  const under = sheet.top + sheet.drawn;
  const overNumber = (x: number): Point => [at(x, 0)[0], sheet.top - OVER];
  const radius = (inches(layers.diameter) / 2) * perInch;
  const around = radius < WORDS_IN ? Math.max(MARK, radius) : MARK;
  const firstTop = screws.find(({ on, fromMiddle }) => on === 'top' && fromMiddle > 0 && fromMiddle < half);
  return {
    width: sheet.width,
    height: under + sheet.foot,
    title: 'The screws in driving order',
    description: descriptionOf(layers),
    shapes: [
      square('outline', middle, sheet.drawn),
      square('hidden', middle, (side - 2 * inset) * perInch),
      circle('hidden', middle, radius),
      line('thin', [middle[0] - MARK, middle[1]], [middle[0] + MARK, middle[1]]),
      line('thin', [middle[0], middle[1] - MARK], [middle[0], middle[1] + MARK]),
      ...screws.map(({ x, y, fromMiddle }) => dot(at(x, y), fromMiddle === 0 ? DOT * 1.7 : DOT)),
      ...numbered.map((each) => {
        const [x, y] = outside(each, half, OUT / perInch);
        const [cx, cy] = at(x, y);
        return text([cx, cy + 4.5], String(each.number), { size: 12, bold: each.fromMiddle === 0 });
      }),
      ...runs.flatMap((run) => runShapes(run, at, half - inset, size)),
      text([middle[0], middle[1] - around - 5], 'the middles', { size: 13 }),
      text([middle[0], middle[1] + around + 17], 'first', { size: 13 }),
      text([middle[0], 15], 'top: towards the peak', { size: 13 }),
      ...dimension(at(-half, -half), at(half, -half), 42, cutSize(layers.metal), 13, layers.metal),
      ...(firstTop
        ? dimension(overNumber(0), overNumber(spacing), -14, onTape(layers.spacing), 12, layers.spacing)
        : []),
      text([sheet.left - 36, under + 66], `dashed: the bead, ${onTape(layers.inset)} from the edge,`, {
        of: layers.inset,
        anchor: 'start',
        size: 13,
      }),
      text([sheet.left - 36, under + 84], 'with the screws through it; and the hole', {
        anchor: 'start',
        size: 13,
      }),
    ],
  };
}

const dot = ([cx, cy]: Point, r: number): Shape => shape('circle', { cx, cy, r, fill: 'currentColor' });

/** Where the number of a screw stands: straight out from its side, or out from its corner. */
function outside({ on, x, y }: Screw, half: number, out: number): Point {
  const beyond = half + out;
  const far = (value: number): number => Math.sign(value) * beyond;
  if (on === 'top' || on === 'bottom') return [x, far(y)];
  if (on === 'right' || on === 'left') return [far(x), y];
  return [far(x), far(y)];
}

function isNumbered(screw: Screw, runs: readonly CornerRun[], step: number, spacing: number): boolean {
  if (screw.fromMiddle === 0 || step === 1) return true;
  const run = runs.find(({ first, last }) => first <= screw.number && screw.number <= last);
  const steps = Math.round(screw.fromMiddle / spacing);
  const most = run ? Math.floor((run.last - run.first + (run.endsInCorner ? 0 : 1)) / 2) : 0;
  // The last of a side, and of those between every few, unless the last would stand too close.
  return steps >= most || (steps % step === 0 && most - steps >= step);
}

/** An arrow from the middle towards the corner, with the numbers that are driven that way. */
function runShapes(
  { corner, first, last }: CornerRun,
  at: (x: number, y: number) => Point,
  lineHalf: number,
  size: keyof typeof sheets,
): Shape[] {
  const right = corner.endsWith('right') ? 1 : -1;
  const up = corner.startsWith('top') ? 1 : -1;
  const from = at(right * lineHalf * 0.7, up * lineHalf * 0.7);
  const to = at(right * lineHalf * 0.93, up * lineHalf * 0.93);
  const barb = size === 'wide' ? 9 : 7;
  return [
    line('thin', from, to),
    path('thin', [
      [to[0] - right * barb, to[1] - up * -barb * 0.2],
      to,
      [to[0] - right * barb * 0.2, to[1] + up * barb],
    ]),
    // Along the edge, since the circle of a large hole leaves no room but there.
    text(
      [at(right * lineHalf, 0)[0] - right * BESIDE[size], at(0, up * lineHalf)[1] + (up > 0 ? 15 : -5)],
      first === last ? String(first) : `${first} to ${last}`,
      { anchor: right > 0 ? 'end' : 'start', size: 13 },
    ),
  ];
}

function descriptionOf({ metal, map, spacing }: PatchLayers): string {
  const middles = map.screws.filter(({ fromMiddle }) => fromMiddle === 0).map(({ on }) => on);
  const runs = map.runs.map(
    ({ corner, sides, first, last }) =>
      `${first} to ${last} towards the ${corner} corner, ${sides.join(' and ')} in turn`,
  );
  return `A square of metal ${cutSize(metal)} a side with ${map.screws.length} screws. 1 to ${middles.length}: the middle of each side, ${middles.join(', ')}. Then, ${onTape(spacing)} further each time: ${runs.join('; ')}.`;
}
