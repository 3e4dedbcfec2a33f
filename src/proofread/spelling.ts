import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import type { Problem } from '../rulebook/problem.ts';
import { type Passage, placeIn } from './passage.ts';

/** Says of a word whether it is one, and what was meant if it is not. */
export interface Speller {
  readonly knows: (word: string) => boolean;
  readonly near: (word: string) => string | undefined;
}

/** The dictionary of British English, with words added to it. */
export function speller(words: readonly string[] = []): Speller {
  const spell = nspell({ aff: Buffer.from(dictionary.aff), dic: Buffer.from(dictionary.dic) });
  for (const word of words) spell.add(word);
  return { knows: (word) => spell.correct(word), near: (word) => spell.suggest(word)[0] };
}

/** Letters, with apostrophes inside them. With a digit or an underscore beside them, or a point in front, they are a name. */
const WORD = /(?<![\p{L}\p{N}_.])\p{L}+(?:['’]\p{L}+)*(?![\p{L}\p{N}_])/gu;
/** Initials, such as OSB; signs of units and names of code, such as kV. */
const SIGN = /^\p{Lu}+s?$|\p{Ll}\p{Lu}/u;

/** The words of a text that are spelled out, with their places: no initials, no signs of units. */
const spelledOut = (text: string): { readonly word: string; readonly at: number }[] =>
  [...text.matchAll(WORD)]
    .filter(([word]) => word.length > 1 && !SIGN.test(word))
    .map(({ 0: word, index }) => ({ word, at: index }));

/** A word as the dictionary has it. */
const plain = (word: string): string => word.replaceAll('’', "'").replace(/'s$/, '');

/** Which words of these passages does nobody know? Each use is told, with its place and the nearest word. */
export function misspelt(passages: readonly Passage[], { knows, near }: Speller): Problem[] {
  const unknown = new Map<string, string | undefined>();
  const known = new Set<string>();
  return passages.flatMap((each) =>
    spelledOut(each.text).flatMap(({ word, at }) => {
      const asked = plain(word);
      if (known.has(asked)) return [];
      if (!unknown.has(asked)) {
        if (knows(asked)) {
          known.add(asked);
          return [];
        }
        unknown.set(asked, near(asked));
      }
      const guess = unknown.get(asked);
      return [
        {
          ...placeIn(each, at),
          found: `"${word}"`,
          expected: `a word of the dictionary or of ${WORD_LIST}${guess === undefined ? '' : `; did you mean "${guess}"?`}`,
          check: 'spelling',
        },
      ];
    }),
  );
}

/** The trade's own words, one a line, that no dictionary has. */
export const WORD_LIST = 'content/en/words.txt';
