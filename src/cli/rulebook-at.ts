import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readReleases } from '../rulebook/changes/releases.ts';
import { ExportError, readRulebookJson } from '../rulebook/export/json.ts';
import { resolve } from '../rulebook/load.ts';
import { DataError } from '../rulebook/problem.ts';
import { loadProject, rulesFolder } from '../rulebook/project.ts';
import { readRuleFiles } from '../rulebook/rule-files.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { InputError } from './run.ts';

/**
 * The rulebook that a word of a command means: `now` for the project's own, a published version such as 2026.1, a folder of rule files, or an
 * exported file.
 * @throws InputError if it is none of these, an agency's folder among them; DataError for a folder with mistakes in it.
 */
export function rulebookAt(word: string): RulebookData {
  if (word === 'now') return loadProject('let pass', []).data;
  const releases = readReleases(rulesFolder);
  const published = releases.find(({ version }) => version === word);
  if (published) return published;
  if (!existsSync(word)) {
    const versions = releases.map(({ version }) => version).join(', ') || 'none yet';
    throw new InputError(
      `found "${word}", expected now, a published version (${versions}), a folder of rules, or an exported file`,
    );
  }
  if (statSync(word).isDirectory()) {
    if (existsSync(join(word, 'agency.yaml')))
      throw new InputError(
        `found "${word}", an agency's folder, expected a folder with the files of a whole rulebook; what an agency changes stands on the page /local/ of its copy`,
      );
    const files = readRuleFiles(word);
    if (files.problems.length > 0) throw new DataError(files.problems);
    return resolve(files);
  }
  try {
    return readRulebookJson(readFileSync(word, 'utf8'), word);
  } catch (error) {
    if (error instanceof ExportError) throw new InputError(error.message);
    throw error;
  }
}
