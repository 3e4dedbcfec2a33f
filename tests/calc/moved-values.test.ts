import { describe, expect, test } from 'vitest';
import {
  LEAST_GUARDED,
  type MovableValue,
  movableValues,
  moveEveryValue,
  shareGuarded,
} from '../../src/calc/checks/moved-values.ts';
import { needlessReasons, whyUnguarded } from '../../src/calc/checks/unguarded.ts';
import { changedRulebook, restingOn } from '../../src/rulebook/changed.ts';
import type { Rule } from '../../src/rulebook/rulebook.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../src/rulebook/schema.ts';
import { theProject } from '../the-project.ts';

const { data, files } = theProject();
const checks = files.checks.map(({ entry }) => entry);
const rule = (value: RuleValue): Rule => ({ ...(Object.values(data.rules)[0] as Rule), id: 'a.b', value });
const movesOf = (value: RuleValue) =>
  movableValues(rule(value)).map(({ part, moves }: MovableValue) => [part, moves.map((each) => each.value)]);

describe('every number of a rule is moved by a tenth either way', () => {
  test.each<[what: string, value: RuleValue, moves: unknown]>([
    [
      'one value',
      { kind: 'at-least', number: 20, unit: 'in' },
      [
        [
          '',
          [
            { kind: 'at-least', number: 22, unit: 'in' },
            { kind: 'at-least', number: 18, unit: 'in' },
          ],
        ],
      ],
    ],
    [
      'nought, by a tenth of a unit',
      { kind: 'exact', number: 0, unit: 'perm' },
      [
        [
          '',
          [
            { kind: 'exact', number: expect.closeTo(0.1, 12), unit: 'perm' },
            { kind: 'exact', number: expect.closeTo(-0.1, 12), unit: 'perm' },
          ],
        ],
      ],
    ],
    [
      'a range, its ends swapped too',
      { kind: 'between', low: 10, high: 20, unit: 'in' },
      [
        [
          'low',
          [
            { low: 11, high: 20 },
            { low: 9, high: 20 },
            { low: 20, high: 10 },
          ].map(between),
        ],
        [
          'high',
          [
            { low: 10, high: 22 },
            { low: 10, high: 18 },
            { low: 20, high: 10 },
          ].map(between),
        ],
      ],
    ],
    ['words', { kind: 'one-of', choices: ['a', 'b'] }, []],
    ['what a formula gives', { kind: 'exact', number: 4, formula: { add: [1, 3] }, unit: '1' }, []],
  ])('%s', (_, value, moves) => {
    expect(movesOf(value)).toEqual(moves);
  });

  test('each cell of a table, and both ends of a cell that is a range; its words stay', () => {
    const table: RuleValue = {
      kind: 'table',
      columns: [
        { name: 'what', title: 'What', key: 'word' },
        { name: 'load', title: 'Load', unit: 'lb/ft2' },
      ],
      rows: [
        ['a', 10],
        ['b', [20, 30]],
      ],
    };
    expect(movableValues(rule(table)).map(({ part }) => part)).toEqual([
      'row 1, load',
      'row 2, load, low',
      'row 2, load, high',
    ]);
  });
});

describe('how a value is moved', () => {
  const ways = (value: RuleValue) =>
    movableValues(rule(value)).flatMap(({ moves }) => moves.map(({ how }) => how));
  test.each<[what: string, value: RuleValue, how: readonly string[]]>([
    ['one value', { kind: 'exact', number: 2, unit: 'in' }, ['10 % more', '10 % less']],
    ['no number', { kind: 'exact', unit: 'in', formula: { add: [1, 3] } }, []],
    [
      'a range',
      { kind: 'between', low: 1, high: 2, unit: 'in' },
      ['10 % more', '10 % less', 'ends swapped', '10 % more', '10 % less', 'ends swapped'],
    ],
    [
      'a range of one length, which can’t be turned',
      { kind: 'between', low: 2, high: 2, unit: 'in' },
      ['10 % more', '10 % less', '10 % more', '10 % less'],
    ],
  ])('%s', (_, value, how) => expect(ways(value)).toEqual(how));

  test('one cell of a table at a time, the rest as it was', () => {
    const table: RuleValue = {
      kind: 'table',
      columns: [
        { name: 'what', title: 'What', key: 'word' },
        { name: 'load', title: 'Load', unit: 'lb/ft2' },
      ],
      rows: [
        ['a', 10],
        ['b', [20, 30]],
      ],
    };
    const rows = movableValues(rule(table)).map(({ moves: [more] }) =>
      more?.value.kind === 'table' ? more.value.rows : [],
    );
    expect(rows).toEqual([
      [
        ['a', expect.closeTo(11, 9)],
        ['b', [20, 30]],
      ],
      [
        ['a', 10],
        ['b', [expect.closeTo(22, 9), 30]],
      ],
      [
        ['a', 10],
        ['b', [20, expect.closeTo(33, 9)]],
      ],
    ]);
  });
});

function between(ends: { low: number; high: number }): unknown {
  return {
    kind: 'between',
    unit: 'in',
    low: expect.closeTo(ends.low, 9),
    high: expect.closeTo(ends.high, 9),
  };
}

describe('a changed rulebook', () => {
  test('works out again what is derived from the change: a hole of 8 in takes a square of 12 in and one of 16 in', () => {
    // Each layer reaches 2 in beyond the one below, on both sides.
    const rules = openRulebook(
      changedRulebook(data, { 'access.roof-holes.diameter': { kind: 'exact', number: 8, unit: 'in' } }),
    );
    expect(rules.value('patch.layers.metal-side').amount).toBe(12);
    expect(rules.value('patch.layers.membrane-side').amount).toBe(16);
    expect(openRulebook(data).value('patch.layers.metal-side').amount).toBe(10);
  });

  test('refuses an id that is no rule', () => {
    expect(() => changedRulebook(data, { 'no.such': { kind: 'exact', number: 1, unit: '1' } })).toThrow(
      'no rule "no.such"',
    );
  });

  test('knows what rests on a rule, near and far', () => {
    expect([...restingOn(data, 'access.roof-holes.diameter')]).toEqual(
      expect.arrayContaining(['patch.layers.metal-side', 'patch.layers.membrane-side']),
    );
  });
});

describe('moving every value', () => {
  const limit = 'ceiling.board.limit';

  test('is noticed where a check holds the value, and told where none does', () => {
    const some = checks.filter(({ calculation }) => calculation === 'ceiling-load');
    const found = moveEveryValue(data, some).filter(({ rule: id }) => id === limit);
    expect(found.find(({ part }) => part === 'row 1, load')?.unnoticed).toEqual([]);
    const none = moveEveryValue(data, []).filter(({ rule: id }) => id === limit);
    expect(none.length).toBeGreaterThan(0);
    expect(none.every(({ unnoticed }) => unnoticed.length > 0)).toBe(true);
  });

  test('is told of each move, and whether the value is published', () => {
    const bags = checks.filter(({ calculation }) => calculation === 'fill').slice(0, 1);
    const one = (id: string) => moveEveryValue(data, bags).find((each) => each.rule === id);
    // The spread of bags is common practice, the table of R per inch a handbook's.
    expect(one('fill.bag.near-enough')?.published).toBe(
      data.rules['fill.bag.near-enough']?.source.kind === 'document',
    );
    expect(one('thermal.loose-fill.conductance')?.published).toBe(true);
    // With no checks at all no move of any value is noticed.
    for (const { unnoticed } of moveEveryValue(data, []).filter(
      ({ rule: id }) => id === 'fill.bag.near-enough',
    ))
      expect(unnoticed).toEqual(['10 % more', '10 % less']);
  });

  test('stops where a check fails before anything is moved', () => {
    const [first] = checks;
    if (!first) throw new Error('found no checks');
    const name = Object.keys(first.expect)[0] ?? '';
    expect(() => moveEveryValue(data, [{ ...first, expect: { [name]: '123456' } }])).toThrow(
      'fails as it is',
    );
  });
});

describe('the checks bite', () => {
  const values = moveEveryValue(data, checks);
  const reasons = files.unguarded.map(({ entry }) => entry);
  const named = ({ rule: id, part }: { readonly rule: string; readonly part?: string | undefined }) =>
    `${id} ${part ?? ''}`.trim();

  test.each([
    ['95 % of the values from published sources', values.filter(({ published }) => published), 0.95],
    ['90 % of all values', values, 0.9],
  ])('every move of %s or more is noticed', (_, some, least) => {
    expect(shareGuarded(some).share).toBeGreaterThanOrEqual(least);
  });

  test('what the command asks for is the same', () => {
    expect(LEAST_GUARDED).toEqual({ published: 0.95, all: 0.9 });
  });

  test('each value with a move that none notices has its reason', () => {
    const without = values.filter(
      (each) => each.unnoticed.length > 0 && whyUnguarded(reasons, each) === undefined,
    );
    expect(without.map(named)).toEqual([]);
  });

  test('no reason stands for a value that is guarded, or is none', () => {
    expect(needlessReasons(reasons, values).map(named)).toEqual([]);
  });
});

describe('why a value is not guarded', () => {
  const given = [
    { rule: 'a.b', reason: 'Of all of it.' },
    { rule: 'a.b', part: 'low', reason: 'Of its lower end.' },
    { rule: 'a.c', part: 'low', reason: 'Never shown.' },
  ];
  test.each([
    ['the reason of the part comes first', 'a.b', 'low', 'Of its lower end.'],
    ['else that of the whole rule', 'a.b', 'high', 'Of all of it.'],
    ['the reason of another part is none', 'a.c', 'high', undefined],
    ['nor is that of another rule', 'a.d', '', undefined],
  ])('%s', (_, id, part, reason) => {
    expect(whyUnguarded(given, { rule: id, part })).toBe(reason);
  });

  test('a reason is needless where every move is noticed, and where there is no such value', () => {
    const value = { rule: 'a.c', part: 'low', published: true, unnoticed: ['10 % more'] };
    const needless = (values: Parameters<typeof needlessReasons>[1]) =>
      needlessReasons(given.slice(2), values).length;
    expect(needless([value])).toBe(0);
    expect(needless([{ ...value, unnoticed: [] }])).toBe(1);
    expect(needless([{ ...value, part: 'high' }])).toBe(1);
  });

  test('three of four guarded are three quarters', () => {
    const [kept, missed] = [{ unnoticed: [] }, { unnoticed: ['10 % more'] }];
    expect(shareGuarded([kept, missed, kept, kept])).toEqual({ guarded: 3, share: 0.75 });
  });

  test('a share of no values is refused', () => {
    expect(() => shareGuarded([])).toThrow(RangeError);
  });
});
