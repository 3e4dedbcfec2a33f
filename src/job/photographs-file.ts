import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { LARGEST_JOB, type OpenedJob, openJobFile, parsed, writeJobFile } from './job-file.ts';
import { type MigrationStep, migrate } from './migrate.ts';
import { isJpeg, MOST_BYTES, MOST_PHOTOGRAPHS, type Photograph, photographIn } from './photograph.ts';

/**
 * A job with its photographs in one file: a zip with the job file as it is saved alone, the pictures, so that any program can show them,
 * and what is known of each.
 */
const PHOTOGRAPHS_FORMAT = 'heel-to-ridge photographs';
const PHOTOGRAPHS_VERSION = 1;

const JOB = 'job.json';
const LIST = 'photographs.json';
const PICTURE = /^photographs\/([a-z0-9]{8,40})\.jpg$/;
const placeOf = (id: string): string => `photographs/${id}.jpg`;

/** For so many photographs, each with a line of words. */
const LONGEST_LIST = 1000 * MOST_PHOTOGRAPHS;

/** No older version yet. */
const steps: Readonly<Record<number, MigrationStep>> = {};

/** A photograph with its picture. */
export interface Picture {
  readonly photograph: Photograph;
  /** A JPEG. */
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** What a file brought. */
export interface BroughtPictures {
  readonly job: OpenedJob;
  readonly pictures: readonly Picture[];
  /** What is wrong with pictures that can't be taken. */
  readonly refused: readonly FieldProblem[];
}

/** The file of a job and its photographs. Pictures are packed already: nothing in it is packed again. */
export function writeWithPhotographs(job: OpenedJob, pictures: readonly Picture[]): Uint8Array<ArrayBuffer> {
  const list = {
    format: PHOTOGRAPHS_FORMAT,
    version: PHOTOGRAPHS_VERSION,
    photographs: pictures.map(({ photograph }) => photograph),
  };
  const files: Zippable = {
    [JOB]: strToU8(writeJobFile(job.entries, job)),
    [LIST]: strToU8(`${JSON.stringify(list, null, 1)}\n`),
    ...Object.fromEntries(pictures.map(({ photograph, bytes }) => [placeOf(photograph.id), bytes])),
  };
  return zipSync(files, { level: 0 });
}

const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
  ok: false,
  problems: [problem(found, expected)],
});

const problem = (found: string, expected: string, label = 'File with photographs'): FieldProblem => ({
  field: '',
  label,
  found,
  expected,
});

/**
 * Reads the file of a job and its photographs; a picture that can't be taken keeps no other from being read. Nothing is unpacked that
 * would be larger than the file itself.
 * @example readWithPhotographs(Uint8Array.of()).ok // => false
 */
export function readWithPhotographs(bytes: Uint8Array): Read<BroughtPictures> {
  const files = filesOf(bytes);
  if (!files)
    return refused('no whole zip, or one packed by another program', 'a file as this site saves it');
  const text = (name: string, most: number): string | undefined => {
    const found = files.get(name);
    return found && found.length <= most ? strFromU8(found) : undefined;
  };
  const jobText = text(JOB, 4 * LARGEST_JOB);
  if (jobText === undefined)
    return refused(`no ${JOB} of a fair size in it`, 'the job beside its photographs');
  const job = openJobFile(jobText);
  if (!job.ok) return job;
  const listText = text(LIST, LONGEST_LIST);
  if (listText === undefined)
    return refused(`no ${LIST} of a fair size in it`, 'what is known of each picture');
  const list = parsed(listText, LONGEST_LIST);
  if (!list.ok) return list;
  if (list.value.format !== PHOTOGRAPHS_FORMAT)
    return refused('a list of another format', PHOTOGRAPHS_FORMAT);
  const read = migrate(list.value, { now: PHOTOGRAPHS_VERSION, steps, label: 'File with photographs' });
  if (!read.ok) return read;
  const { photographs } = read.value;
  if (!Array.isArray(photographs)) return refused('no list of photographs', 'a list');
  if (photographs.length > MOST_PHOTOGRAPHS)
    return refused(`${photographs.length} photographs`, `${MOST_PHOTOGRAPHS} at most`);
  const each = photographs.map((raw: unknown, place) =>
    pictureOf(raw, files, `Photograph ${place + 1} of ${photographs.length}`),
  );
  return {
    ok: true,
    value: {
      job: job.value,
      pictures: each.flatMap((one) => ('bytes' in one ? [one] : [])),
      refused: each.flatMap((one) => ('bytes' in one ? [] : [one])),
    },
  };
}

function pictureOf(raw: unknown, files: Files, called: string): Picture | FieldProblem {
  const photograph = photographIn(raw);
  if (!photograph)
    return problem('no photograph as this site writes it', 'its id, job, time and size', called);
  const place = placeOf(photograph.id);
  const bytes = files.get(place);
  if (!bytes) return problem('no picture', `"${place}" in the file`, called);
  if (bytes.length > MOST_BYTES || !isJpeg(bytes))
    return problem('something else', `a JPEG of ${MOST_BYTES} bytes at most`, called);
  return { photograph: { ...photograph, bytes: bytes.length }, bytes: bytes.slice() };
}

type Files = ReadonlyMap<string, Uint8Array>;

class NotOurs extends Error {}

/** The files in a zip that we may have written; undefined where it is none, or one that would come out larger than it went in. */
function filesOf(bytes: Uint8Array): Files | undefined {
  let count = 0;
  let size = 0;
  try {
    const files = unzipSync(bytes, {
      filter: ({ name, size: packed, originalSize, compression }) => {
        count += 1;
        if (count > MOST_PHOTOGRAPHS + 2) throw new NotOurs('more files than are ever written');
        if (name !== JOB && name !== LIST && !PICTURE.test(name)) return false;
        size += originalSize;
        if (compression !== 0 || packed !== originalSize || size > bytes.length)
          throw new NotOurs('files that were packed, or that overlap');
        return true;
      },
    });
    return new Map(Object.entries(files));
  } catch {
    // Whatever a broken zip throws: it can't be read.
    return undefined;
  }
}
