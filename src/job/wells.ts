import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { compare, minus, number, over, plus, type Quantity } from '../quantity/quantity.ts';
import { acrossFromEave } from './across-from-eave.ts';
import type { JobValues } from './job-fields.ts';
import type { PlannedHole, PlannedRow, WorkedJob } from './planned.ts';

/** A skylight, and where it stands: along the roof from its starting end, across from the eave that the section is measured from. */
export interface Skylight {
  readonly along: Quantity<'length'>;
  readonly at: Quantity<'length'>;
  readonly across: Quantity<'length'>;
}

type OfRoof = { readonly roof: Pick<JobValues['roof'], 'obstacles'> };

const skylights = ({ roof }: OfRoof) => (roof.obstacles ?? []).filter(({ what }) => what === 'skylight');

/** The skylights that reach into what is filled through a hole: of a double-section home those of its own half. */
const inStretch = (
  plan: Pick<WorkedJob, 'job' | 'rows'>,
  side: PlannedRow['side'],
  { from, to }: Pick<PlannedHole, 'from' | 'to'>,
) =>
  skylights(plan.job).filter((each) => {
    const half = over(each.across, number(2));
    return (
      (plan.rows.length < 2 || each.side === side) &&
      compare(plus(each.along, half), from) > 0 &&
      compare(minus(each.along, half), to) < 0
    );
  });

/** Where stand the skylights that reach into what is filled through a hole? */
export const skylightsIn = (
  plan: WorkedJob,
  side: PlannedRow['side'],
  hole: Pick<PlannedHole, 'from' | 'to'>,
): Skylight[] =>
  inStretch(plan, side, hole).map((each) => ({
    along: each.along,
    at: acrossFromEave(each, plan.job, plan.section),
    across: each.across,
  }));

/** No entry tells whether a skylight's well goes down to the ceiling, nor how wide it is there. */
const notCounted = ({ along }: Pick<Skylight, 'along'>): Remark =>
  said`The well of the skylight at ${printed(along, { tape: 8 })} is not counted: where it goes down to the ceiling no fill goes in, so fewer bags do, and a hose runs into it. Look where it stands before you push, and fill on all sides of it.`;

/** That the well of a skylight is not counted, for each skylight of the roof. */
export const ofWells = (job: OfRoof): Remark[] => skylights(job).map(notCounted);

/** The same, for each skylight that reaches into what is filled through a hole. */
export const ofWellsIn = (
  plan: WorkedJob,
  side: PlannedRow['side'],
  hole: Pick<PlannedHole, 'from' | 'to'>,
): Remark[] => inStretch(plan, side, hole).map(notCounted);
