import type { LoadedCaution, RulebookData } from '../rulebook.ts';
import type { CautionChange } from './caution-diff.ts';
import { levelName, wordsApart } from './caution-words.ts';
import { NONE, type PartApart, sourceTexts } from './parts-apart.ts';

/** A rulebook as far as a caution rests on it. */
type Book = Pick<RulebookData, 'rules' | 'documents'>;

const NOT_THERE = 'not there';

/** What agencies say beside a caution, each in a line. */
const besideOf = ({ beside = [] }: LoadedCaution): string =>
  beside
    .map(
      ({ agency, level, says, do: act, from }) => `${agency}, ${levelName[level]}: ${says} ${act} (${from})`,
    )
    .join(' ') || NONE;

/** What a caution rests on: its source, and the values that it names beside those in its words. */
const restsOn = (caution: LoadedCaution, { documents }: Book): Readonly<Record<string, string>> => ({
  ...sourceTexts(caution.source, documents),
  'Values it rests on': caution.rules?.join(', ') || NONE,
  Beside: besideOf(caution),
});

/**
 * What of a caution differs, part by part, each as it was and as it is, with the values of either rulebook put in; of one that came or went its level and all
 * that it says.
 */
export function cautionParts(
  { before, after }: Pick<CautionChange, 'before' | 'after'>,
  [old, now]: readonly [Book, Book],
): PartApart[] {
  const level = {
    part: 'Level',
    before: before ? levelName[before.level] : NOT_THERE,
    after: after ? levelName[after.level] : NOT_THERE,
  };
  const words = ([part, key]: readonly [string, 'says' | 'do']): PartApart => {
    const [from, to] = wordsApart(
      [before?.[key] ?? NOT_THERE, after?.[key] ?? NOT_THERE],
      [old.rules, now.rules],
    );
    return { part, before: from, after: to };
  };
  const changed = ([, key]: readonly [string, 'says' | 'do']) => before?.[key] !== after?.[key];
  const told = [
    ...(before?.level === after?.level ? [] : [level]),
    ...(
      [
        ['It says', 'says'],
        ['What to do', 'do'],
      ] as const
    )
      .filter(changed)
      .map(words),
  ];
  if (!before || !after) return told;
  const was = restsOn(before, old);
  const others = Object.entries(restsOn(after, now))
    .map(([part, text]): PartApart => ({ part, before: was[part] ?? NONE, after: text }))
    .filter((each) => each.before !== each.after);
  return [...told, ...others];
}
