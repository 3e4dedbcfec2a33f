import exampleText from '../../../public/example-job.json?raw';
import { hydrateAsTyped } from '../as-typed.tsx';
import { exampleEntries } from './example.ts';
import { JobSheet, type JobSheetProps } from './JobSheet.tsx';
import { mountPrintNotes } from './print-notes.ts';

/** Brings a sheet of the job to life where the page has drawn it. */
export function mountSheet(sheet: Omit<JobSheetProps, 'example'>): void {
  const root = document.getElementById('job');
  if (!root) return;
  hydrateAsTyped(<JobSheet {...sheet} example={exampleEntries(exampleText)} />, root);
  mountPrintNotes(root);
}
