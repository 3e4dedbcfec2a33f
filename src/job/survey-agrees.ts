import type { ExtraSurvey, Survey } from '../calc/before/readiness-fields.ts';
import { EntriesClash } from '../calc/declare/calculation.ts';
import { connectorPlaced, hotFlues, type OfRoof, untoldFlues } from './hot-flues.ts';
import type { JobValues } from './job-fields.ts';
import { USUAL_WAY, wayTaken } from './way-taken.ts';

/**
 * Does the survey agree with what was placed on the roof and in the ceiling? What one of them knows and the other does not is a slip in one
 * of the two, and either way fill could lie against something hot.
 * @throws EntriesClash for a survey that found no flue, or no light, where one is entered; for one that found some where none is; and for
 * lights that are rated in one and not in the other; and for a connector that a mechanic let stand, and that is nowhere.
 */
export function checkSurveyAgrees(job: JobValues): void {
  const { survey, ceiling, fill } = job;
  const flues = hotFlues(job).length;
  const lights = ceiling.lights ?? [];
  const unrated = lights.filter(({ kind }) => kind === 'light, not rated for contact').length;
  if (survey.flues === 'none' && flues > 0)
    refuse(
      'survey.flues',
      'Flues and chimneys',
      `"none" in the survey, and ${flues} hot ${flues === 1 ? 'flue' : 'flues'} on the roof`,
    );
  if (survey.lights === 'none' && lights.length > 0)
    refuse('survey.lights', 'Recessed lights', `"none" in the survey, and ${lights.length} in the ceiling`);
  const rated = survey.lights === 'all rated for contact' || survey.lights === 'all rated, and held clear';
  if (rated && unrated > 0)
    refuse(
      'survey.lights',
      'Recessed lights',
      `"${survey.lights}" in the survey, and ${unrated} not rated in the ceiling`,
    );
  // What is not shielded yet holds the plan; once it is, its place is asked for.
  if (survey.flues === 'all shielded' && flues === 0)
    askForPlace(
      'roof.obstacles',
      'Vents, flues and skylights',
      'no hot flue, and "all shielded" in the survey',
    );
  if (survey.lights === 'not rated, held clear' && unrated === 0)
    askForPlace(
      'ceiling.lights',
      'Recessed lights',
      'none that is not rated, and "not rated, held clear" in the survey',
    );
  // Fill may touch the others, wherever they are; cellulose keeps off all of them.
  if (rated && lights.length === 0 && fill.material === 'cellulose')
    askForPlace(
      'ceiling.lights',
      'Recessed lights',
      `none, and "${survey.lights}" in the survey, which cellulose keeps off too`,
    );
  if (survey.connectors === 'a mechanic let each stand' && !connectorPlaced(job))
    askForPlace(
      'roof.obstacles',
      'Vents, flues and skylights',
      'no single-wall connector, and "a mechanic let each stand" in the survey',
    );
}

/**
 * The survey with what the rest of the job adds to it: a single-wall connector that is placed waits for a mechanic until the survey says
 * that one has looked; a flue of which nobody read what it is waits until its kind is entered; a roof that nobody goes on has no holes cut in it; cellulose touches no light.
 */
export function surveyOf(
  job: OfRoof &
    Pick<JobValues, 'survey' | 'ways'> & {
      readonly fill: { readonly material?: JobValues['fill']['material'] | undefined };
    },
): Survey & Omit<ExtraSurvey, 'under_fill'> {
  const { connectors, bare_metal: _ventilation, ...survey } = job.survey;
  return {
    ...survey,
    connectors: connectors ?? (connectorPlaced(job) ? 'no mechanic has looked' : undefined),
    flue_kinds: untoldFlues(job).length > 0 ? 'some not known' : undefined,
    cellulose: job.fill.material === 'cellulose' ? 'yes' : 'no',
    roof_holes: wayTaken(job) === USUAL_WAY ? 'yes' : 'no',
  };
}

function refuse(field: string, label: string, found: string): never {
  throw new EntriesClash({ field, label, found, expected: 'the two to agree: mend the one that is wrong' });
}

function askForPlace(field: string, label: string, found: string): never {
  throw new EntriesClash({
    field,
    label,
    found,
    expected: 'the place of each, so that room is kept for it; or mend the survey',
  });
}
