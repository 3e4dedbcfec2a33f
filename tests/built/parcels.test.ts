import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { copyList } from '../../src/built/copy-list.ts';
import { copyWeight } from '../../src/built/copy-weight.ts';
import { type Parcel, parcelsOf } from '../../src/built/parcels.ts';

const long = (sign: string): Uint8Array => Buffer.from(sign.repeat(150_000));
const site = new Map<string, Uint8Array>([
  ['index.html', Buffer.from('<h1>6 × 8 in — “ridge”</h1>\u2028')],
  ['data/with-a-mark.csv', Buffer.from('\uFEFFid,value\r\n')],
  ['pagefind/a.pf_index', Uint8Array.of(0x1f, 0x8b, 0, 0xff, 0xfe, 0x80)],
  ['empty.txt', new Uint8Array()],
  ...['a', 'b', 'c', 'd', 'e'].map((name) => [`rules/${name}/index.html`, long(name)] as const),
]);
const list = copyList(site);
const parcels = parcelsOf(site, list);

/** Read back by what Node brings, and by nothing of the site. */
const contentsOf = ({ text }: Parcel): readonly Buffer[] =>
  (JSON.parse(text) as (string | { base64: string })[]).map((each) =>
    typeof each === 'string' ? Buffer.from(each, 'utf8') : Buffer.from(each.base64, 'base64'),
  );

describe('the parcels of a copy', () => {
  test('hold every file of its list once, in its order', () =>
    expect(parcels.flatMap(({ files }) => files)).toEqual(Object.keys(list.files)));

  test('hold each file byte for byte: words beyond ASCII, a mark of byte order, what are no words, nothing at all', () => {
    for (const parcel of parcels)
      for (const [at, content] of contentsOf(parcel).entries()) {
        const file = parcel.files[at] ?? '';
        expect(content.equals(site.get(file) ?? Buffer.from('none')), file).toBe(true);
      }
  });

  test('are closed at 400,000 signs: three pages of 150,000 fill one', () =>
    expect(parcels.map(({ files }) => files.length)).toEqual([7, 2]));

  test('have a place each', () =>
    expect(parcels.map(({ place }) => place)).toEqual(['copy/1.json', 'copy/2.json']));

  test('of nothing are none', () => expect(parcelsOf(new Map(), copyList(new Map()))).toEqual([]));

  test('can’t be made of a file that is not there', () =>
    expect(() => parcelsOf(new Map(), list)).toThrow('found no file "data/with-a-mark.csv" in the site'));
});

describe('the weight of a copy', () => {
  const styled = new Map([...site, ['_astro/a.css', Buffer.from('a{}')]]);
  const all = copyList(styled);
  const packed = parcelsOf(styled, all);
  const weight = copyWeight(styled, all, packed);

  test('is that of its parcels, and of the style sheets that are asked for before them', () => {
    const sizes = [...packed.map(({ text }) => text), 'a{}'].map(
      (each) => gzipSync(each, { level: 9 }).length,
    );
    expect(weight.total).toBe(sizes.reduce((sum, each) => sum + each, 0));
    expect(weight.requests).toBe(sizes.length);
  });

  test('is told by folder, the heaviest first', () => {
    expect(weight.parts.map(([part]) => part)).toEqual(
      expect.arrayContaining(['rules', 'pagefind', '_astro']),
    );
    const sizes = weight.parts.map(([, bytes]) => bytes);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });
});
