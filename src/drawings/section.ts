import type { WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { amountIn, type Quantity } from '../quantity/quantity.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { hatched, line, type Point, path, text } from './lines.ts';
import { scaleBar } from './scale-bar.ts';
import { placesAcross, type SectionSheet } from './section-sheet.ts';
import type { Drawing } from './svg.ts';

const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');
const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** The cavity in section, to scale: ceiling, roof, old insulation and new fill told apart by their hatching, dimensioned. */
export function sectionDrawing(plan: WorkedJob, sheet: SectionSheet, name: string): Drawing {
  const { profile } = plan.section;
  const { from, to, left, perInch } = sheet;
  const most = inches(plan.section.deepest);
  const top = 56;
  const ceiling = top + most * perInch;
  const at = (across: number, height: number): Point => [
    left + (across - from) * perInch,
    ceiling - height * perInch,
  ];
  const places = placesAcross(profile, from, to);
  const old = plan.job.old.depth ? inches(plan.job.old.depth) : 0;
  const roof = places.map((x) => at(x, profile.depthAt(x)));
  const oldTop = places.map((x) => at(x, Math.min(old, profile.depthAt(x))));
  const [first = 0, last = 0] = [places[0], places.at(-1)];
  const deep = inches(plan.section.deepestAt);
  const deepInside = Math.min(to, Math.max(from, deep));
  const newDepth = most - old;
  const oldToldAt = sheet.half ? (from + to) / 2 : deepInside;
  const halfway = sheet.half ? ' to the ridge' : '';
  return {
    width: sheet.width,
    height: ceiling + (old > 0 ? 124 : 96),
    title: sheet.half ? 'The cavity in section, from the eave to the ridge' : 'The cavity in section',
    description: `A ${plan.section.shape} cavity ${tape(plan.section.width)} wide, ${tape(plan.section.deepest)} at its deepest${old > 0 ? `, with ${format({ ...plan.section.deepest, amount: old, unit: 'in' })} of old insulation on the ceiling and new fill above it` : ', filled with new fill'}.`,
    shapes: [
      hatches(name),
      hatched([...roof, ...[...oldTop].reverse()], hatchId(name, 'new-fill')),
      ...(old > 0
        ? [
            hatched([at(first, 0), ...oldTop, at(last, 0)], hatchId(name, 'old-insulation')),
            path('thin', oldTop),
          ]
        : []),
      path('outline', [at(first, 0), ...roof, at(last, 0)]),
      path('outline', [at(first, 0), at(last, 0)]),
      path('outline', [at(first, -0.5), at(last, -0.5)]),
      ...(sheet.half ? [line('centre', at(last, most + 8 / perInch), at(last, -10 / perInch))] : []),
      ...dimension(
        at(first, 0),
        at(last, 0),
        old > 0 ? 62 : 34,
        sheet.half
          ? `${tape({ ...plan.section.width, amount: to - from, unit: 'in' })}${halfway}`
          : tape(plan.section.width),
      ),
      ...dimension(
        at(first, 0),
        at(first, profile.depthAt(first)),
        -20,
        format({ ...plan.section.deepest, amount: Math.round(profile.depthAt(first) * 8) / 8, unit: 'in' }),
      ),
      ...(old > 0
        ? [
            // Told below the ceiling, where nothing is hatched: the old layer is too thin to hold its own text.
            ...dimension(
              at(oldToldAt, old),
              at(oldToldAt, 0),
              sheet.half ? 20 : 26,
              format({ ...plan.section.deepest, amount: old, unit: 'in' }),
            ),
            ...(sheet.half
              ? []
              : dimension(
                  at(deepInside, old),
                  at(deepInside, most),
                  26,
                  format({ ...plan.section.deepest, amount: newDepth, unit: 'in' }),
                )),
          ]
        : []),
      ...dimension(
        at(last, 0),
        at(last, sheet.half ? most : profile.depthAt(last)),
        sheet.half ? 44 : 24,
        format({
          ...plan.section.deepest,
          amount: Math.round((sheet.half ? most : profile.depthAt(last)) * 8) / 8,
          unit: 'in',
        }),
      ),
      ...(sheet.half
        ? []
        : dimension(at(deepInside, 0), at(deepInside, most), -26, format(plan.section.deepest))),
      text([left, 20], 'new fill: slanted strokes', { anchor: 'start', size: 13 }),
      ...(old > 0 ? [text([left, 38], 'old insulation: crossed', { anchor: 'start', size: 13 })] : []),
      ...scaleBar([left, ceiling + (old > 0 ? 90 : 62)], 6, perInch, '2 ft'),
    ],
  };
}
