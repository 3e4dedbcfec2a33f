import { createHash } from 'node:crypto';

/** Where the parcels lie in which a copy comes. */
export const PARCELS = 'copy/';

/** What no reader needs without a network: copies packed for servers, and the parts of search that this site does not use. */
const LEFT_OUT = [
  /\.gz$/,
  /\.zip$/,
  /^worker\.js$/,
  /^pagefind\/pagefind-(component-ui|modular-ui|ui|highlight|worker)\.(js|css)$/,
  /^pagefind\/wasm\.unknown\.pagefind$/,
];

/** Is a file of the built site kept by the copy on a phone? @example isKept('do/index.html.gz') // => false */
export const isKept = (file: string): boolean =>
  !file.startsWith(PARCELS) && !LEFT_OUT.some((each) => each.test(file));

/** What a version of the copy consists of. */
export interface CopyList {
  /** The sum of the list: another file, or one that holds something else, makes another version. */
  readonly version: string;
  /** Each file with the sum of what it holds. */
  readonly files: Readonly<Record<string, string>>;
}

/** The first sixteen signs of a SHA-256: enough to tell one state of a file from another. */
const sum = (bytes: Uint8Array | string): string =>
  createHash('sha256').update(bytes).digest('hex').slice(0, 16);

/** The list of a built site, its files in order; the same files make the same list. */
export function copyList(site: ReadonlyMap<string, Uint8Array>): CopyList {
  const files = Object.fromEntries(
    [...site]
      .filter(([file]) => isKept(file))
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([file, bytes]) => [file, sum(bytes)]),
  );
  return { version: sum(JSON.stringify(files)), files };
}
