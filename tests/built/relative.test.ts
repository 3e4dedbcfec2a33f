import { describe, expect, test } from 'vitest';
import { relativeFrom, relativePage, rootedIn } from '../../src/built/relative.ts';

const DEEP = 'do/saw/index.html';

describe('an address from the root of the site becomes one from the page', () => {
  test.each([
    ['index.html', '/', './'],
    ['index.html', '/mark.svg', './mark.svg'],
    ['do/index.html', '/', '../'],
    [DEEP, '/terms/#purlin', '../../terms/#purlin'],
    [DEEP, '/search/?q=saw', '../../search/?q=saw'],
  ])('on %s %s is %s', (file, rooted, relative) => {
    expect(relativeFrom(file, rooted)).toBe(relative);
    expect(new URL(relative, `https://site.invalid/a%20b/${file}`).href).toBe(
      `https://site.invalid/a%20b${rooted}`,
    );
  });
});

/** All of these stay letter by letter what they are, but for the address. */
const pages: readonly [what: string, written: string, made: string][] = [
  ['a link', '<p>Cut <a class="x" href="/do/">it</a></p>', '<p>Cut <a class="x" href="../../do/">it</a></p>'],
  ['a link without quotes', '<a href=/do/ class=x>it</a>', '<a href=../../do/ class=x>it</a>'],
  ['the front page', '<a href="/">it</a>', '<a href="../../">it</a>'],
  ['a style sheet', '<link rel="stylesheet" href="/a.css">', '<link rel="stylesheet" href="../../a.css">'],
  ['a script', '<script src="/a.js"></script>', '<script src="../../a.js"></script>'],
  ['a form', '<form action="/find/"></form>', '<form action="../../find/"></form>'],
  [
    'a link of a drawing',
    '<svg><a href="/rules/x/"><text>3</text></a></svg>',
    '<svg><a href="../../rules/x/"><text>3</text></a></svg>',
  ],
  [
    'where the site begins, for scripts',
    '<html lang="en" data-root="/"><body></body></html>',
    '<html lang="en" data-root="../../"><body></body></html>',
  ],
  [
    'what the parser moves out of a table keeps its place in the text',
    '<table><a href="/one/">1</a><tr><td><a href="/two/">2</a></td></tr></table><a href="/three/">3</a>',
    '<table><a href="../../one/">1</a><tr><td><a href="../../two/">2</a></td></tr></table><a href="../../three/">3</a>',
  ],
  ['a link that is relative', '<a href="../plane/">P</a>', '<a href="../plane/">P</a>'],
  ['another host', '<a href="//example.org/">A</a>', '<a href="//example.org/">A</a>'],
  ['an anchor of the page', '<p id="a"><a href="#a">A</a></p>', '<p id="a"><a href="#a">A</a></p>'],
  [
    'words that tell of an address',
    '<code>/do/</code><!-- <a href="/do/"> -->',
    '<code>/do/</code><!-- <a href="/do/"> -->',
  ],
];

describe('a page with', () => {
  test.each(pages)('%s', (_, written, made) => {
    expect(relativePage(DEEP, written)).toEqual({ html: made, problems: [] });
    expect(relativePage(DEEP, made), 'a second time').toEqual({ html: made, problems: [] });
  });
});

describe('the build stops at', () => {
  test.each([
    ['a rooted address where none is looked for', '<p>\n<img srcset="/a.png 2x" alt="">', 2, 6],
    ['a page that leads on by itself', '<meta http-equiv="refresh" content="0; url=/do/">', 1, 28],
  ])('%s', (_, html, line, column) => {
    expect(relativePage(DEEP, html).problems).toEqual([
      expect.objectContaining({ file: DEEP, line, column, check: 'relative-link' }),
    ]);
  });

  test.each(['<a href="/">F</a>', '<a href="./">F</a>', '<link rel="icon" href="mark.svg">'])(
    'an address on the page that a host shows anywhere: %s',
    (html) => {
      expect(relativePage('404.html', html).problems).toHaveLength(1);
      expect(relativePage('404.html', html).html).toBe(html);
    },
  );

  test.each([
    ['a script', 'const a = 1;\nfetch("/data/rules.json")', '/data/rules.json', 2, 8],
    ['a template of a script', 'x = `/rules/$' + '{id}/`', '/rules/$' + '{id}/', 1, 6],
    ['a style sheet', 'a { background: url(/mark.svg) }', '/mark.svg', 1, 21],
  ])('a rooted address in %s', (_, text, address, line, column) => {
    expect(rootedIn('a.js', text, ['data', 'rules', 'mark.svg'])).toEqual([
      expect.objectContaining({ line, column, found: `the address "${address}"` }),
    ]);
  });

  test('nothing else that has a stroke', () => {
    const text = 'import"./data/x.js"; a = b/data/2; c = "1/data"; d = "/database"; e = "//data/"; f = "/"';
    expect(rootedIn('a.js', text, ['data'])).toEqual([]);
  });
});
