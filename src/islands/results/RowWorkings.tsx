import type { JSX } from 'preact';
import type { AnswerTable } from '../../calc/declare/calculation.ts';
import { Fold, isBuilding } from './Fold.tsx';
import { Workings } from './Working.tsx';
import { workedRows } from './worked-figures.ts';

/**
 * How the amounts in a table were worked out, row by row, each folded under what names the row. A page is built with the first row of it
 * alone; the example of the calculator tells one row of each kind.
 */
export function RowWorkings(table: AnswerTable): JSX.Element | null {
  const worked = workedRows(table);
  if (worked.length === 0) return null;
  return (
    <Fold title={`${table.title}: row by row`}>
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
