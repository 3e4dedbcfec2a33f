import { format } from '../quantity/format.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { inInches } from './in-inches.ts';

/**
 * A size of a patch in words: all in inches, as it is cut.
 * @example cutSize(quantity(1, 'ft')) // => '12 in'
 */
export const cutSize = (q: Quantity<'length'>): string => inInches(q);

/**
 * A short length as read on the tape: 3/8 in.
 * @example onTape(quantity(0.375, 'in')) // => '3/8 in'
 */
export const onTape = (q: Quantity<'length'>): string => format(q, { tape: 16 });
