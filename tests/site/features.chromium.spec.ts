import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { allowed, searchAllowed } from './features/allowed.ts';
import { newInScript } from './features/script.ts';
import { newInStyle } from './features/style.ts';

// No browser is asked: what is built is held against what is published about each browser. Once is enough, in one worker: all of it is read
// in the first test that asks, since every worker, and the runner itself, reads this file.
test.describe.configure({ mode: 'default' });

/** What a page loads, and what is new in it; the search's own interfaces come with it, and no page asks for them. */
const readBuilt = () =>
  readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => /^(?:_astro\/.*|pagefind\/pagefind)\.(?:js|css)$/.test(name))
    .map((name) => {
      const text = readFileSync(`dist/${name}`, 'utf8');
      return { name, found: name.endsWith('.css') ? newInStyle(text) : newInScript(text) };
    });

let read: ReturnType<typeof readBuilt> | undefined;
const found = () => {
  read ??= readBuilt();
  return read;
};

test('scripts and style sheets as built use nothing that the oldest browsers lack, but for what has a fallback', () => {
  const fine = new Set(allowed.flatMap(({ what }) => what));
  const fineInSearch = new Set(searchAllowed.what);
  const wrong = found().flatMap((file) =>
    [...file.found]
      .filter(([what]) => !fine.has(what) && !(file.name.startsWith('pagefind/') && fineInSearch.has(what)))
      .map(([what, lacking]) => `${file.name}: ${what}, not in ${lacking.join(', ')}`),
  );
  expect(wrong).toEqual([]);
});

test('nothing stands on the list of exceptions that is no longer used', () => {
  const used = new Set(found().flatMap((file) => [...file.found.keys()]));
  expect([...allowed, searchAllowed].flatMap(({ what }) => what).filter((each) => !used.has(each))).toEqual(
    [],
  );
});

const told: readonly [of: string, code: string, expected: readonly string[]][] = [
  ['a method of lists', '[1].at(-1)', ['.at']],
  ['a method of an object of the language', 'Object.hasOwn({}, "a")', ['Object.hasOwn']],
  ['a function of the browser', 'structuredClone(1)', ['structuredClone']],
  ['a method of words, which a cache has long had', '"a".matchAll(/a/g)', ['.matchAll']],
  ['a method of files, which an answer has long had', 'file.text()', ['.text']],
  ['syntax', 'a?.b ?? c', ['?.', '??']],
  ['a pattern', '/(?<=a)b/', ['lookbehind']],
  ['nothing new', 'document.querySelector("a").append([1, 2].flatMap((one) => [one]).join(""))', []],
];
for (const [of, code, expected] of told) {
  test(`a script that is too new is told: ${of}`, () => {
    expect([...newInScript(code).keys()].sort()).toEqual([...expected].sort());
  });
}

const toldStyle: readonly [of: string, css: string, expected: readonly string[]][] = [
  ['a selector', 'a:has(b) { color: red }', [':has']],
  [
    'a selector in a list of those that are known',
    'a, b:has(c) { color: red }',
    ['a selector not known in a list of those that are', ':has'],
  ],
  ['selectors that are all of them new', 'a:has(b), b:has(c) { color: red }', [':has']],
  ['a value', 'a { color: color-mix(in srgb, red, blue) }', ['color-mix()']],
  ['a property', 'a { inset: 0 }', ['inset']],
  ['a gap in a flex box', 'a { display: flex; gap: 1px }', ['gap between the items of a flex box']],
  ['rules within rules', 'a { & b { color: red } }', ['nesting']],
  ['nothing new', 'a { display: grid; gap: 1px; margin: 0 }', []],
];
for (const [of, css, expected] of toldStyle) {
  test(`a style sheet that is too new is told: ${of}`, () => {
    expect([...newInStyle(css).keys()]).toEqual(expected);
  });
}
