import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { budgets } from './budgets.ts';
import { builtSite } from './built-site.ts';
import { isOver } from './figure.ts';
import { addressesIn, pageLoad } from './page-load.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const siteOf = (files: Readonly<Record<string, string>>) =>
  new Map(Object.entries(files).map(([file, text]) => [file, bytes(text)]));

/** Words that don't pack: each its own. */
const noise = (length: number): string => {
  let state = 1;
  let text = '';
  while (text.length < length) {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    text += state.toString(36);
  }
  return text.slice(0, length);
};

const head =
  '<link rel="icon" href="../../mark.svg"><link rel="stylesheet" href="../../_astro/a.css"><script type="module" src="../../_astro/a.js"></script>';
const files = {
  'do/a/index.html': `${head}<a class="rule" href="../../rules/big/">3</a><div id="copy"></div>`,
  'calculators/fill/index.html': head,
  '_astro/a.css': '@import "./b.css";a{color:red}',
  '_astro/b.css': 'b{background:url(#own)}',
  '_astro/a.js': 'import"./b.js";import("./late.js");import("./changed.x1.js")',
  '_astro/b.js': 'import"./a.js"',
  '_astro/late.js': '3',
  '_astro/changed.x1.js': '4',
  'rules/big/index.html': noise(500),
  'data/recall.json': '[]',
  'mark.svg': '<svg/>',
};
const site = siteOf(files);

describe('what a page brings', () => {
  test('itself, its style sheets, its scripts with all that these ask for but what a newer copy would, and the list of recalled versions', () => {
    expect([...pageLoad(site, 'do/a/index.html')].sort()).toEqual([
      '_astro/a.css',
      '_astro/a.js',
      '_astro/b.css',
      '_astro/b.js',
      '_astro/late.js',
      'data/recall.json',
      'do/a/index.html',
    ]);
  });

  test('a style sheet asks for others, for pictures and for letters', () => {
    expect(addressesIn('@import "a.css";@import url(b.css);@font-face{src:url(c.woff2)}')).toEqual([
      'a.css',
      'b.css',
      'c.woff2',
    ]);
  });
});

describe('the built site against its budgets', () => {
  const of = (more: Readonly<Record<string, string>>, what: string) =>
    builtSite(siteOf({ ...files, ...more })).find((figure) => figure.what.startsWith(what));

  test('a page is weighed packed', () => {
    const packed = pageLoad(site, 'do/a/index.html').map(
      (file) => gzipSync(site.get(file) ?? '', { level: 9 }).length,
    );
    expect(of({}, 'do/ heaviest')?.found).toBe(packed.reduce((a, b) => a + b, 0));
    expect(of({}, 'do/ most requests')?.found).toBe(7);
  });

  test('a page that grows is told, with what made it grow first', () => {
    const grown = of({ '_astro/b.js': `"${noise(40_000)}"` }, 'do/ heaviest');
    expect(grown && isOver(grown)).toBe(true);
    expect(grown?.what).toBe('do/ heaviest, /do/a/ (1 of 1 over)');
    expect(grown?.parts?.[0]?.[0]).toBe('_astro/b.js');
  });

  test('a request too many is told', () => {
    const asked = of({}, 'do/ most requests');
    expect(asked?.budget).toBe(budgets.contentRequests);
    expect(asked && isOver(asked)).toBe(true);
  });

  test('a file of letters is told', () => {
    const letters = of({ '_astro/a.woff2': 'x' }, 'files of letters');
    expect(letters && isOver(letters)).toBe(true);
    expect(of({}, 'files of letters')).toMatchObject({ found: 0 });
  });

  test('a kind of page that is not there is not passed over', () => {
    const none = of({}, 'no page in safety/');
    expect(none && isOver(none)).toBe(true);
  });

  test('a file that is asked for and not there stops it', () => {
    expect(() => of({ '_astro/b.js': 'import"./gone.js"' }, 'do/')).toThrow('found no file "_astro/gone.js"');
  });
});
