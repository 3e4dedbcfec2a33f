import { addressOf, entriesIn } from '../calc/declare/address.ts';
import type { Entries } from '../calc/declare/entries.ts';
import { setAddress } from './own-address.ts';

/**
 * Where entries are kept between visits: in the address, so that it can be sent, and in the browser's own store, so that a closed tab
 * loses nothing. A store that is full or refused is no reason to stop.
 */
export function keep(name: string, entries: Entries): void {
  try {
    localStorage.setItem(name, JSON.stringify(entries));
  } catch {
    // The address still holds the entries.
  }
  intoAddress(entries);
}

const inAddress = (): Entries | undefined => entriesIn(location.hash.slice(1));

const intoAddress = (entries: Entries): void => setAddress(`#${addressOf(entries)}`);

/**
 * What a new address of an open page brings. A link within the page, such as to its head, brings nothing: another tab's entries are none of
 * this one's. What is shown goes back into the address, unless it is the example.
 */
export function arrived(shown: Entries | false): Entries | undefined {
  const found = inAddress();
  if (!found && shown) intoAddress(shown);
  return found;
}

/** What was kept: the address first, then the store; undefined where neither holds anything that can be read. */
export function kept(name: string): Entries | undefined {
  const found = inAddress();
  if (found) return found;
  try {
    // Nothing stored is null, in letters too.
    const stored: unknown = JSON.parse(String(localStorage.getItem(name)));
    return stored instanceof Object && !Array.isArray(stored) ? (stored as Entries) : undefined;
  } catch {
    return undefined;
  }
}

/** Lets go of what was kept. */
export function forget(name: string): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // Nothing was stored where nothing can be.
  }
  setAddress();
}
