import { type CopyList, PARCELS } from './copy-list.ts';

/** Many files of the copy in one, each whole, in the order of the list. */
export interface Parcel {
  /** Its place in the site, such as "copy/3.json". */
  readonly place: string;
  readonly files: readonly string[];
  /** A list of what each file holds: words as they are, all else in base 64. */
  readonly text: string;
}

/**
 * So many signs make a parcel: packed about a tenth of a megabyte, which a phone on a poor network has in a few seconds. If the network goes
 * away, no more than that is fetched anew.
 */
const FULL = 400_000;

/** What a file holds, as a parcel writes it. */
function written(bytes: Uint8Array): string {
  const whole = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const words = whole.toString('utf8');
  return JSON.stringify(
    Buffer.from(words, 'utf8').equals(whole) ? words : { base64: whole.toString('base64') },
  );
}

/**
 * Which files of a copy are asked for by themselves, before its parcels? Pages that hold their style lead to others that fetch it, and these
 * may be opened before the copy is whole.
 */
export const firstOf = ({ files }: CopyList): readonly string[] =>
  Object.keys(files).filter((file) => file.endsWith('.css'));

/**
 * In which parcels does a phone fetch its first copy? Some thirty, in place of nearly two thousand files: a poor network asks for each in half a
 * second, and like pages side by side pack to half. Every file of the list is in one of them, in its order.
 * @throws Error where the site has no such file
 * @example parcelsOf(new Map([['a.css', Buffer.from('a{}')]]), { files: { 'a.css': '' } })[0]?.text // => '["a{}"]'
 */
export function parcelsOf(
  site: ReadonlyMap<string, Uint8Array>,
  { files }: Pick<CopyList, 'files'>,
): readonly Parcel[] {
  const parcels: { files: string[]; contents: string[]; size: number }[] = [];
  for (const file of Object.keys(files)) {
    const bytes = site.get(file);
    if (!bytes) throw new Error(`found no file "${file}" in the site, expected each of its list`);
    const content = written(bytes);
    let last = parcels.at(-1);
    if (!last || last.size >= FULL) {
      last = { files: [], contents: [], size: 0 };
      parcels.push(last);
    }
    last.files.push(file);
    last.contents.push(content);
    last.size += content.length;
  }
  return parcels.map(({ files, contents }, place) => ({
    place: `${PARCELS}${place + 1}.json`,
    files,
    text: `[${contents.join(',\n')}]`,
  }));
}
