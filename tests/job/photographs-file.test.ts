import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { writeJobFile } from '../../src/job/job-file.ts';
import {
  countInWords,
  MOST_PHOTOGRAPHS,
  type Photograph,
  photographIn,
  shrunkTo,
  sizeInWords,
} from '../../src/job/photograph.ts';
import { type Picture, readWithPhotographs, writeWithPhotographs } from '../../src/job/photographs-file.ts';
import { inTime } from '../in-time.ts';

const job = {
  id: 'k3m7p2q9x4w8h5n6',
  changed: '2026-11-26T10:42:00Z',
  entries: { name: '14 Larkspur Lane' },
};
const photograph: Photograph = {
  id: 'b8c2d4f6g9h3j5k7',
  job: job.id,
  entry: 'roof-before',
  words: 'Łąka — <b>north</b> 🙂',
  taken: '2026-11-26T10:42:00.000Z',
  width: 1600,
  height: 1200,
  bytes: 9,
};
const picture: Picture = { photograph, bytes: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, 4, 5) };
const other: Picture = {
  photograph: { ...photograph, id: 'c8c2d4f6g9h3j5k7' },
  bytes: Uint8Array.of(0xff, 0xd8, 0xff, 0xe1, 1, 2, 3, 4, 5),
};

/** A file with any part written over. */
const zip = (more: Record<string, unknown> = {}, level: 0 | 9 = 0) =>
  zipSync(
    Object.fromEntries(
      Object.entries({
        'job.json': writeJobFile(job.entries, job),
        'photographs.json': { format: 'heel-to-ridge photographs', version: 1, photographs: [photograph] },
        [`photographs/${photograph.id}.jpg`]: picture.bytes,
        ...more,
      }).flatMap(([name, what]) =>
        what === undefined
          ? []
          : [
              [
                name,
                what instanceof Uint8Array
                  ? what
                  : strToU8(typeof what === 'string' ? what : JSON.stringify(what)),
              ],
            ],
      ),
    ),
    { level },
  );
const list = (photographs: unknown, more = {}) => ({
  'photographs.json': { format: 'heel-to-ridge photographs', version: 1, photographs, ...more },
});

test('a job and its photographs come back as they went, each with its picture', () => {
  const read = readWithPhotographs(writeWithPhotographs(job, [picture, other]));
  expect(read).toEqual({ ok: true, value: { job, pictures: [picture, other], refused: [] } });
});

test('what another zip program makes is read the same, as long as it packs nothing', () => {
  expect(readWithPhotographs(zip())).toMatchObject({ ok: true, value: { pictures: [picture] } });
});

describe('a file that is none is told in a sentence', () => {
  test.each([
    ['nothing at all', new Uint8Array(), 'no whole zip'],
    ['a picture', picture.bytes, 'no whole zip'],
    ['one cut off', zip().slice(0, -30), 'no whole zip'],
    ['one that is packed', zip({ 'job.json': 'x'.repeat(5000) }, 9), 'no whole zip'],
    ['one without its job', zip({ 'job.json': undefined }), 'no job.json'],
    ['one with no job in it', zip({ 'job.json': '{' }), 'not JSON'],
    ['one without its list', zip({ 'photographs.json': undefined }), 'no photographs.json'],
    ['a list of another kind', zip(list([], { format: 'x' })), 'a list of another format'],
    ['a newer one', zip(list([], { version: 2 })), 'newer copy'],
    ['a list that is none', zip(list({})), 'no list of photographs'],
    ['too many', zip(list(Array.from({ length: MOST_PHOTOGRAPHS + 1 }, () => 1))), '1001 photographs'],
  ])('%s', (_, bytes, says) => {
    const read = readWithPhotographs(bytes);
    expect(read.ok ? 'read' : read.problems.map(sentence).join(' ')).toContain(says);
  });
});

describe('a picture that can’t be taken keeps no other from being read', () => {
  test.each([
    ['one that is not there', { ...other.photograph }, undefined, 'no picture'],
    ['one that is no JPEG', { ...other.photograph }, strToU8('<svg onload=alert(1)>'), 'something else'],
    ['one without a time', { ...other.photograph, taken: 'now' }, other.bytes, 'no photograph as'],
    ['one of another place', { ...other.photograph, id: '../../../etc' }, other.bytes, 'no photograph as'],
    ['one as wide as a wall', { ...other.photograph, width: 1e9 }, other.bytes, 'no photograph as'],
  ])('%s', (_, said, bytes, says) => {
    const read = readWithPhotographs(
      zip({ ...list([photograph, said]), [`photographs/${other.photograph.id}.jpg`]: bytes }),
    );
    expect(read).toMatchObject({
      ok: true,
      value: { pictures: [picture], refused: [{ label: 'Photograph 2 of 2' }] },
    });
    expect(read.ok && read.value.refused.map(sentence).join()).toContain(says);
  });
});

test('a bomb is not unpacked: a small file that says it holds much', () => {
  const bytes = zip();
  // The size that the directory tells of the first file, at its end, written over.
  const bomb = zipSync(
    { 'job.json': [deflateRawSync(Buffer.alloc(50_000_000)), { level: 9 }] },
    { level: 9 },
  );
  inTime(200, () => {
    expect(readWithPhotographs(bomb).ok).toBe(false);
    for (const at of [20, 24])
      for (const place of [...bytes.keys()].filter((each) => bytes[each] === 0x50 && bytes[each + 2] === 1)) {
        const harmed = bytes.slice();
        harmed.set([0xff, 0xff, 0xff, 0x7f], place + at);
        expect(readWithPhotographs(harmed).ok).toBe(false);
      }
  });
});

test('two thousand harmed ones: nothing is thrown, nothing hangs', () => {
  const right = writeWithPhotographs(job, [picture, other]);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(right.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }),
      fc.option(fc.nat(right.length)),
      (harms, cut) => {
        const bytes = right.slice(0, cut ?? right.length);
        for (const [at, byte] of harms) if (at < bytes.length) bytes[at] = byte;
        const read = inTime(100, () => readWithPhotographs(bytes));
        const told = read.ok ? read.value.refused : read.problems;
        for (const each of told) expect(sentence(each)).toMatch(/^.+: found .+; expected .+\.$/);
      },
    ),
    { numRuns: 2000 },
  );
});

test('whatever a store holds, it is a photograph or none', () => {
  fc.assert(fc.property(fc.anything(), (value) => photographIn(value) === undefined));
  expect(photographIn(photograph)).toEqual(photograph);
  expect(photographIn({ ...photograph, words: 'x'.repeat(201) })).toBeUndefined();
});

test.each([
  [4000, 3000, 1600, 1200],
  [3000, 4000, 1200, 1600],
  [800, 600, 800, 600],
  [10_000, 1, 1600, 1],
  [1, 10_000, 1, 1600],
  // 1600/3000 of 2002 is 1067.7, and of 2001 is 1067.2.
  [3000, 2002, 1600, 1068],
  [3000, 2001, 1600, 1067],
  [2002, 3000, 1068, 1600],
])('%d by %d is kept as %d by %d', (width, height, w, h) => {
  expect(shrunkTo(width, height)).toEqual({ width: w, height: h });
});

test('how many and how large, in words', () => {
  expect([sizeInWords(1), sizeInWords(340_000), sizeInWords(12_340_000)]).toEqual([
    '1 kB',
    '340 kB',
    '12.3 MB',
  ]);
  expect(countInWords([photograph])).toBe('1 photograph, 1 kB');
  expect(countInWords([{ bytes: 1e6 }, { bytes: 2e6 }])).toBe('2 photographs, 3.0 MB');
});
