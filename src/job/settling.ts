import { engineersLoad } from '../calc/ceiling/load.ts';
import { whichOfList } from '../calc/declare/which-of-list.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { compare } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { heldBy } from './cautions.ts';
import { densityBlown } from './density-blown.ts';
import { untoldFlues } from './hot-flues.ts';
import { jobFields } from './job-fields.ts';
import { labelAt, type Wanted } from './parts/part.ts';
import type { WorkedJob } from './planned.ts';

/** A stop that holds the plan, and the entries of the job that settle it. */
export interface Settling {
  readonly id: CautionId;
  readonly entries: readonly Wanted[];
}

/**
 * Which entries settle each stop that holds this plan? Of a survey stop the condition that trips it; of a roof that nobody goes on, the way
 * in too; of the ceiling what it is, what lies on it, what the air adds, and what an engineer wrote of it.
 */
export const settling = (plan: WorkedJob, rules: Rulebook): readonly Settling[] =>
  heldBy(plan).map(({ id }) => ({
    id,
    entries: waysTo(id, plan, rules).map((field) => ({ field, label: called(field) })),
  }));

/** An entry by its name; in a list, with which of it; of the old insulation with its group, since the fill has a density too. */
function called(field: string): string {
  const [group = ''] = field.split('.');
  const label = whichOfList(jobFields, { field, label: labelAt(field) ?? field }).label;
  return group === 'old' ? `${labelAt(group)}: ${label.toLowerCase()}` : label;
}

const ENGINEERS = ['ceiling.engineer_load', 'ceiling.engineer'];

function waysTo(id: CautionId, plan: WorkedJob, rules: Rulebook): readonly string[] {
  const { job, readiness } = plan;
  if (id === 'caution.ceiling.unrated') return ['ceiling.board', 'ceiling.framing', ...ENGINEERS];
  if (id === 'caution.ceiling.overloaded') return waysToLighter(plan, rules);
  if (id === 'caution.machine.pressed') return ['machine.pressure', ...waysToLighter(plan, rules)];
  const conditions = readiness.openStops.filter(({ caution }) => caution === id);
  return conditions.flatMap(({ name }) => {
    if (name === 'flue_kinds') return untoldFlues(job).map(({ place }) => `roof.obstacles.${place}.kind`);
    return name === 'roof_carries' && job.survey.roof_carries === 'nobody goes on it'
      ? ['ways.chosen', 'survey.roof_carries']
      : [`survey.${name}`];
  });
}

/** What weighs on the ceiling, and what says how much it may carry. */
function waysToLighter({ job, load }: WorkedJob, rules: Rulebook): readonly string[] {
  // Under old insulation that is too heavy by itself no fill passes, however light and shallow.
  const fillCanPass = load.highestDensity !== undefined;
  const blownHeavier = compare(densityBlown(job, rules), job.fill.density) > 0;
  const oldLies = load.old !== undefined && load.old.amount > 0;
  const pressed = oldLies && job.heat.old_condition === 'pressed by the new fill';
  return [
    ...(fillCanPass ? ['fill.density'] : []),
    ...(fillCanPass && blownHeavier ? ['machine.fills'] : []),
    ...(oldLies ? ['old.depth', 'old.density'] : []),
    ...(fillCanPass && pressed ? ['heat.pressed_depth'] : []),
    'ceiling.board',
    'ceiling.framing',
    ...(load.limit === engineersLoad(job.ceiling) ? ENGINEERS : []),
  ];
}
