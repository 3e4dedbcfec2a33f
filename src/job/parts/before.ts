import { cavityVentilation } from '../../calc/before/cavity-ventilation-declaration.ts';
import type { Known as YesOrNo } from '../../calc/before/cavity-vents.ts';
import { clearSpaces } from '../../calc/before/clear-spaces-declaration.ts';
import { readinessCheck } from '../../calc/before/readiness-declaration.ts';
import type { ExtraSurvey } from '../../calc/before/readiness-fields.ts';
import { type Origin, quantity } from '../../quantity/quantity.ts';
import { heldBy } from '../cautions.ts';
import type { JobValues } from '../job-fields.ts';
import type { WorkedJob } from '../planned.ts';
import { surveyOf } from '../survey-agrees.ts';
import { homeWidth } from './home.ts';
import { type AnyPart, part } from './part.ts';

/** What the plan says of the ceiling: an open stop of it is one of the home’s. */
function underFill(plan: WorkedJob): ExtraSurvey['under_fill'] {
  const held = heldBy(plan).map(({ id }) => id);
  if (held.includes('caution.ceiling.overloaded')) return 'does not carry it';
  if (held.includes('caution.ceiling.unrated')) return 'no limit is known';
  return held.includes('caution.machine.pressed') ? 'gives under the air' : 'carries it';
}

/** What that rests on. */
const restsOn = ({ job: { ceiling, machine }, load }: WorkedJob): Origin => ({
  from: 'method',
  method: 'the weight that is planned, and the air that blows it, against what the ceiling may carry',
  operands: [load.total, load.limit ?? ceiling.framing, machine.pressure].filter(
    (each) => each !== undefined,
  ),
});

const readinessPart = part({
  calculation: readinessCheck,
  whileHeld: true,
  asked: {},
  runs: (plan) => [
    {
      values: { ...surveyOf(plan.job), built: plan.job.home.built, under_fill: underFill(plan) },
      found: { under_fill: restsOn(plan) },
    },
  ],
});

const clearSpacesPart = part({
  calculation: clearSpaces,
  whileHeld: true,
  asked: { material: 'fill.material', things: 'roof.obstacles' },
  runs: ({ job, hot }) =>
    hot.length === 0
      ? 'No hot flue and no recessed light is entered, so nothing is kept open.'
      : [{ values: { material: job.fill.material, things: hot.map(({ thing }) => thing) } }],
});

/** What the plan keeps clear above the fill: nothing, whatever the cavity is. */
const TO_THE_ROOF = quantity(0, 'in');

/** What the survey says of the ways for air into the cavity. */
const sealed = ({ penetrations }: JobValues['survey']): YesOrNo =>
  penetrations === 'sealed' ? 'yes' : penetrations === 'not sealed' ? 'no' : 'not known';

const ventilationPart = part({
  calculation: cavityVentilation,
  whileHeld: true,
  asked: { bare_metal: 'survey.bare_metal', sealed: 'survey.penetrations' },
  runs: ({ job }) => [
    {
      values: {
        sections: job.home.sections,
        bare_metal: job.roof.cover === 'metal' ? (job.survey.bare_metal ?? 'not known') : 'no',
        sealed: sealed(job.survey),
        area: undefined,
        length: job.home.length,
        width: homeWidth(job),
        clear_above: TO_THE_ROOF,
      },
    },
  ],
});

/** What is settled before the fill. */
export const beforeParts: readonly AnyPart[] = [readinessPart, clearSpacesPart, ventilationPart];
