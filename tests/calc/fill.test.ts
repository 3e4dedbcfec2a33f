import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { bagsFor, bagsToLoad } from '../../src/calc/fill/bags.ts';
import { fillWords } from '../../src/calc/fill/cautions.ts';
import type { Material } from '../../src/calc/fill/material.ts';
import { resistancePerInch } from '../../src/calc/fill/resistance.ts';
import { amountIn, quantity } from '../../src/quantity/quantity.ts';
import { rulesBehind } from '../../src/quantity/working.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();
const rules = openRulebook(data);
const R = 'h ft2 F/(Btu in)';

describe('volume and density make weight and bags', () => {
  /** By hand: volume times density, over the weight of a bag; a tenth more, in whole bags. */
  const worked: readonly [
    ft3: number,
    density: number,
    bag: number,
    lb: number,
    bags: number,
    load: number,
  ][] = [
    [100, 1.5, 30, 150, 5, 6],
    [480, 1.25, 30, 600, 20, 22],
    [70, 1.6, 35, 112, 3.2, 4],
    [0, 1.5, 30, 0, 0, 0],
  ];
  test.each(worked)(
    '%d ft3 at %d lb/ft3 in bags of %d lb: %d lb, %d bags, load %d',
    (ft3, density, bag, lb, count, load) => {
      const { weight, bags } = bagsFor(
        quantity(ft3, 'ft3'),
        quantity(density, 'lb/ft3'),
        quantity(bag, 'lb/bag'),
      );
      expect(amountIn(weight, 'lb')).toBeCloseTo(lb, 9);
      expect(amountIn(bags, 'bag')).toBeCloseTo(count, 9);
      expect(amountIn(bagsToLoad(bags, rules), 'bag')).toBe(load);
    },
  );

  const volume = fc.integer({ min: 0, max: 8 * 5000 }).map((eighths) => eighths / 8);
  const density = fc.double({ min: 0.2, max: 8, noNaN: true });
  const bag = fc.double({ min: 5, max: 200, noNaN: true });

  test('the bags hold the weight, the weight fills the volume, and the truck is never short', () => {
    fc.assert(
      fc.property(volume, density, bag, (v, d, b) => {
        const { weight, bags } = bagsFor(quantity(v, 'ft3'), quantity(d, 'lb/ft3'), quantity(b, 'lb/bag'));
        const load = bagsToLoad(bags, rules).amount;
        return (
          Math.abs(bags.amount * b - weight.amount) <= 1e-9 * weight.amount &&
          Math.abs(weight.amount - v * d) <= 1e-9 * weight.amount &&
          Number.isInteger(load) &&
          load >= bags.amount &&
          load < bags.amount * 1.1 + 1
        );
      }),
    );
  });
  test('more volume or more density never takes fewer bags', () => {
    fc.assert(
      fc.property(volume, density, bag, fc.double({ min: 1, max: 3, noNaN: true }), (v, d, b, more) => {
        const bags = (ft3: number, lb: number) =>
          bagsFor(quantity(ft3, 'ft3'), quantity(lb, 'lb/ft3'), quantity(b, 'lb/bag')).bags.amount;
        return bags(v * more, d) >= bags(v, d) && bags(v, d * more) >= bags(v, d);
      }),
    );
  });
});

const perInch = (material: Material, density: number, label?: number) =>
  resistancePerInch(
    material,
    quantity(density, 'lb/ft3'),
    label === undefined ? undefined : quantity(label, R),
    rules,
  );

describe('R per inch', () => {
  /** By hand from k = 0.268 − 0.02221 d + 0.05046/d, R per inch = 1/k; to half of the last figure. */
  const estimated: readonly [density: number, r: number][] = [
    [0.5, 2.795],
    [1, 3.376],
    [1.5, 3.727],
    [2, 4.019],
  ];
  test.each(estimated)('of glass fibre at %d lb/ft3 is estimated as %d', (density, r) => {
    const found = perInch('glass fibre', density);
    expect(found?.from).toBe('our estimate between the published ends');
    expect(Math.abs(amountIn(found?.value ?? quantity(0, R), R) - r)).toBeLessThan(5e-4);
  });

  /** The ends of the rows of the handbook, as the rule holds them: density and R per inch. */
  const published: readonly [density: number, r: number][] = [
    [0.4, 2.62],
    [0.5, 2.77],
    [0.6, 2.94],
    [1.8, 4.01],
    [2.3, 4.12],
  ];
  test.each(published)(
    'of glass fibre at %d lb/ft3 is published as %d, which lies within what the estimate allows',
    (density, r) => {
      const found = perInch('glass fibre', density);
      expect(found && [found.low.amount <= r, r <= found.high.amount]).toEqual([true, true]);
    },
  );

  test('is a tenth less at the least and a tenth more at the most', () => {
    const found = perInch('glass fibre', 1.5);
    if (!found) throw new Error('found no estimate, expected one');
    expect(found.low.amount / found.value.amount).toBeCloseTo(0.9, 12);
    expect(found.high.amount / found.value.amount).toBeCloseTo(1.1, 12);
  });

  test('of glass fibre rises with its density wherever it is estimated', () => {
    const amounts = Array.from(
      { length: 20 },
      (_, step) => perInch('glass fibre', (4 + step) / 10)?.value.amount ?? 0,
    );
    expect(amounts.every((amount) => amount > 0)).toBe(true);
    expect([...amounts].sort((a, b) => a - b)).toEqual(amounts);
  });

  test('is the maker’s where the label gives it, whatever the density', () => {
    expect(perInch('glass fibre', 7, 3.6)).toMatchObject({ from: 'the label', value: { amount: 3.6 } });
  });

  test('of cellulose is the middle of its row: (3.61 + 3.7) / 2 at 1.5 lb/ft3', () => {
    const found = perInch('cellulose', 1.5);
    expect(found).toMatchObject({
      from: 'the published table',
      low: { amount: 3.61 },
      high: { amount: 3.7 },
    });
    expect(found?.value.amount).toBeCloseTo(3.655, 12);
  });

  const unpublished: readonly [Material, number][] = [
    ['glass fibre', 0.39],
    ['glass fibre', 2.31],
    ['cellulose', 0.9],
    ['cellulose', 2.5],
    ['mineral wool', 3],
  ];
  test.each(unpublished)(
    'of %s at %d lb/ft3 is published nowhere, and is not guessed',
    (material, density) => {
      expect(perInch(material, density)).toBeUndefined();
      const { remarks } = fillWords(material, quantity(density, 'lb/ft3'), undefined, rules);
      expect(remarks.map(remarkText).join(' ')).toContain(
        `The handbook has no R per inch for ${material} at ${density} lb/ft³`,
      );
    },
  );

  test('the range of the estimate is that of the published rows for glass fibre', () => {
    const { value } = data.rules['thermal.loose-fill.conductance'] ?? {};
    const ends =
      value?.kind === 'table'
        ? value.rows.flatMap(([name, , band]) => (name === 'glass fibre' ? [band].flat().map(Number) : []))
        : [];
    const [least, most] = [Math.min(...ends), Math.max(...ends)];
    expect(perInch('glass fibre', least)).toBeDefined();
    expect(perInch('glass fibre', most)).toBeDefined();
    expect(perInch('glass fibre', least - 0.001)).toBeUndefined();
    expect(perInch('glass fibre', most + 0.001)).toBeUndefined();
  });

  test('names the rules it rests on', () => {
    const found = perInch('glass fibre', 1.5);
    expect(found && rulesBehind(found.low)).toEqual([
      'thermal.loose-fill.fit-constant',
      'thermal.loose-fill.fit-density',
      'thermal.loose-fill.fit-inverse',
      'thermal.loose-fill.fit-uncertainty',
    ]);
  });
});

describe('what is said beside a fill', () => {
  const said = (material: Material, density: number, label?: number) =>
    fillWords(material, quantity(density, 'lb/ft3'), perInch(material, density, label), rules);

  test('an estimate is called one, a figure of the label is not', () => {
    expect(said('glass fibre', 1.5).cautions).toEqual([
      'caution.fill.maker-governs',
      'caution.fill.estimate',
    ]);
    expect(said('glass fibre', 1.5, 3.6).cautions).toEqual(['caution.fill.maker-governs']);
  });

  test.each<[Material, boolean]>([
    ['cellulose', true],
    ['glass fibre', false],
    ['mineral wool', false],
  ])('that %s soaks, sinks and weighs on the ceiling is told: %s', (material, told) => {
    expect(said(material, 1.8, 3.6).cautions.includes('caution.fill.cellulose')).toBe(told);
  });

  /** The table of the rule has cellulose from 1.2 to 1.6 lb/ft3, and no glass fibre between 0.6 and 1.8. */
  const silent: readonly [what: string, Material, number, label?: number][] = [
    ['a usual density whose R per inch the label gives', 'glass fibre', 1.5, 3.6],
    ['a density whose R per inch is published', 'cellulose', 1.1],
  ];
  test.each(silent)('nothing is remarked at %s', (_, material, density, label) => {
    expect(said(material, density, label).remarks).toEqual([]);
  });

  test('an estimate says whether anything is published at its density', () => {
    expect(said('glass fibre', 1.5).remarks.map(remarkText)).toEqual([
      'At this density the handbook has nothing for glass fibre: the estimate runs between the densities that it has.',
    ]);
  });

  /** The rule has 1.25 to 1.75 lb/ft3, for glass fibre. */
  const unusual: readonly [Material, number, boolean][] = [
    ['glass fibre', 1.24, true],
    ['glass fibre', 1.25, false],
    ['glass fibre', 1.75, false],
    ['glass fibre', 1.76, true],
    ['cellulose', 3.5, false],
  ];
  test.each(unusual)('%s at %d lb/ft3 is out of the usual: %s', (material, density, out) => {
    expect(
      said(material, density)
        .remarks.map(remarkText)
        .some((remark) => remark.includes('outside the usual')),
    ).toBe(out);
  });
});
