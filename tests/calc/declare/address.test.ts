import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressOf, entriesIn } from '../../../src/calc/declare/address.ts';

/** By the rules of addresses: a space is a plus, a sign with a meaning is escaped. */
const written: readonly [entries: unknown, address: string][] = [
  [{ home: { length: '66 ft' } }, 'home.length=66+ft'],
  [
    { roof: { obstacles: [{ what: 'vent' }, { what: 'flue' }] } },
    'roof.obstacles.0.what=vent&roof.obstacles.1.what=flue',
  ],
  [{ a: 'x&y=z', b: '13\' 10 1/2"' }, 'a=x%26y%3Dz&b=13%27+10+1%2F2%22'],
  [{ built: 1979, kept: true }, 'built=1979&kept=true'],
  [{ name: '', crew: undefined, old: null, list: [], group: {} }, ''],
];

describe('entries are written as an address that can be read', () => {
  test.each(written)('%o', (entries, address) => {
    expect(addressOf(entries)).toBe(address);
  });
});

const read: readonly [title: string, address: string, entries: Record<string, unknown> | undefined][] = [
  ['a way makes groups', 'home.length=66+ft&home.built=1979', { home: { length: '66 ft', built: '1979' } }],
  ['a number makes a list', 'a.0.x=1&a.1.x=2', { a: [{ x: '1' }, { x: '2' }] }],
  ['the places of a list may come in any order', 'a.1.x=2&a.0.x=1', { a: [{ x: '1' }, { x: '2' }] }],
  [
    'a place that is left out is an empty entry, so that none is missed',
    'a.2.x=1',
    { a: [{}, {}, { x: '1' }] },
  ],
  ['the last of two values of one way counts', 'a=1&a=2', { a: '2' }],
  ['nothing is no entries', '', undefined],
  ['a value without a way, and a way without a value, are nothing', '=1&a=&.=2&a..b=3', undefined],
  ['a way through a value is left out', 'a=1&a.b=2', { a: '1' }],
  ['a name in a list is left out', 'a.0.x=1&a.b=2', { a: [{ x: '1' }] }],
  [
    'a number written oddly is no place of a list',
    'a.0.x=1&a.1e1.x=2&a.0x1.x=3&a.01.x=4&a.-1.x=5&a.1.5.x=6',
    { a: [{ x: '1' }, [{}, {}, {}, {}, {}, { x: '6' }]] },
  ],
  ['a place too far away is left out', 'a.0.x=1&a.200.x=2&a.4294967295.x=3', { a: [{ x: '1' }] }],
  [
    'a way too long is left out',
    'a.b.c.d.e.f=1&a.b.c.d.e.f.g=2',
    { a: { b: { c: { d: { e: { f: '1' } } } } } },
  ],
];

describe('an address is read with distrust', () => {
  test.each(read)('%s', (_, address, entries) => {
    expect(entriesIn(address)).toEqual(entries);
  });

  const pollution = [
    '__proto__.polluted=1',
    'a.__proto__.polluted=1',
    'constructor.prototype.polluted=1',
    'a.0.__proto__.polluted=1',
    '__proto__=1',
  ];
  test.each(pollution)('%s changes nothing', (address) => {
    const entries = entriesIn(`a.0.x=1&${address}`);
    expect(entries).toEqual({ a: [{ x: '1' }] });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(([] as unknown as Record<string, unknown>).polluted).toBeUndefined();
  });

  test('a list has no gaps in it, and is never long', () => {
    const list = entriesIn('a.199.x=1')?.a as unknown[];
    expect(list).toHaveLength(200);
    expect(Object.keys(list)).toHaveLength(200);
  });

  test('of a hundred thousand pairs no more are read than a job can have', () => {
    const start = performance.now();
    const entries = entriesIn(Array.from({ length: 100_000 }, (_, place) => `k${place}=1`).join('&'));
    expect(Object.keys(entries ?? {})).toHaveLength(2000);
    // Reading them all once takes a tenth of this.
    expect(performance.now() - start).toBeLessThan(2000);
  });
});

const key = fc
  .stringMatching(/^[a-z][a-z_]{0,11}$/)
  .filter((name) => name !== 'constructor' && name !== 'prototype');
const value = fc
  .oneof(fc.string({ minLength: 1 }), fc.constantFrom('13 ft 10 1/2 in', 'R 3.7', '½', '"', '&=#+%', '\n'))
  .filter((text) => !/\p{Cs}/u.test(text));
const group = fc.dictionary(key, value, { minKeys: 1, maxKeys: 6 });
const list = fc.array(group, { minLength: 1, maxLength: 5 });
/** Entries as a job has them: values, groups of values, and lists of groups inside groups. */
const jobLike = fc.dictionary(
  key,
  fc.oneof(value, group, list, fc.dictionary(key, fc.oneof(value, list), { minKeys: 1, maxKeys: 4 })),
  {
    minKeys: 1,
    maxKeys: 6,
  },
);

describe('whatever the entries', () => {
  test('an address gives back the entries it was made of', () => {
    fc.assert(
      fc.property(jobLike, (entries) => {
        expect(entriesIn(addressOf(entries))).toEqual({ ...entries });
      }),
      { numRuns: 1000 },
    );
  });

  test('ten thousand addresses are read or left, and nothing is thrown', () => {
    const part = fc.oneof(
      fc.string({ maxLength: 6 }),
      fc.constantFrom('a', '0', '1', '__proto__', 'constructor', 'toString', 'length', '%', '%zz', '1e9'),
    );
    const way = fc.array(part, { maxLength: 8 }).map((parts) => parts.join('.'));
    const pairs = fc
      .array(fc.tuple(way, fc.string({ maxLength: 8 })))
      .map((all) => all.map((pair) => pair.join('=')).join('&'));
    fc.assert(
      fc.property(fc.oneof(pairs, fc.string()), (address) => {
        const entries = entriesIn(address);
        return (
          (entries === undefined || Object.keys(entries).length > 0) &&
          ({} as Record<string, unknown>).polluted === undefined &&
          entriesIn(addressOf(entries)) !== null
        );
      }),
      { numRuns: 10_000 },
    );
  });
});
