import { type Copies, WHOLE } from '../names.ts';
import type { CopyList } from './scope.ts';

/** So many files are asked for at once. */
const LANES = 8;

/** Pages that hold their style lead to others that fetch it, and these may be opened before the copy is whole. */
const isStyle = (file: string): boolean => file.endsWith('.css');

/** The address that a file is asked for by: a page by that of its folder, as hosts send it without a detour. */
export const addressOf = (file: string, root: string): string =>
  new URL(encodeURI(file.replace(/(^|\/)index\.html$/, '$1')), root).href;

/**
 * Fetches every file of a version into the version's own cache. What an older version on this phone holds with the same sum is copied, and
 * what was fetched before a network went away is not fetched again. A file with another sum than the list's is none of this version.
 * @throws Error if one can't be had; the version is then not whole, and all others are as they were.
 */
export async function fetchWhole({ version, files }: CopyList, copies: Copies): Promise<void> {
  const name = copies.version(version);
  const older: { readonly cache: Cache; readonly files: CopyList['files'] }[] = [];
  for (const each of (await caches.keys()).filter(copies.isVersion)) {
    const whole = await caches.match(new URL(WHOLE, copies.root), { cacheName: each });
    if (each === name) {
      if (whole) return;
    } else if (whole) older.push({ cache: await caches.open(each), files: await whole.json() });
    // Begun, and never finished.
    else await caches.delete(each);
  }
  const cache = await caches.open(name);
  const there = new Set((await cache.keys()).map(({ url }) => url));
  // Taken from its end.
  const left = Object.entries(files)
    .filter(([file]) => !there.has(keyOf(file, copies.root)))
    .sort(([a], [b]) => Number(isStyle(a)) - Number(isStyle(b)));
  const kept = async (file: string, sum: string): Promise<Response | undefined> => {
    for (const each of older)
      if (each.files[file] === sum) return await each.cache.match(keyOf(file, copies.root));
    return undefined;
  };
  let failed = false;
  const lane = async (): Promise<void> => {
    for (let next = left.pop(); next && !failed; next = left.pop()) {
      const [file, sum] = next;
      await cache.put(
        keyOf(file, copies.root),
        (await kept(file, sum)) ?? (await fetched(file, sum, copies.root)),
      );
    }
  };
  try {
    await Promise.all(Array.from({ length: LANES }, lane));
    await cache.put(new URL(WHOLE, copies.root).href, new Response(JSON.stringify(files)));
    if (!(await caches.has(name))) throw new Error('found no cache, expected the one that was filled');
  } catch (error) {
    failed = true;
    // The phone is full: half a copy would only take its room.
    if (error instanceof Error && /quota/i.test(error.name)) await caches.delete(name);
    throw error;
  }
}

/** Under which name a file stands in its cache. */
export const keyOf = (file: string, root: string): string => new URL(encodeURI(file), root).href;

async function fetched(file: string, sum: string, root: string): Promise<Response> {
  // What the browser has kept may be good; where it is not, the host itself is asked.
  for (const cache of ['no-cache', 'reload'] as const) {
    const answer = await fetch(addressOf(file, root), { cache, credentials: 'same-origin' });
    const bytes = await answer.arrayBuffer();
    if (answer.ok && (await sumOf(bytes)) === sum) return asKept(bytes, answer.headers);
  }
  throw new Error(`found another ${file} at the host, expected the one of this version`);
}

/** What a host sent, with what it said of it, but for what held of the way here only. */
function asKept(bytes: ArrayBuffer, said: Headers): Response {
  const headers = new Headers(said);
  for (const name of ['content-encoding', 'content-length', 'transfer-encoding', 'vary'])
    headers.delete(name);
  return new Response(bytes, { headers });
}

/** The first sixteen signs of the SHA-256: enough to tell one state of a file from another. */
async function sumOf(bytes: ArrayBuffer): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...sum.slice(0, 8)].map((each) => each.toString(16).padStart(2, '0')).join('');
}
