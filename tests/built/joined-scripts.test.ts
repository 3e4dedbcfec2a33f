import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { importsOf } from '../../src/built/imports.ts';
import { joined, ownScriptOf } from '../../src/built/joined-scripts.ts';
import { importsWithin, reachedFrom } from '../../src/built/page-scripts.ts';

const files: Readonly<Record<string, string>> = {
  '_astro/page.js': 'import{known as k}from"./known.js";k();export const card=()=>"a card"',
  '_astro/known.js': 'export const known=()=>console.log("known")',
  '_astro/fill.js':
    'import{card}from"./page.js";import{bags}from"./bags.js";import("./later.js");console.log(card(),bags(3))',
  '_astro/bags.js':
    'import{round}from"./round.js";import{known}from"./known.js";known();export const bags=(n)=>round(n),rolls=()=>"rolls of something"',
  '_astro/round.js': 'export const round=(n)=>Math.ceil(n)??0',
  '_astro/later.js': 'console.log("later")',
};
const PAGE = 'calculators/fill/index.html';
const pageOf = (...names: string[]): string =>
  names.map((name) => `<script type="module" src="../../_astro/${name}.js"></script>`).join('');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'joined-'));
  for (const [name, code] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), code);
  }
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the script that is a page’s own', () => {
  test('is the one besides the script of all pages; what all pages have is none of its parts', () => {
    const own = ownScriptOf(PAGE, pageOf('page', 'fill'), importsWithin(folder));
    expect(own?.script).toBe('_astro/fill.js');
    expect(own?.parts).toBe(3);
    expect([...(own?.shared ?? [])]).toEqual(['_astro/page.js', '_astro/known.js']);
  });

  test.each([
    ['a page of words', pageOf('page')],
    ['a page without script', ''],
    ['a page with several of its own', pageOf('page', 'fill', 'bags')],
  ])('%s has none', (_, html) => {
    expect(ownScriptOf(PAGE, html, importsWithin(folder))).toBeUndefined();
  });
});

describe('joined with its parts', () => {
  const whole = async (): Promise<string> => {
    const own = ownScriptOf(PAGE, pageOf('page', 'fill'), importsWithin(folder));
    if (!own) throw new Error('found no script of the page');
    return joined(folder, own);
  };

  test('it asks for nothing but what every page has', async () => {
    expect(new Set(importsOf(await whole()).map(({ from }) => from))).toEqual(
      new Set(['./page.js', './known.js']),
    );
  });

  test('it holds what it uses of its parts, and nothing else of them', async () => {
    const code = await whole();
    expect(code).toContain('Math.ceil');
    expect(code).not.toContain('rolls of something');
  });

  test('it is written for the oldest browsers, which know no "??"', async () => {
    expect(await whole()).not.toContain('??');
  });
});

test('what is reached from a script: what it imports, and what it asks for later where that is wanted', () => {
  const importsIn = importsWithin(folder);
  const reached = (later: boolean): string[] =>
    [...reachedFrom(['_astro/fill.js'], importsIn, { later })].map((file) => file.slice('_astro/'.length));
  expect(reached(false)).toEqual(['fill.js', 'page.js', 'known.js', 'bags.js', 'round.js']);
  expect(reached(true)).toEqual(['fill.js', 'page.js', 'known.js', 'bags.js', 'round.js', 'later.js']);
});
