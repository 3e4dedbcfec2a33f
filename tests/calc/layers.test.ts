import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { layers } from '../../src/calc/layers/declaration.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { working } from '../../src/quantity/working.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { printed, worked } from './told.ts';

const rules = openRulebook(theProject().data);

type Entries = Readonly<Record<string, unknown>>;

const told = (entries: Entries): string[] => {
  const read = answer(layers, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
};

const resistance = (entries: Entries): number => {
  const read = answer(layers, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return amountIn(read.value.figures.resistance?.value as Quantity<'thermal resistance'>, 'h ft2 F/Btu');
};

const clashes: readonly [title: string, entries: Entries, says: RegExp][] = [
  ['no layers', { layers: [] }, /\(layers\): found no layers; expected one or more/],
  ['an empty layer', { layers: [{}] }, /\(layers\.0\.resistance\): found nothing; expected an R alone/],
  [
    'a layer given twice over',
    { layers: [{ resistance: '1 R', thickness: '1 in' }] },
    /\(layers\.0\.resistance\): found an R and a thickness; expected/,
  ],
  [
    'a thickness of nothing known',
    { layers: [{ resistance: '1 R' }, { thickness: '1 in' }] },
    /\(layers\.1\.resistance\): found a thickness; expected/,
  ],
  ['no R at all', { layers: [{ resistance: '0 R' }] }, /\(layers\): found layers with no R at all/],
  [
    'a second path without a share',
    { layers: [{ resistance: '1 R' }], second: [{ resistance: '2 R' }] },
    /\(second_share\): found nothing; expected its share of the area/,
  ],
  [
    'a share without a second path',
    { layers: [{ resistance: '1 R' }], second_share: '10 %' },
    /\(second\): found no layers beside a share of 10 %/,
  ],
  [
    'a share above the whole',
    { layers: [{ resistance: '1 R' }], second: [{ resistance: '2 R' }], second_share: '110 %' },
    /\(second_share\): found "110 %"; expected 100 % at most/,
  ],
  [
    'isothermal planes of paths that do not lie layer beside layer',
    {
      layers: [{ resistance: '1 R' }, { resistance: '2 R' }],
      second: [{ resistance: '2 R' }],
      second_share: '10 %',
      method: 'isothermal planes',
    },
    /\(second\): found 1 beside 2 of the first, by the isothermal-planes method; expected as many as the first/,
  ],
  [
    'isothermal planes of one path',
    { layers: [{ resistance: '1 R' }], method: 'isothermal planes' },
    /\(second\): found 0 beside 1 of the first/,
  ],
  [
    'isothermal planes of which each has a path with no R',
    {
      layers: [{ resistance: '1 R' }, { resistance: '0 R' }],
      second: [{ resistance: '0 R' }, { resistance: '1 R' }],
      second_share: '10 %',
      method: 'isothermal planes',
    },
    /\(second\): found in each layer one path with no R at all; expected a layer in which both have one/,
  ],
  [
    'a method that there is not',
    { layers: [{ resistance: '1 R' }], method: 'zones' },
    /\(method\): found "zones"; expected one of: parallel path; isothermal planes\.$/,
  ],
];

describe('layers that can’t be read are one sentence that names the field', () => {
  test.each(clashes)('%s', (_, entries, says) => {
    expect(told(entries)).toEqual([expect.stringMatching(says)]);
  });
});

const r = fc.double({ min: 0.1, max: 60, noNaN: true }).map((n) => n.toFixed(4));
const share = fc.integer({ min: 0, max: 100 });

describe('two paths', () => {
  test('have an R between those of either, and at no share or the whole that of one', () => {
    fc.assert(
      fc.property(r, r, share, (a, b, percent) => {
        const both = resistance({
          layers: [{ resistance: `${a} R` }],
          second: [{ resistance: `${b} R` }],
          second_share: `${percent} %`,
        });
        const [low, high] = [Math.min(Number(a), Number(b)), Math.max(Number(a), Number(b))];
        const ends = percent === 0 ? Number(a) : percent === 100 ? Number(b) : both;
        return both >= low * (1 - 1e-9) && both <= high * (1 + 1e-9) && Math.abs(both - ends) <= 1e-9 * both;
      }),
    );
  });

  test('are the same in SI units: R-1 is 0.1761101837 m² K/W', () => {
    fc.assert(
      fc.property(r, (a) => {
        const metric = resistance({ layers: [{ resistance: `${Number(a) * 0.17611018368230585} m2 K/W` }] });
        return Math.abs(metric - Number(a)) <= 1e-9 * Number(a);
      }),
    );
  });
});

const stack = fc.array(fc.tuple(r, r), { minLength: 1, maxLength: 5 });

describe('two paths by isothermal planes', () => {
  const both = (
    pairs: readonly (readonly [string, string])[],
    percent: number,
    method?: string,
  ): Entries => ({
    layers: pairs.map(([a]) => ({ resistance: `${a} R` })),
    second: pairs.map(([, b]) => ({ resistance: `${b} R` })),
    second_share: `${percent} %`,
    ...(method === undefined ? {} : { method }),
  });
  const planes = (pairs: readonly (readonly [string, string])[], percent: number) =>
    resistance(both(pairs, percent, 'isothermal planes'));
  const close = (found: number, expected: number) => Math.abs(found - expected) <= 1e-9 * expected;

  test('have the sum of what each layer has: heat through both kinds of it at one difference of temperature', () => {
    fc.assert(
      fc.property(stack, share, (pairs, percent) => {
        const f = percent / 100;
        // Heat at a difference of 1 through a square foot of the layer, kind by kind; then what it resists.
        const sum = pairs.reduce((all, [a, b]) => all + 1 / ((1 - f) / Number(a) + f / Number(b)), 0);
        return close(planes(pairs, percent), sum);
      }),
    );
  });

  test('never have more R than the parallel paths, and as much where there is one layer alone', () => {
    fc.assert(
      fc.property(stack, share, (pairs, percent) => {
        const [isothermal, parallel] = [planes(pairs, percent), resistance(both(pairs, percent))];
        const named = resistance(both(pairs, percent, 'parallel path'));
        return (
          isothermal <= parallel * (1 + 1e-9) &&
          named === parallel &&
          (pairs.length > 1 || close(isothermal, parallel))
        );
      }),
    );
  });

  /** By hand. */
  test.each([
    [
      'no part of the second path',
      [
        ['0', '3'],
        ['2', '0'],
      ],
      0,
      2,
    ],
    [
      'the second path alone',
      [
        ['0', '3'],
        ['2', '0'],
      ],
      100,
      3,
    ],
    [
      'a layer in which one kind has no R, and takes all of the heat',
      [
        ['0', '3'],
        ['2', '2'],
      ],
      50,
      2,
    ],
    [
      'a layer in which the other has none',
      [
        ['3', '0'],
        ['2', '2'],
      ],
      50,
      2,
    ],
    [
      'a layer in which neither has any',
      [
        ['0', '0'],
        ['2', '1'],
      ],
      50,
      4 / 3,
    ],
  ] as const)('%s', (_, pairs, percent, is) => {
    expect(close(planes(pairs, percent), is)).toBe(true);
  });

  test('what is printed: a third table, the R by the other method, no remark', () => {
    const entries = {
      layers: [
        { what: 'board', resistance: '1 R' },
        { what: 'fill', resistance: '10 R' },
      ],
      second: [
        { what: 'board', resistance: '1 R' },
        { what: 'chord', resistance: '5 R' },
      ],
      second_share: '50 %',
      method: 'isothermal planes',
    };
    const { tables, labels, remarks } = printed(layers, entries);
    expect(tables).toEqual({
      layers: ['board | R-1', 'fill | R-10'],
      second: ['board | R-1', 'chord | R-5'],
      planes: ['board | R-1', 'fill, chord | R-6.67'],
    });
    expect(labels).toEqual({
      resistance: 'Effective R',
      transmittance: 'U of both paths',
      parallel: 'Effective R by the parallel-path method',
      first_resistance: 'R of the first path',
      second_resistance: 'R of the second path',
    });
    expect(remarks).toEqual([]);
    expect(worked(layers, entries).tables?.planes?.title).toBe('Both paths, layer by layer');
    expect(
      working(worked(layers, entries).figures.transmittance?.value as Quantity).map(
        ({ symbol, label }) => `${symbol}: ${label}`,
      ),
    ).toEqual([
      'Rp1: R of layer 1, both paths',
      'Rp2: R of layer 2, both paths',
      'Re: Effective R',
      'U: Transmittance, both paths together',
    ]);
  });
});

describe('what is printed of layers', () => {
  const two = {
    layers: [{ resistance: '1.2345 R' }, { what: 'fill', thickness: '10 in', per_inch: '3 R per in' }],
  };

  test('a row a layer, to three figures, those without a name numbered', () => {
    const { tables, labels, remarks } = printed(layers, two);
    expect(tables).toEqual({ layers: ['layer 1 | R-1.23', 'fill | R-30'] });
    expect(labels).toEqual({ resistance: 'R of the layers', transmittance: 'U of the layers' });
    expect(remarks).toEqual([]);
  });

  test('the working numbers the layers, and tells the path', () => {
    const lines = (entries: Entries) =>
      working(worked(layers, entries).figures.transmittance?.value as Quantity).map(
        ({ symbol, label }) => `${symbol}: ${label}`,
      );
    expect(
      lines({
        layers: [
          { thickness: '1 in', per_inch: '1 R per in' },
          { thickness: '2 in', per_inch: '3 R per in' },
        ],
      }),
    ).toEqual(['R1: R of layer 1', 'R2: R of layer 2', 'R: R, the layers', 'U: U, the layers']);
    const both = lines({
      layers: [{ what: 'fill', thickness: '1 in', per_inch: '1 R per in' }, { resistance: '1 R' }],
      second: [{ thickness: '1 in', per_inch: '2 R per in' }, { resistance: '1 R' }],
      second_share: '10 %',
    });
    expect(both).toEqual(
      expect.arrayContaining([
        'R1: fill',
        'R: R, first path',
        'U: U, first path',
        'Rf1: R of layer 1',
        'Rf: R, second path',
        'Uf: U, second path',
      ]),
    );
  });

  const pair = (first: string, second: string, share = '10 %') =>
    printed(layers, {
      layers: [{ resistance: first }],
      second: [{ resistance: second }],
      second_share: share,
    });

  test.each([
    ['2 R', '1 R', '10 %', ['The second path lets through more than its share of the heat.']],
    ['1 R', '2 R', '10 %', ['The first path lets through more than its share of the heat.']],
    ['1 R', '1 R', '10 %', []],
    ['2 R', '1 R', '0 %', []],
  ])('%s beside %s on %s of the area', (first, second, share, remarks) => {
    expect(pair(first, second, share).remarks).toEqual(remarks);
  });

  test('two paths have two tables', () => {
    const { tables } = pair('2 R', '1 R');
    expect(tables).toEqual({ layers: ['layer 1 | R-2'], second: ['layer 1 | R-1'] });
    const { tables: titled } = worked(layers, {
      layers: [{ resistance: '2 R' }],
      second: [{ resistance: '1 R' }],
      second_share: '10 %',
    });
    expect(titled?.layers?.title).toBe('Layers of the first path');
    expect(worked(layers, { layers: [{ resistance: '2 R' }] }).tables?.layers?.title).toBe('Layers');
  });
});
