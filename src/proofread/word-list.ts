import type { Problem } from '../rulebook/problem.ts';
import type { Speller } from './spelling.ts';

const inOrder = new Intl.Collator('en', { caseFirst: 'lower' }).compare;

/** What is wrong with a list of words: more than a word on a line, out of order, twice, or known to the dictionary without it. */
export function wordListProblems(file: string, text: string, { knows }: Speller): Problem[] {
  const lines = text.replace(/\n$/, '').split('\n');
  return lines.flatMap((word, place) => {
    const before = lines[place - 1];
    const expected = !/^\p{L}+(?:'\p{L}+)?$/u.test(word)
      ? 'one word on each line, of letters alone'
      : before !== undefined && inOrder(before, word) === 0
        ? 'each word once'
        : before !== undefined && inOrder(before, word) > 0
          ? `the order of the alphabet: "${word}" before "${before}"`
          : knows(word)
            ? 'only words that the dictionary does not have'
            : undefined;
    return expected === undefined
      ? []
      : [{ file, line: place + 1, column: 1, found: `"${word}"`, expected, check: 'word-list' }];
  });
}
