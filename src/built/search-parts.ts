import { createHash } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import { decode, encode } from 'cborg';

/** A part of the index that holds words: the first of them, and the file's name. */
export type SearchPart = readonly [firstWord: string, name: string];

/** Files of the index by what they hold, packed. */
export interface SearchIndexFiles {
  /** The list that the index has of itself: what wrote it, its pages, its parts each with first word, last word and name, and more. */
  readonly meta: Uint8Array;
  /** Its parts by their names. */
  readonly parts: ReadonlyMap<string, Uint8Array>;
}

/** What stands before the data in every packed file of the index. */
const MARK = 'pagefind_dcd';

/** The language of the site, before the name of each part. */
const LANGUAGE = 'en';

/** A part that holds so much, in bytes before it is packed, ends where the first two letters of its words change; three times as much, the first three. */
const ENOUGH = 12_000;

/**
 * Words that a sentence is held together by and a search leaves out (`src/islands/search/words.ts`): where each stands, on every page, was a
 * seventh of the index.
 */
export const NOT_KEPT: ReadonlySet<string> = new Set(
  'a an and are at for from in is it of on or the to'.split(' '),
);

/** A word, and where it stands. */
type Entry = readonly [word: string, ...rest: readonly unknown[]];

function unpacked(file: Uint8Array): unknown[] {
  const plain = gunzipSync(file);
  const mark = plain.subarray(0, MARK.length).toString();
  if (mark !== MARK)
    throw new Error(`found a file of the index that begins with "${mark}", expected "${MARK}"`);
  return decode(plain.subarray(MARK.length)) as unknown[];
}

const packed = (list: unknown): Uint8Array =>
  gzipSync(Buffer.concat([Buffer.from(MARK), encode(list)]), { level: 9 });

/** By what a file holds, so that a browser may keep it for ever. */
const nameOf = (file: Uint8Array, signs: number): string =>
  `${LANGUAGE}_${createHash('sha256').update(file).digest('hex').slice(0, signs)}`;

/** The parts that a list of the index names, in the order of their words. @throws Error where it is not written so. */
function partsIn(list: readonly unknown[]): readonly (readonly [string, string, string])[] {
  const parts = list[2];
  const isPart = (part: unknown): part is [string, string, string] =>
    Array.isArray(part) && part.length === 3 && part.every((each) => typeof each === 'string');
  if (!Array.isArray(parts) || !parts.every(isPart))
    throw new Error(
      'found no parts in the list of the index, expected each with first word, last word and name',
    );
  return parts;
}

/**
 * The same index in smaller parts, of which a search fetches one or two: the indexer's own are of some 25 kB, half a second each on a poor line.
 * Words that no search looks for are left out. Parts end where the first letters of words change, so that what a half-typed word begins stands in one part, or in parts that all begin so.
 * @returns the files, the name of the list, and the parts by their first words, in order
 * @throws Error where the index is not written as expected, or a part is missing.
 */
export function inSmallParts({ meta, parts }: SearchIndexFiles): SearchIndexFiles & {
  readonly name: string;
  readonly firstWords: readonly SearchPart[];
} {
  const list = unpacked(meta);
  const entries = partsIn(list).flatMap(([, , name]) => {
    const part = parts.get(name);
    if (!part) throw new Error(`found no part "${name}" of the index, expected each that its list names`);
    return (unpacked(part)[0] as Entry[]).filter(([word]) => !NOT_KEPT.has(word));
  });
  const small: { readonly entries: Entry[]; size: number }[] = [];
  let before = '';
  for (const entry of entries) {
    const last = small.at(-1);
    const [word] = entry;
    const alike = last && last.size > 3 * ENOUGH ? 3 : 2;
    const ends = !last || (last.size > ENOUGH && word.slice(0, alike) !== before.slice(0, alike));
    const part = ends ? { entries: [], size: 0 } : last;
    if (ends) small.push(part);
    part.entries.push(entry);
    part.size += encode(entry).length;
    before = word;
  }
  const written = small.map(({ entries }) => {
    const file = packed([entries]);
    return { name: nameOf(file, 7), file, first: entries[0]?.[0] ?? '', last: entries.at(-1)?.[0] ?? '' };
  });
  list[2] = written.map(({ first, last, name }) => [first, last, name]);
  const newMeta = packed(list);
  return {
    meta: newMeta,
    name: nameOf(newMeta, 10),
    parts: new Map(written.map(({ name, file }) => [name, file])),
    firstWords: written.map(({ first, name }) => [first, name]),
  };
}
