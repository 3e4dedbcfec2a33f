import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Where the build writes down whose code it put into the scripts of the site. */
const FOUND = 'src/generated/shipped.json';

/** These write files of their own into the built site once it is bundled, each into a folder of its name. */
export const alsoShipped: readonly string[] = ['pagefind'];

/** A package whose code a reader's browser runs. */
export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** As its package says it, such as MIT. */
  readonly license: string;
  /** The text of the licence, as the package holds it. */
  readonly text: string;
}

/**
 * The package that a module of a bundle comes from; undefined for a module of our own.
 * @example packageOf('/x/node_modules/@preact/signals/dist/signals.mjs') // => '@preact/signals'
 */
export function packageOf(module: string): string | undefined {
  const path = module.replaceAll('\\', '/');
  const at = path.lastIndexOf('/node_modules/');
  // What a bundler adds of its own is told by its name: "\0vite/preload-helper.js".
  const inside =
    at >= 0 ? path.slice(at + '/node_modules/'.length) : path.startsWith('\0') ? path.slice(1) : '';
  const [first = '', second = ''] = inside.split('/');
  const name = first.startsWith('@') ? `${first}/${second}` : first;
  return /^(@[a-z0-9-]+\/)?[a-z0-9.-]+$/.test(name) ? name : undefined;
}

/** A chunk of a bundle, as far as it is looked at. */
interface Chunk {
  readonly modules?: Readonly<Record<string, { readonly renderedLength: number }>>;
}

/** Writes down, as the scripts of the site are bundled, from which packages code is in them. */
export const shippedPackages = () => ({
  name: 'shipped-packages',
  applyToEnvironment: ({ name }: { readonly name: string }) => name === 'client',
  generateBundle(_: unknown, bundle: Readonly<Record<string, unknown>>): void {
    const modules = Object.values(bundle as Record<string, Chunk>).flatMap(({ modules = {} }) =>
      Object.entries(modules).flatMap(([id, { renderedLength }]) => (renderedLength > 0 ? [id] : [])),
    );
    const names = [...new Set(modules.flatMap((id) => packageOf(id) ?? []))].sort();
    mkdirSync(dirname(FOUND), { recursive: true });
    writeFileSync(FOUND, `${JSON.stringify(names, null, 1)}\n`);
  },
});

/** From here on a tool lists what is inside the tool; of that nothing goes into the site. */
const OF_THE_TOOL = /^#+ Licenses of bundled dependencies/m;
/** Files that a package holds its licence in, or adds to it. */
const LICENCE = /^(licen[cs]e|copying|notice)/i;

/** A package with its licence, read where it is installed. @throws Error where it says none, or holds no text. */
export function shippedPackage(name: string): ShippedPackage {
  const folder = join('node_modules', name);
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  // Some hold it in a folder of that name.
  const texts = readdirSync(folder)
    .filter((entry) => LICENCE.test(entry))
    .flatMap((entry) =>
      statSync(join(folder, entry)).isDirectory()
        ? readdirSync(join(folder, entry)).map((file) => join(entry, file))
        : [entry],
    )
    .sort()
    .map((file) => readFileSync(join(folder, file), 'utf8').split(OF_THE_TOOL)[0]?.trim());
  if (typeof license !== 'string' || texts.length === 0)
    throw new Error(`${name}: found no licence with its text, expected both in ${folder}`);
  return { name, version: String(version), license, text: texts.join('\n\n') };
}

/** Every package whose code the built site holds, by name; undefined where no bundle was made, as while the site is being written. */
export function allShipped(): readonly ShippedPackage[] | undefined {
  if (!existsSync(FOUND)) return undefined;
  const found: unknown = JSON.parse(readFileSync(FOUND, 'utf8'));
  return [...new Set([...(found as string[]), ...alsoShipped])].sort().map(shippedPackage);
}
