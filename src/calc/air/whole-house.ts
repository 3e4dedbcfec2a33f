import { inUnit, larger, named, plus, type Quantity, smaller, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

/**
 * How much fresh air does the home need all the time? In cfm, by the formula of ASHRAE 62.2 for homes in use, which counts one bedroom at
 * the least.
 * @example wholeHouseRate(quantity(1000, 'ft2'), number(2), rules).amount // => 52.5
 */
export function wholeHouseRate(
  floor: Quantity<'area'>,
  bedrooms: Quantity<'number'>,
  rules: Rulebook,
): Quantity<'air flow'> {
  const forFloor = inUnit(times(rules.value('ventilation.whole-house.per-floor'), floor), 'cfm');
  const counted = larger(bedrooms, rules.value('ventilation.whole-house.fewest-bedrooms'));
  const people = plus(counted, rules.value('ventilation.whole-house.more-than-bedrooms'));
  return named(
    plus(forFloor, times(rules.value('ventilation.whole-house.per-person'), people)),
    'qh',
    'Whole-house rate',
  );
}

/**
 * How much did the factory have to provide? In cfm, by 24 CFR 3280.103(b): so much for the floor, held between two ends.
 * @example factoryRate(quantity(924, 'ft2'), rules).amount // => 50
 */
export function factoryRate(floor: Quantity<'area'>, rules: Rulebook): Quantity<'air flow'> {
  const { low, high } = rules.range('ventilation.whole-house.factory-bounds');
  const forFloor = named(
    inUnit(times(rules.value('ventilation.whole-house.factory-per-floor'), floor), 'cfm'),
    'qff',
    'For the floor alone',
  );
  return named(larger(smaller(forFloor, high), low), 'qfr', 'By the factory rule');
}
