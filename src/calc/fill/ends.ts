/** How the two ends of what a value may be are printed: outwards, so that they hold it as printed too. */
export const lowEnd = { figures: 3, round: 'down' } as const;
export const highEnd = { figures: 3, round: 'up' } as const;
