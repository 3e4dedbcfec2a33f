import type { JobSheetProps } from '../job/JobSheet.tsx';
import { HoseMarksView, pushesInALine } from './HoseMarksView.tsx';

/** The hose marks of every opening of a job, a card for each. */
export const hoseMarksSheet: Omit<JobSheetProps, 'example'> = {
  path: 'hose-marks',
  View: HoseMarksView,
  short: pushesInALine,
};
