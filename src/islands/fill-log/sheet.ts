import type { JobSheetProps } from '../job/JobSheet.tsx';
import { FillLogView, logInALine } from './FillLogView.tsx';

/** The fill log of a job. */
export const fillLogSheet: Omit<JobSheetProps, 'example'> = {
  path: 'fill-log',
  View: FillLogView,
  short: logInALine,
};
