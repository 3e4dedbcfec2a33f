import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TableValue } from '../../src/rulebook/schema.ts';
import { type Asked, type CellValue, findRow } from '../../src/rulebook/table.ts';

const table = (columns: TableValue['columns'], rows: TableValue['rows']): TableValue => ({
  kind: 'table',
  columns,
  rows,
});

const boards = table(
  [
    { name: 'board', title: 'Board', key: 'word' },
    { name: 'framing', title: 'Framing at most', unit: 'in', key: 'at-most' },
    { name: 'load', title: 'Most weight', unit: 'lb/ft2' },
  ],
  [
    ['thin', 16, 2.2],
    ['thin', 24, 1.3],
    ['thick', 24, 2.4],
  ],
);

const bands = table(
  [
    { name: 'density', title: 'Density', unit: 'lb/ft3', key: 'band' },
    { name: 'r', title: 'R per inch', unit: 'h ft2 F/(Btu in)' },
    { name: 'place', title: 'Place' },
  ],
  [
    [[0.4, 0.5], [2.6, 2.8], 'thin'],
    [[0.5, 0.6], 2.9, 'deep'],
    [[1.8, 2.3], 4, 'closed'],
  ],
);

const line = table(
  [
    { name: 'ratio', title: 'Ratio', unit: 'percent', key: 'straight-line' },
    { name: 'kept', title: 'Kept', unit: 'percent' },
  ],
  [
    [0, 20],
    [10, 40],
    [30, 50],
  ],
);

const ducts = table(
  [
    { name: 'size', title: 'Size at least', unit: 'in', key: 'at-least' },
    { name: 'flow', title: 'Flow at most', unit: 'cfm', key: 'at-most' },
    { name: 'length', title: 'Length', unit: 'ft', words: ['no limit'] },
  ],
  [
    [4, 50, 56],
    [4, 80, 4],
    [5, 80, 'no limit'],
  ],
);

const numbered = table(
  [
    { name: 'size', title: 'Size', unit: 'in', key: 'number' },
    { name: 'width', title: 'Width', unit: 'in' },
  ],
  [
    [1, 0.75],
    [2, 1.5],
  ],
);

/** By hand, from the rows above. */
const asked: readonly [
  title: string,
  table: TableValue,
  keys: Readonly<Record<string, Asked>>,
  column: string,
  answer: CellValue | undefined,
][] = [
  ['a size of a row takes that row', ducts, { size: 4, flow: 80 }, 'length', 4],
  ['a size between two rows takes the smaller', ducts, { size: 4.9, flow: 50 }, 'length', 56],
  ['a size beyond the last row takes the last', ducts, { size: 9, flow: 80 }, 'length', 'no limit'],
  ['a size below the first row is not guessed', ducts, { size: 3.9, flow: 50 }, 'length', undefined],
  ['the column of a key tells which row it was', ducts, { size: 4.9, flow: 60 }, 'size', 4],
  ['a framing of a row takes that row', boards, { board: 'thin', framing: 16 }, 'load', 2.2],
  ['a framing between two rows takes the wider', boards, { board: 'thin', framing: 16.1 }, 'load', 1.3],
  ['a framing below the first row takes the first', boards, { board: 'thin', framing: 1 }, 'load', 2.2],
  [
    'a framing beyond the last row is not guessed',
    boards,
    { board: 'thin', framing: 24.1 },
    'load',
    undefined,
  ],
  ['another board has rows of its own', boards, { board: 'thick', framing: 16 }, 'load', 2.4],
  ['a word that no row has is not guessed', boards, { board: 'Thin', framing: 16 }, 'load', undefined],
  [
    'a framing a rounding error above its row is that row',
    boards,
    { board: 'thin', framing: 16 + 1e-12 },
    'load',
    2.2,
  ],
  ['no number of inches answers', boards, { board: 'thin', framing: Number.NaN }, 'load', undefined],

  ['the lower end of a band belongs to it', bands, { density: 0.4 }, 'place', 'thin'],
  ['where two bands meet the first answers', bands, { density: 0.5 }, 'place', 'thin'],
  ['inside a band', bands, { density: 2 }, 'place', 'closed'],
  ['the upper end of the last band belongs to it', bands, { density: 2.3 }, 'place', 'closed'],
  ['a range comes out as its two ends', bands, { density: 0.45 }, 'r', [2.6, 2.8]],
  ['between bands is not guessed', bands, { density: 1 }, 'place', undefined],
  ['below the bands is not guessed', bands, { density: 0.39 }, 'place', undefined],
  ['above the bands is not guessed', bands, { density: 2.31 }, 'place', undefined],

  ['a row of the line is taken as it stands', line, { ratio: 10 }, 'kept', 40],
  ['halfway between rows is halfway between values', line, { ratio: 20 }, 'kept', 45],
  ['a quarter of the way', line, { ratio: 2.5 }, 'kept', 25],
  ['the first row of the line', line, { ratio: 0 }, 'kept', 20],
  ['the last row of the line', line, { ratio: 30 }, 'kept', 50],
  ['below the line is not guessed', line, { ratio: -0.1 }, 'kept', undefined],
  ['above the line is not guessed', line, { ratio: 30.1 }, 'kept', undefined],

  ['a number that a row has', numbered, { size: 2 }, 'width', 1.5],
  ['a number between rows is not guessed', numbered, { size: 1.5 }, 'width', undefined],
];

describe('the row that answers is found by its keys', () => {
  test.each(asked)('%s', (_, given, keys, column, answer) => {
    const found = findRow(given, keys, column);
    if (typeof answer === 'number') expect(found).toBeCloseTo(answer, 12);
    else expect(found).toEqual(answer);
  });
});

describe('a question that the table can’t be asked is refused', () => {
  test('a column that there is not names those there are', () => {
    expect(() => findRow(boards, { board: 'thin', framing: 16 }, 'weight')).toThrow(
      'found no column "weight", expected one of board, framing, load',
    );
  });
  test('a key without a value is named', () => {
    expect(() => findRow(boards, { board: 'thin' }, 'load')).toThrow('no value for the key column "framing"');
  });
});

describe('a straight line never leaves its rows', () => {
  test('what comes out lies between the values of the rows beside it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (ratio) => {
        const [low, high] = ratio <= 10 ? [20, 40] : [40, 50];
        const kept = Number(findRow(line, { ratio }, 'kept'));
        return kept >= low - 1e-9 && kept <= high + 1e-9;
      }),
    );
  });
});
