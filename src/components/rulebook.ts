import { buildDay } from '../built/build-date.ts';
import { changesByVersion } from '../rulebook/changes/releases.ts';
import { loadProject } from '../rulebook/project.ts';

/**
 * The rulebook, loaded once for all pages of a build: what holds here, with what an agency sets. `baseRulebook` is the rulebook as it was published;
 * `local` is what an agency adds, undefined where the build has none.
 */
export const {
  data: rulebook,
  base: baseRulebook,
  local,
  files: ruleFiles,
  references,
  releases,
} = loadProject('refused');

/** What each version changed, the newest first. */
export const versionChanges = changesByVersion(baseRulebook, releases);

/** The day of this build, on every page. */
export const built = buildDay();
