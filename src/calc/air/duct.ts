import type { CautionId } from '../../generated/rule-types.ts';
import { larger, minus, named, type Quantity, quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export const ductKinds = ['flexible', 'smooth'] as const;
export type DuctKind = (typeof ductKinds)[number];

/** How long a duct may be. */
export interface ExhaustDuct {
  /** Straight, by the table; absent where the table has no row for this flow and size. */
  readonly straight: Quantity<'length'> | undefined;
  /** What the elbows leave of it, not less than 0. */
  readonly allowed: Quantity<'length'> | undefined;
  readonly cautions: readonly CautionId[];
}

/**
 * How long may this exhaust duct be? In ft, by the table of IRC M1506.2 with so much off for each elbow; 0 where the elbows use it up.
 * A flow or size that the table as entered here does not hold has no length, and none is guessed.
 * By hand: the table’s 31 ft, less 15 ft for the one elbow.
 * @example exhaustDuct(quantity(80, 'cfm'), quantity(4, 'in'), 'smooth', number(1), rules).allowed.amount // => 16
 */
export function exhaustDuct(
  flow: Quantity<'air flow'>,
  size: Quantity<'length'>,
  kind: DuctKind,
  elbows: Quantity<'number'>,
  rules: Rulebook,
): ExhaustDuct {
  const straight = rules.find('ventilation.duct.length', { size, flow }, kind)?.low;
  const cost = times(rules.value('ventilation.duct.elbow'), elbows);
  return {
    straight,
    allowed: straight && named(larger(quantity(0, 'ft'), minus(straight, cost)), 'La', 'Length allowed'),
    cautions: ['caution.air.outdoors', 'caution.air.length'],
  };
}
