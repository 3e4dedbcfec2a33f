import { describe, expect, test } from 'vitest';
import { changedRulebook, restingOn } from '../../src/rulebook/changed.ts';
import type { Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../src/rulebook/schema.ts';
import { theProject } from '../the-project.ts';

const { data: whole } = theProject();
const [some] = Object.values(whole.rules);
if (!some) throw new Error('found no rule, expected one to make others of');

const rule = (id: string, value: RuleValue): Rule => ({ ...some, id, value });
const inches = (number: number): RuleValue => ({ kind: 'exact', number, unit: 'in' });

/**
 * A hole and a lap, a sheet that laps the hole on both sides, one that laps the sheet, a lid as wide as the hole, a label as wide as the lid,
 * and a limit that has no number to derive from.
 */
const data: RulebookData = {
  ...whole,
  rules: Object.fromEntries(
    [
      rule('a.hole', inches(6)),
      rule('a.lap', inches(2)),
      rule('a.sheet', {
        kind: 'exact',
        unit: 'in',
        number: 10,
        formula: { add: [{ rule: 'a.hole' }, { times: [2, { rule: 'a.lap' }] }] },
      }),
      rule('a.over', {
        kind: 'exact',
        unit: 'in',
        number: 14,
        formula: { add: [{ rule: 'a.sheet' }, { times: [2, { rule: 'a.lap' }] }] },
      }),
      rule('a.lid', { kind: 'exact', unit: 'in', number: 6, formula: { rule: 'a.hole' } }),
      rule('a.label', { kind: 'exact', unit: 'in', number: 6, formula: { rule: 'a.lid' } }),
      rule('a.limit', { kind: 'at-most', number: 3, unit: 'in' }),
      rule('a.within', { kind: 'exact', unit: 'in', number: 3, formula: { rule: 'a.limit' } }),
    ].map((each) => [each.id, each]),
  ),
};

/** Number and unit of every exact value. */
const numbersOf = (book: RulebookData) =>
  Object.fromEntries(
    Object.entries(book.rules).flatMap(([id, { value }]) =>
      value.kind === 'exact' ? [[id, `${value.number} ${value.unit}`]] : [],
    ),
  );

const asPublished = {
  'a.hole': '6 in',
  'a.lap': '2 in',
  'a.sheet': '10 in',
  'a.over': '14 in',
  'a.lid': '6 in',
  'a.label': '6 in',
  'a.within': '3 in',
};

describe('what is derived from a changed value is worked out again', () => {
  // By hand: a sheet is the hole and two laps, what lies over it the sheet and two laps.
  test.each<
    [title: string, changes: Readonly<Record<string, RuleValue>>, otherwise: Readonly<Record<string, string>>]
  >([
    ['nothing', {}, {}],
    [
      'a hole of 8 in',
      { 'a.hole': inches(8) },
      { 'a.hole': '8 in', 'a.sheet': '12 in', 'a.over': '16 in', 'a.lid': '8 in', 'a.label': '8 in' },
    ],
    ['a lap of 3 in', { 'a.lap': inches(3) }, { 'a.lap': '3 in', 'a.sheet': '12 in', 'a.over': '18 in' }],
    [
      'both',
      { 'a.hole': inches(8), 'a.lap': inches(3) },
      {
        'a.hole': '8 in',
        'a.lap': '3 in',
        'a.sheet': '14 in',
        'a.over': '20 in',
        'a.lid': '8 in',
        'a.label': '8 in',
      },
    ],
    [
      // What is no more than another value is written as that one is; what it is only part of keeps its own unit.
      'a hole of 20.32 cm, which is 8 in',
      { 'a.hole': { kind: 'exact', number: 20.32, unit: 'cm' } },
      { 'a.hole': '20.32 cm', 'a.sheet': '12 in', 'a.over': '16 in', 'a.lid': '20.32 cm', 'a.label': '8 in' },
    ],
    ['a limit of 4 in', { 'a.limit': { kind: 'at-most', number: 4, unit: 'in' } }, { 'a.within': '4 in' }],
    [
      'what was derived, given a number',
      { 'a.sheet': inches(11) },
      { 'a.sheet': '11 in', 'a.over': '15 in' },
    ],
  ])('%s', (_, changes, otherwise) => {
    expect(numbersOf(changedRulebook(data, changes))).toEqual({ ...asPublished, ...otherwise });
  });

  test('all else of a rule, and of the rulebook, stays as it is, and what was given too', () => {
    const before = structuredClone(data);
    const { rules, ...rest } = changedRulebook(data, { 'a.hole': inches(8) });
    const { rules: ours, ...others } = data;
    expect(rest).toEqual(others);
    for (const [id, { value: _, ...said }] of Object.entries(rules)) {
      const { value: __, ...same } = ours[id] as Rule;
      expect(said).toEqual(same);
    }
    expect(data).toEqual(before);
  });

  test('an id that is no rule is named', () => {
    expect(() => changedRulebook(data, { 'a.hole': inches(8), 'a.door': inches(8) })).toThrow('"a.door"');
  });
});

test.each<[id: string, resting: readonly string[]]>([
  ['a.hole', ['a.hole', 'a.label', 'a.lid', 'a.over', 'a.sheet']],
  ['a.lap', ['a.lap', 'a.over', 'a.sheet']],
  ['a.sheet', ['a.over', 'a.sheet']],
  ['a.limit', ['a.limit', 'a.within']],
  ['a.label', ['a.label']],
])('on %s rest, near or far, %j', (id, resting) => {
  expect([...restingOn(data, id)].sort()).toEqual(resting);
});

test('and so they do where what rests on another stands before it', () => {
  const turned = { ...data, rules: Object.fromEntries(Object.entries(data.rules).reverse()) };
  expect([...restingOn(turned, 'a.hole')].sort()).toEqual([
    'a.hole',
    'a.label',
    'a.lid',
    'a.over',
    'a.sheet',
  ]);
});
