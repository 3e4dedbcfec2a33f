import { placeholdersIn } from '../placeholders.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Does every remark do without values in braces? A remark tells of a reading, and is shown as it is written. */
export const placeholderInRemark: Lint = {
  name: 'placeholder-in-remark',
  look: ({ rules, cautions }) =>
    [...rules, ...cautions].flatMap((entry) => {
      const { source } = entry.entry;
      const remark = 'remark' in source ? source.remark : undefined;
      return placeholdersIn(remark ?? '').map(({ written }) =>
        problemAt(
          entry,
          ['source', 'remark'],
          written,
          'words, since a remark is shown as it is written',
          'placeholder-in-remark',
        ),
      );
    }),
};
