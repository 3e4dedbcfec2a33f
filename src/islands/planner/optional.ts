/** A list of the one thing that may not be there. @example optional(undefined) // => [] */
export const optional = <T>(each: T | undefined): T[] => (each === undefined ? [] : [each]);
