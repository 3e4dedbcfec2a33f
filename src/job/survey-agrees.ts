import { EntriesClash } from '../calc/declare/calculation.ts';
import { hotKinds } from '../calc/holes/fields.ts';
import type { JobValues } from './job-fields.ts';

/**
 * Does the survey agree with what was placed on the roof and in the ceiling? "None" beside one that is placed is a slip in one of the two, and
 * either way fill could lie against something hot.
 * @throws EntriesClash for a survey that found no flue, or no light, where one is entered.
 */
export function checkSurveyAgrees({ survey, roof, ceiling }: JobValues): void {
  const flues = (roof.obstacles ?? []).filter(({ what }) => hotKinds.includes(what)).length;
  const lights = (ceiling.lights ?? []).length;
  if (survey.flues === 'none' && flues > 0)
    refuse('survey.flues', 'Flues and chimneys', `"none" in the survey, and ${flues} hot on the roof`);
  if (survey.lights === 'none' && lights > 0)
    refuse('survey.lights', 'Recessed lights', `"none" in the survey, and ${lights} in the ceiling`);
}

function refuse(field: string, label: string, found: string): never {
  throw new EntriesClash({ field, label, found, expected: 'the two to agree: mend the one that is wrong' });
}
