import { format } from '../quantity/format.ts';
import { amountIn, type Quantity, quantity } from '../quantity/quantity.ts';

/** `wide` for wide screens, as wide as a page's words; `narrow` for a phone held upright and for a card's column. */
export type PageSize = 'wide' | 'narrow';

/** How wide a page's drawing is and how large its words are, in drawing units. */
export const pageSheets = {
  wide: { width: 700, text: 14 },
  narrow: { width: 340, text: 13 },
} as const;

/** Inches of a length, for the plain arithmetic of a drawing. */
export const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');

/** A length as read on the tape. */
export const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** Inches as read on the tape. */
export const tapeInches = (amount: number): string => tape(quantity(amount, 'in'));

/** A depth, all in inches and to an eighth: a cavity is told so. */
export const depth = (amount: number): string => format(quantity(Math.round(amount * 8) / 8, 'in'));
