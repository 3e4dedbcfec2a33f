import { describe, expect, test } from 'vitest';
import { importsOf } from '../../src/built/imports.ts';
import { neededModules, withModuleLinks } from '../../src/built/module-links.ts';

const scripts: Readonly<Record<string, string>> = {
  '_astro/page.js': 'import"./shared.js"',
  '_astro/shared.js': 'import{a}from"./deep.js";import"./page.js"',
  '_astro/deep.js': '1',
  '_astro/mount.js': 'import"./shared.js";import"./fill.js";()=>import("./newer.js")',
  '_astro/fill.js': 'import"./depth.js"',
  '_astro/depth.js': '1',
  '_astro/newer.js': '1',
};
const importsIn = (file: string) => importsOf(scripts[file] ?? '');
const pageOf = (...names: string[]) =>
  `<head><link rel="stylesheet" href="../a.css"></head>${names
    .map((name) => `<script type="module" src="../../_astro/${name}.js"></script>`)
    .join('')}`;

describe('the scripts that a page needs besides those it names', () => {
  test.each([
    ['none where it has no script', pageOf(), []],
    ['what its scripts import, and what that imports, each once', pageOf('page'), ['shared', 'deep']],
    ['nothing that is asked for later', pageOf('mount'), ['shared', 'deep', 'page', 'fill', 'depth']],
    ['nothing that it names itself', pageOf('page', 'mount'), ['shared', 'deep', 'fill', 'depth']],
  ])('%s', (_, html, expected) => {
    expect(neededModules('do/a/index.html', html, importsIn)).toEqual(
      expected.map((name) => `_astro/${name}.js`),
    );
  });
});

const link = (name: string): string => `<link rel="modulepreload" href="../../_astro/${name}.js">`;
const script = (name: string): string => `<script type="module" src="../../_astro/${name}.js"></script>`;
const whole = (head: string, body: string): string => `<head>${head}</head><body>${body}</body>`;

describe('each is linked from where the page lies', () => {
  test.each([
    [
      'behind the style sheets, where the page has several scripts',
      whole('<link rel="stylesheet" href="../a.css">', `Words${script('page')}${script('deep')}`),
      whole(
        `<link rel="stylesheet" href="../a.css">${link('shared')}`,
        `Words${script('page')}${script('deep')}`,
      ),
    ],
    [
      'at the end of a page of words, with its one script, out of the style sheet’s way',
      whole(`${script('page')}<link rel="stylesheet" href="../a.css">`, 'Words'),
      whole(
        '<link rel="stylesheet" href="../a.css">',
        `Words${link('shared')}${link('deep')}${script('page')}`,
      ),
    ],
    ['nowhere, where it has no script', whole('', 'Words'), whole('', 'Words')],
  ])('%s', (_, html, expected) => {
    expect(withModuleLinks('do/a/index.html', html, importsIn)).toBe(expected);
  });
});
