import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import {
  beadFromCartridge,
  beadSection,
  cartridgeHolds,
  sealantFor,
} from '../../../src/calc/patch/sealant.ts';
import { sheetWeight } from '../../../src/calc/patch/sheet-weight.ts';
import { sheetWeightCalculation } from '../../../src/calc/patch/sheet-weight-declaration.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const rules = openRulebook(theProject().data);

describe('a bead of sealant', () => {
  const sizes = fc.integer({ min: 1, max: 32 }).map((sixteenths) => quantity(sixteenths / 16, 'in'));
  const shapes = fc.constantFrom('square' as const, 'round' as const);
  const lengths = fc.double({ min: 0, max: 5000, noNaN: true }).map((feet) => quantity(feet, 'ft'));
  const shares = fc.integer({ min: 0, max: 90 }).map((each) => quantity(each, 'percent'));
  const small = cartridgeHolds('small', undefined, rules);

  test('that is round takes π/4 of a square one, whatever its size', () => {
    fc.assert(
      fc.property(sizes, (size) => {
        const [a, b] = [beadSection({ size, shape: 'round' }), beadSection({ size, shape: 'square' })];
        return Math.abs(a.amount / b.amount - Math.PI / 4) < 1e-12;
      }),
    );
  });

  test('takes cartridges enough for it and for what is lost, and not one too many', () => {
    fc.assert(
      fc.property(sizes, shapes, lengths, shares, (size, shape, length, lost) => {
        const need = sealantFor(length, { size, shape }, small, lost);
        const from = small.amount * (1 - amountIn(lost, '1'));
        const [volume, count] = [need.volume.amount, need.cartridges.amount];
        return (
          Number.isInteger(count) &&
          // A billionth of a cartridge over is floating noise, and opens no other.
          (count + 1.1e-9) * from >= volume * (1 - 1e-9) &&
          (count === 0 || (count - 1) * from < volume + 1e-9) &&
          need.withLost.amount >= volume - 1e-9
        );
      }),
    );
  });

  test('that a cartridge makes fills the cartridge again', () => {
    fc.assert(
      fc.property(sizes, shapes, (size, shape) => {
        const section = beadSection({ size, shape });
        const made = amountIn(beadFromCartridge(small, section), 'ft/cartridge');
        return Math.abs(made * 12 * section.amount - small.amount) < 1e-9;
      }),
    );
  });

  test('of the large cartridge reckons with the lower end, 27 fl oz: 27 x 231/128 = 48.7265625 in3, which a seller prints as 48.7', () => {
    expect(cartridgeHolds('large', undefined, rules).amount).toBeCloseTo(48.7265625, 9);
  });

  test('takes the label before the usual size', () => {
    expect(cartridgeHolds('small', quantity(9.8, 'fl oz/cartridge'), rules).amount).toBeCloseTo(
      (9.8 * 231) / 128,
      9,
    );
  });
});

describe('the weight of sheet metal', () => {
  /** By hand: 41.82 and 14.1 lb/ft2 an inch times the thickness; the gauges as the table has them. */
  const weights = [
    ['steel', 0.1, 4.182],
    ['aluminium', 0.02, 0.282],
    ['galvanized 26 gauge', undefined, 0.906],
    ['galvanized 28 gauge', undefined, 0.781],
    ['galvanized 30 gauge', undefined, 0.656],
  ] as const;
  test.each(weights)('%s, %s in thick: %d lb/ft2', (metal, thickness, weight) => {
    const found = sheetWeight(metal, thickness === undefined ? undefined : quantity(thickness, 'in'), rules);
    expect(amountIn(found, 'lb/ft2')).toBeCloseTo(weight, 12);
  });

  const clashes: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'steel without a thickness',
      { metal: 'steel' },
      /^Thickness of the sheet \(thickness\): found nothing beside steel; expected the thickness/,
    ],
    [
      'a gauge beside a thickness',
      { metal: 'galvanized 26 gauge', thickness: '0.02 in' },
      /^Thickness of the sheet \(thickness\): found a thickness beside a gauge; expected the gauge alone/,
    ],
    [
      'a metal that there is not',
      { metal: 'tin' },
      /^Metal \(metal\): found "tin"; expected one of: steel; /,
    ],
  ];
  test.each(clashes)('%s is refused in a sentence', (_, given, says) => {
    const read = answer(sheetWeightCalculation, given, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });
});
