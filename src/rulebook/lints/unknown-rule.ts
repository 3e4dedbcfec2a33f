import { rulesIn } from '../formula.ts';
import { nearest } from '../nearest.ts';
import { placeholdersIn } from '../placeholders.ts';
import { isUnread, problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Does every id that a rule or a caution refers to, or that a reason is given for, belong to a rule? */
export const unknownRule: Lint = {
  name: 'unknown-rule',
  look: ({ rules, cautions, unguarded, unread }) => {
    const known = rules.map(({ id }) => id);
    const fromRules = rules.flatMap((entry) => {
      const { source, value } = entry.entry;
      return [
        ...(source.kind === 'derived'
          ? source.from.map((id, place) => ({ entry, path: ['source', 'from', place], id }))
          : []),
        ...(value.kind === 'exact' && value.formula !== undefined
          ? rulesIn(value.formula).map((id) => ({ entry, path: ['value', 'formula'], id }))
          : []),
      ];
    });
    const fromCautions = cautions.flatMap((entry) => [
      ...(entry.entry.rules ?? []).map((id, place) => ({ entry, path: ['rules', place], id })),
      ...(['says', 'do'] as const).flatMap((key) =>
        placeholdersIn(entry.entry[key]).map(({ rule }) => ({ entry, path: [key], id: rule })),
      ),
    ]);
    const fromUnguarded = unguarded.map((entry) => ({ entry, path: ['rule'], id: entry.entry.rule }));
    return [...fromRules, ...fromCautions, ...fromUnguarded].flatMap(({ entry, path, id }) => {
      if (known.includes(id) || isUnread(unread, id)) return [];
      const guess = nearest(id, known);
      return [
        problemAt(
          entry,
          path,
          `the rule "${id}"`,
          guess ? `the id of a rule; did you mean "${guess}"?` : 'the id of a rule',
          'unknown-rule',
        ),
      ];
    });
  },
};
