import { type Zippable, zipSync } from 'fflate';

/**
 * The files of a site as one zip: the same files of the same day make the same bytes, on any machine. All bear one date, that of the
 * build, and not a fixed one: servers tell by date and size whether a browser's copy is still good, and a value that changes from 2 to 3
 * leaves the size of its page as it was. A date long past would also let browsers keep a page for years.
 * @param files by their places in the site, such as "do/patching/index.html"; in any order
 * @param built when the site was built; a zip tells it to two seconds
 */
export function zipOf(files: ReadonlyMap<string, Uint8Array>, built: Date): Uint8Array {
  const inOrder = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const mtime = asReadInUtc(built);
  const entries: Zippable = Object.fromEntries(inOrder.map(([name, bytes]) => [name, [bytes, { mtime }]]));
  return zipSync(entries, { level: 9 });
}

/** A zip holds what a clock reads, without a zone; so that all machines write the same, that is the clock of UTC. */
const asReadInUtc = (date: Date): Date =>
  new Date(
    date.getUTCFullYear(),
    date.getUTCMonth(),
    date.getUTCDate(),
    date.getUTCHours(),
    date.getUTCMinutes(),
    date.getUTCSeconds(),
  );

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
