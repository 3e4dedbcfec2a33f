import { describe, expect, test } from 'vitest';
import {
  allButOne,
  type Called,
  isFoundFor,
  lookedFor,
  toldOf,
  wordsIn,
} from '../../../src/islands/search/words.ts';

const called: Called = [
  ['sheetrock', 'ceiling board'],
  ['fuse', 'breaker'],
  ['CO', 'carbon monoxide'],
  ['nail pop', 'popped screw'],
  ['vapor', 'vapour'],
  ['vapor barrier', 'vapour retarder'],
  ['R value', 'R-value'],
  ['peel and stick', 'self-adhered membrane'],
];

describe('what a crew types is looked for by the words of the site', () => {
  test.each([
    ['a word', 'sheetrock', ['ceiling', 'board']],
    ['a word in two, or with a capital', 'Sheet rock', ['ceiling', 'board']],
    ['more than one of it', 'fuses', ['breaker']],
    ['several words, whatever stands between them', 'peel-and-stick', ['self-adhered', 'membrane']],
    ['among others, which stay', 'wet sheetrock.', ['wet', 'ceiling', 'board']],
    ['the longest that it has', 'vapor barrier', ['vapour', 'retarder']],
    ['the same word with a hyphen', 'R value', ['R-value']],
    ['no part of a longer word', 'refuse', ['refuse']],
    ['without small words', 'where is the hole', ['hole']],
    ['with small words, where there are no others', 'what to do', ['what', 'to', 'do']],
    ['each word once', 'hole to hole', ['hole']],
    ['a name of two letters in capitals', 'CO alarm', ['carbon', 'monoxide', 'alarm']],
    ['no word that is half typed', 'co', ['co']],
    [
      'eight words at the most',
      'a1 b1 c1 d1 e1 f1 g1 h1 i1',
      ['a1', 'b1', 'c1', 'd1', 'e1', 'f1', 'g1', 'h1'],
    ],
    ['a fraction of one character, with small words left out', '½ in', ['1/2']],
    ['nothing', ' ?! ', []],
  ])('%s', (_, typed, words) => {
    expect(lookedFor(typed, called).words).toEqual(words);
  });

  test('what goes by another word is told as it was typed; another hyphen is not told', () => {
    expect(lookedFor('Nail pops', called).swapped).toEqual([['Nail pops', 'popped screw']]);
    expect(lookedFor('R value', called).swapped).toEqual([]);
    expect(lookedFor('what density of fiberglass', [['fiberglass', 'glass fibre']])).toEqual({
      words: ['density', 'glass', 'fibre'],
      swapped: [['fiberglass', 'glass fibre']],
    });
  });

  test.each([
    ['marks of a sentence part words, hyphens do not', '“R-38”, or (more)?', ['R-38', 'or', 'more']],
    ['a stroke parts words', 'drill/saw', ['drill', 'saw']],
    ['but no fraction', '3/8 in', ['3/8', 'in']],
    ['nor one of one character', '⅜', ['3/8']],
    ['which a whole number may stand before', '10½" hole', ['10', '1/2', 'hole']],
  ])('%s', (_, text, words) => {
    expect(wordsIn(text)).toEqual(words);
  });
});

// Pairs that the index gave, read by eye: whether a person would say that the one was meant by the other.
test.each([
  ['purl', 'purlins', true],
  ['insulatio', 'Insulated.', true],
  ['safe', 'lead-safe', true],
  ['sheetrock', 'sheet', false],
  ['caulk', '(c)', false],
  ['condensation', 'c', false],
  ['mold', 'm.', false],
  ['shot', 'shop', false],
  ['!', 'word', false],
])('"%s" is meant by "%s": %s', (typed, found, meant) => {
  expect(isFoundFor(typed, found)).toBe(meant);
});

test('all but one of some words, each left out once; of one word nothing is left', () => {
  expect(allButOne(['a', 'b', 'c'])).toEqual([
    ['b', 'c'],
    ['a', 'c'],
    ['a', 'b'],
  ]);
  expect(allButOne(['a'])).toEqual([]);
});

test('what is told names each word', () => {
  expect(toldOf([['mold', 'mould']], true, ['steering', 'fluid'])).toBe(
    '“mold”: looked for “mould” too. No page has the word “steering” or “fluid”.',
  );
  expect(toldOf([['mold', 'mould']], false, [])).toBe('“mold”: looked for “mould”.');
  expect(toldOf([], false, [])).toBe('');
  expect(toldOf([], false, ['from', 'The'])).toBe(
    'Too little is told by “from” and “The”: add another word.',
  );
});
