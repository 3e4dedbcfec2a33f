/**
 * Entries as a readable address: `home.length=66+ft&roof.obstacles.0.what=plumbing+vent`.
 * It goes into the fragment, so that what a crew typed never reaches a host's log.
 */

const MOST_PAIRS = 2000;
/** A place farther on has to follow on the one before it; and so many may be left out in all: few letters must not make millions of entries. */
const MOST_PLACES = 200;
const MOST_GAPS = 2000;
const PLACE = /^(0|[1-9]\d*)$/;
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

/** Every leaf of nested entries with the way to it; what is empty is left out. */
function leaves(entries: unknown, way: readonly string[] = []): [string, string][] {
  if (entries === undefined || entries === null || entries === '') return [];
  if (typeof entries !== 'object') return [[way.join('.'), String(entries)]];
  return Object.entries(entries as Record<string, unknown>).flatMap(([key, value]) =>
    leaves(value, [...way, key]),
  );
}

/** @example addressOf({ home: { length: '66 ft' } }) // => 'home.length=66+ft' */
export const addressOf = (entries: unknown): string => new URLSearchParams(leaves(entries)).toString();

/**
 * The entries an address holds, no more than `most` of them; undefined where it holds none. Nothing in it is trusted: the entries are read
 * like a file's.
 * @example entriesIn('home.length=66+ft') // => { home: { length: '66 ft' } }
 */
export function entriesIn(address: string, most = MOST_PAIRS): Record<string, unknown> | undefined {
  const pairs = [...new URLSearchParams(address)].slice(0, most);
  const root: Record<string, unknown> = {};
  const room = { gaps: MOST_GAPS };
  let any = false;
  for (const [way, value] of pairs) {
    const keys = way.split('.');
    if (value === '' || keys.length > 6 || keys.some((key) => key === '' || FORBIDDEN.has(key))) continue;
    if (put(root, keys, value, room)) any = true;
  }
  return any ? root : undefined;
}

function put(
  root: Record<string, unknown>,
  keys: readonly string[],
  value: string,
  room: { gaps: number },
): boolean {
  let at: Record<string, unknown> | unknown[] = root;
  for (const [place, key] of keys.entries()) {
    if (Array.isArray(at)) {
      const gap = PLACE.test(key) ? Number(key) - at.length : Number.POSITIVE_INFINITY;
      if (gap > room.gaps || (gap > 0 && Number(key) >= MOST_PLACES)) return false;
      // A list without gaps: an entry that is left out is an empty one, and is complained of as such.
      for (let left = gap; left > 0; left--) at.push({});
      room.gaps -= Math.max(0, gap);
    }
    const holder = at as Record<string, unknown>;
    if (place === keys.length - 1) {
      holder[key] = value;
      return true;
    }
    const next = keys[place + 1] as string;
    const inside: unknown = new Map(Object.entries(holder)).get(key);
    if (inside === undefined) holder[key] = PLACE.test(next) ? [] : {};
    else if (typeof inside !== 'object') return false;
    at = holder[key] as Record<string, unknown> | unknown[];
  }
  return false;
}
