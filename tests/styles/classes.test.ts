import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type ClassSelector, parse, walk } from 'css-tree';
import { expect, test } from 'vitest';

const filesOf = (endings: RegExp): string[] =>
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => endings.test(name) && !name.startsWith('generated'))
    .map((name) => readFileSync(join('src', name), 'utf8'));

function classesIn(style: string): string[] {
  const found: string[] = [];
  walk(parse(style), {
    visit: 'ClassSelector',
    enter: ({ name }: ClassSelector) => void found.push(name),
  });
  return found;
}

test('every class that a style sheet names is written somewhere in the code', () => {
  const named = new Set(filesOf(/\.css$/).flatMap(classesIn));
  expect(named.size).toBeGreaterThan(100);
  // Inside quotes, among other classes or alone.
  const written = new Set(
    filesOf(/\.(astro|tsx?)$/).flatMap((code) =>
      [...code.matchAll(/["'`]([^"'`\n]*)["'`]/g)].flatMap(([, words = '']) => words.split(/[\s.]+/)),
    ),
  );
  expect([...named].filter((name) => !written.has(name))).toEqual([]);
});
