import { format } from '../quantity/format.ts';
import { amountIn, type Quantity } from '../quantity/quantity.ts';

/** Inches of a length, for the plain arithmetic of a drawing. */
export const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');

/** A size of a patch in words: all in inches, as it is cut. */
export const cutSize = (q: Quantity<'length'>): string => format(q, { unit: 'in', figures: 5 });

/** A short length as read on the tape: 3/8 in. */
export const onTape = (q: Quantity<'length'>): string => format(q, { tape: 16 });
