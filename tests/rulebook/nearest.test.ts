import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearest } from '../../src/rulebook/nearest.ts';

const names = ['width', 'length', 'eave', 'ridge', 'in', 'ft', '1'];

/** By counting the letters to change, add or drop. */
const written: readonly [written: string, meant: string | undefined, why: string][] = [
  ['widht', 'width', 'two letters swapped are two changes'],
  ['lenght', 'length', 'two letters swapped are two changes'],
  ['eve', 'eave', 'a letter left out'],
  ['ridgee', 'ridge', 'a letter too many'],
  ['WIDTH', 'width', 'capitals count as small letters'],
  ['inch', 'in', 'two letters too many'],
  ['width', 'width', 'the name itself'],
  ['density', undefined, 'six of seven letters differ from the nearest'],
  ['zz', undefined, 'no letter of it is in any name, however short the name'],
  ['', undefined, 'nothing written means nothing'],
];

describe('the name that was meant is found', () => {
  test.each(written)('"%s" means %s: %s', (text, meant) => {
    expect(nearest(text, names)).toBe(meant);
  });

  test('a long name may differ in a third of its letters', () => {
    // Five of the seventeen letters of "roof-holes.spaced" differ: a third is 5.67.
    expect(nearest('roof-holes.xxxxxd', ['roof-holes.spaced'])).toBe('roof-holes.spaced');
    expect(nearest('roof-holes.xxxxxx', ['roof-holes.spaced'])).toBeUndefined();
  });

  test('the first of two equally near names is taken', () => {
    expect(nearest('cat', ['bat', 'hat'])).toBe('bat');
  });

  test('no name is near where there are none', () => {
    expect(nearest('width', [])).toBeUndefined();
  });

  test('a name in a list is its own nearest, and one letter off it is near to something', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.stringMatching(/^[a-z]{3,12}$/), { minLength: 1 }),
        fc.nat(),
        (list, at) => {
          const name = list[at % list.length] ?? '';
          return nearest(name, list) === name && nearest(`${name}x`, list) !== undefined;
        },
      ),
    );
  });
});
