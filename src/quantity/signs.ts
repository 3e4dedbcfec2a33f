/**
 * Units as they are printed, in words that were typed: what is told beside a printed amount has one spelling with it.
 * @example withSigns('1.5 lb/ft3') // => '1.5 lb/ft³'
 */
export const withSigns = (typed: string): string =>
  typed.replace(
    /\b(ft|in|cm|m)([23])\b/g,
    (_, unit: string, power: string) => unit + (power === '2' ? '²' : '³'),
  );
