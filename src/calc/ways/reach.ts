import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';

/** Does a push get there? Between the two ends of the usual reach it may or may not. */
const reachWords = ['reaches', 'may not reach', 'beyond reach'] as const;
export type ReachWord = (typeof reachWords)[number];

/**
 * How far can the hose be pushed? What was typed for the hose or tube at hand, else the usual range for a flexible hose.
 * @example reachOf(quantity(30, 'ft'), rules).high.amount // => 30
 */
export const reachOf = (typed: Quantity<'length'> | undefined, rules: Rulebook): QuantityRange<'length'> =>
  typed ? { low: typed, high: typed } : rules.range('access.hose.reach');

/** A billionth of floating noise is let pass, so that a push of 762 cm is one of 25 ft. */
export const NOISE = 1e-9;

/** Does a push of this length get there? @example reachWord(quantity(30, 'ft'), { low: quantity(25, 'ft'), high: quantity(35, 'ft') }) // => 'may not reach' */
export function reachWord(push: Quantity<'length'>, reach: QuantityRange<'length'>): ReachWord {
  const noise = NOISE * push.amount;
  if (compare(push, reach.low) <= noise) return 'reaches';
  return compare(push, reach.high) <= noise ? 'may not reach' : 'beyond reach';
}
