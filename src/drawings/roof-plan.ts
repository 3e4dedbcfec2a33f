import type { PlannedRow, WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { circle, line, type Point, path, square, text, widthOf } from './lines.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './svg.ts';

/** `across the sheet` for wide screens and paper, `down the sheet` for a phone held upright. */
export type Orientation = 'across the sheet' | 'down the sheet';

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** How long the roof is drawn, and the room left for dimensions, in drawing units. */
const sheets = {
  'across the sheet': { roof: 1000, start: 56, before: 66, end: 40, after: 84 },
  'down the sheet': { roof: 1180, start: 52, before: 66, end: 60, after: 78 },
} as const;

/**
 * The roof from above, to scale: outline, ridge, trusses, seams, what comes through, holes with their patches, the stretch filled
 * through each, all dimensioned. The back side is drawn at the top; an upright sheet is the same turned by a quarter, with the back side at
 * the right, so that on both the starting end lies on the right hand of whoever faces the ridge from the back side.
 */
export function roofPlan(plan: WorkedJob, rules: Rulebook, orientation: Orientation): Drawing {
  const length = inches(plan.job.home.length);
  const half =
    plan.job.home.sections === 'double' ? inches(plan.section.width) : inches(plan.section.width) / 2;
  const sheet = sheets[orientation];
  const perInch = sheet.roof / length;
  const upright = orientation === 'down the sheet';
  /** A place on the roof: along it, and from the ridge (negative on the back). */
  const at = (along: number, fromRidge: number): Point => {
    const down = sheet.start + along * perInch;
    return upright
      ? [sheet.after + (half - fromRidge) * perInch, down]
      : [down, sheet.before + (fromRidge + half) * perInch];
  };
  const size = {
    along: sheet.start + sheet.roof + sheet.end,
    across: sheet.before + 2 * half * perInch + sheet.after,
  };
  const belowPeak = inches(rules.value('access.roof-holes.below-peak'));
  const holeRadius = (inches(rules.value('access.roof-holes.diameter')) / 2) * perInch;
  const metal = inches(rules.value('patch.layers.metal-side')) * perInch;
  const membrane = inches(rules.value('patch.layers.membrane-side')) * perInch;
  const sideOf = (row: PlannedRow) => (row.side === 'back' ? -1 : 1);
  /** Which way on the sheet leads away from the ridge, on the front side. */
  const out = upright ? -1 : 1;

  const across = (place: number, type: 'hidden' | 'thin') => line(type, at(place, -half), at(place, half));
  const corners = [at(0, -half), at(length, -half), at(length, half), at(0, half)];

  const holes = plan.rows.flatMap((row) =>
    row.holes.flatMap((hole): Shape[] => {
      const centre = at(inches(hole.along), sideOf(row) * belowPeak);
      return [
        square('thin', centre, membrane),
        square('thin', centre, metal),
        circle('outline', centre, holeRadius),
        text(
          offset(
            centre,
            upright,
            out * sideOf(row) * (membrane / 2 + (upright ? 12 : sideOf(row) < 0 ? 6 : 17)),
          ),
          String(hole.number),
          { bold: true, size: 15 },
        ),
      ];
    }),
  );

  const stretches = plan.rows.flatMap((row) =>
    row.holes.flatMap((hole): Shape[] => {
      const middle = at(
        (inches(hole.from) + inches(hole.to)) / 2,
        plan.rows.length > 1 ? sideOf(row) * half * 0.72 : half * 0.62,
      );
      const bags = text(middle, format(hole.bags, { figures: 3 }), { size: 14, bold: true });
      const edge = plan.rows.length > 1 ? ([0, sideOf(row) * half] as const) : ([-half, half] as const);
      return hole.number === row.holes.length
        ? [bags]
        : [bags, line('boundary', at(inches(hole.to), edge[0]), at(inches(hole.to), edge[1]))];
    }),
  );

  return {
    width: upright ? size.across : size.along,
    height: upright ? size.along : size.across,
    title: 'The roof from above',
    description: descriptionOf(plan),
    shapes: [
      ...plan.trusses.map((place) => across(place, 'hidden')),
      ...plan.seams.map((place) => across(place, 'thin')),
      path('outline', corners, true),
      line('centre', at(-10 / perInch, 0), at(length + 10 / perInch, 0)),
      ...stretches,
      ...obstacles(plan, at, perInch, upright ? size.across : size.along),
      ...holes,
      ...plan.rows.flatMap((row) => chain(row, plan, at, half, sideOf(row), out)),
      ...dimension(
        at(0, half),
        at(length, half),
        out * (plan.rows.length > 1 ? 58 : 26),
        tape(plan.job.home.length),
      ),
      ...(plan.rows[0]?.holes[0] && !upright
        ? dimension(
            at(inches(plan.rows[0].holes[0].along), 0),
            at(inches(plan.rows[0].holes[0].along), -belowPeak),
            -Math.max(membrane, 24),
            format(rules.value('access.roof-holes.below-peak')),
            12,
            rules.value('access.roof-holes.below-peak'),
          )
        : []),
      ...(upright
        ? [
            text([at(0, -half)[0], 20], 'back', { anchor: 'end', size: 14 }),
            text([at(0, half)[0], 20], 'front', { anchor: 'start', size: 14 }),
            text(offset(at(0, 0), false, -14), 'ridge', { size: 13 }),
          ]
        : [
            text([14, at(0, -half / 2)[1]], 'back', { turn: -90, size: 14 }),
            text([14, at(0, half / 2)[1]], 'front', { turn: -90, size: 14 }),
            text([34, at(0, 0)[1]], 'ridge', { turn: -90, size: 13 }),
          ]),
      ...scaleBar(
        upright ? [sheet.after, size.along - 30] : [sheet.start, size.across - 26],
        upright ? 2 * half : length,
        perInch,
      ),
    ],
  };
}

/** A point moved across the roof's length. */
const offset = ([x, y]: Point, upright: boolean, by: number): Point =>
  upright ? [x + by, y + 5] : [x, y + by];

/** The chain of dimensions from end to end through the holes of a row. */
function chain(
  row: PlannedRow,
  plan: WorkedJob,
  at: (along: number, fromRidge: number) => Point,
  half: number,
  side: number,
  out: number,
): Shape[] {
  const stops = [0, ...row.holes.map((hole) => inches(hole.along)), inches(plan.job.home.length)];
  if (row.holes.length === 0) return [];
  const words = [row.holes[0]?.along, ...row.gaps].map((q) => (q ? tape(q) : ''));
  const last = row.holes.at(-1);
  const rest = last ? inches(plan.job.home.length) - inches(last.along) : 0;
  words.push(
    format({ amount: rest, unit: 'in', dimension: 'length', origin: { from: 'constant' } }, { tape: 8 }),
  );
  return stops
    .slice(1)
    .flatMap((stop, place) =>
      dimension(
        at(stops[place] ?? 0, side * half),
        at(stop, side * half),
        out * side * 26,
        words[place] ?? '',
      ),
    );
}

/** Vents, flues and skylights, with the ring kept open about a hot flue. */
function obstacles(
  plan: WorkedJob,
  at: (along: number, fromRidge: number) => Point,
  perInch: number,
  sheetWidth: number,
): Shape[] {
  const rings = plan.rows.flatMap((row) => row.holes.flatMap((hole) => hole.kept));
  return (plan.job.roof.obstacles ?? []).flatMap((each): Shape[] => {
    const centre = at(inches(each.along), (each.side === 'back' ? -1 : 1) * inches(each.from_peak));
    const radius = (inches(each.across) / 2) * perInch;
    const ring = rings.find((flue) => flue.what === each.what && inches(flue.along) === inches(each.along));
    return [
      each.what === 'skylight' ? square('outline', centre, 2 * radius) : circle('outline', centre, radius),
      line('thin', [centre[0] - radius, centre[1] - radius], [centre[0] + radius, centre[1] + radius]),
      line('thin', [centre[0] - radius, centre[1] + radius], [centre[0] + radius, centre[1] - radius]),
      ...(ring ? [circle('hidden', centre, (inches(ring.across) / 2) * perInch)] : []),
      centre[0] + radius + 6 + widthOf(each.what, 13) <= sheetWidth
        ? text([centre[0] + radius + 6, centre[1] + 5], each.what, { anchor: 'start', size: 13 })
        : text([centre[0] - radius - 6, centre[1] + 5], each.what, { anchor: 'end', size: 13 }),
    ];
  });
}

function descriptionOf(plan: WorkedJob): string {
  const rows = plan.rows.map((row) => {
    const places = row.holes.map(
      (hole) => `hole ${hole.number} at ${tape(hole.along)} takes ${format(hole.bags, { figures: 3 })}`,
    );
    return `${row.side} side: ${places.length > 0 ? places.join('; ') : 'no holes'}`;
  });
  return `A roof of ${tape(plan.job.home.length)}. From the starting end, on the right as one faces the ridge from the back side, ${rows.join('. ')}.`;
}
