import { isReading } from '../../quantity/dimension.ts';
import { format, formatNumber } from '../../quantity/format.ts';
import { quantity } from '../../quantity/quantity.ts';
import { isUnitName, units } from '../../quantity/units.ts';
import { cellsOf, inUnit } from '../changes/judge.ts';
import type { RuleValue } from '../schema.ts';

/** No two codes, climates or makers are so many times apart; and up to it every calculation can still be worked. */
const MOST_TIMES = 100;

/** The same amount told in two units differs by floating noise. */
const NOISE = 1e-9;

/** Number and unit alone: no tape is held to the bounds of what may have been mistyped. */
const told = (amount: number, unit: string): string =>
  isUnitName(unit) ? format(quantity(amount, unit), { figures: 6 }) : `${formatNumber(amount, 6)} ${unit}`;

/**
 * Which number of a local value is of another size than the rulebook's, as by a slip of unit or point? Both values have one form.
 * Undefined where none is a hundred times away. A range may begin at 0; what is read off a scale may be small or below 0; a 0 of the rulebook
 * bounds nothing.
 * @example sizeProblem({ kind: 'exact', number: 2, unit: 'in' }, { kind: 'exact', number: 20, unit: 'ft' })?.expected // => '0.00166667 ft to 16.6667 ft, no more than 100 times off the rulebook’s value'
 */
export function sizeProblem(
  base: RuleValue,
  local: RuleValue,
): { readonly found: string; readonly expected: string } | undefined {
  const own = cellsOf(base);
  for (const [place, cell] of cellsOf(local).entries())
    for (const [end, { amount, unit }] of cell.entries()) {
      const usual = own[place]?.[end];
      const size = usual ? inUnit(usual.amount, usual.unit, unit) : 0;
      if (size <= 0) continue;
      const most = size * MOST_TIMES;
      const isRead = isUnitName(unit) && isReading(units[unit].dimension);
      const begins = cell.length > 1 && end === 0;
      const least = isRead ? -most : begins ? 0 : size / MOST_TIMES;
      if (amount >= least * (1 - NOISE) && amount <= most * (1 + NOISE)) continue;
      return {
        found: told(amount, unit),
        expected: `${told(least, unit)} to ${told(most, unit)}, no more than ${MOST_TIMES} times off the rulebook’s value`,
      };
    }
  return undefined;
}
