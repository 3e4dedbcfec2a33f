import type { Quantity } from '../../quantity/quantity.ts';

const fractions: Readonly<Record<number, string>> = { 1: '1/4', 2: '1/2', 3: '3/4' };

/**
 * Bags as a crew says them: wholes and quarters.
 * @example inQuartersText(quantity(3.25, 'bag')) // => '3 1/4 bags'
 */
export function inQuartersText({ amount }: Quantity<'pieces'>): string {
  const quarters = Math.round(amount * 4);
  const [whole, rest] = [Math.floor(quarters / 4), fractions[quarters % 4]];
  const count = rest ? (whole > 0 ? `${whole} ${rest}` : rest) : String(whole);
  return `${count} ${quarters > 0 && quarters <= 4 ? 'bag' : 'bags'}`;
}
