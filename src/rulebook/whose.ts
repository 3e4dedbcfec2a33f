import type { Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from './rulebook.ts';

/** A piece of a sentence: words, or a number of the rulebook with the rule it is of. */
export type Piece = string | { readonly rule: string; readonly text: string };

/**
 * A piece as it is told: a number that an agency set with the agency behind it.
 * @example pieceText({ rule: 'access.roof-holes.diameter', text: '6 in' }, rules) // => '6 in'
 */
export function pieceText(piece: Piece, rules: Rulebook): string {
  if (typeof piece === 'string') return piece;
  const whose = rules.whose(piece.rule);
  return piece.text + (whose ? ` (${whose})` : '');
}

/** A sentence of pieces as one line. @example sentenceOf(['Cut ', { rule: 'access.roof-holes.diameter', text: '6 in' }, '.'], rules) // => 'Cut 6 in.' */
export const sentenceOf = (pieces: readonly Piece[], rules: Rulebook): string =>
  pieces.map((piece) => pieceText(piece, rules)).join('');

/**
 * A figure as it is told in text: one that is a rule's own value with whose it is where an agency set it.
 * @example figureText(rules.value('access.roof-holes.diameter'), '6 in', rules) // => '6 in'
 */
export const figureText = ({ origin }: Quantity, text: string, rules: Rulebook): string =>
  origin.from === 'rule' ? pieceText({ rule: origin.rule, text }, rules) : text;
