import { type FormatOptions, format, formatNumber } from '../quantity/format.ts';
import { amountIn, quantity } from '../quantity/quantity.ts';
import { isUnitName, type UnitName, units } from '../quantity/units.ts';

/** A number has no more digits than this: two that differ, differ in these. */
const ALL_DIGITS = 17;

/** What of a figure is told. */
interface Amount {
  readonly text: string;
  /** Absent for a figure in words. */
  readonly amount?: number;
  readonly unit?: string;
}

/**
 * The amount of a figure in the unit of another; undefined where there is none, or the unit measures something else.
 * @example amountAs({ text: '8 ft', amount: 8, unit: 'ft' }, 'in') // => 96
 */
export function amountAs({ amount, unit = '' }: Amount, as: string): number | undefined {
  if (amount === undefined || unit === as) return amount;
  if (!isUnitName(unit) || !isUnitName(as) || units[unit].dimension !== units[as].dimension) return undefined;
  return amountIn(quantity(amount, unit), as as UnitName as never);
}

function written(amount: number, unit: string, options: FormatOptions): string {
  return isUnitName(unit)
    ? format(quantity(amount, unit), options)
    : `${formatNumber(amount, options.figures)} ${unit}`;
}

/**
 * Two figures that differ as texts that differ: where rounding would print them alike, both with as many digits as it takes.
 * @example toldApart({ text: '6.61 bags', amount: 6.6128, unit: 'bag' }, { text: '6.61 bags', amount: 6.6131, unit: 'bag' }) // => ['6.6128 bags', '6.6131 bags']
 */
export function toldApart(before: Amount, after: Amount): readonly [before: string, after: string] {
  const { amount, unit = '' } = before;
  const now = amountAs(after, unit);
  if (before.text !== after.text || amount === undefined || now === undefined)
    return [before.text, after.text];
  for (let figures = 3; figures <= ALL_DIGITS; figures++) {
    const [old, again] = [written(amount, unit, { figures }), written(now, unit, { figures })];
    if (old !== again) return [old, again];
  }
  return [before.text, after.text];
}
