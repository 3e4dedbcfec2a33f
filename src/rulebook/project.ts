import { readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { dayOf } from './day.ts';
import { lints } from './lints/index.ts';
import { ruleNeverUsed } from './lints/rule-never-used.ts';
import { unusedSource } from './lints/unused-source.ts';
import { loadRulebook } from './load.ts';
import type { Local } from './local/local.ts';
import { readLayer } from './local/read.ts';
import { resolveLocal } from './local/resolve.ts';
import { DataError } from './problem.ts';
import { referencesIn, usedIds } from './references.ts';
import type { RulebookData } from './rulebook.ts';

const here = process.cwd();

/** Where the project keeps what names rules. */
export const referringFolders = [join(here, 'src'), join(here, 'content')];

/** The project's own rulebook folder. */
export const rulesFolder = join(here, 'rules');

/** Today by the clock of the machine, as 2026-11-25. */
export const today = (): string => dayOf(new Date());

/** A new rule has to be in the generated types before code can name it, so types and calculations are made with every lint but these. */
const exceptUse = lints.filter((lint) => lint !== ruleNeverUsed && lint !== unusedSource);

/** The folders of agencies that the environment names in LOCAL, parted as in PATH; none where it is not set. */
export const localFolders = (): readonly string[] =>
  (process.env.LOCAL ?? '').split(delimiter).filter(Boolean);

/** The paths of the pages that a note may stand on: those of content, the planner's, and the calculators, each of which has a file of checks in its name. */
export function notablePages(): string[] {
  const below = (folder: string): string[] =>
    readdirSync(join(here, folder), { recursive: true, encoding: 'utf8' });
  return [
    ...below('content/en').filter((name) => name.endsWith('.mdx')),
    ...below('src/pages/plan')
      .filter((name) => name.endsWith('.astro'))
      .map((name) => `plan/${name}`),
    ...readdirSync(join(rulesFolder, 'checks')).map((name) => `calculators/${name}`),
  ]
    .map((name) => name.replaceAll('\\', '/').replace(/(\/index)?\.(mdx|astro|yaml)$/, ''))
    .sort();
}

/**
 * A rulebook with the folders of agencies laid over it.
 * @throws DataError with every mistake of every folder at once.
 */
export function withLocal(
  base: RulebookData,
  releases: readonly RulebookData[],
  folders: readonly string[],
): { readonly data: RulebookData; readonly local: Local | undefined } {
  if (folders.length === 0) return { data: base, local: undefined };
  const { data, local, problems } = resolveLocal(base, folders.map(readLayer), {
    releases,
    today: today(),
    pages: notablePages(),
  });
  if (problems.length > 0) throw new DataError(problems);
  return { data, local };
}

/**
 * Loads the project's rulebook with everything that refers to it, and with what is local in it: `data` is what holds here, `base` the rulebook as it was
 * published, which the checks hold.
 * @throws DataError with every mistake at once; a rule or document that nothing uses is one where the project as a whole is judged, before it is built.
 */
export function loadProject(
  unused: 'refused' | 'let pass' = 'let pass',
  folders: readonly string[] = localFolders(),
) {
  const references = referencesIn(referringFolders);
  const { data: base, ...loaded } = loadRulebook(
    rulesFolder,
    (files) => ({ today: today(), used: usedIds(files, references) }),
    unused === 'refused' ? lints : exceptUse,
  );
  return { ...loaded, base, ...withLocal(base, loaded.releases, folders), references };
}
