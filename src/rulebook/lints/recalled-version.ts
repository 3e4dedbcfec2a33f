import { compareVersions } from '../changes/releases.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is every recalled version one that can have been published: this one, or one before it? */
export const recalledVersion: Lint = {
  name: 'recalled-version',
  look: ({ recalls, version }) =>
    recalls.flatMap((entry) =>
      version !== '' && compareVersions(entry.id, version) > 0
        ? [
            problemAt(
              entry,
              ['version'],
              `a recall of ${entry.id}`,
              `a version up to this one, ${version}`,
              'recalled-version',
            ),
          ]
        : [],
    ),
};
