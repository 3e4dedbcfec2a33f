import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { Section } from '../calc/cavity/section.ts';
import type { HoseMark, HoseMarks } from '../calc/marks/marks.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { arrowLine } from './arrow-line.ts';
import { breakLine } from './break-line.ts';
import { dimension } from './dimension.ts';
import { hatchId } from './hatch.ts';
import { bandAt, hoseAlong, inked, inwards } from './hose.ts';
import { illustration } from './illustration.ts';
import { leader } from './leader.ts';
import { hatched, line, path, text } from './lines.ts';
import { type PageSize, pageSheets, pushTape, tapeInches } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Shape } from './svg.ts';
import { type At, chordLines } from './truss-members.ts';

/** What the hose is fed into. */
export interface HoseCavity {
  readonly section: Section;
  readonly oldDepth: Quantity<'length'>;
}

/** Where the section stands, and the rows of its words from the top down, in drawing units. */
const sheets = {
  wide: { left: 36, drawn: 610, ridge: 152, rows: [46, 72, 98], back: 98, backAt: 470 },
  narrow: { left: 20, drawn: 296, ridge: 178, rows: [46, 72, 98], back: 128, backAt: 214 },
} as const;

/** Up the slope and over the ridge, in minutes of the clock. */
const TWELVE = 0;

/** The push that a section across the home is drawn along. */
export function pushAtTwelve({ marks }: HoseMarks): HoseMark {
  const push = marks.find(({ ray }) => ray.minutes === TWELVE);
  if (!push) throw new Error('found no push at 12 o’clock, expected one to draw the section along');
  return push;
}

/** How far the hose stops short of the edge of its stretch, in inches. */
export const shortOf = ({ distance, mark }: HoseMark): number => inches(distance) - inches(mark);

/** The section along the push at 12 o'clock, from a little before the hole to the far eave; and how far down the sheet it reaches. */
export function hoseSection(
  found: HoseMarks,
  { section, oldDepth }: HoseCavity,
  rules: Rulebook,
  size: PageSize,
  name: string,
): { readonly shapes: Shape[]; readonly foot: number } {
  const { text: letters } = pageSheets[size];
  const { left, drawn, ridge: ridgeLine, rows, back, backAt } = sheets[size];
  const push = pushAtTwelve(found);
  const { profile } = section;
  const roof = profile.depthAt;
  const hole = inches(rules.value('access.roof-holes.diameter'));
  const hose = inches(rules.value('access.hose.diameter'));
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const old = inches(oldDepth);
  const ridge = inches(ridgeAcross(section));
  const opening = inches(found.opening.across);
  const [end, eave] = [opening + inches(push.mark), opening + inches(push.distance)];
  const from = opening - 2 * hole;
  const perInch = drawn / (eave - from);
  const ceiling = ridgeLine + roof(ridge) * perInch;
  const at: At = (across, height) => [left + (across - from) * perInch, ceiling - height * perInch];
  const roofLine = (a: number, b: number) => placesAcross(profile, a, b).map((x) => at(x, roof(x)));
  const oldLine = (a: number, b: number) =>
    placesAcross(profile, a, b).map((x) => at(x, Math.min(old, roof(x))));
  const lies = old + hose / 2;
  const way = inwards({ at: opening, roof: roof(opening), lies, end, above: 2 * hole });
  const { board, overhang, turnedDown } = illustration;
  const rim = opening + hole / 2;
  const [mouthAcross, mouthHigh] = way[0] ?? [opening, roof(opening)];
  const [x, y] = at(opening, roof(opening));
  const levels = { near: 34, far: 62 };
  const underBoard = at(0, -board)[1];
  const backHeight = lies + hose * 1.1;
  return {
    foot: underBoard + levels.far + 58,
    shapes: [
      hatched([at(from, 0), ...oldLine(from, eave), at(eave, 0)], hatchId(name, 'old-insulation')),
      path('thin', oldLine(from, eave)),
      hatched([...roofLine(end, eave), ...oldLine(end, eave).reverse()], hatchId(name, 'new-fill')),
      ...chordLines({ profile, from, to: eave, chord, hidden: old }, at),
      path('outline', roofLine(from, opening - hole / 2)),
      path('outline', [
        ...roofLine(rim, eave),
        at(eave + overhang, roof(eave)),
        at(eave + overhang, roof(eave) - turnedDown),
      ]),
      path('outline', [at(from, 0), at(eave, 0), at(eave, roof(eave))]),
      path('outline', [at(from, -board), at(eave, -board), at(eave, 0)]),
      breakLine(at(from, -board * 3), at(from, roof(from) + board * 3)),
      ...hoseAlong(way, hose / 2, at),
      inked(bandAt({ at: opening, roof: roof(opening) }, hose / 2), at),
      line('centre', [x, y - 12], [x, underBoard + 10]),
      line('centre', [at(ridge, 0)[0], ridgeLine - 8], [at(ridge, 0)[0], underBoard + 10]),
      ...arrowLine(at(end - hole, backHeight), at(end - 6 * hole, backHeight)),
      ...leader(
        `hose, ${format(rules.value('access.hose.diameter'))}`,
        [x + 34, rows[0]],
        at(mouthAcross, mouthHigh),
        {
          from: 'left',
          size: letters,
          of: rules.value('access.hose.diameter'),
        },
      ),
      ...leader('tape mark, at the roof', [x + 34, rows[1]], [x, y - 2], { from: 'left', size: letters }),
      ...leader(
        `hole, ${format(rules.value('access.roof-holes.diameter'))}`,
        [x + 46, rows[2]],
        at(rim, roof(rim)),
        {
          from: 'left',
          size: letters,
          of: rules.value('access.roof-holes.diameter'),
        },
      ),
      text([at(ridge, 0)[0], ridgeLine - 14], 'ridge', { size: letters }),
      ...leader('drawn back slowly, blowing', [backAt, back], at(end - 3 * hole, backHeight), {
        from: 'below',
        size: letters,
        start: at(end - 3 * hole, 0)[0],
      }),
      ...leader(
        'new fill',
        [at(eave + overhang, 0)[0], at(0, roof(eave) + 2 * hose)[1] - 26],
        at((end + eave) / 2, (old + roof(end)) / 2),
        { from: 'below', size: letters, anchor: 'end', start: at((end + eave) / 2, 0)[0] },
      ),
      ...dimension(
        at(opening, -board),
        at(ridge, -board),
        levels.near,
        format(rules.value('access.roof-holes.below-peak')),
        letters,
        rules.value('access.roof-holes.below-peak'),
      ),
      ...dimension(at(eave, -board), at(end, -board), levels.near, tapeInches(shortOf(push)), letters),
      ...dimension(at(opening, -board), at(end, -board), levels.far, pushTape(push.mark), letters),
      ...scaleBar([left, underBoard + levels.far + 28], MOST_BAR, perInch),
    ],
  };
}
