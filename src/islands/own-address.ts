/**
 * Writes another address of the open page into the bar, in the place of the one there; by itself that without what follows the mark #. A
 * browser that refuses, as some do after many in a short time, stops nothing else.
 */
export function setAddress(address = location.pathname + location.search): void {
  try {
    history.replaceState(null, '', address);
  } catch {
    // The next change writes its own.
  }
}
