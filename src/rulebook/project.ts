import { join } from 'node:path';
import { lints } from './lints/index.ts';
import { ruleNeverUsed } from './lints/rule-never-used.ts';
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

/** A new rule has to be in the generated types before code can name it, so those are made with every lint but this one. */
const exceptUse = lints.filter((lint) => lint !== ruleNeverUsed);

/**
 * Loads the project's rulebook with everything that refers to it.
 * @throws DataError with every mistake at once; a rule that nothing uses is one, unless it is let pass.
 */
export function loadProject(unused: 'refused' | 'let pass' = 'refused') {
  const references = referencesIn(referringFolders);
  const used = usedIds(readRuleFiles(rulesFolder), references);
  return {
    ...loadRulebook(rulesFolder, { today: today(), used }, unused === 'refused' ? lints : exceptUse),
    references,
  };
}
