import type { CautionChange } from '../../rulebook/changes/caution-diff.ts';
import { cautionWords, levelName } from '../../rulebook/changes/caution-words.ts';
import type { LoadedCaution, RulebookData } from '../../rulebook/rulebook.ts';

type Rules = RulebookData['rules'];

/** A caution as a reader has it: the values of its rulebook in its words, and what agencies say beside it. */
const told = ({ says, do: act, beside = [] }: LoadedCaution, rules: Rules): string =>
  [
    cautionWords(`${says} ${act}`, rules),
    ...beside.map((each) => `${each.agency}: ${each.says} ${each.do}`),
  ].join(' ');

/** One caution that changed, as a reader of the newer copy is told: what it says now, and what it said before. */
export function cautionLine(
  { before, after }: Pick<CautionChange, 'before' | 'after'>,
  [old, now]: readonly [Rules, Rules],
): string {
  const [was, is] = [before && told(before, old), after && told(after, now)];
  const level = levelName[(after ?? before)?.level ?? 'note'].replace('a', 'A');
  if (!before) return `${level}, new: ${is}`;
  if (!after) return `${level}, no longer there: ${was}`;
  const from = before.level === after.level ? '' : `, before ${levelName[before.level]}`;
  return `${level}${from}: ${is}${was === is ? '' : ` Before: ${was}`}`;
}
