import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';

/** What each folder uses, besides itself and what is generated. Arrows point one way: nothing here points back. */
const uses: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  rulebook: ['quantity'],
  calc: ['quantity', 'rulebook'],
  job: ['quantity', 'rulebook', 'calc'],
  drawings: ['quantity', 'rulebook', 'calc', 'job'],
  train: ['quantity', 'rulebook', 'calc'],
  remark: ['rulebook'],
  proofread: ['rulebook'],
  built: ['rulebook'],
  offline: [],
  islands: ['quantity', 'rulebook', 'calc', 'job', 'drawings', 'offline'],
  components: ['quantity', 'rulebook', 'calc', 'job', 'drawings', 'train', 'built', 'islands', 'styles'],
  pages: ['quantity', 'rulebook', 'calc', 'remark', 'built', 'islands', 'components', 'styles'],
  cli: ['quantity', 'rulebook', 'calc', 'job', 'proofread', 'built', 'remark', 'offline'],
};

/** Files that code takes as text or data, and not as code. */
const OUTSIDE = '..';

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ts|tsx|astro)$/.test(name) && !name.startsWith('generated'))
  .sort();

/** Every file that a file imports, for its values or its types alone, at once or when it is needed; by their ways from src. */
const importsOf = (name: string): string[] =>
  [...readFileSync(join('src', name), 'utf8').matchAll(/\b(?:from|import)\s*\(?\s*'(\.[^']+)'/g)].map(
    ([, way = '']) => relative('src', join('src', name, '..', way)),
  );

const imports = new Map(files.map((name) => [name, importsOf(name)]));
const folderOf = (name: string): string => name.split('/')[0] ?? '';

describe('the folders of the source', () => {
  test('are all named here, but for what holds no code', () => {
    const named = new Set([...Object.keys(uses), 'generated', 'styles']);
    const found = readdirSync('src', { withFileTypes: true }).filter((each) => each.isDirectory());
    expect(found.map(({ name }) => name).filter((name) => !named.has(name))).toEqual([]);
  });

  test('point one way: each stands after those that it uses', () => {
    const order = Object.keys(uses);
    for (const [folder, used] of Object.entries(uses))
      for (const each of used.filter((name) => name !== 'styles'))
        expect(order.indexOf(each), `${folder} uses ${each}`).toBeLessThan(order.indexOf(folder));
  });

  test.each(Object.entries(uses))(
    '%s imports from those that it is said to use, and from no other',
    (folder, used) => {
      const own = files.filter((name) => folderOf(name) === folder);
      expect(own.length).toBeGreaterThan(0);
      const found = own.flatMap((name) =>
        (imports.get(name) ?? []).map((way) => ({ name, to: folderOf(way), way })),
      );
      const others = found.filter(({ to }) => ![folder, 'generated', OUTSIDE, ...used].includes(to));
      expect(others.map(({ name, way }) => `${name} imports ${way}`)).toEqual([]);
      const unused = used.filter((each) => !found.some(({ to }) => to === each));
      expect(unused).toEqual([]);
    },
  );
});

test('the folders of the calculations point one way too', () => {
  const arrows = new Map<string, Set<string>>();
  const inside = (name: string): string | undefined => /^calc\/([^/]+)\//.exec(name)?.[1];
  for (const [name, ways] of imports)
    for (const way of ways) {
      const [from, to] = [inside(name), inside(way)];
      if (from !== undefined && to !== undefined && from !== to)
        arrows.set(from, (arrows.get(from) ?? new Set()).add(to));
    }
  expect(arrows.size).toBeGreaterThan(5);
  expect(roundAbout(arrows)).toEqual([]);
});

test('no file imports itself by way of others, not even for a type', () => {
  expect(imports.size).toBeGreaterThan(300);
  expect(roundAbout(imports)).toEqual([]);
});

test('a way round about is found', () => {
  expect(
    roundAbout(
      new Map([
        ['a', ['b']],
        ['b', ['c', 'd']],
        ['c', []],
        ['d', ['b']],
      ]),
    ),
  ).toEqual(['b', 'd']);
});

/** Those from which arrows lead back to themselves: what is left when all are taken away that nothing leads on from, or nothing leads to. */
function roundAbout(arrows: ReadonlyMap<string, Iterable<string>>): string[] {
  let left = new Map([...arrows].map(([from, to]) => [from, [...to]]));
  for (let before = -1; before !== left.size; ) {
    before = left.size;
    const reached = new Set([...left.values()].flat());
    left = new Map(
      [...left]
        .map(([from, to]): [string, string[]] => [from, to.filter((each) => left.has(each))])
        .filter(([from, to]) => to.length > 0 && reached.has(from)),
    );
  }
  return [...left.keys()].sort();
}
