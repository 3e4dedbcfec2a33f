import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { attributeOf, elementsIn } from '../../src/built/html.ts';
import { heldStyles, sumOf } from './held-style.ts';
import { everyPage } from './pages.ts';

// Of the files alone: no browser is asked, so once is enough.

test('no page at all is written with an inline script, or with a script, a style sheet or a picture of another host', () => {
  const wrong = everyPage.flatMap((path) =>
    elementsIn(readFileSync(`dist${path}index.html`, 'utf8'))
      .filter((element) => {
        const { tagName, attrs } = element;
        const asked = attributeOf(element, tagName === 'link' ? 'href' : 'src');
        return (
          (tagName === 'script' && asked === undefined) ||
          attrs.some(({ name }) => name === 'style' || name.startsWith('on')) ||
          /^(?:[a-z]+:)?\/\//i.test(asked ?? '')
        );
      })
      .map(({ tagName }) => `${path}: ${tagName}`),
  );
  expect(wrong).toEqual([]);
});

test('a page is written with no style but the one that its own policy allows, and the front page and those of words hold it', () => {
  const holding = everyPage.flatMap((path) => {
    const html = readFileSync(`dist${path}index.html`, 'utf8');
    const held = heldStyles(html);
    const policy = /style-src ([^;]*);/.exec(html)?.[1];
    expect(policy, path).toBe(["'self'", ...held.map((style) => `'${sumOf(style)}'`)].join(' '));
    return held.length === 0 ? [] : [path];
  });
  expect(holding).toEqual(everyPage.filter((path) => /^\/((do|know|safety|train|trouble)\/.*)?$/.test(path)));
});
