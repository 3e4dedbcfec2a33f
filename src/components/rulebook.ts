import { loadProject } from '../rulebook/project.ts';

/** The rulebook, loaded once for all pages of a build. */
export const { data: rulebook, files: ruleFiles, references } = loadProject('refused');
