import type { GableEnds } from '../calc/ways/lane-fields.ts';
import type { Lane, Lanes } from '../calc/ways/lanes.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { alongTheHome, type CavityOn, type CavityView, cavityDrawing, WORDS } from './cavity-from-above.ts';
import { line, text, widthOf } from './lines.ts';
import { type PageSize, pushTape, tape } from './page-sheet.ts';
import { type Drawing, type Shape, shape } from './svg.ts';

/** What is drawn beside the lanes themselves. */
export interface LanesOn extends CavityOn {
  readonly ends: GableEnds;
}

/**
 * The home lies along a wide sheet, and down an upright one. How long and how wide it is drawn at the most, and the room before it (the number of a
 * lane and where its hose runs), beside it (the dimension along it) and after it (the dimension across it, and the bags).
 */
const sheets = {
  wide: { along: 500, across: 260, before: 126, after: 108, near: 52, far: 66 },
  narrow: { along: 900, across: 220, before: 140, after: 128, near: 58, far: 36 },
} as const;
/** A home drawn shorter than this leaves no room for the eave's name between those of its ends. */
const EAVE = 260;
/** Lanes drawn narrower than this leave no room for words in them, and narrower than the other none for a number. */
const ROOM = { words: 17, number: 12 } as const;
/** What shows of a push on both sides of its words, at the least. */
const STUB = 8;

/**
 * The lanes of a gable fill from above, to scale: how far the hose goes into each from either end, where its tape goes, where it runs,
 * and what is blown there. Thick: where the hose comes for sure; dashed: where it is to go and may not come.
 */
export function lanesPlan(found: Lanes, on: LanesOn, size: PageSize): Drawing {
  return cavityDrawing(on, sheets, size, {
    title: 'Lanes from the gable end',
    description: descriptionOf(found, on),
    within: (view) => [...found.lanes.flatMap((lane) => laneShapes(lane, on, view)), ...endsNamed(on, view)],
    notes: found.lanes.some(isDoubtful) ? ['* the hose may not get there'] : [],
  });
}

/** Is a push asked for that the hose is not sure to make? */
const isDoubtful = ({ feedable, hoseFromStart, hoseFromFarEnd, fromStart, fromFarEnd }: Lane): boolean =>
  feedable &&
  (inches(hoseFromStart) > inches(fromStart) + NOISE || inches(hoseFromFarEnd) > inches(fromFarEnd) + NOISE);
const NOISE = 1e-6;

function laneShapes(lane: Lane, { ends }: LanesOn, view: CavityView): Shape[] {
  const { at, perInch, upright, length: whole } = view;
  const middle = inches(lane.middle);
  const high = (inches(lane.to) - inches(lane.from)) * perInch;
  const edge =
    lane.number === 1 ? [] : [line('boundary', at(0, inches(lane.from)), at(whole, inches(lane.from)))];
  const [x, y] = at(0, middle);
  const named =
    high < ROOM.number
      ? []
      : [
          text(upright ? [x, y - 10] : [x - 10, y + 4], String(lane.number), {
            anchor: upright ? 'middle' : 'end',
            size: 13,
            bold: true,
          }),
          alongTheHome(view, [0, middle], [-30, -4], tape(lane.middle), 'end'),
          alongTheHome(view, [whole, middle], [36, -4], format(lane.within, { figures: 3 }), 'start'),
        ];
  if (!lane.feedable)
    return [
      ...edge,
      ...named,
      ...(high < ROOM.words
        ? []
        : [alongTheHome(view, [whole / 2, middle], [0, -4], 'the hose does not fit', 'middle')]),
    ];
  const push = (asked: Quantity<'length'>, sure: Quantity<'length'>, from: 'start' | 'far'): Shape[] => {
    const [to, surely] = [inches(asked), inches(sure)];
    if (!(to > NOISE)) return [];
    const along = (by: number): number => (from === 'start' ? by : whole - by);
    const words = `${pushTape(asked)}${to > surely + NOISE ? '*' : ''}`;
    // The words stand in a gap of the line, where it is long enough to have one.
    const gap = (widthOf(words, WORDS) / 2 + 8) / perInch;
    const inLine = high >= ROOM.words && to > 2 * gap + STUB / perInch;
    const stretches = inLine
      ? [
          [0, to / 2 - gap],
          [to / 2 + gap, to],
        ]
      : [[0, to]];
    const lines = stretches.flatMap(([a = 0, b = 0]) => [
      ...(surely > a ? [line('outline', at(along(a), middle), at(along(Math.min(b, surely)), middle))] : []),
      ...(b > surely + NOISE
        ? [line('hidden', at(along(Math.max(a, surely)), middle), at(along(b), middle))]
        : []),
    ]);
    const [cx, cy] = at(along(to), middle);
    return [
      ...lines,
      shape('circle', { cx, cy, r: 2.6, fill: 'currentColor' }),
      ...(inLine ? [alongTheHome(view, [along(to / 2), middle], [0, -4], words, 'middle')] : []),
    ];
  };
  return [
    ...edge,
    ...push(lane.hoseFromStart, lane.fromStart, 'start'),
    ...(ends === 'both ends' ? push(lane.hoseFromFarEnd, lane.fromFarEnd, 'far') : []),
    ...named,
  ];
}

/** Which end is which, which of them is opened, and the eave that lanes are counted from. */
function endsNamed({ ends }: LanesOn, { upright, at, length, width }: CavityView): Shape[] {
  const far = ends === 'both ends' ? 'far end' : 'far end, shut';
  if (!upright) {
    const [left, top] = at(0, 0);
    const [right] = at(length, 0);
    return [
      text([12, top - 10], 'from the eave', { anchor: 'start', size: WORDS }),
      text([left, top - 10], 'starting end', { anchor: 'start', size: WORDS }),
      // On a short home it stands past the end rather than on the other's name.
      text([Math.max(right, left + widthOf(`starting end${far}`, WORDS) + 30), top - 10], far, {
        anchor: 'end',
        size: WORDS,
      }),
      ...(right - left > EAVE ? [text([(left + right) / 2, top - 10], 'eave', { size: WORDS })] : []),
    ];
  }
  const [left, foot] = at(length, width);
  const [right, middle] = at(length / 2, 0);
  return [
    text([12, 18], 'starting end; the hose runs so far from the eave', { anchor: 'start', size: WORDS }),
    text([left, foot + 116], far, { anchor: 'start', size: WORDS }),
    text([right + 16, middle], 'eave', { size: WORDS, turn: -90 }),
  ];
}

const descriptionOf = ({ lanes }: Lanes, { length, width, ends }: LanesOn): string =>
  `The cavity, ${tape(length)} long and ${tape(width)} wide, in ${lanes.length} ${lanes.length === 1 ? 'lane' : 'lanes'} filled from ${ends}. The table tells of each.`;
