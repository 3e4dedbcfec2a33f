import { gunzipSync, gzipSync } from 'node:zlib';
import { decode, encode } from 'cborg';
import { describe, expect, test } from 'vitest';
import { inSmallParts, NOT_KEPT } from '../../src/built/search-parts.ts';
import { isSmall } from '../../src/islands/search/words.ts';

const MARK = 'pagefind_dcd';
const packed = (content: unknown, mark = MARK): Uint8Array =>
  gzipSync(Buffer.concat([Buffer.from(mark), encode(content)]));
const unpacked = (file: Uint8Array | undefined): unknown[] =>
  decode(gunzipSync(file ?? new Uint8Array()).subarray(MARK.length));

/** A word on one page, at so many places: each place is a byte. */
const word = (text: string, places: number) => [text, [[1, Array<number>(places).fill(1), []]], []];

/** An index as its indexer writes it, of parts that hold these words. */
const index = (...parts: readonly (readonly (readonly [string, ...unknown[]])[])[]) => ({
  meta: packed([
    '1.6',
    [['en_page', 12, '']],
    parts.map((words, at) => [words[0]?.[0], words.at(-1)?.[0], `en_${at}`]),
    1,
  ]),
  parts: new Map(parts.map((words, at) => [`en_${at}`, packed([words])])),
});

/** The words of each part, in the order of the list. */
const wordsOf = (small: ReturnType<typeof inSmallParts>): string[][] =>
  (unpacked(small.meta)[2] as string[][]).map(([, , name]) =>
    (unpacked(small.parts.get(name ?? ''))[0] as string[][]).map(([text]) => text ?? ''),
  );

const large = (...texts: readonly string[]) => texts.map((text) => word(text, 5_000) as [string]);

describe('the index in parts that a poor line has soon', () => {
  test.each([
    {
      title:
        'once a part holds 12,000 bytes, as three of these words do, it ends where the first two letters change',
      parts: [large('aa', 'ab', 'ac', 'ad', 'ae')],
      found: [
        ['aa', 'ab', 'ac'],
        ['ad', 'ae'],
      ],
    },
    {
      title: 'words that begin alike stand together until they hold 36,000 bytes, as eight of these do',
      parts: [large('ab1', 'ab2', 'ab3', 'ab4', 'ab5', 'ab6', 'ab7', 'ab8', 'ab9')],
      found: [['ab1', 'ab2', 'ab3', 'ab4', 'ab5', 'ab6', 'ab7', 'ab8'], ['ab9']],
    },
    {
      title: 'those that begin with the same three letters stand together however much they hold',
      parts: [large('abc1', 'abc2', 'abc3', 'abc4', 'abc5', 'abc6', 'abc7', 'abc8', 'abc9', 'abd')],
      found: [['abc1', 'abc2', 'abc3', 'abc4', 'abc5', 'abc6', 'abc7', 'abc8', 'abc9'], ['abd']],
    },
    {
      title: 'what begins alike and was apart comes together',
      parts: [large('aa', 'ab'), large('abc'), large('b')],
      found: [['aa', 'ab', 'abc'], ['b']],
    },
  ])('$title', ({ parts, found }) => {
    expect(wordsOf(inSmallParts(index(...parts)))).toEqual(found);
  });

  const small = inSmallParts(index(large('aa', 'ab', 'ac', 'ad'), [word('zinc', 3) as [string]]));

  test('no place of a word is lost, and the list of the index keeps all else', () => {
    const entries = [...small.parts.values()].flatMap((part) => unpacked(part)[0] as unknown[]);
    expect(entries).toEqual([...large('aa', 'ab', 'ac', 'ad'), word('zinc', 3)]);
    const [by, pages, , filters] = unpacked(small.meta);
    expect([by, pages, filters]).toEqual(['1.6', [['en_page', 12, '']], 1]);
  });

  test('the list names the first and the last word of each part, and the page of the search is told the first', () => {
    const listed = unpacked(small.meta)[2] as string[][];
    expect(listed.map(([first, last]) => [first, last])).toEqual([
      ['aa', 'ac'],
      ['ad', 'zinc'],
    ]);
    expect(small.firstWords).toEqual(listed.map(([first, , name]) => [first, name]));
  });

  test('what a file is called changes with what it holds, since browsers keep it for ever', () => {
    const other = inSmallParts(index(large('aa', 'ab', 'ac', 'ad'), [word('zinc', 4) as [string]]));
    expect(other.firstWords[0]).toEqual(small.firstWords[0]);
    expect(other.firstWords[1]?.[1]).not.toBe(small.firstWords[1]?.[1]);
    expect(other.name).not.toBe(small.name);
  });

  test('words that hold a sentence together go, and none that a search looks for', () => {
    const kept = inSmallParts(index([word('off', 1), word('of', 1), word('the', 1)] as [string][]));
    expect(wordsOf(kept)).toEqual([['off']]);
    expect([...NOT_KEPT].filter((each) => !isSmall(each))).toEqual([]);
  });

  const one = index([word('aa', 1) as [string]]);
  test.each([
    {
      title: 'a list that begins otherwise',
      files: { ...one, meta: packed([], 'pagefind_xyz') },
      says: /begins with "pagefind_xyz"/,
    },
    {
      title: 'a list without parts',
      files: { ...one, meta: packed(['1.6', []]) },
      says: /expected each with first word/,
    },
    {
      title: 'a list whose parts are written otherwise',
      files: { ...one, meta: packed(['1.6', [], [['aa', 1, 'en_0']]]) },
      says: /expected each with first word/,
    },
    { title: 'a part that is missing', files: { ...one, parts: new Map() }, says: /found no part "en_0"/ },
  ])('$title stops the build', ({ files, says }) => {
    expect(() => inSmallParts(files)).toThrow(says);
  });
});
