import type { CautionId } from '../generated/rule-types.ts';
import { compare } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { heldBy } from './cautions.ts';
import { densityBlown } from './density-blown.ts';
import { labelAt, type Wanted } from './parts/part.ts';
import type { WorkedJob } from './planned.ts';

/** A stop that holds the plan, and the entries of the job that settle it. */
export interface Settling {
  readonly id: CautionId;
  readonly entries: readonly Wanted[];
}

/**
 * Which entries settle each stop that holds this plan? Of a survey stop the condition that trips it; of a roof that nobody goes on, the way
 * in too; of the ceiling what it is, what lies on it, and what an engineer wrote of it.
 */
export const settling = (plan: WorkedJob, rules: Rulebook): readonly Settling[] =>
  heldBy(plan).map(({ id }) => ({
    id,
    entries: waysTo(id, plan, rules).map((field) => ({ field, label: labelAt(field) ?? field })),
  }));

function waysTo(id: CautionId, plan: WorkedJob, rules: Rulebook): readonly string[] {
  const { job, readiness } = plan;
  if (id === 'caution.ceiling.unrated')
    return ['ceiling.board', 'ceiling.framing', 'ceiling.engineer_load', 'ceiling.engineer'];
  if (id === 'caution.ceiling.overloaded') {
    const blownHeavier = compare(densityBlown(job, rules), job.fill.density) > 0;
    return ['fill.density', ...(blownHeavier ? ['machine.fills'] : []), 'ceiling.board', 'ceiling.framing'];
  }
  const conditions = readiness.openStops.filter(({ caution }) => caution === id);
  return conditions.flatMap(({ name }) =>
    name === 'roof_carries' && job.survey.roof_carries === 'nobody goes on it'
      ? ['ways.chosen', 'survey.roof_carries']
      : [`survey.${name}`],
  );
}
