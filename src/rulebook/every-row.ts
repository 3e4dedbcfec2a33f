import type { Dimension } from '../quantity/dimension.ts';
import type { ColumnsOf, Found, Rulebook, TableId } from './rulebook.ts';
import { fromRule } from './rulebook.ts';

/**
 * The amounts in a column of a table, of every row that holds the words, whatever amounts the row is keyed by besides.
 * @example everyRow(rules, 'ceiling.board.limit', ['gypsum 1/2 in'], 'load').map(({ high }) => high.amount) // => [2.2, 1.3]
 */
export function everyRow<I extends TableId, C extends keyof ColumnsOf<I> & string>(
  rules: Rulebook,
  id: I,
  words: readonly string[],
  column: C,
): readonly Found<ColumnsOf<I>[C] & Dimension>[] {
  const { columns, rows } = rules.table(id);
  const place = columns.findIndex(({ name }) => name === column);
  const { title = column, unit = '1' } = columns[place] ?? {};
  return rows
    .filter((row) => words.every((word) => row.includes(word)))
    .flatMap((row) => {
      const cell = row[place];
      if (cell === undefined || typeof cell === 'string') return [];
      const [low, high] = typeof cell === 'number' ? [cell, cell] : cell;
      const amount = (of: number) =>
        fromRule<ColumnsOf<I>[C] & Dimension>(id, of, unit, undefined, title, words.join(', '));
      return [{ low: amount(low), high: amount(high) }];
    });
}
