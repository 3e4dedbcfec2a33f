import { format } from '../quantity/format.ts';
import { type Quantity, quantity } from '../quantity/quantity.ts';
import { inInches } from './in-inches.ts';

/** `wide` for wide screens, as wide as a page's words; `narrow` for a phone held upright and for a card's column. */
export type PageSize = 'wide' | 'narrow';

/** How wide a page's drawing is and how large its words are, in drawing units. */
export const pageSheets = {
  wide: { width: 700, text: 14 },
  narrow: { width: 340, text: 13 },
} as const;

/**
 * A length as read on the tape.
 * @example tape(quantity(1.75, 'ft')) // => '1 ft 9 in'
 */
export const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/**
 * A push as read on the tape, to the eighth below: to the nearest it would run on past what it stops at.
 * @example pushTape(quantity(21.24, 'in')) // => '1 ft 9 1/8 in'
 */
export const pushTape = (q: Quantity<'length'>): string => format(q, { tape: 8, round: 'down' });

/**
 * Inches as read on the tape.
 * @example tapeInches(21.25) // => '1 ft 9 1/4 in'
 */
export const tapeInches = (amount: number): string => tape(quantity(amount, 'in'));

/**
 * A depth, all in inches and to an eighth: a cavity is told so.
 * By hand: 14.3 in are 114.4 eighths, so 114.
 * @example depth(14.3) // => '14 1/4 in'
 */
export const depth = (amount: number): string => inInches(quantity(Math.round(amount * 8) / 8, 'in'));
