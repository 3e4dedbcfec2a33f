import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Entries } from '../../src/calc/declare/entries.ts';
import { arrived, forget, keep, kept } from '../../src/islands/keeping.ts';

/** What every tab of the browser has together, and the address of this one. */
let store: Map<string, string>;
let full: boolean;
let refused: boolean;
let location: { hash: string; pathname: string; search: string };

beforeEach(() => {
  store = new Map();
  full = false;
  refused = false;
  location = { hash: '', pathname: '/calculators/fill/', search: '' };
  vi.stubGlobal('location', location);
  vi.stubGlobal('history', {
    replaceState: (_: unknown, __: string, address: string) => {
      if (refused) throw new DOMException('too many', 'SecurityError');
      location.hash = address.startsWith('#') ? address : '';
    },
  });
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (full) throw new DOMException('no room', 'QuotaExceededError');
      store.set(key, text);
    },
    removeItem: (key: string) => store.delete(key),
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the entries of a calculator, between visits', () => {
  test('are in the address, or else in the store', () => {
    keep('fill', { area: '800 ft2' });
    expect([location.hash, kept('fill')]).toEqual(['#area=800+ft2', { area: '800 ft2' }]);
    location.hash = '';
    expect(kept('fill')).toEqual({ area: '800 ft2' });
    forget('fill');
    expect([location.hash, kept('fill')]).toEqual(['', undefined]);
  });
});

describe('where the browser refuses to write the address', () => {
  const mine = { area: '800 ft2' };

  test('the store keeps the entries, and lets go of them, all the same', () => {
    refused = true;
    keep('fill', mine);
    expect([location.hash, kept('fill')]).toEqual(['', mine]);
    forget('fill');
    expect(kept('fill')).toBeUndefined();
  });

  test('a link within the page brings nothing, and stops nothing', () => {
    refused = true;
    location.hash = '#main';
    expect([arrived(mine), location.hash]).toEqual([undefined, '#main']);
  });
});

describe('a new address of an open page', () => {
  const mine = { area: '800 ft2' };
  test.each<[what: string, hash: string, shown: Entries | false, brings: unknown, then: string]>([
    ['with entries brings them', '#area=30+ft2', mine, { area: '30 ft2' }, '#area=30+ft2'],
    [
      'to a place on the page brings nothing, and what is shown stands in it again',
      '#main',
      mine,
      undefined,
      '#area=800+ft2',
    ],
    ['to the head of the page too', '', mine, undefined, '#area=800+ft2'],
    ['to a place on the page leaves the example alone', '#main', false, undefined, '#main'],
  ])('%s', (_, hash, shown, brings, then) => {
    // Another tab kept its own meanwhile.
    store.set('fill', '{"area":"555 ft2"}');
    location.hash = hash;
    expect(arrived(shown)).toEqual(brings);
    expect([location.hash, store.get('fill')]).toEqual([then, '{"area":"555 ft2"}']);
  });

  test('in a full store, what was typed last is not gone back behind', () => {
    keep('fill', { area: '700 ft2' });
    full = true;
    keep('fill', mine);
    location.hash = '#main';
    expect(arrived(mine)).toBeUndefined();
    expect(kept('fill')).toEqual(mine);
  });
});
