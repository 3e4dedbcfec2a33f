import type { Quantity } from '../../quantity/quantity.ts';

const LESS = 'less than 1/4 bag';
const fractions: Readonly<Record<number, string>> = { 1: '1/4', 2: '1/2', 3: '3/4' };

/**
 * Bags as a crew says them: wholes and quarters. Beside a count bags of the plan are told so too: nobody counts a tenth of a bag, and one who
 * reads "10 1/4 in, 25.4 to go" has to turn the one into the other. What the plan comes to exactly stands by itself, in decimals.
 * @example inQuartersText(quantity(3.25, 'bag')) // => '3 1/4 bags'
 */
export function inQuartersText({ amount }: Quantity<'pieces'>): string {
  const quarters = Math.round(amount * 4);
  if (quarters === 0 && amount > 0) return LESS;
  const [whole, rest] = [Math.floor(quarters / 4), fractions[quarters % 4]];
  const count = rest ? (whole > 0 ? `${whole} ${rest}` : rest) : String(whole);
  return `${count} ${quarters > 0 && quarters <= 4 ? 'bag' : 'bags'}`;
}

/**
 * The bags that an opening is to take, as they are counted.
 * @example askedText({ planned: quantity(0.1, 'bag'), target: quantity(0, 'bag') }) // => 'less than 1/4 bag'
 */
export const askedText = ({
  planned,
  target,
}: Readonly<Record<'planned' | 'target', Quantity<'pieces'>>>): string =>
  target.amount === 0 && planned.amount > 0 ? LESS : inQuartersText(target);
