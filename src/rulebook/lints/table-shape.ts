import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/**
 * Has every row a cell for each column: a number where the column has a unit, a word where it has none? Words that the column names may stand in the place of its
 * numbers.
 */
export const tableShape: Lint = {
  name: 'table-shape',
  look: ({ rules }) =>
    rules.flatMap((rule) => {
      const { value } = rule.entry;
      if (value.kind !== 'table') return [];
      const misplaced = value.columns.flatMap(({ words, unit, key }, at) =>
        words === undefined || (unit !== undefined && key === undefined)
          ? []
          : [
              problemAt(
                rule,
                ['value', 'columns', at, 'words', 0],
                `words in a column ${key === undefined ? 'without a unit' : 'that rows are found by'}`,
                'words only in a column of numbers that is looked up',
                'table-shape',
              ),
            ],
      );
      if (misplaced.length > 0) return misplaced;
      return value.rows.flatMap((row, at) => {
        if (row.length !== value.columns.length) {
          return [
            problemAt(
              rule,
              ['value', 'rows', at],
              `${row.length} cells`,
              `${value.columns.length}, one a column`,
              'table-shape',
            ),
          ];
        }
        return row.flatMap((cell, place) => {
          const column = value.columns[place];
          const words = column?.unit === undefined;
          const named = column?.words ?? [];
          return words === (typeof cell === 'string') || (typeof cell === 'string' && named.includes(cell))
            ? []
            : [
                problemAt(
                  rule,
                  ['value', 'rows', at, place],
                  JSON.stringify(cell),
                  words
                    ? 'a word, the column has no unit'
                    : `a number, the column has a unit${named.map((word) => `; or "${word}"`).join('')}`,
                  'table-shape',
                ),
              ];
        });
      });
    }),
};
