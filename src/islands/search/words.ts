/** What crews call a thing, and the word that the site has for it. */
export type Called = readonly (readonly [called: string, term: string])[];

/** What is looked for in the place of what was typed. */
export interface Looked {
  readonly words: readonly string[];
  /** What was typed and goes by another word here, with that word. */
  readonly swapped: Called;
}

/** Words that stand on every page or on none, and tell nothing of what is looked for. */
const SMALL: ReadonlySet<string> = new Set(
  'a an and are at can do does for from i if in is it its my of on or the there to what when where which with'.split(
    ' ',
  ),
);

/** Does this word hold sentences together, and tell nothing of what is looked for? @example isSmall('The') // => true */
export const isSmall = (word: string): boolean => SMALL.has(word.toLowerCase());

/** Names of fewer letters are held against what was typed letter by letter. */
const SHORT = 3;

/** The most words that are looked for: each costs a search of every kind. */
const MOST_WORDS = 8;

/** The most words that one thing is called by, such as "peel and stick membrane". */
const LONGEST_NAME = 4;

/** What is neither a letter nor a digit. */
const OTHER = /[^a-z0-9]/g;

/** So that "Sheet rock", "sheet-rock" and "sheetrock", or one fuse and two, are the same. */
const sameAs = (words: readonly string[]): string =>
  words.join('').toLowerCase().replace(OTHER, '').replace(/s$/, '');

/** ½ and its like, which Unicode takes apart into figures and a stroke of their own. */
const ONE_CHARACTER = /[¼-¾⅐-⅞]/g;

/**
 * The words of a text, without the marks of its sentences. What a hyphen joins is one word, as in the index, and so is a fraction, ½ as 1/2.
 * @example wordsIn('10½ in') // => ['10', '1/2', 'in']
 */
export const wordsIn = (text: string): string[] =>
  (
    text
      .replace(ONE_CHARACTER, (each) => ` ${each.normalize('NFKD').replace('⁄', '/')} `)
      .match(/[^\s,;:?!"“”()/]+(?:\/\d+)?/g) ?? []
  ).filter((each) => /[a-z0-9]/i.test(each));

/**
 * What to look for where a crew typed this: what the site has another word for goes by that word, and small words are left out unless there
 * are no others.
 * @example lookedFor('density of caulk', [['caulk', 'sealant']]).words // => ['density', 'sealant']
 */
export function lookedFor(typed: string, called: Called): Looked {
  // A name as short as CO is one only as it is written: "co" may be the beginning of any word.
  const isShort = (name: string) => name.length < SHORT;
  const terms = new Map(called.map(([name, term]) => [isShort(name) ? name : sameAs([name]), term]));
  const termOf = (name: readonly string[]): string | undefined =>
    terms.get(name.length === 1 && isShort(name[0] ?? '') ? (name[0] ?? '') : sameAs(name));
  const all = wordsIn(typed);
  const words: string[] = [];
  const swapped: [string, string][] = [];
  for (let at = 0; at < all.length; ) {
    let length = Math.min(LONGEST_NAME, all.length - at);
    // The longest name first: "vapor barrier" is not "vapor" and a barrier.
    while (length > 0 && termOf(all.slice(at, at + length)) === undefined) length -= 1;
    const name = all.slice(at, at + length);
    const term = length > 0 ? termOf(name) : undefined;
    if (term !== undefined) {
      // The same word written another way is nothing to tell.
      if (sameAs(name) !== sameAs([term])) swapped.push([name.join(' '), term]);
      words.push(...wordsIn(term));
    } else words.push(all[at] ?? '');
    at += Math.max(length, 1);
  }
  return { words: withoutSmall(words).slice(0, MOST_WORDS), swapped };
}

/** The words that tell something, each once; all of them where none does. */
export function withoutSmall(words: readonly string[]): string[] {
  const once = [...new Set(words)];
  const telling = once.filter((each) => !isSmall(each));
  return telling.length > 0 ? telling : once;
}

/** How much of a typed word has to stand at the head of one that is found, and how many letters at least. */
const ENOUGH = 0.7;
const ENOUGH_LETTERS = 4;

/**
 * Is a word that was found the one that was typed, begun or with another ending? The index gives the longest of its words that the typed one
 * begins with, if it has no better: "c" for "caulk".
 * @example isFoundFor('insulatio', 'Insulated.') // => true
 * @example isFoundFor('sheetrock', 'sheet') // => false
 */
export function isFoundFor(typed: string, found: string): boolean {
  const [asked, given] = [typed, found].map((each) => each.toLowerCase().replace(OTHER, '')) as [
    string,
    string,
  ];
  if (asked === '') return false;
  // Of "lead-safe" the index has each half too.
  if (given.includes(asked)) return true;
  let same = 0;
  while (same < asked.length && asked[same] === given[same]) same += 1;
  return same >= Math.max(ENOUGH_LETTERS, Math.ceil(ENOUGH * asked.length));
}

/** The same words with each left out once: where no page has all of them, some may have all but one. */
export const allButOne = (words: readonly string[]): string[][] =>
  words.length < 2 ? [] : words.map((_, left) => words.filter((__, place) => place !== left));

/** What is said of words that were looked for otherwise than as typed, or `both` ways, and of those that no page has. */
export function toldOf(swapped: Called, both: boolean, unknown: readonly string[]): string {
  const quoted = (words: readonly string[], joined: string) =>
    words.map((each) => `“${each}”`).join(` ${joined} `);
  const small = unknown.filter(isSmall);
  const others = unknown.filter((each) => !isSmall(each));
  return [
    ...swapped.map(([name, term]) => `“${name}”: looked for “${term}”${both ? ' too' : ''}.`),
    ...(others.length > 0 ? [`No page has the word ${quoted(others, 'or')}.`] : []),
    ...(small.length > 0 ? [`Too little is told by ${quoted(small, 'and')}: add another word.`] : []),
  ].join(' ');
}
