/** The letters of an id: none that is taken for another when it is read aloud. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';
const LENGTH = 16;

/** An id for a new job: by chance alone, so that jobs of two phones never share one. It stays with the job through files and links. */
export const newJobId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(LENGTH))]
    .map((byte) => LETTERS.charAt(byte % LETTERS.length))
    .join('');

/** The pattern of an id, for the reader and for the schema. */
export const JOB_ID = '^[a-z0-9]{8,40}$';

const ID = new RegExp(JOB_ID);

/** Can this be the id of a job? @example isJobId('k3m7p2q9x4w8') // => true */
export const isJobId = (value: unknown): value is string => typeof value === 'string' && ID.test(value);
