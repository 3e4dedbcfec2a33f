import { format, formatNumber, withSign } from '../quantity/format.ts';
import { quantity } from '../quantity/quantity.ts';
import { isUnitName, type UnitName } from '../quantity/units.ts';
import type { RuleValue } from './schema.ts';

/** A number of a rule as printed: number and unit, in the unit of its source. */
export const amountText = (amount: number, unit: string): string =>
  isUnitName(unit) ? format(quantity(amount, unit), { figures: 6 }) : `${formatNumber(amount, 6)} ${unit}`;

/** A range with its unit said once. @example rangeText(6, 8, 'ft') // => '6 to 8 ft' */
export function rangeText(low: number, high: number, unit: string): string {
  if (low === high) return amountText(low, unit);
  const prefix = isUnitName(unit) ? withSign('', unit as UnitName) : '';
  return prefix.startsWith('R-')
    ? `${amountText(low, unit).replace(' per in', '')} to ${amountText(high, unit)}`
    : `${formatNumber(low, 6)} to ${amountText(high, unit)}`;
}

/**
 * The value of a rule as it stands in a sentence; undefined for a table, or for a part that the value does not have.
 * @example valueText({ kind: 'between', low: 6, high: 8, unit: 'ft' }) // => '6 to 8 ft'
 */
export function valueText(value: RuleValue, part?: string): string | undefined {
  if (value.kind === 'between') {
    if (part === 'low' || part === 'high') return amountText(value[part], value.unit);
    return part === undefined ? rangeText(value.low, value.high, value.unit) : undefined;
  }
  if (part !== undefined || value.kind === 'table') return undefined;
  if (value.kind === 'one-of') return value.choices.join(', ');
  return amountText(value.number ?? Number.NaN, value.unit);
}

const bounds = { exact: '', 'at-least': 'at least ', 'at-most': 'at most ' } as const;

/** The value of a rule as it stands on its own, its kind said: "at least 2 in". Tables say how many rows they have. */
export function valueHeadline(value: RuleValue): string {
  if (value.kind === 'table') return `a table of ${value.rows.length} rows`;
  const text = valueText(value) ?? '';
  if (value.kind === 'between') return `between ${text.replace(' to ', ' and ')}`;
  if (value.kind === 'one-of') return `one of: ${text}`;
  return `${bounds[value.kind]}${text}`;
}
