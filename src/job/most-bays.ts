import { CLOSEST } from '../calc/holes/members.ts';
import { parseQuantity } from '../quantity/parse.ts';
import { inches } from '../quantity/quantity.ts';

/**
 * How many bays has the longest roof with the closest trusses along one edge? One more than trusses, where the first stands off the end.
 * By hand: 10 in hold five trusses 2 in apart, from 1 in to 9 in.
 * @example mostBays('10 in') // => 6
 */
export const mostBays = (longest: string): number =>
  Math.floor(inches(parseQuantity(longest, { dimension: 'length' })) / inches(CLOSEST)) + 1;
