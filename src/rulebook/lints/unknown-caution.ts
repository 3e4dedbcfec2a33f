import { nearest } from '../nearest.ts';
import { isUnread, problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Does every caution that a check names exist? One that must not stand with an answer would else be missed for a slip of the pen. */
export const unknownCaution: Lint = {
  name: 'unknown-caution',
  look: ({ checks, cautions, unread }) => {
    const known = cautions.map(({ id }) => id);
    return checks.flatMap((entry) =>
      (['cautions', 'no_cautions'] as const).flatMap((key) =>
        (entry.entry[key] ?? []).flatMap((id, place) => {
          if (known.includes(id) || isUnread(unread, id)) return [];
          const guess = nearest(id, known);
          return [
            problemAt(
              entry,
              [key, place],
              `the caution "${id}"`,
              guess ? `the id of a caution; did you mean "${guess}"?` : 'the id of a caution',
              'unknown-caution',
            ),
          ];
        }),
      ),
    );
  },
};
