import type { Problem } from '../problem.ts';
import { problemAt, problemAtKey } from '../rule-files.ts';
import type { Lint } from './lint.ts';

const NAME = 'duplicate-id';

/** Is each id, old or new, held by one entry only? Keys given twice in one file are caught when it is read. */
export const duplicateId: Lint = {
  name: NAME,
  look: ({ rules, cautions }) => {
    const holders = new Map<string, string>();
    const taken = (id: string, file: string): string | undefined => {
      const holder = holders.get(id);
      if (holder === undefined) holders.set(id, file);
      return holder;
    };
    const twice = [...rules, ...cautions].flatMap((entry): Problem[] => {
      const holder = taken(entry.id, entry.file.name);
      return holder === undefined
        ? []
        : [problemAtKey(entry, `the id "${entry.id}", already held in ${holder}`, 'an id of its own', NAME)];
    });
    const aliases = rules.flatMap((rule) =>
      (rule.entry.aliases ?? []).flatMap((alias, place) => {
        const holder = taken(alias, rule.file.name);
        return holder === undefined
          ? []
          : [
              problemAt(
                rule,
                ['aliases', place],
                `the alias "${alias}", already an id in ${holder}`,
                'an id of its own',
                NAME,
              ),
            ];
      }),
    );
    return [...twice, ...aliases];
  },
};
