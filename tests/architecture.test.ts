import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';

/** What each folder may import from, besides itself and the generated types. Arrows point one way: nothing here points back. */
const mayUse: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  rulebook: ['quantity'],
  calc: ['quantity', 'rulebook'],
  job: ['quantity', 'rulebook', 'calc'],
  drawings: ['quantity', 'rulebook', 'calc', 'job'],
  train: ['quantity', 'rulebook', 'calc'],
  remark: ['quantity', 'rulebook'],
  proofread: ['quantity', 'rulebook', 'calc', 'remark'],
  built: ['rulebook'],
  offline: ['quantity', 'rulebook'],
  cli: ['quantity', 'rulebook', 'calc', 'job', 'proofread', 'built', 'remark', 'offline'],
};

const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(/from '(\.[^']+)'/g)].map(
    ([, path = '']) => relative('src', join(file, '..', path)).split('/')[0] ?? '',
  );

describe('the folders of the source', () => {
  test.each(Object.entries(mayUse))('%s imports only from below', (folder, allowed) => {
    const files = readdirSync(join('src', folder), { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ts'),
    );
    expect(files.length).toBeGreaterThan(0);
    const upward = files.flatMap((name) => {
      const used = importsOf(join('src', folder, name)).filter(
        (each) => ![folder, 'generated', ...allowed].includes(each),
      );
      return used.map((each) => `${folder}/${name} imports from ${each}`);
    });
    expect(upward).toEqual([]);
  });
});
