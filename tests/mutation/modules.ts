import { readFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { withFewerCases } from './tests.ts';

const root = process.cwd();
const standIn = import.meta.resolve('./stand-in.ts');
const fewerCases = import.meta.resolve('./fewer-cases.ts');
const projectOnce = import.meta.resolve('./project-once.ts');

/** Which file imports which, by their ways from the root; known once they have been loaded. */
const importedBy = new Map<string, Set<string>>();

/** The rulebook’s own mutants have to be met where it is read. */
const readOnce = process.env.MUTATION_FOLDER !== 'src/rulebook';

let generation = 0;
let kept: readonly string[] = [];

/** From here on files are loaded afresh, but those below the folders named are kept as they are. */
export function loadAfresh(keep: readonly string[]): void {
  generation += 1;
  kept = keep;
}

const fromRoot = (url: string | undefined): string | undefined => {
  if (!url?.startsWith('file:')) return undefined;
  const way = relative(root, fileURLToPath(url.replace(/\?.*$/, '')));
  return /^(src|tests)\//.test(way) ? way : undefined;
};

registerHooks({
  resolve(specifier, context, next) {
    if (specifier === 'vitest') return { url: standIn, shortCircuit: true };
    if (specifier === 'fast-check' && withFewerCases.has(fromRoot(context.parentURL) ?? ''))
      return { url: fewerCases, shortCircuit: true };
    const found = next(specifier, context);
    const way = fromRoot(found.url);
    if (way === undefined) return found;
    const by = fromRoot(context.parentURL);
    if (by !== undefined) importedBy.set(way, (importedBy.get(way) ?? new Set()).add(by));
    if (
      readOnce &&
      way === 'src/rulebook/project.ts' &&
      by?.startsWith('tests/') &&
      context.parentURL !== projectOnce
    )
      return { url: projectOnce, shortCircuit: true };
    if (generation === 0 || kept.some((folder) => way.startsWith(folder))) return found;
    return { ...found, url: `${found.url}?${generation}` };
  },
  // A file asked for as its own text, as the bundler of the site gives it.
  load: (url, context, next) =>
    url.endsWith('?raw')
      ? {
          format: 'module',
          source: `export default ${JSON.stringify(readFileSync(fileURLToPath(url.replace('?raw', '')), 'utf8'))};`,
          shortCircuit: true,
        }
      : next(url, context),
});

/** Loads a file named by its way from the root. */
export const load = (way: string): Promise<unknown> =>
  import(pathToFileURL(join(root, way)).href + (generation === 0 ? '' : `?${generation}`));

/** The files that import this one, near or far, and the file itself. */
export function importersOf(way: string): ReadonlySet<string> {
  const all = new Set([way]);
  for (const each of all) for (const by of importedBy.get(each) ?? []) all.add(by);
  return all;
}
