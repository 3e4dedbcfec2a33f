/** A part of the index that holds words: the first of them, and the part's name. */
export type IndexPart = readonly [firstWord: string, name: string];

/** As the index writes a word, but for its ending. */
const asIndexed = (word: string): string =>
  word
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '');

/**
 * Which part of the index has a word? Undefined before the first. The index leaves endings out, so that of a word beside the border of two
 * parts it may be the part before: what is fetched by this is a guess, which the index itself sets right.
 * @param parts in the order of their words
 * @example partOf('Patch', [['a', 'en_1'], ['ord', 'en_2'], ['the', 'en_3']]) // => 'en_2'
 */
export function partOf(word: string, parts: readonly IndexPart[]): string | undefined {
  const sought = asIndexed(word);
  return parts.filter(([first]) => first <= sought).pop()?.[1];
}
