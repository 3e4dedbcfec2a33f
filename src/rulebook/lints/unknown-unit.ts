import { isUnitName, units } from '../../quantity/units.ts';
import { nearest } from '../nearest.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is every unit in the closed list? */
export const unknownUnit: Lint = {
  name: 'unknown-unit',
  look: ({ rules }) =>
    rules.flatMap((rule) => {
      const { value } = rule.entry;
      const written: [PropertyKey[], string][] =
        value.kind === 'table'
          ? value.columns.flatMap(({ unit }, place): [PropertyKey[], string][] =>
              unit === undefined ? [] : [[['value', 'columns', place, 'unit'], unit]],
            )
          : value.kind === 'one-of'
            ? []
            : [[['value', 'unit'], value.unit]];
      return written.flatMap(([path, unit]) => {
        if (isUnitName(unit)) return [];
        const guess = nearest(unit, Object.keys(units));
        return [
          problemAt(
            rule,
            path,
            `the unit "${unit}"`,
            guess ? `a unit of the list; did you mean "${guess}"?` : 'a unit of the list',
            'unknown-unit',
          ),
        ];
      });
    }),
};
