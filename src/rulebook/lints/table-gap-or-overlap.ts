import type { Problem } from '../problem.ts';
import { type Entry, problemAt } from '../rule-files.ts';
import type { Column, RawRule, TableValue } from '../schema.ts';
import type { Lint } from './lint.ts';

const NAME = 'table-gap-or-overlap';

/** Do the rows of every table follow each other with no entry given twice, no band over another, and no gap that is not explained? */
export const tableGapOrOverlap: Lint = {
  name: NAME,
  look: ({ rules }) =>
    rules.flatMap((rule) => {
      const { value } = rule.entry;
      return value.kind === 'table'
        ? value.columns.flatMap((column, place) => lookAlong(rule, value, column, place))
        : [];
    }),
};

/** Rows that agree in every other key column stand against each other in this one. */
function lookAlong(rule: Entry<RawRule>, table: TableValue, column: Column, place: number): Problem[] {
  if (
    column.key === undefined ||
    (column.key === 'word' && table.columns.some(({ key }) => key !== undefined && key !== 'word'))
  )
    return [];
  const otherKeys = table.columns.flatMap(({ key }, at) => (key !== undefined && at !== place ? [at] : []));
  const groups = new Map<string, { at: number; low: number; high: number; text: string }[]>();
  for (const [at, row] of table.rows.entries()) {
    const cell = row[place];
    if (cell === undefined) continue;
    const group = otherKeys.map((key) => JSON.stringify(row[key])).join();
    const [low, high] = Array.isArray(cell) ? cell : [Number(cell), Number(cell)];
    groups.set(group, [...(groups.get(group) ?? []), { at, low, high, text: JSON.stringify(cell) }]);
  }
  return [...groups.values()].flatMap((rows) =>
    rows.slice(1).flatMap((row, index) => {
      const before = rows[index];
      if (!before) return [];
      const bad = (expected: string, found = `${row.text} after ${before.text}`) => [
        problemAt(rule, ['value', 'rows', row.at, place], found, expected, NAME),
      ];
      if (column.key === 'word')
        return rows.slice(0, index + 1).some(({ text }) => text === row.text)
          ? bad('each word once', `${row.text} a second time`)
          : [];
      if (column.key === 'band') {
        if (row.low < before.high) return bad('no overlap, bands in rising order');
        return row.low > before.high && column.gaps === undefined
          ? bad('no gap, or a reason under "gaps"')
          : [];
      }
      if (!(row.low > before.low)) return bad('rows in rising order, each once');
      if (column.step !== undefined && Math.abs(row.low - before.low - column.step) > 1e-9)
        return bad(`a step of ${column.step}`);
      return [];
    }),
  );
}
