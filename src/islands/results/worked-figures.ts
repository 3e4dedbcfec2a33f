import type { Answer, AnswerTable } from '../../calc/declare/calculation.ts';
import { format } from '../../quantity/format.ts';
import { isComputed, type Titled, working } from '../../quantity/working.ts';

/** Which figures of an answer were worked out, each with its title? */
export const workedFigures = ({ figures }: Pick<Answer, 'figures'>): Titled[] =>
  Object.values(figures).flatMap(({ label: title, value, format }) =>
    typeof value !== 'string' && isComputed(value) ? [{ title, value, ...(format ? { format } : {}) }] : [],
  );

/** The worked amounts of one row of a table, under what names the row. */
export interface WorkedRow {
  readonly name: string;
  readonly of: readonly Titled[];
}

/** Which rows of a table hold amounts that were worked out? */
export function workedRows({ columns, rows, format: options = {} }: AnswerTable): WorkedRow[] {
  const [first = '', ...rest] = Object.keys(columns);
  return rows.flatMap((row) => {
    const of = rest.flatMap((column) => {
      const value = row[column];
      return typeof value === 'object' && 'origin' in value && isComputed(value)
        ? [{ title: columns[column] ?? '', value, format: options[column] ?? {} }]
        : [];
    });
    const name = row[first] ?? '';
    const told = typeof name === 'string' ? name : 'origin' in name ? format(name, options[first]) : '';
    return of.length > 0 ? [{ name: `${columns[first]}: ${told}`, of }] : [];
  });
}

/** What tells rows apart that are worked alike: the count of a flue, the border of a lane, an hour of the clock. */
const NUMBERS = /\d+/g;

/** By which arithmetic, in symbols, is a row worked? */
const arithmeticOf = ({ of }: WorkedRow): string =>
  JSON.stringify(
    of.map(({ title, value }) => [title, working(value).map(({ symbols }) => symbols.replace(NUMBERS, ''))]),
  );

/** Of rows that are worked by the same arithmetic the first alone, since the others only hold other numbers. */
export function oneOfEachKind(rows: readonly WorkedRow[]): WorkedRow[] {
  const kinds = new Map<string, WorkedRow>();
  for (const row of rows) {
    const kind = arithmeticOf(row);
    if (!kinds.has(kind)) kinds.set(kind, row);
  }
  return [...kinds.values()];
}
