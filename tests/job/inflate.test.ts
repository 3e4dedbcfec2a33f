import { constants, deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inflate } from '../../src/job/inflate.ts';
import { inTime } from '../in-time.ts';

/** The packing program is another's: zlib, as Node has it. */
const packings = [
  { level: 0, words: 'stored' },
  { level: 1, words: 'quickly' },
  { level: 9, words: 'as small as can be' },
];

describe('what zlib packs is unpacked', () => {
  test.each(packings)('$words', ({ level }) => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.uint8Array({ maxLength: 3000 }),
          fc.array(fc.constantFrom(97, 98, 99), { maxLength: 3000 }).map((each) => Uint8Array.from(each)),
        ),
        (bytes) => {
          expect(inflate(deflateRawSync(bytes, { level }), 3000)).toEqual(bytes);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('with the codes of the standard instead of its own', () => {
    const bytes = new TextEncoder().encode('66 ft of bowed metal roof, '.repeat(40));
    expect(inflate(deflateRawSync(bytes, { strategy: constants.Z_FIXED }), 5000)).toEqual(bytes);
  });
});

describe('what is no such stream is left', () => {
  const megabytes = deflateRawSync(new Uint8Array(50_000_000));
  test('one that would grow without end stops at what is allowed', () => {
    expect(inTime(100, () => inflate(megabytes, 200_000))).toBeUndefined();
  });

  const whole = deflateRawSync(new TextEncoder().encode('14 Larkspur Lane, 66 ft, 14 Larkspur Lane'));
  test('one that is cut off anywhere', () => {
    for (let end = 0; end < whole.length; end += 1) {
      expect(inflate(whole.subarray(0, end), 1000)).toBeUndefined();
    }
  });

  test('nothing is thrown, nothing runs on, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
        const found = inflate(bytes, 2000);
        return found === undefined || found.length <= 2000;
      }),
      { numRuns: 10_000 },
    );
  });
});
