/**
 * How many holes can be the fewest of a least departure?
 * Where two neighbouring gaps together are no longer than one may be, the hole between them can go, and the departure is no
 * greater for it. With the fewest holes, then, any two neighbouring gaps come to more than the longest gap. Both in one unit.
 * @example mostHoles(66 * 12, 16 * 12) // => 10
 */
export const mostHoles = (length: number, longestGap: number): number => 2 * Math.ceil(length / longestGap);
