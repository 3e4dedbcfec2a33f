import { gunzipSync, inflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { gzipOf } from '../../src/built/gzip.ts';
import { zipName, zipOf } from '../../src/built/zip.ts';

const END_OF_DIRECTORY = Buffer.from('PK\x05\x06', 'latin1');

/** Reads a zip by its own directory as the format describes it, without the library that wrote it. */
function unzipped(zip: Uint8Array): Map<string, Buffer> {
  const bytes = Buffer.from(zip);
  const end = bytes.lastIndexOf(END_OF_DIRECTORY);
  const files = new Map<string, Buffer>();
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left--) {
    const method = bytes.readUInt16LE(at + 10);
    const size = bytes.readUInt32LE(at + 20);
    const [name, extra, remark] = [28, 30, 32].map((place) => bytes.readUInt16LE(at + place)) as [
      number,
      number,
      number,
    ];
    const local = bytes.readUInt32LE(at + 42);
    const from = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const stored = bytes.subarray(from, from + size);
    files.set(
      bytes.toString('utf8', at + 46, at + 46 + name),
      method === 0 ? stored : inflateRawSync(stored),
    );
    at += 46 + name + extra + remark;
  }
  return files;
}

const site = new Map<string, Uint8Array>([
  ['index.html', Buffer.from('<h1>Front</h1>'.repeat(200))],
  ['do/a step, résumé.html', Buffer.from('½ in')],
  ['empty.txt', Buffer.alloc(0)],
  ['noise.bin', Uint8Array.from({ length: 5000 }, (_, place) => (place * place * 31 + (place >> 3)) % 251)],
]);

const DAY = new Date('2026-11-26T20:15:30Z');

describe('a site as a zip', () => {
  test('unpacks to the same files and bytes', () => {
    const read = unzipped(zipOf(site, DAY));
    expect([...read.keys()]).toEqual([...site.keys()].sort());
    for (const [name, bytes] of site) expect(read.get(name)?.equals(Buffer.from(bytes)), name).toBe(true);
  });

  test('is smaller than the files', () => {
    const all = [...site.values()].reduce((sum, each) => sum + each.length, 0);
    expect(zipOf(site, DAY).length).toBeLessThan(all);
  });

  test('bears the date of the build, read as in UTC', () => {
    const zip = Buffer.from(zipOf(site, DAY));
    // Two seconds, minutes, hours; day, month, years since 1980: as the format packs them.
    expect(zip.readUInt16LE(10)).toBe((20 << 11) | (15 << 5) | 15);
    expect(zip.readUInt16LE(12)).toBe((46 << 9) | (11 << 5) | 26);
  });

  test('is the same bytes in any order of the files and in any zone', () => {
    const zone = process.env.TZ;
    const first = Buffer.from(zipOf(site, DAY));
    try {
      process.env.TZ = 'Pacific/Auckland';
      expect(first.equals(zipOf(new Map([...site].reverse()), DAY))).toBe(true);
    } finally {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    }
  });

  test.each([
    ['2026.1', 'heel-to-ridge-2026.1.zip'],
    ['2026.1 + Harrow Valley 2026-10-01', 'heel-to-ridge-2026.1+harrow-valley-2026-10-01.zip'],
    ['2026.1 + ../..//x', 'heel-to-ridge-2026.1+..-..-x.zip'],
  ])('of edition %s is called %s', (edition, name) => expect(zipName(edition)).toBe(name));
});

describe('a file beside itself as .gz', () => {
  const page = Buffer.from('<p>Cut it to length.</p>'.repeat(100));
  test('holds the same bytes', () => {
    const made = gzipOf('do/index.html', page);
    expect(made && gunzipSync(made).equals(page)).toBe(true);
    expect(made?.length).toBeLessThan(page.length);
  });
  test.each(['html', 'css', 'js', 'json', 'svg', 'csv', 'txt', 'webmanifest', 'yaml', 'conf', 'sh'])(
    'is made of words that end in .%s',
    (ending) => expect(gzipOf(`some.${ending}`, page)).toBeDefined(),
  );
  test.each([
    ['a small file', 'index.html', Buffer.from('<p>Short</p>')],
    ['a file that is packed already', 'pagefind/index/en_1.pf_index', page],
    ['one that has been done', 'index.html.gz', page],
  ])('is not made of %s', (_, name, bytes) => expect(gzipOf(name, bytes)).toBeUndefined());
});
