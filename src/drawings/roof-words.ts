import type { PlannedRow, WorkedJob } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { isOneSlope } from './roof-view.ts';

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** A double-section home has two holes of each number, one a side. */
export const holeName = (number: number, { side }: Pick<PlannedRow, 'side'>, double: boolean): string =>
  double ? `${number} ${side}` : String(number);

/** What a reader who can't see the roof is told: its ends, what it stands on, what comes through it, its holes. */
export function roofInWords(plan: WorkedJob, belowPeak: Quantity<'length'>): string {
  const rows = plan.rows.map((row) => {
    const places = row.holes.map(
      (hole) => `hole ${hole.number} at ${tape(hole.along)} takes ${format(hole.bags, { figures: 3 })}`,
    );
    return `${row.side} side: ${places.length > 0 ? places.join('; ') : 'no holes'}`;
  });
  const { length } = plan.job.home;
  return [
    `A roof of ${tape(length)}. From the starting end, on the right as one faces the ridge from the back side, ${rows.join('. ')}.`,
    `Holes lie ${format(belowPeak)} from the ridge${isOneSlope(plan) ? ', which is the front edge' : ''}.`,
    ...members(plan),
    ...throughTheRoof(plan),
  ].join(' ');
}

/** Trusses and seams: how far apart, where that is known, or how many. */
function members({ job: { roof }, trusses, seams }: WorkedJob): string[] {
  const told = (what: string, places: readonly number[], spacing: Quantity<'length'> | undefined) =>
    places.length === 0 ? [] : [`${places.length} ${what}${spacing ? `, ${format(spacing)} apart` : ''}`];
  const all = [...told('trusses', trusses, roof.truss_spacing), ...told('seams', seams, roof.seam_spacing)];
  return all.length === 0 ? [] : [`${all.join('; ')}.`];
}

function throughTheRoof(plan: WorkedJob): string[] {
  const kept = plan.rows.flatMap((row) => row.holes.flatMap((hole) => hole.kept));
  return (plan.job.roof.obstacles ?? []).map(({ what, along, side, from_peak, across }) => {
    const ring = kept.find((each) => each.what === what && inches(each.along) === inches(along));
    return `A ${what}, ${tape(across)} across, at ${tape(along)}, ${side} side, ${tape(from_peak)} from the ridge${ring ? `; ${tape(ring.across)} across kept open about it` : ''}.`;
  });
}
