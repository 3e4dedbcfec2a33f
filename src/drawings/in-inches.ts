import { formatTape } from '../quantity/format.ts';
import { inches, type Quantity, quantity } from '../quantity/quantity.ts';

const MARK = 16;

/** A bound of the rulebook still holds as it is read. */
const rounding = ({ origin }: Quantity): ((amount: number) => number) =>
  origin.from !== 'rule' || origin.bound === undefined
    ? Math.round
    : origin.bound === 'least'
      ? Math.ceil
      : Math.floor;

/**
 * A length all in inches, in the fractions of a tape, to a sixteenth; less than that in decimals.
 * By hand: 13.5 in are 13 in and a half.
 * @example inInches(quantity(13.5, 'in')) // => '13 1/2 in'
 */
export function inInches(q: Quantity<'length'>): string {
  const marks = rounding(q)(Math.round(inches(q) * MARK * 1e6) / 1e6);
  const [whole, rest] = [Math.floor(marks / MARK), marks % MARK];
  if (whole === 0) return formatTape(q, MARK);
  return rest === 0 ? `${whole} in` : `${whole} ${formatTape(quantity(rest / MARK, 'in'), MARK)}`;
}
