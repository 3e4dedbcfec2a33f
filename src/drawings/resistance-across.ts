import type { WorkedJob } from '../job/planned.ts';
import { resistanceAcross } from '../job/resistance-across.ts';
import { formatNumber } from '../quantity/format.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { leader } from './leader.ts';
import { line, type Point, path, text } from './lines.ts';
import { type Box, boxAbout, boxOf, grown, leastCovering, NEVER, type Spot, type Taken } from './room.ts';
import { placesAcross, type SectionSheet } from './section-sheet.ts';
import type { Drawing } from './svg.ts';

const HEIGHT = 170;
const TOP = 30;
/** Room under the axis for its numbers and its name. */
const FOOT = 58;

const LABEL = 14;
/** To stand on a line of the scale is worse than to stand farther off. */
const ON_GRID = 100;
const ASIDE = [0, 12, 24, 40, 60, 80, -12, -24, -40, -60, -80] as const;
const OFF = [18, 24, 30, 36, 44, 52, 60, 70, 80] as const;

/** What the thick curve is at a place, above or below it where no line runs, with a leader to it. */
function labelShapes(words: string, to: Point, taken: readonly Taken[], room: Box) {
  const spots = ASIDE.flatMap((aside) =>
    OFF.flatMap((off) =>
      ([-1, 1] as const).map((down) => ({
        at: [to[0] + aside, to[1] + down * off + (down > 0 ? LABEL * 0.75 : 0)] as const,
        anchor: 'middle' as const,
        cost: (Math.abs(aside) + off) / 4,
        from: down > 0 ? ('above' as const) : ('below' as const),
      })),
    ),
  ) as [LabelSpot, ...LabelSpot[]];
  const spot = leastCovering(words, spots, { size: LABEL, taken, room });
  return {
    shapes: leader(words, spot.at, to, { from: spot.from, size: LABEL }),
    box: boxAbout(words, spot, LABEL),
  };
}

interface LabelSpot extends Spot {
  readonly cost: number;
  readonly from: 'above' | 'below';
}

/** R along the width: the estimate thick, the ends of its uncertainty thin, on the same scale across as the section. */
export function resistanceDrawing(
  plan: WorkedJob,
  rules: Rulebook,
  sheet: SectionSheet,
): Drawing | undefined {
  const points = resistanceAcross(plan, rules, placesAcross(plan.section.profile, sheet.from, sheet.to));
  const first = points[0];
  const most = points.reduce<(typeof points)[number] | undefined>(
    (highest, each) => (!highest || each.value > highest.value ? each : highest),
    undefined,
  );
  if (!first || !most) return undefined;
  const step = [5, 10, 20, 50].find((size) => most.high / size <= 6) ?? 100;
  const top = Math.ceil(most.high / step) * step;
  const at = (across: number, r: number): Point => [
    sheet.left + (across - sheet.from) * sheet.perInch,
    TOP + HEIGHT - (r / top) * HEIGHT,
  ];
  const curve = (which: 'low' | 'value' | 'high', type: 'thin' | 'outline') =>
    path(
      type,
      points.map((point) => at(point.across, point[which])),
    );
  const right = at(sheet.to, 0)[0];
  const ticks = Array.from({ length: Math.round(top / step) + 1 }, (_, place) => place * step);
  const feet = Array.from({ length: Math.floor((sheet.to - sheet.from) / 24) + 1 }, (_, place) => place * 24);
  const place = (of: (typeof points)[number]) => at(of.across, of.value);
  const told = (r: number): string => `R-${formatNumber(r, 2)}`;
  const taken: Taken[] = [
    ...ticks.map((r) => ({ box: boxOf(at(sheet.from, r), at(sheet.to, r)), cost: ON_GRID })),
    ...(['low', 'value', 'high'] as const).flatMap((which) =>
      points.slice(1).map((point, before) => ({
        box: grown(
          boxOf(
            at((points[before] ?? point).across, (points[before] ?? point)[which]),
            at(point.across, point[which]),
          ),
          2,
        ),
        cost: NEVER,
      })),
    ),
  ];
  const room: Box = { left: sheet.left + 2, right: right - 2, top: 2, bottom: TOP + HEIGHT - 2 };
  // Where the R is the same all the way, one label tells it.
  const labelled = told(first.value) === told(most.value) ? [most] : [first, most];
  const labels = labelled.flatMap((each) => {
    const found = labelShapes(told(each.value), place(each), taken, room);
    taken.push({ box: found.box, cost: NEVER });
    return found.shapes;
  });
  return {
    width: sheet.width,
    height: TOP + HEIGHT + FOOT,
    title: sheet.half
      ? 'R of the insulation from the eave to the ridge'
      : 'R of the insulation along the width',
    description: `R-${formatNumber(first.value, 2)} at the eave, rising to R-${formatNumber(most.value, 2)} where the cavity is deepest.${first.low === first.high && most.low === most.high ? '' : ` Uncertain: ${told(first.low)} to ${told(first.high)} at the eave, ${told(most.low)} to ${told(most.high)} at the deepest.`}`,
    shapes: [
      ...ticks.flatMap((r) => [
        line('thin', [sheet.left - 4, at(0, r)[1]], [right, at(0, r)[1]]),
        text([sheet.left - 8, at(0, r)[1] + 4], String(r), { anchor: 'end', size: 12 }),
      ]),
      ...feet.flatMap((place) => [
        line('thin', at(place, 0), [at(place, 0)[0], at(place, 0)[1] + 5]),
        text([at(place, 0)[0], at(place, 0)[1] + 19], String(place / 12), { size: 12 }),
      ]),
      curve('low', 'thin'),
      curve('high', 'thin'),
      curve('value', 'outline'),
      text([sheet.left - 8, 16], 'R', { anchor: 'end', size: 13, bold: true }),
      text(
        [sheet.left + ((sheet.to - sheet.from) * sheet.perInch) / 2, TOP + HEIGHT + 40],
        'ft from the eave',
        { size: 13 },
      ),
      ...labels,
    ],
  };
}
