import { splitAtPlaceholders } from '../placeholders.ts';
import type { CautionWords, RuleForCalculation } from '../rulebook.ts';
import { valueText } from '../value-text.ts';

type Rules = Readonly<Record<string, Pick<RuleForCalculation, 'value'>>>;

/** What a level is called in a sentence. */
export const levelName: Readonly<Record<CautionWords['level'], string>> = {
  stop: 'a stop',
  warn: 'a warning',
  note: 'a note',
};

/**
 * A sentence of a caution, with the values of one rulebook put in; what that has not stays as it is written.
 * @example cautionWords('Keep {a.b} off.', { 'a.b': { value: { kind: 'exact', number: 2, unit: 'in' } } }) // => 'Keep 2 in off.'
 */
export const cautionWords = (sentence: string, rules: Rules): string =>
  splitAtPlaceholders(sentence)
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const value = rules[piece.rule]?.value;
      return (value && valueText(value, piece.part)) ?? piece.written;
    })
    .join('');

/**
 * Two editions of a sentence as texts that differ where the sentence does: the values put in, unless only another rule of the same value is asked for.
 * @example wordsApart(['Keep {a.b} off.', 'Keep {a.c} off.'], [{}, {}]) // => ['Keep {a.b} off.', 'Keep {a.c} off.']
 */
export function wordsApart(
  [before, after]: readonly [string, string],
  [old, now]: readonly [Rules, Rules],
): readonly [before: string, after: string] {
  const told = [cautionWords(before, old), cautionWords(after, now)] as const;
  return before !== after && told[0] === told[1] ? [before, after] : told;
}
