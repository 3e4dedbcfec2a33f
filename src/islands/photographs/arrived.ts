import { newJobId } from '../../job/job-id.ts';
import type { Picture } from '../../job/photographs-file.ts';
import { photographStore } from './store.ts';

/**
 * Keeps the photographs that came with a job, under the id that the job has here. One that is here already is not kept twice; one whose
 * id another job's has gets an id of its own. Says in a sentence what became of them; nothing where none came.
 */
export async function keepPictures(pictures: readonly Picture[], job: string): Promise<string> {
  if (pictures.length === 0) return '';
  const store = photographStore();
  const here = await store.all();
  let kept = 0;
  let unkept = 0;
  for (const { photograph, bytes } of pictures) {
    const same = here.find(({ id }) => id === photograph.id);
    const own = same?.job === job;
    // What is known of one may have outlived its picture.
    if (own && (await store.picture(photograph.id))) continue;
    const id = same && !own ? newJobId() : photograph.id;
    const why = await store.put({ photograph: { ...photograph, id, job }, bytes });
    kept += 1;
    if (why !== undefined) unkept += 1;
  }
  const known = pictures.length - kept;
  return [
    kept > 0 ? `${counted(kept)} came with it.` : '',
    known > 0 ? `${counted(known)} here already.` : '',
    unkept > 0 ? `Not kept, and held only while this page is open: ${counted(unkept)}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

const counted = (photographs: number): string =>
  photographs === 1 ? '1 photograph' : `${photographs} photographs`;
