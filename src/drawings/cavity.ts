import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { WorkedJob } from '../job/planned.ts';
import { inches } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { breakLine } from './break-line.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { illustration, webPlaces } from './illustration.ts';
import { leader } from './leader.ts';
import { hatched, line, type Point, path, text } from './lines.ts';
import { depth, type PageSize, pageSheets, tapeInches } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Drawing } from './svg.ts';
import { type TrussPart, trussMembers, underChord } from './truss-members.ts';

/** Where a part is named: the middle of its words, and where its leader runs, both across the sheet; and in which row. */
interface Name {
  readonly words: number;
  readonly leader: number;
  readonly row: 0 | 1;
}

const straight = (x: number, row: 0 | 1 = 0): Name => ({ words: x, leader: x, row });

/** Where the half section stands, and its rows of names, in drawing units. */
const sheets = {
  wide: {
    left: 70,
    drawn: 560,
    top: 72,
    foot: 118,
    roof: straight(132),
    upper: straight(256),
    room: { words: 424, leader: 482, row: 0 },
    old: straight(380),
    lower: straight(520),
    board: straight(230),
  },
  narrow: {
    left: 60,
    drawn: 226,
    top: 92,
    foot: 138,
    roof: straight(84),
    upper: straight(172),
    room: { words: 184, leader: 228, row: 1 },
    old: straight(138),
    lower: straight(240),
    board: straight(192, 1),
  },
} as const;
/** From one row of names to the next. */
const ROW = 24;

/** The closed cavity before it is filled, from the eave to the ridge, seen between two trusses: its parts by name, to scale. */
export function cavityDrawing(plan: WorkedJob, rules: Rulebook, size: PageSize, name: string): Drawing {
  const { width, text: letters } = pageSheets[size];
  const sheet = sheets[size];
  const { profile, shape } = plan.section;
  const ridge = inches(ridgeAcross(plan.section));
  const [heelDeep, ridgeDeep] = [profile.depthAt(0), profile.depthAt(ridge)];
  const old = plan.job.old.depth ? inches(plan.job.old.depth) : 0;
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const perInch = sheet.drawn / ridge;
  const ceiling = sheet.top + ridgeDeep * perInch;
  const at = (across: number, height: number): Point => [
    sheet.left + across * perInch,
    ceiling - height * perInch,
  ];
  const across = (x: number): number => (x - sheet.left) / perInch;
  const part: TrussPart = { profile, from: 0, to: ridge, chord, hidden: old };
  const places = placesAcross(profile, 0, ridge);
  const oldTop = places.map((x) => at(x, Math.min(old, profile.depthAt(x))));
  const { board, wall, wallShown, overhang, turnedDown } = illustration;
  const foot = ceiling + sheet.foot;
  const above = (words: string, { words: x, leader: start, row }: Name, height: (across: number) => number) =>
    leader(words, [x, sheet.top - 34 - row * ROW], at(across(start), height(across(start))), {
      from: 'below',
      size: letters,
      start,
    });
  const below = (words: string, { words: x, leader: start, row }: Name, height: number) =>
    leader(words, [x, ceiling + 62 + row * ROW], at(across(start), height), {
      from: 'above',
      size: letters,
      start,
    });
  const wallMiddle = at(wall / 2, -board - wallShown / 2);
  /** The last web before the ridge, at its middle. */
  const web = ((webPlaces[2] + webPlaces[3]) / 2) * profile.width;
  return {
    width,
    height: foot + 60,
    title: 'The closed roof cavity, from the eave to the ridge',
    description: `A ${shape} roof in cross-section, before it is filled. At the eave, over the wall, the cavity is ${depth(heelDeep)} deep: the heel. It rises over ${tapeInches(ridge)} to ${depth(ridgeDeep)} at the ridge. From below: the ceiling board, the bottom chord of the truss, ${old > 0 ? `${depth(old)} of old insulation that hides the chord, ` : ''}the room for new fill with the webs in it, the top chord, the metal roof.`,
    shapes: [
      hatches(name),
      ...(old > 0
        ? [
            hatched([at(0, 0), ...oldTop, at(ridge, 0)], hatchId(name, 'old-insulation')),
            path('thin', oldTop),
          ]
        : []),
      ...trussMembers(part, at),
      // The roof metal, with its edge turned down over the wall.
      path('outline', [
        at(-overhang, heelDeep - turnedDown),
        at(-overhang, heelDeep),
        ...places.map((x) => at(x, profile.depthAt(x))),
      ]),
      path('outline', [at(ridge, 0), at(0, 0), at(0, heelDeep)]),
      path('outline', [at(ridge, -board), at(0, -board), at(0, 0)]),
      line('outline', at(0, -board), at(0, -board - wallShown)),
      line('outline', at(wall, -board), at(wall, -board - wallShown)),
      breakLine(at(-overhang, -board - wallShown), at(wall + overhang, -board - wallShown)),
      line(
        'centre',
        [at(ridge, 0)[0], sheet.top - 28 - sheet.room.row * ROW],
        [at(ridge, 0)[0], at(0, -board)[1] + 14],
      ),
      ...dimension(at(-overhang, 0), at(-overhang, heelDeep), -18, `heel ${depth(heelDeep)}`, letters),
      ...dimension(at(ridge, 0), at(ridge, ridgeDeep), 32, depth(ridgeDeep), letters),
      ...dimension(at(0, -board), at(ridge, -board), sheet.foot - 12, tapeInches(ridge), letters),
      ...above('metal roof', sheet.roof, (x) => profile.depthAt(x)),
      ...above('top chord', sheet.upper, (x) => profile.depthAt(x) - chord / 2),
      ...above('room for new fill', sheet.room, (x) => (profile.depthAt(x) + old) / 2),
      ...above(
        'web',
        straight(at(web, 0)[0]),
        () => (chord + underChord(part, webPlaces[3] * profile.width)) / 2,
      ),
      text([at(ridge, 0)[0], sheet.top - 34 - sheet.room.row * ROW], 'ridge', { size: letters }),
      ...leader(
        'wall',
        [at(wall, 0)[0] + 18, at(0, -board - wallShown / 2)[1] + letters * 0.375],
        wallMiddle,
        {
          from: 'left',
          size: letters,
        },
      ),
      ...below('ceiling board', sheet.board, -board / 2),
      ...below('bottom chord', sheet.lower, chord / 2),
      ...(old > 0 ? below('old insulation', sheet.old, old / 2) : []),
      ...scaleBar([sheet.left, foot + 28], MOST_BAR, perInch),
    ],
  };
}
