import { describe, expect, test } from 'vitest';
import { attributeOf, elementsIn, wordsOf } from '../../src/built/html.ts';

const bodyOf = (html: string) => {
  const body = elementsIn(html).find(({ tagName }) => tagName === 'body');
  if (!body) throw new Error('found no body, expected one in every page');
  return body;
};

describe('the words of an element, as they are read', () => {
  test.each([
    ['an element inside a word leaves it one word', 'in<b>sul</b>ation', 'insulation'],
    ['paragraphs are parted', '<p>Cut</p><p>Patch</p>', 'Cut Patch'],
    ['what follows a list is parted from it', '<ul><li>Cut</li></ul>Patch', 'Cut Patch'],
    ['cells are parted', '<table><tr><th>Depth</th><td>9 in</td></tr></table>', 'Depth 9 in'],
    ['many spaces and ends of lines are one space', ' Cut \n  the <i> hole</i> ', 'Cut the hole'],
    ['a remark is not read', 'Cut<!-- not --> it', 'Cut it'],
    ['nothing', '', ''],
  ])('%s', (_, html, words) => {
    expect(wordsOf(bodyOf(html))).toBe(words);
  });
});

test('the elements of a page stand in the order of its text, with those of a template', () => {
  const found = elementsIn('<main><template><p>a</p></template><i></i></main>').map(({ tagName }) => tagName);
  expect(found).toEqual(['html', 'head', 'body', 'main', 'template', 'p', 'i']);
});

test.each([
  ['one that it has', 'href', '/do/'],
  ['one without words', 'hidden', ''],
  ['one that it lacks', 'id', undefined],
])('an attribute of an element: %s', (_, name, value) => {
  const [link] = elementsIn('<a href="/do/" hidden></a>').filter(({ tagName }) => tagName === 'a');
  expect(link && attributeOf(link, name)).toBe(value);
});
