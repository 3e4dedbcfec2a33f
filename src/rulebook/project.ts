import { join } from 'node:path';
import { lints } from './lints/index.ts';
import { ruleNeverUsed } from './lints/rule-never-used.ts';
import { unusedSource } from './lints/unused-source.ts';
import { loadRulebook } from './load.ts';
import { referencesIn, usedIds } from './references.ts';
import { readRuleFiles } from './rule-files.ts';

const here = process.cwd();

/** Where the project keeps what names rules. */
export const referringFolders = [join(here, 'src'), join(here, 'content')];

/** The project's own rulebook folder. */
export const rulesFolder = join(here, 'rules');

/** Today by the clock of the machine, as 2026-11-25. */
export const today = (): string => new Date().toISOString().slice(0, 10);

/** A new rule has to be in the generated types before code can name it, so types and calculations are made with every lint but these. */
const exceptUse = lints.filter((lint) => lint !== ruleNeverUsed && lint !== unusedSource);

/**
 * Loads the project's rulebook with everything that refers to it.
 * @throws DataError with every mistake at once; a rule or document that nothing uses is one where the project as a whole is judged, before it is built.
 */
export function loadProject(unused: 'refused' | 'let pass' = 'let pass') {
  const references = referencesIn(referringFolders);
  const used = usedIds(readRuleFiles(rulesFolder), references);
  return {
    ...loadRulebook(rulesFolder, { today: today(), used }, unused === 'refused' ? lints : exceptUse),
    references,
  };
}
