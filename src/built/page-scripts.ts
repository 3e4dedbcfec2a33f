import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { type Imported, importsOf } from './imports.ts';

/** Gives what a script of the built site imports, by its place in it. */
export type ImportsIn = (file: string) => readonly Imported[];

/** What the scripts of a built site import; one that a thousand pages share is read once. */
export function importsWithin(folder: string): ImportsIn {
  const known = new Map<string, readonly Imported[]>();
  return (file) => {
    const found = known.get(file) ?? importsOf(readFileSync(join(folder, file), 'utf8'));
    known.set(file, found);
    return found;
  };
}

/** As the build writes it: a script of a page, from where the page lies. */
const SCRIPT = /<script type="module" src="([^"]+)"/g;

/**
 * Which scripts does a page name itself? Their places in the site, in order.
 * @param page the page's place in the site, such as "do/patching/index.html"
 */
export const scriptsOf = (page: string, html: string): readonly string[] =>
  [...html.matchAll(SCRIPT)].map(([, src = '']) => posix.join(posix.dirname(page), decodeURI(src)));

/** All that some scripts need, themselves too; what is asked for only as they run, if `later`. */
export function reachedFrom(
  scripts: readonly string[],
  importsIn: ImportsIn,
  { later: withLater }: { readonly later: boolean },
): ReadonlySet<string> {
  const reached = new Set<string>();
  const take = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const { from, later } of importsIn(file))
      if (withLater || !later) take(posix.join(posix.dirname(file), from));
  };
  scripts.forEach(take);
  return reached;
}
