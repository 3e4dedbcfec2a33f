import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { layers } from '../../src/calc/layers/declaration.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { loadProject } from '../../src/rulebook/project.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';

const rules = openRulebook(loadProject().data);

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
