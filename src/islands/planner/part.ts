import type { CautionId } from '../../generated/rule-types.ts';
import { heldBy } from '../../job/cautions.ts';
import type { PlacedCaution, WorkedJob } from '../../job/planned.ts';
import type { SheetViewProps } from '../job/JobSheet.tsx';

/** What each part of the plan is shown of. */
export type OfPlan = Pick<SheetViewProps, 'plan'>;

/** The cautions of a part of the plan. What holds the plan stands before all of it. */
export function cautionsAt(plan: WorkedJob): (place: PlacedCaution['at']) => CautionId[] {
  const held = heldBy(plan).map(({ id }) => id);
  return (place) =>
    plan.cautions.filter((each) => each.at === place && !held.includes(each.id)).map(({ id }) => id);
}
