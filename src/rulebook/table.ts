import type { TableValue } from './schema.ts';

/** What is asked of a key column: a word, or an amount in the column's unit. */
export type Asked = string | number;

/** What stands in a cell. */
export type CellValue = number | string | readonly [number, number];

type Row = readonly CellValue[];

/** Amounts this near to each other are the same amount read from two tapes. */
const SAME = 1e-9;

/**
 * Which cell of a table answers the keys? Undefined where no row does: nothing is guessed beyond the table's ends.
 * Key columns are taken from left to right; `straight-line` must be the last of them.
 * @example findRow({ kind: 'table', columns: [{ name: 'framing', key: 'at-most' }, { name: 'load' }], rows: [[16, 2.2], [24, 1.3]] }, { framing: 19 }, 'load') // => 1.3
 */
export function findRow(
  table: TableValue,
  asked: Readonly<Record<string, Asked>>,
  column: string,
): CellValue | undefined {
  const place = table.columns.findIndex(({ name }) => name === column);
  if (place < 0)
    throw new Error(
      `found no column "${column}", expected one of ${table.columns.map(({ name }) => name).join(', ')}`,
    );
  let rows: readonly Row[] = table.rows;
  for (const [at, { name, key }] of table.columns.entries()) {
    if (key === undefined) continue;
    const wanted = asked[name];
    if (wanted === undefined) throw new Error(`found no value for the key column "${name}", expected one`);
    if (typeof wanted === 'string') {
      rows = rows.filter((row) => row[at] === wanted);
    } else if (key === 'number') {
      rows = rows.filter((row) => Math.abs(Number(row[at]) - wanted) <= SAME);
    } else if (key === 'band') {
      rows = rows.filter(
        (row) => isBand(row[at]) && row[at][0] <= wanted + SAME && wanted <= row[at][1] + SAME,
      );
    } else if (key === 'at-most') {
      const enough = rows.filter((row) => Number(row[at]) >= wanted - SAME);
      const least = Math.min(...enough.map((row) => Number(row[at])));
      rows = enough.filter((row) => row[at] === least);
    } else if (key === 'at-least') {
      const within = rows.filter((row) => Number(row[at]) <= wanted + SAME);
      const most = Math.max(...within.map((row) => Number(row[at])));
      rows = within.filter((row) => row[at] === most);
    } else {
      return onStraightLine(rows, at, place, wanted);
    }
  }
  return rows[0]?.[place];
}

const isBand = (cell: CellValue | undefined): cell is readonly [number, number] => Array.isArray(cell);

function onStraightLine(rows: readonly Row[], at: number, place: number, wanted: number): number | undefined {
  const below = rows.filter((row) => Number(row[at]) <= wanted + SAME).pop();
  const above = rows.find((row) => Number(row[at]) >= wanted - SAME);
  if (!below || !above) return undefined;
  const [x0, x1] = [Number(below[at]), Number(above[at])];
  const [y0, y1] = [Number(below[place]), Number(above[place])];
  return x1 === x0 ? y0 : y0 + ((y1 - y0) * (wanted - x0)) / (x1 - x0);
}
