/** What is a copy called, told from the first and from copies before it? @example copyName('Lot 4', 2) // => 'Lot 4 (copy 2)' */
export const copyName = (first: string, which: number): string =>
  `${first} ${which === 1 ? '(copy)' : `(copy ${which})`}`;

/** What is the first called, if this is the name of a copy, or of a copy of one? @example firstName('Lot 4 (copy) (copy 2)') // => 'Lot 4' */
export const firstName = (name: string): string => name.replace(/(?: \(copy(?: \d+)?\))+$/, '');
