import {
  compare,
  inUnit,
  minus,
  named,
  over,
  plus,
  type Quantity,
  quantity,
  roundedUp,
  times,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

/** How near to an overhead line people and what they hold may come. */
export interface LineClearance {
  readonly clearance: Quantity<'length'>;
  /** The same in whole inches, rounded up. */
  readonly keep: Quantity<'length'>;
}

/**
 * How far do people, ladders and hose stay from an overhead line of a known voltage?
 * Up to a voltage a plain distance; above it more in proportion to the steps of voltage, a part of a step adding its part.
 * @example lineClearance(quantity(60, 'kV'), rules).clearance.amount // => 124
 */
export function lineClearance(voltage: Quantity<'voltage'>, rules: Rulebook): LineClearance {
  const plain = rules.value('safety.line.clearance');
  const upTo = rules.value('safety.line.up-to');
  const clearance = named(
    inUnit(compare(voltage, upTo) > 0 ? plus(plain, added(voltage, upTo, rules)) : plain, 'in'),
    'D',
    'Distance from the line',
  );
  return {
    clearance,
    keep: named(roundedUp(clearance, quantity(1, 'in')), 'D keep', 'Distance to keep, in whole inches'),
  };
}

const added = (
  voltage: Quantity<'voltage'>,
  upTo: Quantity<'voltage'>,
  rules: Rulebook,
): Quantity<'length'> => {
  const above = named(inUnit(minus(voltage, upTo), 'kV'), 'Va', 'Voltage above that');
  const steps = named(over(above, rules.value('safety.line.step')), 'k', 'Steps of voltage');
  return named(times(rules.value('safety.line.more'), steps), 'Da', 'Distance added');
};
