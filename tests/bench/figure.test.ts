import { describe, expect, test } from 'vitest';
import { amount, type Figure, isOver, median, overrun, tableOf } from './figure.ts';

const page: Figure = { what: 'a page', unit: 'B', found: 25_000, budget: 20_000 };

describe('a figure and its budget', () => {
  test.each([
    { title: 'above', found: 20_001, over: true },
    { title: 'exactly at it', found: 20_000, over: false },
    { title: 'below', found: 0, over: false },
    { title: 'nothing measured', found: Number.NaN, over: true },
  ])('$title: over is $over', ({ found, over }) => {
    expect(isOver({ ...page, found })).toBe(over);
  });

  test('without a budget nothing is over', () => {
    expect(isOver({ what: 'a thing', unit: 'ms', found: 1e9 })).toBe(false);
  });

  test('an overrun tells where, found, expected and the heaviest parts, five at most', () => {
    const parts = ['a', 'b', 'c', 'd', 'e', 'f'].map((name, place) => [name, 9000 - place] as const);
    expect(overrun({ ...page, parts })).toBe(
      'a page: found 25 000 B, expected 20 000 B or less; make it lighter where most of it lies: a 9 000 B, b 8 999 B, c 8 998 B, d 8 997 B, e 8 996 B.',
    );
    expect(
      overrun({ what: 'requests', unit: '', found: 7, budget: 6, parts: [['a.js', 10]], partsIn: 'B' }),
    ).toBe('requests: found 7, expected 6 or less; make it lighter where most of it lies: a.js 10 B.');
    expect(overrun(page)).toBe('a page: found 25 000 B, expected 20 000 B or less.');
  });
});

describe('the table', () => {
  test('has a line for each figure, with the ratio of found to budget', () => {
    const table = tableOf([
      page,
      { what: 'letters', unit: '', found: 0, budget: 0 },
      { what: 'another', unit: 'ms', found: 2.46 },
      { what: 'a peer', unit: 'ms', found: 3, beside: 2 },
    ]);
    expect(table.split('\n')).toEqual([
      'what       budget     found  ratio',
      'a page   20 000 B  25 000 B   1.25  OVER',
      'letters         0         0      -  within',
      'another         -    2.5 ms      -',
      'a peer          -    3.0 ms   1.50  of ours',
    ]);
  });

  test.each([
    [999, 'B', '999 B'],
    [1_234_567, 'B', '1 234 567 B'],
    [2.44, 'ms', '2.4 ms'],
    [1500.4, 'ms', '1 500 ms'],
    [6, '', '6'],
  ] as const)('%d of %s reads %s', (value, unit, read) => {
    expect(amount(value, unit)).toBe(read);
  });
});

describe('the median', () => {
  test.each([
    [[5], 5],
    [[9, 1, 2], 2],
    [[4, 1, 3, 2], 2.5],
    [[10, 9, 100], 10],
  ])('of %j is %d', (values, middle) => {
    expect(median(values)).toBe(middle);
  });
  test('of nothing is refused', () => {
    expect(() => median([])).toThrow('found no figures');
  });
});
