import { valueChange } from '../changes/judge.ts';
import type { Problem } from '../problem.ts';
import { problemAt } from '../rule-files.ts';
import type { RuleValue } from '../schema.ts';
import { valueHeadline } from '../value-text.ts';
import { rangeProblem } from './range.ts';
import type { Setting } from './setting.ts';
import { strictest } from './strictest.ts';

/** Which of the values set for one rule holds? Of a safety value the strictest; any other must be one and the same. */
export function decide(some: readonly Setting[]): { value?: RuleValue; by: Setting; problems: Problem[] } {
  const [first] = some as [Setting];
  const { rule } = first;
  const clash = (found: (others: string) => string, expected: string, check: string) =>
    some.map(({ entry, change }) => {
      const others = some
        .filter(({ change: other }) => other !== change)
        .map(({ change: { agency, value } }) => `${valueHeadline(value)} in the folder of ${agency}`);
      return problemAt(
        entry,
        ['value'],
        `${valueHeadline(change.value)} for "${rule.id}", ${found(others.join(', '))}`,
        expected,
        check,
      );
    });
  if (rule.safety === undefined) {
    const other = some.find(
      ({ change }) => valueChange(first.change.value, change.value, undefined) !== undefined,
    );
    if (other)
      return {
        by: first,
        problems: clash(
          (others) => `and ${others}`,
          'one value in all folders: neither of two is stricter',
          'local-clash',
        ),
      };
    const changed = some.find(({ change }) => change.kind !== 'same');
    return changed ? { value: changed.change.value, by: changed, problems: [] } : { by: first, problems: [] };
  }
  const changed = some.filter(({ change }) => change.kind !== 'same');
  if (changed.length === 0) return { by: first, problems: [] };
  const value = strictest(
    rule.value,
    changed.map(({ change }) => change.value),
    rule.safety,
  );
  if (!value)
    return { by: first, problems: clash(() => 'which has no stricter way', 'none', 'not-comparable') };
  if (rangeProblem(value))
    return {
      by: first,
      problems: clash(
        (others) => `and, sharing nothing with it, ${others}`,
        'ranges that overlap',
        'empty-range',
      ),
    };
  const by = changed.find(({ change }) => valueChange(change.value, value, undefined) === undefined);
  return { value, by: by ?? (changed[0] as Setting), problems: [] };
}
