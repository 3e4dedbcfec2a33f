import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { attributeOf, elementsIn } from '../../src/built/html.ts';
import { everyPage } from './pages.ts';

// Of the files alone: no browser is asked, so once is enough.

test('no page at all is written with an inline script or style, or with a script, a style sheet or a picture of another host', () => {
  const wrong = everyPage.flatMap((path) =>
    elementsIn(readFileSync(`dist${path}index.html`, 'utf8'))
      .filter((element) => {
        const { tagName, attrs } = element;
        const asked = attributeOf(element, tagName === 'link' ? 'href' : 'src');
        return (
          tagName === 'style' ||
          (tagName === 'script' && asked === undefined) ||
          attrs.some(({ name }) => name === 'style' || name.startsWith('on')) ||
          /^(?:[a-z]+:)?\/\//i.test(asked ?? '')
        );
      })
      .map(({ tagName }) => `${path}: ${tagName}`),
  );
  expect(wrong).toEqual([]);
});
