import type { Remark } from '../calc/declare/remark.ts';
import type { JobValues } from './job-fields.ts';

/**
 * Do ducts of the heating run where the fill goes? Those that leak hold the plan by a stop of their own.
 * @example ductsLieInFill({ survey: { ducts: 'none overhead' } }) // => false
 */
export const ductsLieInFill = ({ survey }: Pick<JobValues, 'survey'>): boolean =>
  survey.ducts === 'all tight';

/** That ducts overhead are not counted: no entry tells where one runs, nor how thick it is. */
export const ofDucts = (job: Pick<JobValues, 'survey'>): Remark[] =>
  ductsLieInFill(job)
    ? [
        'The ducts overhead are not counted: no fill goes in where they lie, so fewer bags do, and a hose runs into them. Look where they run before you push.',
      ]
    : [];
