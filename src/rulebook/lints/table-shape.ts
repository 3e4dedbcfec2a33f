import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Has every row a cell for each column: a number where the column has a unit, a word where it has none? */
export const tableShape: Lint = {
  name: 'table-shape',
  look: ({ rules }) =>
    rules.flatMap((rule) => {
      const { value } = rule.entry;
      if (value.kind !== 'table') return [];
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
          const words = value.columns[place]?.unit === undefined;
          return words === (typeof cell === 'string')
            ? []
            : [
                problemAt(
                  rule,
                  ['value', 'rows', at, place],
                  JSON.stringify(cell),
                  words ? 'a word, the column has no unit' : 'a number, the column has a unit',
                  'table-shape',
                ),
              ];
        });
      });
    }),
};
