import { afterEach, describe, expect, test, vi } from 'vitest';
import { asKept, asKeptOf, sumOf } from '../../src/offline/worker/answer-kept.ts';
import { contentType } from '../../src/offline/worker/content-type.ts';
import { openParcel } from '../../src/offline/worker/open-parcel.ts';

const AT = 'https://notes.example.org/roof/copy/1.json';
const hostGives = (body: string, status = 200): void => {
  vi.stubGlobal('fetch', async () => new Response(body, { status, headers: { 'x-of-the-host': 'yes' } }));
};
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a parcel', () => {
  test('gives what each of its files holds, and what the host said', async () => {
    hostGives(JSON.stringify(['6 × 8 in', { base64: Buffer.of(0x1f, 0x8b, 0xff).toString('base64') }, '']));
    const opened = await openParcel(AT, 3);
    expect(opened?.contents.map((each) => [...each])).toEqual([
      [...Buffer.from('6 × 8 in')],
      [0x1f, 0x8b, 0xff],
      [],
    ]);
    expect(opened?.headers.get('x-of-the-host')).toBe('yes');
  });

  test.each([
    ['has another number of files', '["a"]', 200],
    ['is no list', '{"0":"a","1":"b"}', 200],
    ['is no JSON, as a page for those who must sign in first', '<html>', 200],
    ['holds what is no file', '["a",{"base32":"b"}]', 200],
    ['holds nothing in the place of a file', '["a",null]', 200],
    ['is not there', '["a","b"]', 404],
  ])('that %s is none', async (_, body, status) => {
    hostGives(body, status);
    expect(await openParcel(AT, 2)).toBeUndefined();
  });

  test('fails without a network, as its files would', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    await expect(openParcel(AT, 2)).rejects.toThrow('Failed to fetch');
  });

  test('fails where the network goes away on the way: a hundred files asked for one by one would be no help', async () => {
    const broken = new ReadableStream({ pull: (to) => to.error(new TypeError('network error')) });
    vi.stubGlobal('fetch', async () => new Response(broken));
    await expect(openParcel(AT, 2)).rejects.toThrow('network error');
  });
});

describe('what is kept of an answer', () => {
  const said = new Headers({
    'content-type': 'application/json',
    'content-encoding': 'gzip',
    'content-length': '9',
    etag: '"1"',
    'content-security-policy': "default-src 'none'",
  });
  const bytes = Uint8Array.of(0x36);

  test('is what the host said of the file, and nothing of how it came', () => {
    const { headers } = asKept(bytes, said);
    expect([...headers.keys()]).toEqual(['content-security-policy', 'content-type', 'etag']);
  });

  test('for a file out of a parcel is what holds of every answer, and its own type', () => {
    const { headers } = asKeptOf(said, bytes, 'text/html; charset=utf-8');
    expect(Object.fromEntries(headers)).toEqual({
      'content-security-policy': "default-src 'none'",
      'content-type': 'text/html; charset=utf-8',
    });
  });

  // FIPS 180-4 has its example "abc": ba7816bf 8f01cfea 414140de ...
  test('is known by the first sixteen signs of its SHA-256', async () =>
    expect(await sumOf(Uint8Array.from(Buffer.from('abc')))).toBe('ba7816bf8f01cfea'));

  test.each([
    ['do/patching/index.html', 'text/html; charset=utf-8'],
    ['_astro/page.js', 'text/javascript; charset=utf-8'],
    ['data/rulebook.json', 'application/json'],
    ['site.webmanifest', 'application/manifest+json'],
    ['mark-192.png', 'image/png'],
    ['pagefind/wasm.en.pagefind', 'application/octet-stream'],
  ])('%s is %s', (file, type) => expect(contentType(file)).toBe(type));
});
