import { expect, test } from 'vitest';
import { wordsApart } from '../../src/built/words-apart.ts';

test.each([
  [
    'a term and what is said of it',
    '<dt>Applies to</dt><dd>Homes</dd><dt>Status</dt>',
    '<dt>Applies to</dt> <dd>Homes</dd><dt>Status</dt> ',
  ],
  ['the head of a row and its cells', '<th>Roll</th><td>6 in</td>', '<th>Roll</th> <td>6 in</td>'],
  [
    'the lead of a page: told by itself',
    '<p class="lead">How many?</p><p>Few.</p>',
    '<p class="lead" data-pagefind-meta="lead">How many?</p><p>Few.</p>',
  ],
  ['what unfolds a part, and the part', '<summary>How</summary><p>', '<summary>How</summary> <p>'],
  ['a word of which a part is marked: it stays one', '<p>truss<b>es</b></p>', '<p>truss<b>es</b></p>'],
])('%s', (_, html, expected) => expect(wordsApart(html)).toBe(expected));
