import { namedUnread, problemAtKey } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is every rule and every caution used by a calculation, a page, a drawing or another rule? */
export const ruleNeverUsed: Lint = {
  name: 'rule-never-used',
  look: ({ rules, cautions, unread }, { used }) =>
    [...rules, ...cautions]
      .filter(({ id }) => !used.has(id) && !namedUnread(unread, id))
      .map((entry) =>
        problemAtKey(
          entry,
          `"${entry.id}", used by nothing`,
          'a page, calculation, drawing or rule that uses it',
          'rule-never-used',
        ),
      ),
};
