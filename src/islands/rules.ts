import { calculationRules } from '../generated/calculation-rules.ts';
import { bookOf } from './book.ts';

/** All of the rulebook that code in a browser asks for: a job may ask for any of it. */
export const book = bookOf(calculationRules);
export const { rules, watched, cautions } = book;
