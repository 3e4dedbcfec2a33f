import type { Problem } from '../problem.ts';
import { problemAt, type RuleFiles } from '../rule-files.ts';
import type { CautionChange } from './caution-diff.ts';
import { levelName } from './caution-words.ts';

/**
 * What is wrong with how cautions changed since the rulebook published last? One that is gone, or of a lower level, needs its reason; words may change freely,
 * since they are told before and after wherever changes are.
 */
export function cautionProblems(
  changes: readonly CautionChange[],
  [from, to]: readonly [version: string, version: string],
  { cautions, versionFile }: Pick<RuleFiles, 'cautions' | 'versionFile'>,
  hasReason: (id: string) => boolean,
): Problem[] {
  const expected = `a reason for ${to} in reasons.yaml`;
  const check = 'safety-without-reason';
  return changes.flatMap(({ id, kind, before, after }): Problem[] => {
    if (kind !== 'looser' || !before || hasReason(id)) return [];
    const entry = cautions.find((each) => each.id === id);
    if (!after || !entry)
      return [
        {
          ...versionFile,
          found: `no caution ${id}, which ${from} had`,
          expected: `it to stay, or ${expected}`,
          check,
        },
      ];
    const found = `${levelName[after.level]}, which was ${levelName[before.level]} in ${from}`;
    return [problemAt(entry, ['level'], found, expected, check)];
  });
}
