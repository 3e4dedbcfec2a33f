import { describe, expect, test } from 'vitest';
import { attributeOf, elementsIn } from '../../src/built/html.ts';
import { withSearchLinks } from '../../src/built/search-links.ts';

const page =
  '<html><head><title>Search</title></head><body><form data-index="../pagefind/pagefind.js"></form></body></html>';
const entry = JSON.stringify({
  version: '1',
  languages: { en: { hash: 'en_12ab', wasm: 'en', page_count: 3 } },
});

describe('the page of the search asks beside its own scripts for what any search needs', () => {
  const linked = elementsIn(withSearchLinks(page, entry, ['en_34.pf_filter'], [['a"b', 'en_5']]));
  const links = linked.filter(({ tagName }) => tagName === 'link');

  test('the program as a module, the rest as it is fetched: the entry by the version that the page bears', () => {
    expect(links.map((each) => [attributeOf(each, 'rel'), attributeOf(each, 'href')])).toEqual([
      ['modulepreload', '../pagefind/pagefind.js'],
      ['preload', '../pagefind/pagefind-entry.json?ts=en_12ab'],
      ['preload', '../pagefind/pagefind.en_12ab.pf_meta'],
      ['preload', '../pagefind/wasm.en.pagefind'],
      ['preload', '../pagefind/filter/en_34.pf_filter'],
    ]);
    const form = linked.find(({ tagName }) => tagName === 'form');
    expect(form && attributeOf(form, 'data-version')).toBe('en_12ab');
    expect(form && JSON.parse(attributeOf(form, 'data-parts') ?? '')).toEqual([['a"b', 'en_5']]);
  });

  test('each so that the browser takes it for what is fetched later', () => {
    for (const each of links.slice(1))
      expect([attributeOf(each, 'as'), attributeOf(each, 'crossorigin')]).toEqual(['fetch', 'anonymous']);
  });

  test('a language without a program of its own takes the common one', () => {
    const common = entry.replace('"wasm":"en"', '"wasm":null');
    expect(withSearchLinks(page, common, [], [])).toContain('href="../pagefind/wasm.unknown.pagefind"');
  });

  test.each([
    {
      title: 'an index of another language',
      html: page,
      of: entry.replace('"en"', '"de"'),
      says: /found an index of de, expected one in English/,
    },
    {
      title: 'a page that does not tell where the index lies',
      html: '<head></head>',
      of: entry,
      says: /expected the place of the index/,
    },
  ])('$title stops the build', ({ html, of, says }) => {
    expect(() => withSearchLinks(html, of, [], [])).toThrow(says);
  });
});
