import type { CautionId } from '../../generated/rule-types.ts';
import { larger, minus, named, type Quantity, quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export const ductKinds = ['flexible', 'smooth'] as const;
export type DuctKind = (typeof ductKinds)[number];

/** What is said where no length is: the table’s own words, or that it has no row. */
export type DuctWord = 'no limit' | 'not allowed' | 'none in the table';

/** How long a duct may be. */
export interface ExhaustDuct {
  /** Straight, by the table; absent where it has a word instead. */
  readonly straight: Quantity<'length'> | undefined;
  /** What the elbows leave of it, not less than 0. */
  readonly allowed: Quantity<'length'> | undefined;
  /** What stands in the place of a length; elbows take nothing from a word. */
  readonly word: DuctWord | undefined;
  /** The size of the row that answers: that of the duct, or the next smaller one. */
  readonly row: Quantity<'length'> | undefined;
  readonly cautions: readonly CautionId[];
}

/**
 * How long may this exhaust duct be? In ft, by the table of IRC M1506.2 with so much off for each elbow; 0 where the elbows use it up.
 * A flow between two rows takes the larger, a size the smaller; beyond the table’s ends nothing is guessed.
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
  const found = rules.find('ventilation.duct.length', { size, flow }, kind);
  const straight = typeof found === 'string' ? undefined : found?.low;
  const word: DuctWord | undefined =
    typeof found === 'string' ? found : found ? undefined : 'none in the table';
  const cost = times(rules.value('ventilation.duct.elbow'), elbows);
  return {
    straight,
    allowed: straight && named(larger(quantity(0, 'ft'), minus(straight, cost)), 'La', 'Length allowed'),
    word,
    row: rules.find('ventilation.duct.length', { size, flow }, 'size')?.low,
    cautions: ['caution.air.outdoors', 'caution.air.grease', 'caution.air.length'],
  };
}
