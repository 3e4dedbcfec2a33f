import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { rulesIn } from './formula.ts';
import { placeholdersIn } from './placeholders.ts';
import type { RuleFiles } from './rule-files.ts';

/** Which files name which ids: id -> files, from the texts themselves. */
export type References = ReadonlyMap<string, readonly string[]>;

const SOURCE_FILE = /\.(ts|tsx|astro|mdx)$/;
const QUOTED = /["'`]([a-z0-9-]+(?:\.[a-z0-9-]+){2,})["'`]/g;

/** What stands about the code and not in it: it begins its line, or it might be a part of some quoted text. */
const COMMENT = /^\s*(?:\/\*[\s\S]*?\*\/|\/\/.*)/gm;

/**
 * The ids that a text of code or of a page names, in their order. What an example in a comment names is not asked for.
 * @example idsIn("rules.value('access.hose.reach')") // => ['access.hose.reach']
 */
export const idsIn = (text: string): string[] =>
  [...text.replace(COMMENT, '').matchAll(QUOTED)].map(([, id = '']) => id);

/** Reads the code and pages below some folders, and says which of them name which ids. Generated code does not count. */
export function referencesIn(folders: readonly string[], base = process.cwd()): References {
  const found = new Map<string, string[]>();
  for (const folder of folders) {
    for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
      if (!SOURCE_FILE.test(name) || name.startsWith('generated')) continue;
      const file = relative(base, join(folder, name));
      for (const id of idsIn(readFileSync(join(folder, name), 'utf8'))) {
        const files = found.get(id) ?? [];
        if (!files.includes(file)) found.set(id, [...files, file]);
      }
    }
  }
  return found;
}

/** Every id that is used: by code and pages, or by another rule or caution. */
export function usedIds(files: RuleFiles, references: References): Set<string> {
  const byRules = files.rules.flatMap(({ entry: { source, value } }) => [
    ...(source.kind === 'derived' ? source.from : []),
    ...(value.kind === 'exact' && value.formula !== undefined ? rulesIn(value.formula) : []),
  ]);
  const byCautions = files.cautions.flatMap(({ entry }) => [
    ...(entry.rules ?? []),
    ...[...placeholdersIn(entry.says), ...placeholdersIn(entry.do)].map(({ rule }) => rule),
  ]);
  return new Set([...references.keys(), ...byRules, ...byCautions]);
}
