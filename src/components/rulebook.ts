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

const topics = [...new Set(Object.keys(rulebook.cautions).map((id) => id.split('.')[1] ?? ''))].sort();

/** The cautions by their topics, each with a title and a page of its own. */
export const topicsOfCautions = topics.map((topic) => ({
  topic,
  title: `${topic.charAt(0).toUpperCase()}${topic.slice(1).replaceAll('-', ' ')}`,
  cautions: Object.values(rulebook.cautions).filter(({ id }) => id.split('.')[1] === topic),
}));

/** What each version changed, the newest first. */
export const versionChanges = changesByVersion(baseRulebook, releases);

/** The day of this build, on every page. */
export const built = buildDay();
