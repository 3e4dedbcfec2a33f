import type { Quantity } from '../../quantity/quantity.ts';

const fractions: Readonly<Record<number, string>> = { 1: '1/4', 2: '1/2', 3: '3/4' };

/**
 * Bags as a crew says them: wholes and quarters. Beside a count bags of the plan are told so too: nobody counts a tenth of a bag, and one who
 * reads "10 1/4 in, 25.4 to go" has to turn the one into the other. What the plan comes to exactly stands by itself, in decimals.
 * @example inQuartersText(quantity(3.25, 'bag')) // => '3 1/4 bags'
 */
export function inQuartersText({ amount }: Quantity<'pieces'>): string {
  const quarters = Math.round(amount * 4);
  if (quarters === 0 && amount > 0) return 'less than 1/4 bag';
  const [whole, rest] = [Math.floor(quarters / 4), fractions[quarters % 4]];
  const count = rest ? (whole > 0 ? `${whole} ${rest}` : rest) : String(whole);
  return `${count} ${quarters > 0 && quarters <= 4 ? 'bag' : 'bags'}`;
}
