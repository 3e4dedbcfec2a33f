import type { CautionId } from '../../generated/rule-types.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

/**
 * Is the cavity entered wider than one section of a home ever is? Then a whole double-section home was measured, and would be filled twice over.
 * @example wideSection(quantity(28, 'ft'), rules) // => ['caution.fill.wide-section']
 */
export function wideSection(width: Quantity<'length'>, rules: Rulebook): readonly CautionId[] {
  return compare(width, rules.value('framing.cavity.widest')) > 0 ? ['caution.fill.wide-section'] : [];
}
