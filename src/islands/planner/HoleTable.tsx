import type { JSX } from 'preact';
import { remarkPieces, remarkText, said } from '../../calc/declare/remark.ts';
import { ofBlownThrough } from '../../job/blown-through.ts';
import type { PlannedHole, PlannedRow, WorkedJob } from '../../job/planned.ts';
import { ofWellsIn } from '../../job/wells.ts';
import { format } from '../../quantity/format.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { columnsOf } from '../results/AnswerView.tsx';
import { Pieces } from '../results/Pieces.tsx';
import { rules } from '../rules.ts';
import { optional } from './optional.ts';

const tape = { tape: 8 } as const;
const three = { figures: 3 } as const;

/** Every hole of a row by its place on the tape, with what it takes and what is to be minded there. */
export function HoleTable({
  row,
  plan,
  double,
}: {
  readonly row: PlannedRow;
  readonly plan: WorkedJob;
  readonly double: boolean;
}): JSX.Element | null {
  if (row.holes.length === 0) return null;
  return (
    <table {...columnsOf(7)}>
      <caption>
        {double ? `Holes on the ${row.side} side` : 'Holes on the back side'},{' '}
        <Pieces
          of={remarkPieces(said`${rules.value('access.roof-holes.below-peak')} down the slope from the peak`)}
        />
      </caption>
      <thead>
        <tr>
          <th scope="col">Hole</th>
          <th scope="col">From the starting end</th>
          <th scope="col">To the next</th>
          <th scope="col">Fills from</th>
          <th scope="col">to</th>
          <th scope="col">Bags</th>
          <th scope="col">Weight</th>
        </tr>
      </thead>
      {row.holes.map((hole, place) => {
        const remarks = remarksOf(hole, row, plan);
        const said = remarks.length > 0;
        return (
          <tbody key={hole.number}>
            <tr class={said ? 'remarked' : undefined}>
              <th scope={said ? 'rowgroup' : 'row'} rowSpan={said ? 2 : 1}>
                {hole.number}
              </th>
              <td data-label="From the starting end">{unbroken(format(hole.along, tape))}</td>
              <td data-label="To the next">
                {row.gaps[place] ? unbroken(format(row.gaps[place], tape)) : 'end'}
              </td>
              <td data-label="Fills from">{unbroken(format(hole.from, tape))}</td>
              <td data-label="to">{unbroken(format(hole.to, tape))}</td>
              <td data-label="Bags">{unbroken(format(hole.bags, three))}</td>
              <td data-label="Weight">{unbroken(format(hole.weight, three))}</td>
            </tr>
            {said ? (
              <tr class="remark">
                <td colSpan={6}>{remarks.join('; ')}</td>
              </tr>
            ) : null}
          </tbody>
        );
      })}
    </table>
  );
}

const remarksOf = (hole: PlannedHole, row: PlannedRow, plan: WorkedJob): string[] => [
  ...(hole.overSeam ? ['metal patch crosses a seam'] : []),
  ...(hole.movedFar
    ? [`moved ${format({ ...hole.moved, amount: Math.abs(hole.moved.amount) }, tape)} from its even place`]
    : []),
  ...(ofWellsIn(plan, row.side, hole).length > 0 ? ['a skylight whose well is not counted'] : []),
  ...optional(ofBlownThrough(plan, row, hole.number, rules)).map((remark) => unbroken(remarkText(remark))),
  ...hole.kept.map((space) => `${space.what}: keep ${format(space.across)} across clear`),
];
