import { lstatSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';

/** The files of entries that an agency's folder may have. */
export const knownFiles = [
  'agency.yaml',
  'values.yaml',
  'notes.yaml',
  'cautions.yaml',
  'sources.yaml',
] as const;

const PAGE = /^[a-z0-9]+(-[a-z0-9]+)*\.mdx$/;

/** Is a file of the folder pages a page? @example isPageName('Who to call.mdx') // => false */
export const isPageName = (name: string): boolean => PAGE.test(name);

const PAGE_NAME = 'a name such as who-to-call.mdx: small letters, digits and hyphens, then .mdx';

/** What an operating system, git or npm puts into a folder by itself, and nobody sees: but no notes that only their name hides. */
const UNSEEN =
  /^(\.(?!(agency|values|notes|cautions|sources)\.yaml$|(?!_).*\.mdx$)|(thumbs\.db|desktop\.ini|node_modules)$)/i;
/** What people put beside their notes, and which can hold none. */
const BESIDE = /^(read-?me|licen[cs]e)(\.(md|txt))?$|^[^/]+\.(png|jpe?g|webp)$/i;

/** Folders in folders, and files in them, beyond which nobody keeps notes. */
const DEEPEST = 6;
const MOST_FILES = 2000;

/**
 * Every file of a folder and of the folders in it, by its name from there, `/` between; what systems put there by themselves is left out. Links are not
 * followed: each stands as a file.
 */
export function filesOf(folder: string, below = '', depth = 0): string[] {
  const found: string[] = [];
  for (const each of readdirSync(join(folder, below)).sort()) {
    if (UNSEEN.test(each)) continue;
    const name = below === '' ? each : `${below}/${each}`;
    if (depth < DEEPEST && lstatSync(join(folder, name)).isDirectory())
      found.push(...filesOf(folder, name, depth + 1));
    else found.push(name);
    if (found.length > MOST_FILES) break;
  }
  return found;
}

/**
 * Why is a file of an agency's folder not read, and where should it be? Undefined for one that is read, or that may lie there. What an editor kept of a
 * file, its name with ~ behind it, may lie beside that file.
 * @example strayFile('values.yaml.txt', ['agency.yaml', 'values.yaml.txt'])?.expected // => 'it under the name values.yaml, in the folder itself'
 * @example strayFile('README.md', ['agency.yaml', 'README.md']) // => undefined
 */
export function strayFile(
  name: string,
  all: readonly string[],
): Pick<Problem, 'found' | 'expected'> | undefined {
  if ((knownFiles as readonly string[]).includes(name) || BESIDE.test(name)) return undefined;
  if (name.endsWith('~') && all.includes(name.slice(0, -1))) return undefined;
  const [, inPages] = /^pages\/(.*)$/.exec(name) ?? [];
  if (inPages !== undefined)
    return isPageName(inPages) ? undefined : { found: 'a name that makes no address', expected: PAGE_NAME };
  if (/\.mdx/i.test(name))
    return {
      found: 'a page that is not read',
      expected: 'it in the folder pages, under a name such as who-to-call.mdx',
    };
  const meant = fileMeant(basename(name).toLowerCase());
  return {
    found: 'a file that is not read',
    expected: meant
      ? all.includes(meant)
        ? `${meant} alone: put what holds into it, and keep this file outside this folder`
        : `it under the name ${meant}, in the folder itself`
      : `one of ${knownFiles.join(', ')}, or a page in the folder pages; keep anything else outside this folder`,
  };
}

/** The file that a name means: values.yaml for "values.yaml.txt", "values (2).yaml" and "vlaues.yml". */
const fileMeant = (name: string): string | undefined =>
  knownFiles.find((known) => new RegExp(`^${known.replace('.yaml', '')}([^a-z]|$)`).test(name)) ??
  nearest(name, knownFiles);
