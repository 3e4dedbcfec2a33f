import { cavitySection, type SectionValues } from '../calc/cavity/section.ts';
import { ridgeAcross } from '../calc/marks/opening.ts';
import type { WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { illustration } from './illustration.ts';
import { line, type Point, path, text } from './lines.ts';
import { depth, inches, type PageSize, pageSheets, tape } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Drawing, Shape } from './svg.ts';
import { trussMembers } from './truss-members.ts';

/** Where the trusses stand, one under the other, and how far the next is below, in drawing units. */
const sheets = {
  wide: { left: 70, drawn: 560, over: 60, between: 34 },
  narrow: { left: 52, drawn: 238, over: 62, between: 26 },
} as const;

const kinds = [
  { shape: 'two-slope', words: 'two-slope', told: 'straight from each eave to the ridge' },
  { shape: 'bowed', words: 'bowed', told: 'one arc from eave to eave' },
  { shape: 'one-slope', words: 'one-slope', told: 'half of a double home' },
] as const;

/** The three kinds of truss with the example's width and depths, to one scale: what the shape alone does to the cavity. */
export function trussKindsDrawing(plan: WorkedJob, rules: Rulebook, size: PageSize): Drawing {
  const { width, text: letters } = pageSheets[size];
  const sheet = sheets[size];
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const { cavity } = plan.job;
  const perInch = sheet.drawn / inches(cavity.width);
  const drawn = kinds.map((kind) => {
    const values: SectionValues = { ...cavity, shape: kind.shape };
    const section = cavitySection(values);
    return { ...kind, section, area: format(section.area, { figures: 3 }), deepest: inches(section.deepest) };
  });
  const step = Math.max(...drawn.map(({ deepest }) => deepest)) * perInch + sheet.over + sheet.between;
  const foot = (place: number): number => (place + 1) * step - sheet.between;
  const last = foot(drawn.length - 1);
  return {
    width,
    height: last + 104,
    title: 'Kinds of truss, with the same width and the same depths',
    description: `Three roof trusses to one scale, each ${tape(cavity.width)} wide and ${depth(inches(drawn[0]?.section.profile.depthAt(0) !== undefined ? cavity.width : cavity.width))}.`,
    shapes: drawn.flatMap(({ section, words, told, area, shape, deepest }, place): Shape[] => {
      const ceiling = foot(place);
      const at = (across: number, height: number): Point => [
        sheet.left + across * perInch,
        ceiling - height * perInch,
      ];
      const { profile } = section;
      return [];
    }),
  };
}
