import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { WorkedJob } from '../job/planned.ts';
import { inches } from '../quantity/quantity.ts';
import type { Point } from './lines.ts';

/** `across the sheet` for wide screens and paper, `down the sheet` for a phone held upright. */
export type Orientation = 'across the sheet' | 'down the sheet';

/** A roof on its sheet: where its parts lie, in drawing units; lengths on the roof are in inches. */
export interface RoofView {
  readonly upright: boolean;
  readonly perInch: number;
  readonly length: number;
  /** From the ridge to the edge on either side; a single slope has no front. */
  readonly back: number;
  readonly front: number;
  readonly double: boolean;
  /** A place on the roof: along it, and from the ridge (negative on the back). */
  readonly at: (along: number, fromRidge: number) => Point;
  /** Which way on the sheet leads away from the ridge on the front side: down or right is 1. */
  readonly out: 1 | -1;
  readonly sheet: { readonly width: number; readonly height: number };
  /** The corner of the roof that lies lowest on the sheet's left. */
  readonly foot: Point;
}

/** How long the roof is drawn, and the room left for dimensions, in drawing units. Most roofs are drawn as long as leaves their words large on a screen. */
const sheets = {
  'across the sheet': { roof: 744, start: 64, before: 66, end: 40, after: 84 },
  'down the sheet': { roof: 1180, start: 56, before: 66, end: 60, after: 78 },
} as const;
/** The dimensions of a second row of holes. */
const SECOND_CHAIN = 32;
/** A longer roof has more to tell along it, and is drawn longer: by so much an inch of it, up to so much in all. */
const ROOM_AN_INCH = 0.85;
const MOST_ALONG = 1000;
/** A roof drawn wider than this on an upright sheet would leave its words too small for a phone. */
const MOST_ACROSS = 260;
/** An upright sheet narrower than this would be shown so large that its words run into one another. */
const LEAST_WIDTH = 360;

/** Everything on a single slope lies below its high edge. */
export const isOneSlope = ({ job }: WorkedJob): boolean =>
  job.home.sections !== 'double' && job.cavity.shape === 'one-slope';

/** How far does the roof reach from its ridge, on the back and on the front? A ridge too near the back edge for a hole is no ridge. */
function sidesOf(plan: WorkedJob, belowPeak: number): readonly [back: number, front: number] {
  const width = inches(plan.section.width);
  if (plan.job.home.sections === 'double') return [width, width];
  const ridge = inches(ridgeAcross(plan.section));
  return ridge < belowPeak ? [width / 2, width / 2] : [ridge, width - ridge];
}

/** The roof of a plan on its sheet; `belowPeak` is how far its holes lie from the ridge. */
export function roofView(plan: WorkedJob, belowPeak: number, orientation: Orientation): RoofView {
  const length = inches(plan.job.home.length);
  const [back, front] = sidesOf(plan, belowPeak);
  const double = plan.job.home.sections === 'double';
  const upright = orientation === 'down the sheet';
  const sheet = sheets[orientation];
  const perInch = Math.min(
    (upright ? sheet.roof : Math.min(Math.max(sheet.roof, length * ROOM_AN_INCH), MOST_ALONG)) / length,
    upright ? MOST_ACROSS / (back + front) : Number.POSITIVE_INFINITY,
  );
  const after = sheet.after + (double && !upright ? SECOND_CHAIN : 0);
  const along = sheet.start + length * perInch + sheet.end;
  const across = sheet.before + (back + front) * perInch + after;
  const beside = upright ? Math.max(0, LEAST_WIDTH - across) / 2 : 0;
  const at = (place: number, fromRidge: number): Point => {
    const down = sheet.start + place * perInch;
    return upright
      ? [beside + after + (front - fromRidge) * perInch, down]
      : [down, sheet.before + (fromRidge + back) * perInch];
  };
  return {
    upright,
    perInch,
    length,
    back,
    front,
    double,
    at,
    out: upright ? -1 : 1,
    sheet: upright ? { width: across + 2 * beside, height: along } : { width: along, height: across },
    foot: upright ? at(length, front) : at(0, front),
  };
}
