import { isUnitName, units } from './units.ts';

/**
 * Units as they are printed, in words that were typed: what is told beside a printed amount has one spelling with it.
 * @example withSigns('1.5 lb/ft3') // => '1.5 lb/ft³'
 */
export function withSigns(typed: string): string {
  const [, amount = '', rest = ''] = /^(\D*[\d./ -]*\d\s+)(\S.*)$/.exec(typed) ?? [];
  const unit = rest.replace('²', '2').replace('³', '3');
  if (/[23]/.test(unit) && isUnitName(unit)) return amount + units[unit].sign;
  return typed.replace(
    /\b(ft|in|cm|m)([23])\b/g,
    (_, unit: string, power: string) => unit + (power === '2' ? '²' : '³'),
  );
}
