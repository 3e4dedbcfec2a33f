import type { Section } from '../calc/cavity/section.ts';
import type { Bays } from '../calc/ways/bays.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { breakLine } from './break-line.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { hoseAlong } from './hose.ts';
import { illustration } from './illustration.ts';
import { leader } from './leader.ts';
import { hatched, line, type Point, path } from './lines.ts';
import { depth, type PageSize, pageSheets, tape, tapeInches } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Drawing } from './svg.ts';
import { type At, chordLines } from './truss-members.ts';

/** Where a part is named: the middle of its words across the sheet, their row, and how far in from the edge its leader ends. */
interface Name {
  readonly words: number;
  readonly row: number;
  readonly to: number;
}

/** Where the section stands and its parts are named, in drawing units; `to` in inches. */
const sheets = {
  wide: {
    drawn: 672,
    ceiling: 236,
    metal: { words: 200, row: 0, to: -0.5 },
    block: { words: 346, row: 0, to: 2.25 },
    fastened: { words: 496, row: 0, to: 15 },
    chord: { words: 641, row: 0, to: 22 },
    below: 74,
    apart: 34,
    trim: { words: 126, row: 0, to: -9 },
    board: { words: 392, row: 0, to: 6.5 },
    old: { words: 507, row: 1, to: 14 },
    tube: { words: 606, row: 0, to: 22 },
  },
  narrow: {
    drawn: 324,
    ceiling: 168,
    metal: { words: 98, row: 1, to: -0.5 },
    block: { words: 192, row: 2, to: 2.25 },
    fastened: { words: 234, row: 0, to: 15 },
    chord: { words: 294, row: 1, to: 23 },
    below: 58,
    apart: 20,
    trim: { words: 66, row: 0, to: -9 },
    board: { words: 160, row: 1, to: 4.7 },
    old: { words: 244, row: 0, to: 13 },
    tube: { words: 264, row: 2, to: 24.3 },
  },
} as const;
const FIRST_ROW = 26;
const ROW = 24;
/** What is drawn, in inches from the outside of the wall. */
const [FROM, TO] = [-17, 26];
const LEFT = 8;
const TUBE_FROM = -11;
const BENDS = 20;

/** The lifted edge of the roof in section, in a bay between two trusses: the edge held on a block, the tube under it. */
export function edgeLiftingDrawing(
  found: Bays,
  { section, oldDepth }: { readonly section: Section; readonly oldDepth: Quantity<'length'> },
  rules: Rulebook,
  size: PageSize,
  name: string,
): Drawing {
  const { width, text: letters } = pageSheets[size];
  const sheet = sheets[size];
  const perInch = sheet.drawn / (TO - FROM);
  const { ceiling } = sheet;
  const at: At = (across, height) => [LEFT + (across - FROM) * perInch, ceiling - height * perInch];
  const { profile } = section;
  const roof = (x: number): number => profile.depthAt(x);
  const [heel, old, tube] = [roof(0), inches(oldDepth), inches(found.tube)];
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const [side] = found.sides;
  if (!side?.tubeFits)
    throw new Error('found an eave that the tube does not fit in, expected one to draw it in');
  const { board, wall, wallShown, overhang, turnedDown, lift, bend, block, trim } = illustration;
  /** The roof's own line goes on straight beyond the wall. */
  const roofLine = (x: number): number => (x < 0 ? heel + x * (roof(1) - heel) : roof(x));
  const lifted = (x: number): number => roofLine(x) + lift * ((bend - x) / (bend + overhang)) ** 2;
  const places = placesAcross(profile, 0, TO);
  const bent = Array.from({ length: BENDS + 1 }, (_, step) => -overhang + ((bend + overhang) * step) / BENDS);
  const oldTop = places.map((x) => at(x, Math.min(old, roof(x))));
  const tubeHigh = old + tube / 2;
  const above = (words: string, { words: x, row, to }: Name, height: number) =>
    leader(words, [x, FIRST_ROW + row * ROW], at(to, height), {
      from: 'below',
      size: letters,
      start: at(to, 0)[0],
    });
  const below = (words: string, { words: x, row, to }: Name, height: number) =>
    leader(words, [x, at(0, -board)[1] + sheet.below + row * ROW], at(to, height), {
      from: 'above',
      size: letters,
      start: at(to, 0)[0],
    });
  const [blockFrom, blockTo] = [1, 1 + block];
  const blockCorners: Point[] = [
    at(blockFrom, roof(blockFrom)),
    at(blockFrom, lifted(blockFrom)),
    at(blockTo, lifted(blockTo)),
    at(blockTo, roof(blockTo)),
  ];
  const [one, two, three, four] = blockCorners as [Point, Point, Point, Point];
  const trimAt = sheet.trim.to;
  const foot = at(0, -board)[1] + sheet.below + 2 * ROW + 8;
  return {
    width,
    height: foot + 54,
    title: 'The lifted edge of the roof, in cross-section',
    description: `In a bay between two trusses the edge trim is off and the edge of the roof metal is lifted and held on a wooden block; farther in, the metal stays fastened. Over the wall the cavity is ${tapeInches(heel)} deep. On the ceiling lie ${depth(old)} of old insulation, so ${tape(side.room)} are free at the eave. A tube ${format(found.tube)} wide goes in over the old insulation, between the trusses, as far as its mark.`,
    shapes: [
      hatches(name),
      hatched([at(0, 0), ...oldTop, at(TO, 0)], hatchId(name, 'old-insulation')),
      path('thin', oldTop),
      ...chordLines({ profile, from: 0, to: TO, chord, hidden: old }, at),
      // The end and the top of the truss behind, where the metal lay.
      path('thin', [at(0, 0), ...places.filter((x) => x <= bend).map((x) => at(x, roof(x)))]),
      path('outline', blockCorners, true),
      line('thin', one, three),
      line('thin', two, four),
      path('outline', [
        at(-overhang, lifted(-overhang) - turnedDown),
        ...bent.map((x) => at(x, lifted(x))),
        ...places.filter((x) => x > bend).map((x) => at(x, roof(x))),
      ]),
      ...hoseAlong(
        [
          [TUBE_FROM, tubeHigh],
          [TO, tubeHigh],
        ],
        tube / 2,
        at,
      ),
      path('outline', [at(TO, 0), at(0, 0), at(0, -board)]),
      path('outline', [at(TO, -board), at(0, -board), at(0, -board - wallShown)]),
      line('outline', at(wall, -board), at(wall, -board - wallShown)),
      breakLine(at(-0.5, -board - wallShown), at(wall + 0.5, -board - wallShown)),
      breakLine(at(TO, -board * 3), at(TO, roof(TO) + board * 2)),
      path('outline', [at(trimAt + 1, 0), at(trimAt, 0), at(trimAt, -trim), at(trimAt + 0.5, -trim)]),
      ...dimension(at(TUBE_FROM, old), at(TUBE_FROM, old + tube), -18, format(found.tube), letters),
      ...dimension(
        at(-overhang, 0),
        at(-overhang, heel),
        at(TUBE_FROM, 0)[0] - at(-overhang, 0)[0] - 18 - sheet.apart,
        tapeInches(heel),
        letters,
      ),
      ...above('roof metal, lifted', sheet.metal, lifted(sheet.metal.to)),
      ...above('wooden block', sheet.block, (roof(sheet.block.to) + lifted(sheet.block.to)) / 2),
      ...above('fastened from here in', sheet.fastened, roof(sheet.fastened.to)),
      ...above('top chord', sheet.chord, roof(sheet.chord.to) - chord / 2),
      ...below('trim, taken off', sheet.trim, -trim / 2),
      ...leader(
        'wall',
        [at(0, 0)[0] - 18, at(0, -board - wallShown / 2)[1] + letters * 0.375],
        at(wall / 2, -board - wallShown / 2),
        {
          from: 'right',
          size: letters,
        },
      ),
      ...below('ceiling board', sheet.board, -board / 2),
      ...below(`old insulation, ${depth(old)}`, sheet.old, old / 2),
      ...below('tube, in to its mark', sheet.tube, tubeHigh),
      ...scaleBar([LEFT + 10, foot + 22], MOST_BAR / 2, perInch),
    ],
  };
}
