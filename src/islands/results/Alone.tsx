import type { JSX } from 'preact';
import type { Answer, Figure } from '../../calc/declare/calculation.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { WithBook } from '../book.ts';
import { book } from '../rules.ts';
import { Figures, shown, TableView } from './AnswerView.tsx';
import { Caution, Cautions } from './Caution.tsx';
import { FigureText } from './FigureText.tsx';
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

/** A figure on a page that is read. */
export const FigureAlone = ({ of }: { readonly of: Figure }): JSX.Element => (
  <WithBook value={book}>
    <FigureText of={of.value} text={shown(of)} />
  </WithBook>
);

/** All that an answer tells on a page that is read, but its cautions. */
export const AnswerAlone = ({
  of: { figures, remarks, tables = {} },
}: {
  readonly of: Answer;
}): JSX.Element => (
  <WithBook value={book}>
    <Figures of={Object.values(figures)} />
    <Remarks of={remarks} />
    {Object.entries(tables).map(([key, table]) => (
      <TableView key={key} {...table} />
    ))}
  </WithBook>
);
