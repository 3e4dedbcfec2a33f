import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is each id, old or new, held by one entry only? Keys given twice in one file are caught when it is read. */
export const duplicateId: Lint = {
  name: 'duplicate-id',
  look: ({ rules, cautions }) => {
    const holders = new Map<string, string>();
    for (const { id, file } of [...rules, ...cautions]) holders.set(id, file.name);
    return rules.flatMap((rule) =>
      (rule.entry.aliases ?? []).flatMap((alias, place) => {
        const holder = holders.get(alias);
        holders.set(alias, rule.file.name);
        return holder === undefined
          ? []
          : [
              problemAt(
                rule,
                ['aliases', place],
                `the alias "${alias}", already an id in ${holder}`,
                'an id of its own',
                'duplicate-id',
              ),
            ];
      }),
    );
  },
};
