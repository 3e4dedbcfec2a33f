import type { Problem } from '../problem.ts';
import { problemAt } from '../rule-files.ts';
import type { Layer } from './read.ts';

/** What pages and letters mark words with, and what would stand among plain words as it is: <b>, **it**, [words](address), &lt;. */
const MARKS = /<\/?[a-z][^<>]*>|\*\*?[^\s*][^*]*\*\*?|\[[^\]]+\]\([^)]*\)|&[a-z]+;/i;
const MOST_SHOWN = 40;

/**
 * The first mark among words that are shown as they are; undefined where there is none.
 * @example markIn('Ask **first**.') // => '**first**'
 * @example markIn('Keep 2 < 3, and 5 * 2.') // => undefined
 */
export const markIn = (words: string): string | undefined => MARKS.exec(words)?.[0].slice(0, MOST_SHOWN);

/** Every place of a folder where a mark stands among words that are shown as they are: no mistake, but hardly meant. */
export const marksShown = ({ notes, cautions, values }: Layer): Problem[] => {
  const fields = [
    ...notes.flatMap((entry) => [
      { entry, field: 'title', words: entry.entry.title },
      { entry, field: 'says', words: entry.entry.says },
    ]),
    ...cautions.flatMap((entry) => [
      { entry, field: 'says', words: entry.entry.says },
      { entry, field: 'do', words: entry.entry.do },
    ]),
    ...values.map((entry) => ({ entry, field: 'reason', words: entry.entry.reason })),
  ];
  return fields.flatMap(({ entry, field, words }) => {
    const mark = markIn(words);
    return mark === undefined
      ? []
      : [
          problemAt(
            entry,
            [field],
            `${mark}, which will stand on the page with its marks`,
            'plain words; this stops nothing',
            'marks',
          ),
        ];
  });
};
