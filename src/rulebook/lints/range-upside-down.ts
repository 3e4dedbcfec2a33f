import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is the lower end of every range below its upper end? */
export const rangeUpsideDown: Lint = {
  name: 'range-upside-down',
  look: ({ rules }) =>
    rules.flatMap((rule) => {
      const { value } = rule.entry;
      if (value.kind === 'between' && !(value.low < value.high)) {
        return [
          problemAt(
            rule,
            ['value', 'low'],
            `${value.low} to ${value.high}`,
            'the lower end below the upper',
            'range-upside-down',
          ),
        ];
      }
      if (value.kind !== 'table') return [];
      return value.rows.flatMap((row, at) =>
        row.flatMap((cell, place) =>
          Array.isArray(cell) && cell[0] > cell[1]
            ? [
                problemAt(
                  rule,
                  ['value', 'rows', at, place],
                  `[${cell.join(', ')}]`,
                  'the lower end first',
                  'range-upside-down',
                ),
              ]
            : [],
        ),
      );
    }),
};
