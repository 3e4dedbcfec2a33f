import { MOST_BYTES, shrunkTo, sizeInWords } from '../../job/photograph.ts';
import { bytesOf } from '../blob.ts';

/** A file larger than this is no picture of a phone's camera; it is not even opened. */
const LARGEST_FILE = 60_000_000;
/** More than a phone can hold at once to draw from. */
const MOST_PIXELS = 250_000_000;
/** How true a JPEG is kept, of 1: below the eye's notice on paper. */
const QUALITY = 0.8;

/** A picture as it is kept, or a sentence that says why it is not. */
export type Shrunk =
  | {
      readonly ok: true;
      readonly bytes: Uint8Array<ArrayBuffer>;
      readonly width: number;
      readonly height: number;
      readonly taken: Date;
    }
  | { readonly ok: false; readonly says: string };

/**
 * Draws a picture anew, as small as it is kept. It is turned the right way up on the way, and what the camera wrote into the file, such as
 * the place and its own make, is not drawn and so is gone.
 */
export async function shrink(file: File, now: Date): Promise<Shrunk> {
  const refused = (found: string, expected: string): Shrunk => ({
    ok: false,
    says: `${file.name || 'The file'}: found ${found}; expected ${expected}.`,
  });
  if (file.size === 0) return refused('an empty file', 'a picture');
  if (file.size > LARGEST_FILE)
    return refused(sizeInWords(file.size), `a picture of ${sizeInWords(LARGEST_FILE)} at most`);
  const image = new Image();
  const address = URL.createObjectURL(file);
  try {
    image.src = address;
    try {
      await image.decode();
    } catch {
      return refused('no picture that this browser can show', 'a JPEG or PNG');
    }
    const { naturalWidth, naturalHeight } = image;
    if (naturalWidth === 0 || naturalHeight === 0) return refused('a picture of no size', 'a JPEG or PNG');
    if (naturalWidth * naturalHeight > MOST_PIXELS)
      return refused(`${naturalWidth} by ${naturalHeight} dots`, 'a picture that a phone can hold');
    const { width, height } = shrunkTo(naturalWidth, naturalHeight);
    const bytes = await drawn(image, width, height);
    if (!bytes || bytes.length > MOST_BYTES)
      return refused('a picture that this browser can’t draw', 'another one, or a smaller one');
    return { ok: true, bytes, width, height, taken: takenAt(file, now) };
  } finally {
    URL.revokeObjectURL(address);
  }
}

async function drawn(
  image: HTMLImageElement,
  width: number,
  height: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d');
  if (!pen) return undefined;
  // A JPEG has no glass in it: what shows through is white.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(image, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((done) => {
    canvas.toBlob(done, 'image/jpeg', QUALITY);
  });
  // Phones count what canvases hold against the page until it is let go.
  canvas.width = 0;
  canvas.height = 0;
  return blob?.type === 'image/jpeg' ? bytesOf(blob) : undefined;
}

/** The time of the file; one that can't be so, such as a clock never set, is now. */
function takenAt({ lastModified }: File, now: Date): Date {
  const sensible = lastModified > Date.UTC(2000, 0) && lastModified <= now.getTime();
  return sensible ? new Date(lastModified) : now;
}
