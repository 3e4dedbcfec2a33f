import { isTime } from './job-file.ts';
import { isJobId } from './job-id.ts';

/** What is known of a photograph besides its picture. */
export interface Photograph {
  readonly id: string;
  /** The job that it belongs to. */
  readonly job: string;
  /** What of the list it shows, by its id there; an entry that the list no longer has is shown under "anything else". */
  readonly entry: string;
  /** A line that a person wrote beside it. */
  readonly words: string;
  /** When it was taken, as 2026-11-26T10:42:00.000Z. */
  readonly taken: string;
  /** In pixels, as it is kept. */
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
}

/** The place for what the list does not name. */
export const ANYTHING_ELSE = 'anything-else';

/** More than one job is ever given; a file of more is not read. */
export const MOST_PHOTOGRAPHS = 1000;
/** The file of a job with all of them, in bytes: far above what a job's take; a phone would have to hold it at once. */
export const LARGEST_FILE = 400_000_000;
/** Beside the pictures it holds the job and the list. */
export const MOST_OF_PICTURES = LARGEST_FILE - 10_000_000;
/** As long as a line of words may be. */
export const MOST_WORDS = 200;
/** Longest side of a picture that is kept, in pixels: a label can still be read, and a job's pictures go into one message. */
const LONGEST_SIDE = 1600;
/** Far above what a picture of that size takes. */
export const MOST_BYTES = 5_000_000;

const ENTRY = /^[a-z][a-z0-9-]{0,59}$/;

const isCount = (value: unknown, most: number): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= most;

/** Are these the first bytes of a JPEG? @example isJpeg(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)) // => true */
export const isJpeg = (bytes: Uint8Array): boolean =>
  bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;

/** Do these bytes begin as a zip does? @example isZip(Uint8Array.of(0x7b, 0x22)) // => false */
export const isZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;

/**
 * What a store or a file says of a photograph; undefined where it is none. It is trusted no more than any other text.
 * @example photographIn({ id: 'x' }) // => undefined
 */
export function photographIn(value: unknown): Photograph | undefined {
  if (value === null || typeof value !== 'object') return undefined;
  const { id, job, entry, words, taken, width, height, bytes } = value as Record<string, unknown>;
  if (!isJobId(id) || !isJobId(job)) return undefined;
  if (typeof entry !== 'string' || !ENTRY.test(entry)) return undefined;
  if (typeof words !== 'string' || words.length > MOST_WORDS || !isTime(taken)) return undefined;
  if (!isCount(width, LONGEST_SIDE) || !isCount(height, LONGEST_SIDE) || !isCount(bytes, MOST_BYTES))
    return undefined;
  return { id, job, entry, words, taken, width, height, bytes };
}

/** The size of a picture once its longest side fits; never larger than it was. @example shrunkTo(4000, 3000) // => { width: 1600, height: 1200 } */
export function shrunkTo(width: number, height: number): { readonly width: number; readonly height: number } {
  const by = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
}

const THOUSAND = 1000;

/** So many bytes, in the words of a phone. @example sizeInWords(1_440_000) // => '1.4 MB' */
export const sizeInWords = (bytes: number): string =>
  bytes < THOUSAND ** 2 / 2
    ? `${Math.ceil(bytes / THOUSAND)} kB`
    : `${(bytes / THOUSAND ** 2).toFixed(1)} MB`;

/** How many, and how large. @example countInWords([]) // => 'no photographs' */
export function countInWords(photographs: readonly Pick<Photograph, 'bytes'>[]): string {
  if (photographs.length === 0) return 'no photographs';
  const bytes = photographs.reduce((sum, each) => sum + each.bytes, 0);
  const count = photographs.length === 1 ? '1 photograph' : `${photographs.length} photographs`;
  return `${count}, ${sizeInWords(bytes)}`;
}
