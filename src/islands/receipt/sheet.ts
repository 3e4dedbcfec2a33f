import type { JobSheetProps } from '../job/JobSheet.tsx';
import { ReceiptView, receiptInALine } from './ReceiptView.tsx';

/** The receipt and certificate of a job. */
export const receiptSheetOfJob: Omit<JobSheetProps, 'example'> = {
  path: 'receipt',
  View: ReceiptView,
  short: receiptInALine,
};
