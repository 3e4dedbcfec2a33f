import type { Bay, Bays, Side } from '../calc/ways/bays.ts';
import { inches, minus, type Quantity } from '../quantity/quantity.ts';
import { alongTheHome, type CavityOn, type CavityView, cavityDrawing, WORDS } from './cavity-from-above.ts';
import { dimension } from './dimension.ts';
import { line, text } from './lines.ts';
import { type PageSize, tape } from './page-sheet.ts';
import { type Drawing, type Shape, shape } from './svg.ts';

/** The home lies along a wide sheet, and down an upright one. */
const sheets = {
  wide: { along: 620, across: 260, before: 52, after: 56, near: 66, far: 66 },
  narrow: { along: 900, across: 190, before: 60, after: 62, near: 66, far: 62 },
} as const;
const NUMBER = 11;
/** Numbers that stand nearer than this run into one another; then every second or fifth bay has its own. */
const APART = { wide: 19, narrow: 13 } as const;
const NOISE = 1e-6;

/**
 * The bays under a lifted edge from above, to scale: trusses dashed, the tube in each bay thick as far as it goes, dashed where it is wanted and does not
 * come. A bay that it does not go into is crossed.
 */
export function baysPlan(found: Bays, on: CavityOn, size: PageSize): Drawing {
  const within = (view: CavityView): Shape[] => {
    const pitch = Math.min(...found.bays.map(({ from, to }) => inches(to) - inches(from))) * view.perInch;
    const step = [1, 2, 5, 10].find((each) => each * pitch >= APART[size]) ?? 20;
    return [
      ...found.bays.flatMap((bay) =>
        bayShapes(bay, found.sides, view, bay.number % step === 0 || bay.number === 1),
      ),
      ...edgesNamed(found.sides, view),
      ...(fitsSomewhere(found.sides)
        ? []
        : [
            alongTheHome(
              view,
              [view.length / 2, view.width / 2],
              [0, -4],
              'the tube does not go in',
              'middle',
            ),
          ]),
      ...tubes(found.sides, on, view),
    ];
  };
  return cavityDrawing(on, sheets, size, {
    title: 'Bays under the lifted edge',
    description: descriptionOf(found, on),
    within,
  });
}

const fitsSomewhere = (sides: readonly Side[]): boolean => sides.some(({ tubeFits }) => tubeFits);

function bayShapes(
  bay: Bay,
  sides: readonly Side[],
  { upright, at, width }: CavityView,
  numbered: boolean,
): Shape[] {
  const [from, to] = [inches(bay.from), inches(bay.to)];
  const middle = (from + to) / 2;
  const [x, y] = at(middle, 0);
  const number = text(upright ? [x + 8, y + 4] : [x, y - 8], String(bay.number), {
    anchor: upright ? 'start' : 'middle',
    size: NUMBER,
    bold: true,
  });
  const goesIn = bay.wideEnough && fitsSomewhere(sides);
  return [
    ...(bay.number === 1 ? [] : [line('hidden', at(from, 0), at(from, width))]),
    ...(numbered ? [number] : []),
    ...(goesIn || !fitsSomewhere(sides)
      ? sides.flatMap((side, place) => tubeShapes(bay, side, bay.pushed[place], { at, width, middle }))
      : [line('thin', at(from, 0), at(to, width)), line('thin', at(from, width), at(to, 0))]),
  ];
}

function tubeShapes(
  bay: Bay,
  side: Side,
  pushed: Quantity<'length'> | undefined,
  { at, width, middle }: Pick<CavityView, 'at' | 'width'> & { readonly middle: number },
): Shape[] {
  const [far, wanted] = [pushed ? inches(pushed) : 0, inches(side.tube)];
  if (!(far > NOISE)) return [];
  const across = (by: number): number => (side.edge === 'back' ? by : width - by);
  const [cx, cy] = at(middle, across(far));
  return [
    line('outline', at(middle, across(0)), [cx, cy]),
    ...(wanted > far + NOISE && !bay.stopsAtRing
      ? [line('hidden', [cx, cy], at(middle, across(wanted)))]
      : []),
    shape('circle', { cx, cy, r: 2.2, fill: 'currentColor' }),
  ];
}

/** Which edges are lifted, and which end the bays are counted from. */
function edgesNamed(sides: readonly Side[], view: CavityView): Shape[] {
  const { upright, at, length, width } = view;
  const both = sides.length > 1;
  const [left] = at(0, 0);
  return [
    text(upright ? [12, 18] : [left, 16], 'starting end', { anchor: 'start', size: WORDS }),
    alongTheHome(
      view,
      [length / 2, 0],
      [0, upright ? -46 : 30],
      both ? 'back edge, lifted' : 'lifted edge',
      'middle',
    ),
    ...(both
      ? [alongTheHome(view, [length / 2, width], [0, upright ? 44 : -50], 'front edge, lifted', 'middle')]
      : []),
  ];
}

/** How long the tube has to be from each edge, along the starting end. */
function tubes(sides: readonly Side[], { width }: CavityOn, { upright, at }: CavityView): Shape[] {
  const [back] = sides;
  if (!back || sides.length < 2) return [];
  const ridge = inches(back.tube);
  const rest = minus(width, back.tube);
  const parts: [number, number, Quantity<'length'>][] = [
    [0, ridge, back.tube],
    [ridge, inches(width), rest],
  ];
  return parts
    .filter(([from, to]) => to > from + NOISE)
    .flatMap(([from, to, long]) =>
      dimension(...ordered(upright, at(0, from), at(0, to)), -24, tape(long), WORDS),
    );
}

const ordered = <P>(turned: boolean, a: P, b: P): [P, P] => (turned ? [b, a] : [a, b]);

const descriptionOf = ({ bays, sides }: Bays, { length, width }: CavityOn): string =>
  `The cavity, ${tape(length)} long and ${tape(width)} wide, in ${bays.length} ${bays.length === 1 ? 'bay' : 'bays'} filled under ${sides.length > 1 ? 'both edges' : 'one edge'}. The table tells of each.`;
