import { format } from '../quantity/format.ts';
import { splitAtPlaceholders } from '../rulebook/placeholders.ts';
import type { RangeId, Rulebook, SingleId } from '../rulebook/rulebook.ts';
import { type Piece, sentenceOf } from '../rulebook/whose.ts';

/** A caution's sentence in pieces, the values of its rules put in. */
export const cautionPieces = (words: string, rules: Rulebook): Piece[] =>
  splitAtPlaceholders(words).map((piece) => {
    if (typeof piece === 'string') return piece;
    const { rule, part } = piece;
    const value = part ? rules.range(rule as RangeId)[part] : rules.value(rule as SingleId);
    return { rule, text: format(value) };
  });

/** A caution's sentence as plain text, the values of its rules put in. */
export const plain = (words: string, rules: Rulebook): string =>
  sentenceOf(cautionPieces(words, rules), rules);
