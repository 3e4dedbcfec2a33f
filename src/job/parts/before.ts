import { cavityVentilation } from '../../calc/before/cavity-ventilation-declaration.ts';
import type { Known as YesOrNo } from '../../calc/before/cavity-vents.ts';
import { clearSpaces } from '../../calc/before/clear-spaces-declaration.ts';
import { readinessCheck } from '../../calc/before/readiness-declaration.ts';
import { quantity } from '../../quantity/quantity.ts';
import type { JobValues } from '../job-fields.ts';
import { surveyOf } from '../survey-agrees.ts';
import { homeWidth } from './home.ts';
import { type AnyPart, part } from './part.ts';

const readinessPart = part({
  calculation: readinessCheck,
  whileHeld: true,
  asked: {},
  runs: ({ job }) => [{ values: { ...surveyOf(job), built: job.home.built } }],
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
