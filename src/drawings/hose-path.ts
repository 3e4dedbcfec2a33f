import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { HoseMarks } from '../calc/marks/marks.ts';
import { format } from '../quantity/format.ts';
import { inches } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { hatches } from './hatch.ts';
import { stretchShapes } from './hose-plan.ts';
import { rayShapes, ringShapes } from './hose-rays.ts';
import { type HoseCavity, hoseSection, pushAtTwelve, shortOf } from './hose-section.ts';
import { circle, line, text } from './lines.ts';
import { type PageSize, pageSheets, pushTape, tapeInches } from './page-sheet.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing } from './svg.ts';
import type { At } from './truss-members.ts';

/**
 * Where the plan stands across the sheet, and where its scale bar begins from the plan's lower left corner, in drawing units: beside it where
 * there is room, so that on half a sheet of paper its words can still be read.
 */
const plans = {
  wide: { left: 245, drawn: 210, bar: [266, -8], below: 60 },
  narrow: { left: 84, drawn: 212, bar: [0, 70], below: 102 },
} as const;

/**
 * The hose on its way: in a section along the push at 12 o'clock, between two trusses, to its tape mark; and every push of the opening
 * from above, round the clock. Each to its own scale.
 */
export function hosePathDrawing(
  found: HoseMarks,
  cavity: HoseCavity,
  rules: Rulebook,
  size: PageSize,
  name: string,
): Drawing {
  const { width, text: letters } = pageSheets[size];
  const { left, drawn, bar, below } = plans[size];
  const push = pushAtTwelve(found);
  const section = hoseSection(found, cavity, rules, size, name);
  const planTop = section.foot + 92;
  const { stretch } = found;
  const perInch = drawn / (stretch.left + stretch.right);
  const at: At = (x, y) => [left + (x + stretch.left) * perInch, planTop + (stretch.up - y) * perInch];
  const bottom = at(0, -stretch.down)[1];
  const hole = inches(rules.value('access.roof-holes.diameter'));
  const [long, wide] = [stretch.left + stretch.right, stretch.up + stretch.down];
  const trusses = (found.opening.trusses ?? [])
    .map(
      (place) => (found.opening.startingEnd === 'left hand' ? 1 : -1) * (place - inches(found.opening.along)),
    )
    .filter((x) => x > -stretch.left && x < stretch.right);
  return {
    width,
    height: bottom + below,
    secondFrom: section.foot + 16,
    title: 'The way of the hose, in cross-section and from above',
    description: `In cross-section, a hose of ${format(rules.value('access.hose.diameter'))} goes in through a hole of ${format(rules.value('access.roof-holes.diameter'))}, ${format(rules.value('access.roof-holes.below-peak'))} below the ridge, and lies straight between two trusses on the old insulation, in to its tape mark at ${pushTape(push.mark)}. It stops ${tapeInches(shortOf(push))} short of the far eave, and is drawn back from there while it blows. From above, ${found.marks.length} pushes go out from the hole round the clock over ${tapeInches(long)} of the home, numbered from the farthest${found.marks.some(({ stopsAtRing }) => stopsAtRing) ? '; where a flue stands, they stop before the ring kept open about it' : ''}.`,
    shapes: [
      hatches(name),
      text([14, 18], 'along the push at 12 o’clock', { anchor: 'start', size: letters, bold: true }),
      ...section.shapes,
      text([14, section.foot + 34], 'from above', { anchor: 'start', size: letters, bold: true }),
      text([at((stretch.right - stretch.left) / 2, 0)[0], planTop - 34], '12 o’clock: over the ridge', {
        size: letters,
      }),
      ...trusses.map((x) => line('hidden', at(x, -stretch.down), at(x, stretch.up))),
      ...stretchShapes(found, at, ridgeAcross(cavity.section)),
      ...ringShapes(found, at, perInch),
      ...rayShapes(found, at, perInch, width),
      circle('outline', at(0, 0), Math.max(4, (hole / 2) * perInch)),
      ...dimension(
        [at(-stretch.left, 0)[0] - 20, at(0, stretch.up)[1]],
        [at(-stretch.left, 0)[0] - 20, bottom],
        -22,
        tapeInches(wide),
        letters,
      ),
      ...dimension(
        [at(-stretch.left, 0)[0], bottom + 20],
        [at(stretch.right, 0)[0], bottom + 20],
        24,
        tapeInches(long),
        letters,
      ),
      ...scaleBar([left + bar[0], bottom + bar[1]], long, perInch),
    ],
  };
}
