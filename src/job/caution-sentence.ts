import type { CautionWords, Rulebook } from '../rulebook/rulebook.ts';
import { plain } from './caution-words.ts';

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
