import { ridgeAcross } from '../calc/cavity/opening.ts';
import { ringAbout } from '../calc/ways/flue-ring.ts';
import type { WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches, minus } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { illustration } from './illustration.ts';
import { leader } from './leader.ts';
import { circle, hatched, line, type Point, path, pathText, text } from './lines.ts';
import { depth, type PageSize, pageSheets } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { type Drawing, type Shape, shape } from './svg.ts';
import type { At } from './truss-members.ts';

/** Where section and plan stand, in drawing units: beside each other, or one under the other. */
const sheets = {
  wide: {
    left: 24,
    drawn: 386,
    flueTop: 84,
    old: { words: 86, to: -17 },
    fill: { words: 365, to: 17 },
    board: { words: 344, to: 10.5 },
    plan: { left: 446, top: 130 },
  },
  narrow: {
    left: 14,
    drawn: 312,
    flueTop: 84,
    old: { words: 62, to: -17 },
    fill: { words: 290, to: 17 },
    board: { words: 270, to: 10.5 },
    plan: { left: 70, top: undefined },
  },
} as const;
/** What is drawn to each side of the middle of the flue, in section and from above, in inches. */
const AROUND = 22;
const PLAN_AROUND = 14;
const ROW = 24;
/** The straight strokes that a ring is hatched up to. */
const STROKES = 72;

/**
 * A hot flue through the cavity and the shield that keeps the fill off it: in section, the cavity filled to the roof on one side and part
 * of the way on the other; and from above. To scale.
 */
export function flueDamDrawing(plan: WorkedJob, rules: Rulebook, size: PageSize, name: string): Drawing {
  const { width, text: letters } = pageSheets[size];
  const sheet = sheets[size];
  const flue = (plan.job.roof.obstacles ?? []).find(({ what }) => what.includes('flue'));
  if (!flue) throw new Error('found no flue in the job, expected one to draw');
  const { profile } = plan.section;
  const place = minus(ridgeAcross(plan.section), flue.from_peak);
  const ring = ringAbout({ along: flue.along, at: place, across: flue.across, ring: undefined }, rules);
  const clearance = rules.value('clearance.flue.to-combustibles');
  const above = rules.value('clearance.flue.shield-above');
  const [pipe, open] = [inches(flue.across) / 2, inches(ring.across) / 2];
  const old = plan.oldOnceFilled ? inches(plan.oldOnceFilled) : 0;
  const perInch = sheet.drawn / (2 * AROUND);
  const roof = (x: number): number => profile.depthAt(inches(place) + x);
  const { board, flueShown, unfilled, foot } = illustration;
  const ceiling = sheet.flueTop + (flueShown + roof(0)) * perInch;
  const at: At = (x, height) => [sheet.left + (x + AROUND) * perInch, ceiling - height * perInch];
  const fillTop = roof(AROUND) - unfilled;
  const shieldTop = fillTop + inches(above);
  const steps = Array.from({ length: 13 }, (_, step) => step / 12);
  const roofLine = (from: number, to: number): Point[] =>
    steps.map((share) => from + share * (to - from)).map((x) => at(x, roof(x)));
  const flueEnds = [roof(0) + flueShown, -board - flueShown] as const;
  const under = at(0, -board)[1];
  const lowest = at(0, flueEnds[1])[1];
  const names = lowest + 34;
  const sectionFoot = names + ROW + 4;
  const planTop = sheet.plan.top ?? sectionFoot + 84;
  const planMiddle: Point = [sheet.plan.left + PLAN_AROUND * perInch, planTop + PLAN_AROUND * perInch];
  const from = (x: number, y: number): Point => [planMiddle[0] + x * perInch, planMiddle[1] - y * perInch];
  const planFoot = from(0, -PLAN_AROUND)[1];
  const barFoot = sheet.plan.top === undefined ? planFoot + 62 : sectionFoot + 20;
  const named = (
    words: string,
    { words: x, to }: { words: number; to: number },
    height: number,
    row: 0 | 1,
  ) =>
    leader(words, [x, names + row * ROW], at(to, height), {
      from: 'above',
      size: letters,
      start: at(to, 0)[0],
    });
  const heading = (lines: readonly string[], x: number, anchor: 'start' | 'end') =>
    lines.map((each, place) => text([x, 48 + place * 17], each, { anchor, size: letters }));
  const box = (a: number, b: number, low: number, high: number): Point[] => [
    at(a, low),
    at(b, low),
    at(b, high),
    at(a, high),
  ];
  return {
    width,
    height: Math.max(barFoot + 30, planFoot + 56),
    // On a wide sheet they stand side by side.
    ...(sheet.plan.top === undefined ? { secondFrom: planTop - 62 } : {}),
    title: 'The shield about a hot flue, in cross-section and from above',
    description: `A flue ${format(flue.across)} across passes through the ceiling, the cavity and the roof. A fixed metal shield stands round it, ${format(clearance)} or more from it on every side, ${format(ring.across)} across; between the two nothing lies. Where the cavity is filled to the roof, the shield reaches from the ceiling to the roof. Where it is filled part of the way, the shield stands ${format(above)} or more above the fill. Outside lie ${old > 0 ? `${depth(old)} of old insulation and ` : ''}the new fill.`,
    shapes: [
      hatches(name),
      text([14, 18], 'in cross-section', { anchor: 'start', size: letters, bold: true }),
      ...[-1, 1].flatMap((side): Shape[] => {
        const far = side * AROUND;
        const near = side * open;
        const top = side < 0 ? roof(near) : shieldTop;
        return [
          ...(old > 0
            ? [
                hatched(box(far, near, 0, old), hatchId(name, 'old-insulation')),
                line('thin', at(far, old), at(near, old)),
              ]
            : []),
          hatched(
            side < 0 ? [...roofLine(far, near), at(near, old), at(far, old)] : box(far, near, old, fillTop),
            hatchId(name, 'new-fill'),
          ),
          ...(side > 0 ? [line('thin', at(near, fillTop), at(far, fillTop))] : []),
          path('outline', [at(near, top), at(near, 0), at(near + side * foot, 0)]),
          path('outline', roofLine(far, side * pipe)),
          path('outline', box(far, near, 0, -board)),
          // The metal plate that closes the ceiling about the flue.
          line('outline', at(near + side, -board), at(side * pipe, -board)),
          line('outline', at(side * pipe, flueEnds[0]), at(side * pipe, flueEnds[1])),
        ];
      }),
      line('centre', at(0, flueEnds[0] + 1), at(0, flueEnds[1] - 1)),
      ...heading(['filled to', 'the roof'], sheet.left, 'start'),
      ...heading(['filled part', 'of the way'], sheet.left + sheet.drawn, 'end'),
      ...dimension(at(-pipe, flueEnds[0]), at(pipe, flueEnds[0]), -14, format(flue.across), letters),
      ...dimension(
        [at(-pipe, 0)[0], under],
        [at(-open, 0)[0], under],
        28,
        format(clearance),
        letters,
        clearance,
      ),
      ...dimension(at(open + foot, fillTop), at(open + foot, shieldTop), 20, format(above), letters, above),
      ...leader('kept open', [sheet.left + 78, 112], at(-(pipe + open) / 2, roof(0) * 0.6), {
        from: 'right',
        size: letters,
      }),
      ...leader('metal shield', [at(open, 0)[0] + 4, 112], at(open, shieldTop - 0.4), {
        from: 'left',
        size: letters,
      }),
      ...named('old insulation', sheet.old, old / 2, 0),
      ...named('new fill', sheet.fill, (old + fillTop) / 2, 0),
      ...named('ceiling board', sheet.board, -board / 2, 1),
      text([(at(-pipe, 0)[0] + at(0, 0)[0]) / 2, at(0, roof(0) / 2)[1]], 'flue', { size: letters }),
      text([sheet.plan.top === undefined ? 14 : sheet.plan.left, planTop - 44], 'from above', {
        anchor: 'start',
        size: letters,
        bold: true,
      }),
      outside(from, open, hatchId(name, 'new-fill')),
      circle('outline', planMiddle, open * perInch),
      circle('outline', planMiddle, pipe * perInch),
      line('centre', from(-open - 1, 0), from(open + 1, 0)),
      line('centre', from(0, open + 1), from(0, -open - 1)),
      ...leader('kept open', [planMiddle[0] - 70, planTop - 14], from(-(pipe + open) / 2, 0.5), {
        from: 'below',
        size: letters,
        start: from(-(pipe + open) / 2, 0)[0],
      }),
      ...leader(
        'metal shield',
        [planMiddle[0] + 74, planTop - 14],
        from(open * Math.SQRT1_2, open * Math.SQRT1_2),
        {
          from: 'below',
          size: letters,
          start: from(open * Math.SQRT1_2, 0)[0],
        },
      ),
      ...dimension(from(-open, 0), from(open, 0), PLAN_AROUND * perInch + 26, format(ring.across), letters),
      ...scaleBar([sheet.left, barFoot], MOST_BAR / 2, perInch),
    ],
  };
}

/** What lies outside a ring, up to a square about it. */
function outside(from: (x: number, y: number) => Point, radius: number, pattern: string): Shape {
  const square: Point[] = [
    from(-PLAN_AROUND, PLAN_AROUND),
    from(PLAN_AROUND, PLAN_AROUND),
    from(PLAN_AROUND, -PLAN_AROUND),
    from(-PLAN_AROUND, -PLAN_AROUND),
  ];
  const round = Array.from({ length: STROKES }, (_, step) => (step / STROKES) * 2 * Math.PI).map((angle) =>
    from(radius * Math.cos(angle), radius * Math.sin(angle)),
  );
  return shape('path', {
    d: pathText(square, true) + pathText(round, true),
    fill: `url(#${pattern})`,
    'fill-rule': 'evenodd',
  });
}
