import { ridgeAcross } from '../calc/cavity/opening.ts';
import { cavitySection } from '../calc/cavity/section.ts';
import type { WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { illustration } from './illustration.ts';
import { line, path, text } from './lines.ts';
import { depth, type PageSize, pageSheets, tape } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Drawing, Shape } from './svg.ts';
import { type At, trussMembers } from './truss-members.ts';

/** Where the trusses stand one under the other: room over each for its words, and under it for the size of its section. */
const sheets = {
  wide: { left: 62, drawn: 580, over: 62, under: 42 },
  narrow: { left: 52, drawn: 236, over: 60, under: 40 },
} as const;

const kinds = [
  { shape: 'two-slope', words: 'two-slope', told: 'straight from eave to ridge' },
  { shape: 'bowed', words: 'bowed', told: 'one arc from eave to eave' },
  {
    shape: 'one-slope',
    words: 'one-slope: one of two sections',
    told: 'the high side is the marriage line',
  },
] as const;

/** The three kinds of truss with the example's width and depths, to one scale: what the shape alone does to the cavity. */
export function trussKindsDrawing(plan: WorkedJob, rules: Rulebook, size: PageSize): Drawing {
  const { width, text: letters } = pageSheets[size];
  const sheet = sheets[size];
  const { cavity } = plan.job;
  const across = inches(cavity.width);
  const perInch = sheet.drawn / across;
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const drawn = kinds.map((kind) => ({ ...kind, section: cavitySection({ ...cavity, shape: kind.shape }) }));
  let foot = 0;
  const trusses = drawn.map(({ section, ...words }) => {
    foot += sheet.over + inches(section.deepest) * perInch;
    const ceiling = foot;
    foot += sheet.under;
    return { section, ceiling, ...words };
  });
  const bottom = trusses[trusses.length - 1]?.ceiling ?? foot;
  return {
    width,
    height: bottom + 122,
    title: 'Kinds of truss, with the same width and the same depths',
    description: `Three trusses to one scale, each ${tape(cavity.width)} wide, ${trusses
      .map(
        ({ shape, section }) =>
          `${shape}: ${depth(section.profile.depthAt(0))} at the eave, ${depth(inches(section.deepest))} at the ridge, a cross-section of ${areaOf(section)}`,
      )
      .join('; ')}.`,
    shapes: [
      ...trusses.flatMap(({ section, ceiling, words, told }): Shape[] => {
        const at: At = (x, height) => [sheet.left + x * perInch, ceiling - height * perInch];
        const { profile } = section;
        const ridge = inches(ridgeAcross(section));
        const top = profile.depthAt(ridge);
        const places = placesAcross(profile, 0, across);
        const { board } = illustration;
        return [
          ...trussMembers({ profile, from: 0, to: across, chord }, at),
          path('outline', [at(0, 0), ...places.map((x) => at(x, profile.depthAt(x))), at(across, 0)], true),
          path('thin', [at(0, 0), at(0, -board), at(across, -board), at(across, 0)]),
          line('centre', at(ridge, top + 7 / perInch), at(ridge, -7 / perInch)),
          ...dimension(at(0, 0), at(0, profile.depthAt(0)), -16, depth(profile.depthAt(0)), letters),
          ...(ridge < across
            ? [line('thin', [at(ridge, top)[0] + 3, at(ridge, top)[1]], at(across, top))]
            : []),
          ...dimension(at(across, 0), at(across, top), 28, depth(top), letters),
          text([sheet.left, at(0, top)[1] - 30], words, { anchor: 'start', size: letters, bold: true }),
          text([sheet.left, at(0, top)[1] - 12], told, { anchor: 'start', size: letters }),
          text([at(across / 4, 0)[0], ceiling + 22], `area ${areaOf(section)}`, { size: letters }),
        ];
      }),
      ...dimension([sheet.left, bottom], [sheet.left + sheet.drawn, bottom], 54, tape(cavity.width), letters),
      ...scaleBar([sheet.left, bottom + 90], MOST_BAR, perInch),
    ],
  };
}

const areaOf = ({ area }: ReturnType<typeof cavitySection>): string => format(area, { figures: 3 });
