import type { JSX } from 'preact';
import type { CautionId } from '../../generated/rule-types.ts';
import { WithBook } from '../book.ts';
import { book } from '../rules.ts';
import { Caution, Cautions } from './Caution.tsx';
import type { Notes } from './Pieces.tsx';

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
