import { type Zippable, zipSync } from 'fflate';

/** The earliest day that a zip can tell, as its own clock reads: the same everywhere, and of no consequence. */
const firstDay = (): Date => new Date(1980, 0, 1);

/**
 * The files of a site as one zip: the same files make the same bytes, wherever and whenever it is made.
 * @param files by their places in the site, such as "do/patching/index.html"; in any order
 */
export function zipOf(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const mtime = firstDay();
  const inOrder = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const entries: Zippable = Object.fromEntries(inOrder.map(([name, bytes]) => [name, [bytes, { mtime }]]));
  return zipSync(entries, { level: 9 });
}

/**
 * The name of a zip, after the edition of the rulebook inside it.
 * @example zipName('2026.1') // => 'heel-to-ridge-2026.1.zip'
 * @example zipName('2026.1 + Harrow Valley 2026-10-01') // => 'heel-to-ridge-2026.1+harrow-valley-2026-10-01.zip'
 */
export const zipName = (edition: string): string =>
  `heel-to-ridge-${edition
    .toLowerCase()
    .replace(/\s*\+\s*/g, '+')
    .replace(/[^\p{L}\p{N}.+]+/gu, '-')
    .replace(/^-|-$/g, '')}.zip`;
