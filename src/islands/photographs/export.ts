import type { OpenedJob } from '../../job/job-file.ts';
import { countInWords, type Photograph } from '../../job/photograph.ts';
import { saveFile } from '../jobs/save-file.ts';
import { fileNameOf } from '../jobs/words.ts';
import { photographStore } from './store.ts';

/**
 * Hands a job over with its photographs, as one zip. The program that makes it is asked for only then. Says in a sentence what is not in the
 * file, since the browser no longer gives it; nothing where all is.
 */
export async function saveWithPhotographs(
  job: OpenedJob,
  photographs: readonly Photograph[],
): Promise<string> {
  const pictures = await photographStore().pictures(photographs);
  const { writeWithPhotographs } = await import('../../job/photographs-file.ts');
  const { id, changed, entries } = job;
  saveFile(
    fileNameOf(entries, 'zip'),
    writeWithPhotographs({ id, changed, entries }, pictures),
    'application/zip',
  );
  const lost = photographs.length - pictures.length;
  if (lost === 0) return '';
  return pictures.length === 0
    ? `None of ${countInWords(photographs)} can be read in this browser any more: the file holds the job alone.`
    : `Of ${countInWords(photographs)}, ${lost} can’t be read in this browser any more: the file holds the rest.`;
}
