import type { Unguarded } from '../../rulebook/schema.ts';
import type { MovedValue } from './moved-values.ts';

/**
 * Why does no check guard this number? The reason that the rulebook gives for the number itself, or for the whole rule; undefined where it gives none.
 * @example whyUnguarded([{ rule: 'a.b', reason: 'It is never shown.' }], { rule: 'a.b', part: 'low' }) // => 'It is never shown.'
 */
export const whyUnguarded = (
  given: readonly Unguarded[],
  { rule, part }: Pick<MovedValue, 'rule' | 'part'>,
): string | undefined =>
  (
    given.find((each) => each.rule === rule && each.part === part) ??
    given.find((each) => each.rule === rule && each.part === undefined)
  )?.reason;

/**
 * The reasons that are given for numbers which the checks guard after all, or which are not there: they mislead, and go.
 * @example needlessReasons([{ rule: 'a.b', reason: 'It is never shown.' }], [{ rule: 'a.b', part: '', unnoticed: [] }]).length // => 1
 */
export const needlessReasons = (given: readonly Unguarded[], values: readonly MovedValue[]): Unguarded[] =>
  given.filter(
    ({ rule, part }) =>
      !values.some(
        (each) =>
          each.rule === rule && (part === undefined || each.part === part) && each.unnoticed.length > 0,
      ),
  );
