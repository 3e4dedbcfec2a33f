import type { JSX } from 'preact';
import type { AnswerTable } from '../../calc/declare/calculation.ts';
import { format } from '../../quantity/format.ts';
import { isComputed } from '../../quantity/working.ts';
import { Fold, isBuilding } from './Fold.tsx';
import { Workings } from './Working.tsx';

/**
 * How the amounts in a table were worked out, row by row, each folded under what names the row. The page is built with the first row of it
 * alone: the others are worked alike.
 */
export function RowWorkings({ title, columns, rows, format: options = {} }: AnswerTable): JSX.Element | null {
  const [first = '', ...rest] = Object.keys(columns);
  const worked = rows.flatMap((row) => {
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
  if (worked.length === 0) return null;
  return (
    <Fold title={`${title}: row by row`}>
      {() =>
        (isBuilding ? worked.slice(0, 1) : worked).map(({ name, of }) => (
          <Fold key={name} title={name}>
            {() => <Workings of={of} />}
          </Fold>
        ))
      }
    </Fold>
  );
}
