import type { Way } from '../calc/ways/compare.ts';
import type { JobValues } from './job-fields.ts';

/** Where nobody says otherwise, the cavity is filled through roof holes. */
export const USUAL_WAY: Way = 'roof holes';

/** By which way in is the cavity of this job filled? */
export const wayTaken = ({ ways }: Pick<JobValues, 'ways'>): Way => ways.chosen ?? USUAL_WAY;
