import type { JSX } from 'preact';
import { type Remark, remarkPieces, remarkText } from '../../calc/declare/remark.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { rulePage } from '../links.ts';

/** What is said beside an answer, a paragraph each; a number that is a rule's own leads to the rule. */
export const Remarks = ({ of }: { readonly of: readonly Remark[] }): JSX.Element => (
  <>
    {of.map((remark) => (
      <p key={remarkText(remark)}>
        {remarkPieces(remark).map((piece, place) =>
          typeof piece === 'string' ? (
            unbroken(piece)
          ) : (
            <a key={place} class="rule" href={rulePage(piece.rule)}>
              {unbroken(piece.text)}
            </a>
          ),
        )}
      </p>
    ))}
  </>
);
