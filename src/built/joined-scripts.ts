import { posix } from 'node:path';
import { buildTargets } from './oldest-browsers.ts';
import { oneFile } from './one-file.ts';
import { type ImportsIn, reachedFrom, scriptsOf } from './page-scripts.ts';

/** A page’s own script, and what it needs that not every page has. */
export interface OwnScript {
  readonly script: string;
  readonly parts: number;
  /** What every page has, which stays apart. */
  readonly shared: ReadonlySet<string>;
}

/** What does a page run besides what all pages run? Undefined for a page of words, which has the one script of all pages. */
export function ownScriptOf(page: string, html: string, importsIn: ImportsIn): OwnScript | undefined {
  const [everyPage, script, ...more] = scriptsOf(page, html);
  if (!everyPage || !script || more.length > 0) return undefined;
  const shared = reachedFrom([everyPage], importsIn, { later: false });
  const parts = [...reachedFrom([script], importsIn, { later: false })].filter((file) => !shared.has(file));
  return { script, parts: parts.length, shared };
}

/** In so many parts a calculator is left: one more, and each request and each part packed by itself weighs more than is shared. */
export const MOST_PARTS = 6;

/**
 * The code of a script and of all its parts, without what it does not use of them; what every page has is imported as before.
 * @param folder where the site was built
 */
export async function joined(folder: string, { script, shared }: OwnScript): Promise<string> {
  const apart = new Set([...shared].map((file) => posix.resolve(folder, file)));
  return oneFile(posix.resolve(folder, script), {
    target: buildTargets(),
    format: 'esm',
    external: (id, importer) =>
      apart.has(importer === undefined ? id : posix.resolve(posix.dirname(importer), id)),
  });
}
