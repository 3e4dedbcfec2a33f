import type { JSX } from 'preact';
import type { Figure } from '../../calc/declare/calculation.ts';
import { pieceText } from '../../rulebook/whose.ts';
import { theBook } from '../book.ts';
import { rulePage } from '../links.ts';

/** A figure as it is told: one that is a rule's own value leads to the rule, and says whose it is where an agency set it. */
export function FigureText({
  of,
  text,
}: {
  readonly of: Figure['value'];
  readonly text: string;
}): JSX.Element {
  const { rules } = theBook();
  if (typeof of === 'string' || of.origin.from !== 'rule') return <>{text}</>;
  const { rule } = of.origin;
  return (
    <a class="rule alone" href={rulePage(rule)}>
      {pieceText({ rule, text }, rules)}
    </a>
  );
}
