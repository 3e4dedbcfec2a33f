import { inches, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type TrussValues, trussPlaces } from './members.ts';

/**
 * So many usual spacings without a truss are taken for one that was not entered. It is no value of the trade and so no rule: the spacing is, and this says only when
 * we ask. One spacing would ask on every roof that is framed a little wider than most, or whose first truss stands off the end. It moves no hole.
 */
const SPACINGS = 2;

/**
 * Is there a stretch of the roof over which no truss is known: none was entered, or they were measured here and there only? Then a hole may
 * be laid out over one.
 * @example lacksTrusses({ truss_spacing: quantity(24, 'in') }, quantity(66, 'ft'), rules) // => false
 */
export function lacksTrusses(values: TrussValues, length: Quantity<'length'>, rules: Rulebook): boolean {
  const most = SPACINGS * inches(rules.range('framing.truss.spacing').high);
  const places = [0, ...trussPlaces(values, length), inches(length)].sort((a, b) => a - b);
  return places.some((place, before) => place - (places[before - 1] ?? 0) > most);
}
