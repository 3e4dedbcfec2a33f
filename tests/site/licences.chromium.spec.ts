import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from '@playwright/test';
import { attributeOf, elementsIn, wordsOf } from '../../src/built/html.ts';
import { alsoShipped } from '../../src/built/shipped.ts';

// No browser is asked: what is looked at is what was built.

const sections = elementsIn(readFileSync('dist/licences/index.html', 'utf8'));
const listed = sections.flatMap((each) => attributeOf(each, 'data-package') ?? []);

/** Packages that code names which some page brings into the browser: followed from the islands, import by import. */
function namedByIslands(): string[] {
  const seen = new Set<string>();
  const names = new Set<string>();
  const follow = (file: string): void => {
    if (seen.has(file) || !existsSync(file)) return;
    seen.add(file);
    const source = readFileSync(file, 'utf8').replaceAll(/import type [^;]+;/g, '');
    for (const [, path = ''] of source.matchAll(
      /(?:^(?:(?:import|export)\b.*|\}) from |^import |\bimport\()'([^']+)'/gm,
    )) {
      if (path.startsWith('.')) follow(join(dirname(file), path));
      else
        names.add(
          path.startsWith('@') ? path.split('/').slice(0, 2).join('/') : (path.split('/')[0] ?? path),
        );
    }
  };
  for (const file of readdirSync('src/islands', { recursive: true, encoding: 'utf8' }))
    if (/\.tsx?$/.test(file)) follow(join('src/islands', file));
  return [...names].filter((name) => !name.startsWith('node:')).sort();
}

test('every package that code in the browser names, and every one found in the bundle, is on the page with its licence', () => {
  const bundled: string[] = JSON.parse(readFileSync('src/generated/shipped.json', 'utf8'));
  expect(bundled).toContain('preact');
  expect(listed).toEqual([...new Set([...bundled, ...alsoShipped])].sort());
  const named = namedByIslands();
  expect(named).toContain('fflate');
  expect(named.filter((name) => !listed.includes(name))).toEqual([]);
  const texts = sections.filter((each) => attributeOf(each, 'class') === 'licence').map(wordsOf);
  expect(texts).toHaveLength(listed.length);
  for (const text of texts) expect(text).toMatch(/permission|license/i);
});

test('scripts and compiled code lie only where the bundle puts them, or a package that is listed', () => {
  const folders = readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(m?js|wasm|pagefind)$/.test(name))
    .map((name) => name.split(/[\\/]/)[0]);
  // The worker that keeps the site is put together by itself, of our own code alone.
  expect([...new Set(folders)].sort()).toEqual(['_astro', 'worker.js', ...alsoShipped].sort());
  for (const file of readdirSync('src/offline/worker'))
    expect(readFileSync(`src/offline/worker/${file}`, 'utf8')).not.toMatch(/from '(?!\.)/);
});
