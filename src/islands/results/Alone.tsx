import type { JSX } from 'preact';
import type { Answer } from '../../calc/declare/calculation.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { WithBook } from '../book.ts';
import { book } from '../rules.ts';
import { TableView } from './AnswerView.tsx';
import { Caution, Cautions } from './Caution.tsx';
import type { Notes } from './Pieces.tsx';
import { Remarks } from './Remarks.tsx';

/** A caution on a page of words, outside of any island. */
export const CautionAlone = (given: { readonly id: CautionId; readonly notes?: Notes }): JSX.Element => (
  <WithBook value={book}>
    <Caution {...given} />
  </WithBook>
);

/** Some cautions on a page of words, the gravest first; bare beside an answer that leads to where their sources stand. */
export const CautionsAlone = (given: {
  readonly ids: readonly CautionId[];
  readonly bare?: boolean;
}): JSX.Element => (
  <WithBook value={book}>
    <Cautions {...given} />
  </WithBook>
);

/** What an answer says beside its figures, and its tables, outside of any island. */
export const BesideFigures = ({ remarks, tables = {} }: Pick<Answer, 'remarks' | 'tables'>): JSX.Element => (
  <WithBook value={book}>
    <Remarks of={remarks} />
    {Object.entries(tables).map(([key, table]) => (
      <TableView key={key} {...table} />
    ))}
  </WithBook>
);
