import { changesByVersion } from '../rulebook/changes/releases.ts';
import { loadProject } from '../rulebook/project.ts';

/** The rulebook, loaded once for all pages of a build. */
export const { data: rulebook, files: ruleFiles, references, releases } = loadProject('refused');

/** What each version changed, the newest first. */
export const versionChanges = changesByVersion(rulebook, releases);
