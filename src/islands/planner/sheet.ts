import type { JobSheetProps } from '../job/JobSheet.tsx';
import { PlanView, shortAnswer } from './PlanView.tsx';

/** The plan of a job. */
export const planSheet: Omit<JobSheetProps, 'example'> = { path: '', View: PlanView, short: shortAnswer };
