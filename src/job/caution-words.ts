import { format } from '../quantity/format.ts';
import { splitAtPlaceholders } from '../rulebook/placeholders.ts';
import type { RangeId, Rulebook, SingleId } from '../rulebook/rulebook.ts';

/** A piece of a caution: words, or the value of a rule with the rule's id. */
export type CautionPiece = string | { readonly rule: string; readonly text: string };

/** A caution's sentence in pieces, the values of its rules put in. */
export const cautionPieces = (words: string, rules: Rulebook): CautionPiece[] =>
  splitAtPlaceholders(words).map((piece) => {
    if (typeof piece === 'string') return piece;
    const value = piece.part
      ? rules.range(piece.rule as RangeId)[piece.part]
      : rules.value(piece.rule as SingleId);
    return { rule: piece.rule, text: format(value) };
  });

/** A caution's sentence as plain text, the values of its rules put in. */
export const plain = (words: string, rules: Rulebook): string =>
  cautionPieces(words, rules)
    .map((piece) => (typeof piece === 'string' ? piece : piece.text))
    .join('');
