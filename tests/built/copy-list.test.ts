import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { buildDay, dateTold } from '../../src/built/build-date.ts';
import { copyList } from '../../src/built/copy-list.ts';

const page = (text: string): Uint8Array => Buffer.from(text);
const site = new Map([
  ['index.html', page('<h1>Front</h1>')],
  ['do/patching/index.html', page('6 in')],
  ['_astro/a.js', page('a()')],
]);

describe('the list of the copy', () => {
  test('holds each file with the first sixteen signs of its SHA-256', () => {
    const sum = createHash('sha256').update('6 in').digest('hex');
    expect(copyList(site).files['do/patching/index.html']).toBe(sum.slice(0, 16));
  });

  test('is the same for the same files in any order', () =>
    expect(copyList(new Map([...site].reverse()))).toEqual(copyList(site)));

  test.each([
    ['a file that holds something else', new Map([...site, ['do/patching/index.html', page('7 in')]])],
    ['a file more', new Map([...site, ['terms/index.html', page('Purlin')]])],
    ['a file less', new Map([...site].slice(1))],
    [
      'a file by another name',
      new Map([...site].map(([name, bytes]) => [name.replace('a.js', 'b.js'), bytes])),
    ],
  ] as const)('is another version for %s', (_, other) =>
    expect(copyList(other).version).not.toBe(copyList(site).version),
  );

  test.each([
    'index.html.gz',
    'heel-to-ridge-2026.1.zip',
    'worker.js',
    'pagefind/pagefind-ui.js',
    'pagefind/pagefind-component-ui.css',
    'pagefind/pagefind-highlight.js',
    'pagefind/pagefind-worker.js',
    'pagefind/wasm.unknown.pagefind',
    'copy/1.json',
  ])('leaves out %s, and its version does not move with it', (name) => {
    expect(copyList(new Map([...site, [name, page('x')]]))).toEqual(copyList(site));
  });

  test.each(['404.html', 'pagefind/pagefind.js', 'pagefind/wasm.en.pagefind', 'data/recall.json'])(
    'keeps %s',
    (name) => expect(Object.keys(copyList(new Map([...site, [name, page('x')]])).files)).toContain(name),
  );
});

describe('the day of the build', () => {
  test('is the one that SOURCE_DATE_EPOCH tells, else one that does not move while the sources stay', () => {
    const before = process.env.SOURCE_DATE_EPOCH;
    try {
      // 20,000 days after 1970-01-01.
      process.env.SOURCE_DATE_EPOCH = '1728000000';
      expect(buildDay()).toBe('2024-10-04');
      delete process.env.SOURCE_DATE_EPOCH;
      // The day of the last commit, whatever day it is: by git itself, told in UTC.
      const lastCommit = execFileSync('git', ['log', '-1', '--format=%cd', '--date=format-local:%F'], {
        env: { ...process.env, TZ: 'UTC' },
      });
      vi.useFakeTimers({ now: Date.UTC(2099, 0, 1), toFake: ['Date'] });
      expect(buildDay()).toBe(lastCommit.toString().trim());
    } finally {
      vi.useRealTimers();
      if (before !== undefined) process.env.SOURCE_DATE_EPOCH = before;
    }
  });
  test.each(['', 'soon', '-1', '0', '1e9', '99999999999'])('is not told by "%s"', (text) =>
    expect(() => dateTold(text)).toThrow(`found SOURCE_DATE_EPOCH "${text}", expected seconds since 1970`),
  );
});

describe('the manifest', () => {
  const manifest = JSON.parse(readFileSync('public/site.webmanifest', 'utf8'));

  test('has no address from the root, since the site may stand under any path', () => {
    for (const address of [
      manifest.start_url,
      manifest.scope,
      ...manifest.icons.map((each: { src: string }) => each.src),
    ])
      expect(address).toMatch(/^\.\//);
  });

  test('says of each icon what it is', () => {
    for (const { src, sizes, type } of manifest.icons) {
      const bytes = readFileSync(`public/${src}`);
      if (type === 'image/svg+xml') expect(bytes.toString()).toContain('<svg');
      // Breadth and height stand in the head of a PNG.
      else expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
    }
  });
});
