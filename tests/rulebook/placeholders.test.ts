import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeholdersIn, splitAtPlaceholders } from '../../src/rulebook/placeholders.ts';

const sentences: readonly [
  sentence: string,
  rules: readonly (readonly [rule: string, part?: 'low' | 'high'])[],
][] = [
  ['Nothing stands here.', []],
  ['Keep {clearance.flue.to-combustibles} away.', [['clearance.flue.to-combustibles']]],
  [
    'From {a.b low} to {a.b high}.',
    [
      ['a.b', 'low'],
      ['a.b', 'high'],
    ],
  ],
  ['{a.b}{c.d}', [['a.b'], ['c.d']]],
  ['An id of one word, {width}, is none.', []],
  ['{A.B} is in capitals, {a.b middle} has no such part, { a.b } has spaces.', []],
  ['{a.b', []],
];

describe('a sentence is searched for the rules whose values it takes', () => {
  test.each(sentences)('%s', (sentence, rules) => {
    expect(placeholdersIn(sentence).map(({ rule, part }) => (part ? [rule, part] : [rule]))).toEqual(rules);
  });
});

describe('a sentence is split into words and rules', () => {
  test('the pieces stand in order, and no empty words among them', () => {
    expect(splitAtPlaceholders('{a.b} or {c.d high}, not more')).toEqual([
      { rule: 'a.b', part: undefined, written: '{a.b}' },
      ' or ',
      { rule: 'c.d', part: 'high', written: '{c.d high}' },
      ', not more',
    ]);
  });

  test('put together again the pieces are the sentence, whatever it says', () => {
    const piece = fc.oneof(fc.string(), fc.constantFrom('{a.b}', '{a.b low}', '{a.b high}', '{', '}'));
    fc.assert(
      fc.property(
        fc.array(piece).map((pieces) => pieces.join('')),
        (sentence) => {
          const pieces = splitAtPlaceholders(sentence);
          return pieces.map((each) => (typeof each === 'string' ? each : each.written)).join('') === sentence;
        },
      ),
    );
  });
});
