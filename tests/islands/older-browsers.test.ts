import { describe, expect, test } from 'vitest';
import { standIns } from '../../src/islands/older-browsers.ts';

// The browser's own is the measure: where it is there, each stand-in answers as it does.

describe('stand-ins for older browsers answer as the language does', () => {
  const list = [3, 1, 2];
  test.each([0, 1, 2, 3, -1, -3, -4, 1.7, -1.7, Number.NaN])('at(%d) of a list and of words', (place) => {
    expect(standIns.arrayAt.call(list, place)).toBe(list.at(place));
    expect(standIns.stringAt.call('abc', place)).toBe('abc'.at(place));
  });
  test('nothing is at any place of an empty list', () => {
    expect(standIns.arrayAt.call([], -1)).toBeUndefined();
  });
  test.each([0, 1, 2, 3])('the last one over %d', (least) => {
    const over = (each: unknown): boolean => Number(each) > least;
    expect(standIns.findLast.call(list, over)).toBe(list.findLast(over));
  });
  const replaced: readonly [string, string | RegExp, string][] = [
    ['a.b.c', '.', '-'],
    ['a.b.c', /[.]/g, '-'],
    ['abc', 'x', '-'],
    ['', 'x', '-'],
    ['aaa', 'aa', 'b'],
  ];
  test.each(replaced)('%j with every %s replaced', (words, what, by) => {
    expect(standIns.replaceAll.call(words, what, by)).toBe(words.replaceAll(what, by));
  });
  test('own names and inherited ones', () => {
    for (const name of ['one', 'two', 'toString', '__proto__'])
      expect(standIns.hasOwn({ one: 1 }, name)).toBe(Object.hasOwn({ one: 1 }, name));
  });
});
