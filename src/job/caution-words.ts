import { format } from '../quantity/format.ts';
import { splitAtPlaceholders } from '../rulebook/placeholders.ts';
import type { CautionWords, RangeId, Rulebook, SingleId } from '../rulebook/rulebook.ts';

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

/** A caution as one line of text, and a line for each that agencies say beside it. @throws Error if there is no such caution. */
export function cautionSentence(caution: CautionWords | undefined, rules: Rulebook): string {
  if (!caution) throw new Error('found no such caution, expected one of rules/cautions');
  return [
    `${caution.level.toUpperCase()}: ${plain(caution.says, rules)} ${plain(caution.do, rules)}`,
    ...(caution.beside ?? []).map(
      ({ agency, level, says, do: act }) => `${level.toUpperCase()} of ${agency}: ${says} ${act}`,
    ),
  ].join('\n');
}
