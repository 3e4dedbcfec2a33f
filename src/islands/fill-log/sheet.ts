import type { JobSheetProps } from '../job/JobSheet.tsx';
import { FillLogView } from './FillLogView.tsx';

/** The fill log of a job. */
export const fillLogSheet: Omit<JobSheetProps, 'example'> = {
  path: 'fill-log',
  View: FillLogView,
};
