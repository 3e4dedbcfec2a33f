import type { JSX } from 'preact';
import { type Remark, remarkPieces } from '../../calc/declare/remark.ts';
import { Pieces } from './Pieces.tsx';

/** What is said beside an answer, a paragraph each; a number that is a rule's own leads to the rule. */
export const Remarks = ({ of }: { readonly of: readonly Remark[] }): JSX.Element => (
  <>
    {of.map((remark, place) => (
      <p key={place}>
        <Pieces of={remarkPieces(remark)} />
      </p>
    ))}
  </>
);
