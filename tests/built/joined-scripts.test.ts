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
  '_astro/kept.js': 'export const kept=()=>console.log("kept on this phone")',
  '_astro/plan.js': 'export const plan=()=>console.log("bags of the plan")',
  '_astro/more.js': 'export const more=()=>console.log("more of the plan")',
  '_astro/list.js': 'import{kept}from"./kept.js";kept();console.log("a list")',
  '_astro/sheet.js':
    'import{kept}from"./kept.js";import{plan}from"./plan.js";import{more}from"./more.js";kept();plan();more();console.log("a sheet")',
  '_astro/log.js':
    'import{kept}from"./kept.js";import{plan}from"./plan.js";import{more}from"./more.js";kept();plan();more();console.log("a log")',
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
    expect([...(own?.parts ?? [])]).toEqual(['_astro/fill.js', '_astro/bags.js', '_astro/round.js']);
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
  const ownOf = (...names: string[]) =>
    names.map((name) => {
      const own = ownScriptOf(PAGE, pageOf('page', name), importsWithin(folder));
      if (!own) throw new Error(`found no script of its own in the page of "${name}"`);
      return own;
    });
  const whole = async (): Promise<string> => (await joined(folder, ownOf('fill'))).made[0]?.code ?? '';

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

  test('its name holds a sum of what it holds, and stands for the script before', async () => {
    const { inPlaceOf, made } = await joined(folder, ownOf('fill'));
    expect([...inPlaceOf]).toEqual([['_astro/fill.js', made[0]?.place]]);
    expect(made[0]?.place).toMatch(/^_astro\/fill\.[\w-]+\.js$/);
  });

  test('of several the one that needs least needs one file besides its own, and each runs its own code alone', async () => {
    const { inPlaceOf, made } = await joined(folder, ownOf('sheet', 'list', 'log'));
    const codeOf = (script: string): string =>
      made.find(({ place }) => place === inPlaceOf.get(`_astro/${script}.js`))?.code ?? '';
    const others = (script: string): string[] =>
      importsOf(codeOf(script)).map(({ from }) => from.split('.')[1] ?? '');
    expect(others('list')).toEqual(['/first']);
    expect(others('sheet').sort()).toEqual(['/first', '/rest']);
    expect(codeOf('list')).toContain('a list');
    expect(made.filter(({ code }) => code.includes('a list'))).toHaveLength(1);
    expect(made.filter(({ code }) => code.includes('kept on this phone'))).toHaveLength(1);
    // Sheet and log use it, the list does not.
    expect(made.find(({ place }) => /\/rest\./.test(place))?.code).toContain('bags of the plan');
  });
});

test('what is reached from a script: what it imports, and what it asks for later where that is wanted', () => {
  const importsIn = importsWithin(folder);
  const reached = (later: boolean): string[] =>
    [...reachedFrom(['_astro/fill.js'], importsIn, { later })].map((file) => file.slice('_astro/'.length));
  expect(reached(false)).toEqual(['fill.js', 'page.js', 'known.js', 'bags.js', 'round.js']);
  expect(reached(true)).toEqual(['fill.js', 'page.js', 'known.js', 'bags.js', 'round.js', 'later.js']);
});
