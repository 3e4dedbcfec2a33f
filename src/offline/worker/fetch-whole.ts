import { type Copies, WHOLE } from '../names.ts';
import { asKept, asKeptOf, sumOf } from './answer-kept.ts';
import { contentType } from './content-type.ts';
import { inLanes } from './in-lanes.ts';
import { openParcel } from './open-parcel.ts';
import type { CopyInParcels, CopyList } from './scope.ts';

/** So many files are asked for at once. */
const LANES = 8;
/** And so many parcels: one opens while another is on its way. */
const PARCEL_LANES = 2;

/** The address that a file is asked for by: a page by that of its folder, as hosts send it without a detour. */
export const addressOf = (file: string, root: string): string =>
  new URL(encodeURI(file.replace(/(^|\/)index\.html$/, '$1')), root).href;

/** Under which name a file stands in its cache. */
export const keyOf = (file: string, root: string): string => new URL(encodeURI(file), root).href;

/**
 * Fetches every file of a version into the version's own cache: what an older version on this phone holds with the same sum is copied; what
 * was fetched before a network went away is not fetched again; where much or all of a parcel is wanted it comes in the parcel, all else by
 * itself. A file with another sum than the list's is none of this version.
 * @throws Error if one can't be had; the version is then not whole, and all others are as they were.
 */
export async function fetchWhole(list: CopyInParcels, copies: Copies): Promise<void> {
  const { version, files, first } = list;
  const { root } = copies;
  const name = copies.version(version);
  const older: { readonly cache: Cache; readonly files: CopyList['files'] }[] = [];
  for (const each of (await caches.keys()).filter(copies.isVersion)) {
    const whole = await caches.match(new URL(WHOLE, root), { cacheName: each });
    if (each === name) {
      if (whole) return;
    } else if (whole) older.push({ cache: await caches.open(each), files: await whole.json() });
    // Begun, and never finished.
    else await caches.delete(each);
  }
  const cache = await caches.open(name);
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const left = new Set(Object.keys(files).filter((file) => !there.has(keyOf(file, root))));
  const sumFor = (file: string): string => files[file] ?? '';
  const keep = async (file: string, answer: Response): Promise<void> => {
    await cache.put(keyOf(file, root), answer);
    left.delete(file);
  };
  const olderWith = (file: string) => older.find((each) => each.files[file] === sumFor(file));
  const take = async (file: string): Promise<void> => {
    const kept = await olderWith(file)?.cache.match(keyOf(file, root));
    await keep(file, kept ?? (await fetched(file, sumFor(file), root)));
  };

  const takeFrom = async ({ place, files }: Parcel): Promise<void> => {
    const opened = await openParcel(keyOf(place, root), files.length);
    if (!opened) return;
    await Promise.all(
      files.map(async (file, at) => {
        const bytes = opened.contents[at];
        if (bytes && left.has(file) && (await sumOf(bytes)) === sumFor(file))
          await keep(file, asKeptOf(opened.headers, bytes, contentType(file)));
      }),
    );
  };

  try {
    await inLanes(
      LANES,
      [...left].filter((file) => first.includes(file) || olderWith(file)),
      take,
    );
    // A few files of many are sooner had by themselves.
    const wanted = parcelsIn(list).filter((each) => {
      const many = each.files.filter((file) => left.has(file)).length;
      return many > LANES || (many > 1 && many === each.files.length);
    });
    await inLanes(PARCEL_LANES, wanted, takeFrom);
    await inLanes(LANES, [...left], take);
    await cache.put(new URL(WHOLE, root).href, new Response(JSON.stringify(files)));
    if (!(await caches.has(name))) throw new Error('found no cache, expected the one that was filled');
  } catch (error) {
    // The phone is full: half a copy would only take its room.
    if (error instanceof Error && /quota/i.test(error.name)) await caches.delete(name);
    throw error;
  }
}

interface Parcel {
  readonly place: string;
  readonly files: readonly string[];
}

/** Which files does each parcel hold? They stand in the order of the list. */
function parcelsIn({ files, parcels }: CopyInParcels): readonly Parcel[] {
  const all = Object.keys(files);
  return parcels.map(([place, many]) => ({ place, files: all.splice(0, many) }));
}

async function fetched(file: string, sum: string, root: string): Promise<Response> {
  // What the browser has kept may be good; where it is not, the host itself is asked.
  for (const cache of ['no-cache', 'reload'] as const) {
    const answer = await fetch(addressOf(file, root), { cache, credentials: 'same-origin' });
    const bytes = new Uint8Array(await answer.arrayBuffer());
    if (answer.ok && (await sumOf(bytes)) === sum) return asKept(bytes, answer.headers);
  }
  throw new Error(`found another ${file} at the host, expected the one of this version`);
}
