import { posix } from 'node:path';
import { bundled } from './bundled.ts';
import { type ImportsIn, reachedFrom, scriptsOf } from './page-scripts.ts';

/** A page’s own script, and what it needs that not every page has. */
export interface OwnScript {
  readonly script: string;
  /** Itself among them. */
  readonly parts: ReadonlySet<string>;
  /** What every page has, which stays apart. */
  readonly shared: ReadonlySet<string>;
}

/** What does a page run besides what all pages run? Undefined for a page of words, which has the one script of all pages. */
export function ownScriptOf(page: string, html: string, importsIn: ImportsIn): OwnScript | undefined {
  const [everyPage, script, ...more] = scriptsOf(page, html);
  if (!everyPage || !script || more.length > 0) return undefined;
  const shared = reachedFrom([everyPage], importsIn, { later: false });
  const needed = [...reachedFrom([script], importsIn, { later: false })];
  return { script, parts: new Set(needed.filter((file) => !shared.has(file))), shared };
}

/** In so many parts a page is left: one more, and each request and each part packed by itself weighs more than is shared. */
export const MOST_PARTS = 6;

/** A script of the site as it was made of others: its place, and its code. */
export interface MadeScript {
  readonly place: string;
  readonly code: string;
}

/** What came of joining some scripts: which now stands for each, and all files that were made. */
export interface Joined {
  readonly inPlaceOf: ReadonlyMap<string, string>;
  readonly made: readonly MadeScript[];
}

/**
 * Some pages' own scripts, each with its parts: what several of them use is in two files, of which the pages that need least need only the
 * first; what every page of the site has is imported as before, and what none uses of its parts stays out.
 * @param folder where the site was built
 */
export async function joined(folder: string, own: readonly OwnScript[]): Promise<Joined> {
  const placed = (files: Iterable<string>) => [...files].map((file) => posix.resolve(folder, file));
  const apart = new Set(own.flatMap(({ shared }) => placed(shared)));
  const scripts = new Map(own.map(({ script }) => [nameOf(script), script]));
  const beside = (name: string): string => posix.join(posix.dirname(own[0]?.script ?? ''), name);
  const least = Math.min(...own.map(({ parts }) => parts.size));
  const first = new Set(own.flatMap(({ parts }) => (parts.size <= LIGHT * least ? placed(parts) : [])));
  const output = await bundled(
    Object.fromEntries([...scripts].map(([name, script]) => [name, posix.resolve(folder, script)])),
    {
      external: (id, importer) =>
        apart.has(importer === undefined ? id : posix.resolve(posix.dirname(importer), id)),
      output: {
        format: 'esm',
        entryFileNames: '[name].[hash].js',
        chunkFileNames: '[name].[hash].js',
        codeSplitting: scripts.size > 1 && {
          groups: [
            { name: 'first', test: (id) => first.has(id), minShareCount: 2 },
            { name: 'rest', minShareCount: 2 },
          ],
        },
      },
    },
  );
  const chunks = output.filter((each) => each.type === 'chunk');
  return {
    inPlaceOf: new Map(
      chunks.flatMap(({ isEntry, name, fileName }): [string, string][] => {
        const script = isEntry ? scripts.get(name) : undefined;
        return script === undefined ? [] : [[script, beside(fileName)]];
      }),
    ),
    made: chunks.map(({ fileName, code }) => ({ place: beside(fileName), code })),
  };
}

/** Pages with no more parts than so many times the fewest are those that need least. */
const LIGHT = 1.1;

/** The name that a script of the site bears before the sum of what it holds. */
const nameOf = (script: string): string => posix.basename(script).split('.')[0] ?? '';
