import { soon } from '../soon.ts';
import type { Result, SearchIndex } from './program.ts';
import { allButOne, type Called, isFoundFor, lookedFor, toldOf, withoutSmall, wordsIn } from './words.ts';

/** A kind of page that can be asked for. */
export interface Kind {
  readonly kind: string;
  readonly name: string;
  /** 0 for what a crew looks for; 1 for pages about the site; 2 for what only a reviewer looks for. The lower stands first. */
  readonly rank: number;
}

/** What was found of one kind. */
export interface Group extends Kind {
  readonly results: readonly Result[];
}

/** All that was found, in the order in which it is shown, and what is said of the words that were looked for. */
export interface Finds {
  readonly groups: readonly Group[];
  readonly told: string;
}

/** What keeps a person whole comes first; what a crew does or works out stands before values and words, of which many match alike. */
const FIRST: Readonly<Record<string, number>> = {
  safety: 1.3,
  trouble: 1.2,
  'sheet of the job': 0.8,
  term: 0.7,
  rule: 0.5,
  lesson: 0.5,
};

/** How many finds tell whether a word is meant. */
const TRIED = 3;

/**
 * What does the index have for what was typed, kind by kind? Words that go by another name here are looked for by that; where no page has
 * all of the words, those that have all but one. Undefined once `overtaken` says that something else is asked.
 * @throws where a part of the index can't be had.
 */
export async function findsFor(
  index: SearchIndex,
  typed: string,
  called: Called,
  kinds: readonly Kind[],
  overtaken: () => boolean,
): Promise<Finds | undefined> {
  const { words, swapped } = lookedFor(typed, called);
  const here = await Promise.all(words.map((word) => isHere(index, word, overtaken)));
  if (overtaken()) return undefined;
  const known = words.filter((_, place) => here[place]);
  const unknown = words.filter((_, place) => !here[place]);
  // An agency's page, or a document, may have the word that was typed.
  const both =
    swapped.length > 0 && (await Promise.all(swapped.map(([name]) => isUsed(index, name)))).every(Boolean);
  const asTyped = withoutSmall(wordsIn(typed)).filter((word) => !unknown.includes(word));
  const asks = [known, ...(both ? [asTyped] : [])].map((each) => each.join(' '));
  let groups = known.length === 0 ? [] : await groupsFor(index, asks, kinds, overtaken);
  const apart = groups?.length === 0 && known.length > 1;
  if (apart)
    groups = await groupsFor(
      index,
      allButOne(known).map((each) => each.join(' ')),
      kinds,
      overtaken,
    );
  if (groups === undefined) return undefined;
  const all = groups.reduce((sum, { results }) => sum + results.length, 0);
  const some = kinds.length > 1 ? 'No page' : 'None of this kind';
  const told = [
    all === 0 ? 'Nothing found.' : `${all} found.`,
    toldOf(swapped, both, unknown),
    apart && all > 0 ? `${some} has all of these words; these have some of them.` : '',
  ];
  return { groups, told: told.filter((each) => each !== '').join(' ') };
}

/** The finds for any of these words, in groups, the kind with the best find first. */
async function groupsFor(
  index: SearchIndex,
  asks: readonly string[],
  kinds: readonly Kind[],
  overtaken: () => boolean,
): Promise<Group[] | undefined> {
  const looked: Group[] = [];
  for (const kind of kinds) {
    const results = await findsOf(index, kind.kind, asks);
    if (results.length > 0) looked.push({ ...kind, results });
    // All kinds at once would hold up the next key for a moment on a slow phone.
    await new Promise<void>(soon);
    if (overtaken()) return undefined;
  }
  return looked.sort((a, b) => a.rank - b.rank || counts(b) - counts(a));
}

/** What a group's best find counts for beside those of the others. */
const counts = ({ kind, results }: Group): number => (results[0]?.score ?? 0) * (FIRST[kind] ?? 1);

/** The finds of one kind for any of some words, each find once, the best first. */
async function findsOf(index: SearchIndex, kind: string, asks: readonly string[]): Promise<Result[]> {
  const finds = new Map<string, Result>();
  for (const words of asks)
    for (const result of (await index.search(words, { filters: { kind } })).results)
      if (result.score > (finds.get(result.id)?.score ?? 0)) finds.set(result.id, result);
  return [...finds.values()].sort((a, b) => b.score - a.score);
}

/** Where these words stand as they are, one after the other. */
const standing = async (index: SearchIndex, words: string, kind?: string): Promise<number> =>
  (await index.search(`"${words}"`, kind === undefined ? {} : { filters: { kind } })).results.length;

/** Does anything but the list of terms, which tells what others call a thing, have these words? */
const isUsed = async (index: SearchIndex, words: string): Promise<boolean> =>
  (await standing(index, words)) > (await standing(index, words, 'term'));

/** Does anything here have this word, or one that it begins? Of a word that is overtaken by the next key, no page is fetched. */
async function isHere(index: SearchIndex, word: string, overtaken: () => boolean): Promise<boolean> {
  if ((await standing(index, word)) > 0) return true;
  const { results } = await index.search(word);
  if (overtaken()) return false;
  const tried = await Promise.all(
    results.slice(0, TRIED).map(async ({ words, data }) => {
      const { content, meta } = await data();
      const all = content.split(/\s+/);
      return [...words.map((place) => all[place] ?? ''), ...wordsIn(Object.values(meta).join(' '))];
    }),
  );
  return tried.flat().some((found) => isFoundFor(word, found));
}
