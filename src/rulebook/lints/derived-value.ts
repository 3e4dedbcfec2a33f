import { isUnitName } from '../../quantity/units.ts';
import { FormulaError, rulesIn, workOut } from '../formula.ts';
import type { Problem } from '../problem.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

const NAME = 'derived-value';

/** Has every exact rule either a number or a formula, a formula only where the source says derived, and one that can be worked out? */
export const derivedValue: Lint = {
  name: NAME,
  look: ({ rules }) => {
    const byId = new Map(rules.map(({ id, entry }) => [id, entry]));
    return rules.flatMap((rule): Problem[] => {
      const { value, source } = rule.entry;
      if (value.kind !== 'exact') return [];
      const { number, formula } = value;
      if ((number === undefined) === (formula === undefined)) {
        return [
          problemAt(
            rule,
            ['value'],
            number === undefined ? 'neither a number nor a formula' : 'both a number and a formula',
            'one of them',
            NAME,
          ),
        ];
      }
      if (formula === undefined) return [];
      if (source.kind !== 'derived')
        return [
          problemAt(
            rule,
            ['source', 'kind'],
            `a formula with the source "${source.kind}"`,
            'the source "derived"',
            NAME,
          ),
        ];
      const asked = rulesIn(formula);
      // An id of no rule is told by the lint for that, once.
      if (asked.some((id) => !byId.has(id))) return [];
      const unlisted = asked.find((id) => !source.from.includes(id));
      if (unlisted)
        return [
          problemAt(
            rule,
            ['source', 'from'],
            `no "${unlisted}", which the formula uses`,
            'every rule of the formula under "from"',
            NAME,
          ),
        ];
      if (!isUnitName(value.unit)) return [];
      try {
        workOut(rule.id, byId);
        return [];
      } catch (error) {
        const { found, expected } =
          error instanceof FormulaError
            ? error
            : { found: (error as Error).message, expected: 'a formula that can be worked out' };
        return [problemAt(rule, ['value', 'formula'], found, expected, NAME)];
      }
    });
  },
};
