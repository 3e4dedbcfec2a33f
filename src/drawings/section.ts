import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { dimension, reachBeyond } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { inInches } from './in-inches.ts';
import { hatched, line, type Point, path, text } from './lines.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { type DrawnCavity, placesAcross, type SectionSheet } from './section-sheet.ts';
import type { Drawing } from './svg.ts';

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** Room above the roof where its dimensions need none. */
const TOP = 56;
/** The foot of the lines that explain the hatches: nothing else stands so high. */
const LEGEND = 44;

/** From the end of a dimension that hangs below the ceiling to the line of the width, whose words stand between. */
const WIDTH_WORDS = 30;

/** A dimension of a height, at a place across. */
interface Height {
  readonly across: number;
  readonly low: number;
  readonly high: number;
  readonly offset: number;
  readonly words: string;
}

/** The cavity in section, to scale: ceiling, roof, old insulation and new fill told apart by their hatching, dimensioned. */
export function sectionDrawing(cavity: DrawnCavity, sheet: SectionSheet, name: string): Drawing {
  const { profile } = cavity.section;
  const { from, to, left, perInch } = sheet;
  const most = inches(cavity.section.deepest);
  const places = placesAcross(profile, from, to);
  const old = cavity.oldOnceFilled ? inches(cavity.oldOnceFilled) : 0;
  const oldWords = depthWords(cavity, old);
  const [first = 0, last = 0] = [places[0], places[places.length - 1]];
  const heights = heightsOf(cavity, sheet, old);
  const above = heights.map(
    ({ low, high, words }) => high * perInch + reachBeyond((high - low) * perInch, words),
  );
  const ceiling = Math.max(TOP + most * perInch, LEGEND + Math.max(...above));
  // The old layer is told below the ceiling, where nothing is hatched: it is too thin to hold its own text.
  const below = old > 0 ? Math.max(62, reachBeyond(old * perInch, oldWords) + WIDTH_WORDS) : 34;
  const at = (across: number, height: number): Point => [
    left + (across - from) * perInch,
    ceiling - height * perInch,
  ];
  const roof = places.map((x) => at(x, profile.depthAt(x)));
  const oldTop = places.map((x) => at(x, Math.min(old, profile.depthAt(x))));
  const oldTold = oldToldAt(cavity, sheet, old, askedAcross(cavity, sheet, old));
  const halfway = sheet.half ? ' to the ridge' : '';
  return {
    width: sheet.width,
    height: ceiling + below + 62,
    title: sheet.half
      ? 'The cavity in cross-section, from the eave to the ridge'
      : 'The cavity in cross-section',
    description: `A ${cavity.section.shape} cavity ${tape(cavity.section.width)} wide, ${inInches(cavity.section.deepest)} at its deepest and ${depthWords(cavity, toTheMark(profile.depthAt(from)))} at the eave${old > 0 ? `, with ${oldWords} of old insulation on the ceiling and new fill above it` : ', filled with new fill'}.`,
    shapes: [
      hatches(name),
      hatched([...roof, ...[...oldTop].reverse()], hatchId(name, 'new-fill')),
      ...(old > 0
        ? [
            hatched([at(first, 0), ...oldTop, at(last, 0)], hatchId(name, 'old-insulation')),
            path('thin', oldTop),
          ]
        : []),
      // At the ridge a half section is cut, and nothing stands there.
      path('outline', [at(first, 0), ...roof, ...(sheet.half ? [] : [at(last, 0)])]),
      path('outline', [at(first, 0), at(last, 0)]),
      path('outline', [at(first, -0.5), at(last, -0.5)]),
      ...(sheet.half ? [line('centre', at(last, most + 8 / perInch), at(last, -10 / perInch))] : []),
      ...dimension(
        at(first, 0),
        at(last, 0),
        below,
        `${tape({ ...cavity.section.width, amount: to - from, unit: 'in' })}${halfway}`,
      ),
      ...(old > 0 ? dimension(at(oldTold.across, old), at(oldTold.across, 0), oldTold.offset, oldWords) : []),
      ...heights.flatMap(({ across, low, high, offset, words }) =>
        dimension(at(across, low), at(across, high), offset, words),
      ),
      text([left, 20], 'new fill: slanted strokes', { anchor: 'start', size: 13 }),
      ...(old > 0 ? [text([left, 38], 'old insulation: crossed', { anchor: 'start', size: 13 })] : []),
      ...scaleBar([left, ceiling + below + 28], Math.min(MOST_BAR, to - from), perInch),
    ],
  };
}

const depthWords = (cavity: DrawnCavity, amount: number): string =>
  inInches({ ...cavity.section.deepest, amount, unit: 'in' });

const toTheMark = (depth: number): number => Math.round(depth * 8) / 8;

/** Where is the cavity deepest, on the part that is drawn; and is that at one of its ends? */
function deepestOf(cavity: DrawnCavity, { from, to }: SectionSheet) {
  const across = Math.min(to, Math.max(from, inches(cavity.section.deepestAt)));
  return { across, atStart: across === from, atEnd: across === to };
}

/** From the line of one height to that of the next, at the least: the words of the one on the right stand between them. */
const APART = 22;
/** The same beside an end without any depth, whose words lie level. */
const APART_LEVEL = 64;
/** From the deepest place to the lines of its heights, on either side. */
const BESIDE = 26;

/** Is the old layer told midway? On half a section, if it is not told to be deeper than the cavity there. */
const oldMidway = ({ section }: DrawnCavity, { from, to, half }: SectionSheet, old: number): boolean =>
  half && section.profile.depthAt((from + to) / 2) >= old;

/** The old layer is told midway, on the side that the height asked for leaves free; else at the deepest place. */
function oldToldAt(
  cavity: DrawnCavity,
  sheet: SectionSheet,
  old: number,
  asked: number | undefined,
): { across: number; offset: number } {
  if (oldMidway(cavity, sheet, old)) {
    const midway = (sheet.from + sheet.to) / 2;
    const taken = asked !== undefined && Math.abs((asked - midway) * sheet.perInch - 20) < APART;
    return { across: midway, offset: taken ? -24 : 20 };
  }
  const deepest = deepestOf(cavity, sheet);
  return { across: deepest.across, offset: deepest.atEnd ? -BESIDE : BESIDE };
}

/** Every height that is told: at both ends, at the deepest place between them, and what is to come above the old insulation. */
function heightsOf(cavity: DrawnCavity, sheet: SectionSheet, old: number): Height[] {
  const { profile } = cavity.section;
  const most = inches(cavity.section.deepest);
  const { across, atStart, atEnd } = deepestOf(cavity, sheet);
  const ends = [
    { across: sheet.from, high: profile.depthAt(sheet.from), offset: -20 },
    {
      across: sheet.to,
      high: sheet.half ? most : profile.depthAt(sheet.to),
      offset: sheet.half ? 44 : 24,
    },
  ].map((end) => ({ ...end, low: 0, words: depthWords(cavity, toTheMark(end.high)) }));
  const told = askedHeight(cavity, askedAcross(cavity, sheet, old));
  if (sheet.half) return [...ends, ...told];
  return [
    ...ends,
    ...told,
    ...(old > 0
      ? [
          {
            across,
            low: old,
            high: most,
            offset: atEnd ? -BESIDE : BESIDE,
            words: depthWords(cavity, most - old),
          },
        ]
      : []),
    // Where the deepest place is an end, the end tells it.
    ...(atStart || atEnd
      ? []
      : [{ across, low: 0, high: most, offset: -BESIDE, words: inInches(cavity.section.deepest) }]),
  ];
}

/** Where is the depth told that was asked for, on the half that is drawn? Nowhere if another height stands so near that the two would run into each other. */
function askedAcross(cavity: DrawnCavity, sheet: SectionSheet, old: number): number | undefined {
  const { section, askedAt } = cavity;
  const { from, to, half, perInch } = sheet;
  if (!askedAt) return undefined;
  const asked = inches(askedAt);
  const place = half && asked > to ? section.profile.width - asked : asked;
  const deepest = deepestOf(cavity, sheet);
  const inside = !deepest.atStart && !deepest.atEnd;
  const besideDeepest = inside || (old > 0 && !oldMidway(cavity, sheet, old));
  const near = (other: number, by: number): boolean => Math.abs(place - other) * perInch < by;
  const nearEnd = [from, to].some((end) => near(end, section.profile.depthAt(end) > 0 ? APART : APART_LEVEL));
  const taken = nearEnd || (besideDeepest && near(deepest.across, BESIDE + APART));
  return taken ? undefined : place;
}

/** The depth at the place that was asked for. */
function askedHeight({ section, askedAt }: DrawnCavity, across: number | undefined): Height[] {
  if (!askedAt || across === undefined) return [];
  const depth = section.depthAt(askedAt);
  return [
    {
      across,
      low: 0,
      high: inches(depth),
      offset: 0,
      words: inInches({ ...depth, amount: toTheMark(inches(depth)), unit: 'in' }),
    },
  ];
}
