import { expect, test } from 'vitest';
import { withLongNames } from '../../src/built/long-names.ts';

const terms = [
  { term: 'R-value', also: ['R-values', 'R'] },
  { term: 'ridge', also: ['peak'] },
  { term: 'tare' },
];
const NAME = '<span data-pagefind-meta="also:R-value"></span>';

test.each([
  [
    'the letter alone',
    '<h1>Why the taper eats R</h1><p>R</p>',
    `<h1>Why the taper eats R</h1>${NAME}<p>R</p>`,
  ],
  ['the letter in an element of its own', '<h1><em>R</em> counts</h1>', `<h1><em>R</em> counts</h1>${NAME}`],
  ['the letter in a word, or beside a hyphen', '<h1>Roof, R-38</h1>', '<h1>Roof, R-38</h1>'],
  ['a whole word of a term', '<h1>The peak</h1>', '<h1>The peak</h1>'],
  ['no heading', '<p>R</p>', '<p>R</p>'],
])('a heading with %s', (_, html, expected) => {
  expect(withLongNames(html, terms)).toBe(expected);
});
