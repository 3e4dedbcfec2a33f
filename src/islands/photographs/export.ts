import type { OpenedJob } from '../../job/job-file.ts';
import type { Photograph } from '../../job/photograph.ts';
import { saveFile } from '../jobs/save-file.ts';
import { fileNameOf } from '../jobs/words.ts';
import { photographStore } from './store.ts';

/** Hands a job over with its photographs, as one zip. The program that makes it is asked for only then. */
export async function saveWithPhotographs(job: OpenedJob, photographs: readonly Photograph[]): Promise<void> {
  const pictures = await photographStore().pictures(photographs);
  const { writeWithPhotographs } = await import('../../job/photographs-file.ts');
  const { id, changed, entries } = job;
  saveFile(
    fileNameOf(entries, 'zip'),
    writeWithPhotographs({ id, changed, entries }, pictures),
    'application/zip',
  );
}
