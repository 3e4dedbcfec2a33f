import type { Check } from './schema.ts';

/** A document, and the place in it, that a check names. */
export type CitedByCheck = Omit<Extract<Check['from'], { readonly kind: 'document' }>, 'kind'>;

/**
 * The document that a check names: the one that prints its figures, or the one whose formula or numbers are worked with by hand.
 * @example citedByCheck({ kind: 'hand', working: '2 + 2 = 4.' }) // => undefined
 */
export const citedByCheck = (from: Check['from']): CitedByCheck | undefined =>
  from.kind === 'document' ? from : from.rests_on;
