import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Passage } from '../../src/proofread/passage.ts';
import { proseInCode, proseInPage, proseInTemplate, proseInYaml } from '../../src/proofread/prose-in.ts';
import { misspelt, speller, WORD_LIST } from '../../src/proofread/spelling.ts';
import { wordListProblems } from '../../src/proofread/word-list.ts';

const spell = speller(['batt', 'Uo']);
const page = (text: string): Passage[] => proseInPage('a.mdx', text);
const yaml = (text: string): Passage[] => proseInYaml('a.yaml', text);
const code = (text: string): Passage[] => proseInCode('a.tsx', text);
const template = (text: string): Passage[] => proseInTemplate('a.astro', text);
type Reader = (text: string) => Passage[];

/** The mark § shows where the mistake is to be told. */
const wrong: readonly [what: string, read: Reader, text: string, word: string][] = [
  ['a step of a page', page, '1. Look up.\n2. Mark the §ceilng.', 'ceilng'],
  ['a later line of a paragraph', page, 'Mark it.\nThen §markk it.', 'markk'],
  ['a heading', page, '## The §roff', 'roff'],
  ['the title of a page', page, '---\ntitle: Mark the §ceilng\norder: 10\n---\n\nMark it.', 'ceilng'],
  ['the summary of a page', page, '---\ntitle: Mark\nsummary: The §ceilng.\n---\n', 'ceilng'],
  ['strong words', page, 'Mark the **§ceilng**.', 'ceilng'],
  ['the words of a link', page, 'See [the §ceilng](../ceiling/).', 'ceilng'],
  ['a word in front of a value', page, 'Cutt <Rule id="a.b.c" /> off.'.replace('Cutt', '§Cutt'), 'Cutt'],
  ['a word with a hyphen', page, 'A self-§adherred patch.', 'adherred'],
  ['American spelling', page, 'The §color of it.', 'color'],
  ['a possessive', page, 'The §ceilng’s edge.', 'ceilng’s'],
  ['what a rule says', yaml, 'a:\n  says: It is §wid.\n', 'wid'],
  ['what a caution asks to do', yaml, 'a:\n  do: >\n    Keep it.\n    §Thenn leave.\n', 'Thenn'],
  ['another form of a term', yaml, 'a:\n  also: [saws, §sawss]\n', 'sawss'],
  ['a choice', yaml, 'a:\n  value: { kind: one-of, choices: [wood, §stele] }\n', 'stele'],
  ['the words of an element', code, 'const a = <p>Mark the §ceilng.</p>;', 'ceilng'],
  ['a sentence in code', code, "const a = 'Mark the §ceilng today.';", 'ceilng'],
  ['a template in code', code, `const a = \`Mark the §ceilng of \${b}.\`;`, 'ceilng'],
  ['the words of a page’s template', template, '---\nconst a = 1;\n---\n<p>Mark {a} §ceilng.</p>', 'ceilng'],
  ['what a page’s template says of itself', template, '<Layout title="The §ceilng" />', 'ceilng'],
];

describe('a word that nobody knows is told, with file, line and column, in', () => {
  test.each(wrong)('%s', (_, read, text, word) => {
    const before = (text.split('§')[0] ?? '').split('\n');
    expect(misspelt(read(text.replace('§', '')), spell)).toEqual([
      expect.objectContaining({
        line: before.length,
        column: (before.at(-1) ?? '').length + 1,
        found: `"${word}"`,
        expected: expect.stringContaining(`a word of the dictionary or of ${WORD_LIST}`),
        check: 'spelling',
      }),
    ]);
  });

  test('with the word that was meant', () => {
    expect(misspelt(page('The ceilng.'), spell)[0]?.expected).toMatch(/; did you mean "ceiling"\?$/);
  });
});

const right: readonly [what: string, read: Reader, text: string][] = [
  ['British spelling', page, "The colour of aluminium fibre. It isn’t grey, it doesn't matter."],
  ['a word of the trade', page, 'A Batt. The batt’s edge.'],
  ['initials and signs of units', page, 'OSB, GFCIs, 1.5 kV, 80 dBA, R-19.'],
  ['code, addresses and elements', page, 'Type `xqz` at https://xqz.example, <Rule id="xqz.xqz.xqz" />.'],
  ['a character reference', page, 'One&nbsp;two.'],
  ['a remark that nobody sees', page, '{/* xqz */}\n\nOne.'],
  ['ids and units', yaml, 'xqz:\n  unit: xqz\n  source: { kind: document, document: xqz-1 }\n'],
  ['a reference inside a caution', yaml, 'a:\n  says: It is {xqz.xqz.xqz low} wide.\n'],
  ['the symbols of a working', yaml, 'a:\n  from: { working: sqrt(wm + 2 x sb) = ln 3 }\n'],
  [
    'the title of a document, which others wrote',
    yaml,
    'a:\n  title: Labeling of Colors\n  publisher: An office\n',
  ],
  ['names in code', code, "const a = 'xqz'; const b = 'xqz xqz'; xqz();"],
  ['a command in code', code, "const a = 'Type npm run --silent calc, then go on.';"],
  [
    'the code of a template',
    template,
    '---\nimport { xqz } from "./xqz.ts";\n---\n{xqz.map((xqz) => (<p class="xqz">{xqz}</p>))}',
  ],
];

describe('nothing is told of', () => {
  test.each(right)('%s', (_, read, text) => {
    expect(misspelt(read(text), spell)).toEqual([]);
  });
});

describe('a list of words', () => {
  const told = (text: string): string[] =>
    wordListProblems('words.txt', text, speller()).map(
      ({ line, found, expected }) => `${line} ${found}: ${expected}`,
    );

  test.each([
    ['out of order', 'sone\nbatt\n', '2 "batt": the order of the alphabet: "batt" before "sone"'],
    ['with a word twice', 'batt\nbatt\n', '2 "batt": each word once'],
    [
      'with a word that the dictionary has',
      'batt\nceiling\n',
      '2 "ceiling": only words that the dictionary does not have',
    ],
    ['with two words on a line', 'batt sone\n', '1 "batt sone": one word on each line, of letters alone'],
    ['with an empty line', 'batt\n\nsone\n', '2 "": one word on each line, of letters alone'],
  ])('%s', (_, text, problem) => {
    expect(told(text)).toContain(problem);
  });

  test('the project’s own is in order, and holds no word that the dictionary has', () => {
    expect(told(readFileSync(WORD_LIST, 'utf8'))).toEqual([]);
  });
});
