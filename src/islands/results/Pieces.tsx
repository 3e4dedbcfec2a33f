import type { JSX } from 'preact';
import { unbroken } from '../../quantity/unbroken.ts';
import { type Piece, pieceText } from '../../rulebook/whose.ts';
import { theBook } from '../book.ts';
import { rulePage } from '../links.ts';

/** The number of the note of each rule, on a page whose numbers stand again at its end. */
export type Notes = Readonly<Record<string, string>>;

/** A sentence; a number in it that is a rule's own leads to the rule. */
export function Pieces({
  of,
  notes = {},
}: {
  readonly of: readonly Piece[];
  readonly notes?: Notes;
}): JSX.Element {
  const { rules } = theBook();
  return (
    <>
      {of.map((piece, place) => {
        const text = unbroken(pieceText(piece, rules));
        return typeof piece === 'string' ? (
          text
        ) : (
          <a key={place} class="rule" href={rulePage(piece.rule)} data-note={notes[piece.rule]}>
            {text}
          </a>
        );
      })}
    </>
  );
}
