const two = (part: number): string => String(part).padStart(2, '0');

/**
 * Which day is a moment of, by the clock of this machine, and not that of Greenwich?
 * @example dayOf(new Date(2026, 0, 5)) // => '2026-01-05'
 */
export const dayOf = (moment: Date): string =>
  `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
