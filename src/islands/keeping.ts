import { addressOf, entriesIn } from '../calc/declare/address.ts';
import type { Entries } from '../calc/declare/entries.ts';

/**
 * Where entries are kept between visits: in the address, so that it can be sent, and in the browser's own store, so that a closed tab
 * loses nothing. A store that is full or refused is no reason to stop.
 */
export function keep(name: string, entries: Entries): void {
  history.replaceState(null, '', `#${addressOf(entries)}`);
  try {
    localStorage.setItem(name, JSON.stringify(entries));
  } catch {
    // The address still holds the entries.
  }
}

/** What was kept: the address first, then the store; undefined where neither holds anything that can be read. */
export function kept(name: string): Entries | undefined {
  const inAddress = entriesIn(location.hash.slice(1));
  if (inAddress) return inAddress;
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(name) ?? 'null');
    return stored !== null && typeof stored === 'object' && !Array.isArray(stored)
      ? (stored as Entries)
      : undefined;
  } catch {
    return undefined;
  }
}

/** Lets go of what was kept. */
export function forget(name: string): void {
  history.replaceState(null, '', location.pathname + location.search);
  try {
    localStorage.removeItem(name);
  } catch {
    // Nothing was stored where nothing can be.
  }
}
