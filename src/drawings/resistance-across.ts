import type { WorkedJob } from '../job/planned.ts';
import { resistanceAcross } from '../job/resistance-across.ts';
import { formatNumber } from '../quantity/format.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { line, type Point, path, text } from './lines.ts';
import { placesAcross, type SectionSheet } from './section-sheet.ts';
import type { Drawing } from './svg.ts';

const HEIGHT = 170;
const TOP = 30;
/** Room under the axis for its numbers and its name. */
const FOOT = 58;

/** R along the width: the estimate thick, the ends of its uncertainty thin, on the same scale across as the section. */
export function resistanceDrawing(
  plan: WorkedJob,
  rules: Rulebook,
  sheet: SectionSheet,
): Drawing | undefined {
  const points = resistanceAcross(plan, rules, placesAcross(plan.section.profile, sheet.from, sheet.to));
  const first = points[0];
  const best = points.reduce<(typeof points)[number] | undefined>(
    (most, each) => (!most || each.value > most.value ? each : most),
    undefined,
  );
  if (!first || !best) return undefined;
  const step = [5, 10, 20, 50].find((size) => best.high / size <= 6) ?? 100;
  const top = Math.ceil(best.high / step) * step;
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
  return {
    width: sheet.width,
    height: TOP + HEIGHT + FOOT,
    title: sheet.half
      ? 'R of the insulation from the eave to the ridge'
      : 'R of the insulation along the width',
    description: `R-${formatNumber(first.value, 2)} at the eave, rising to R-${formatNumber(best.value, 2)} where the cavity is deepest.`,
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
      text(
        [Math.min(right - 4, at(best.across, 0)[0] + 60), at(0, best.value)[1] - 8],
        `R-${formatNumber(best.value, 2)}`,
        { anchor: 'end', bold: true, size: 14 },
      ),
      text([sheet.left + 6, at(0, first.high)[1] - 8], `R-${formatNumber(first.value, 2)}`, {
        anchor: 'start',
        bold: true,
        size: 14,
      }),
    ],
  };
}
