import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { cutMembrane } from '../../../src/calc/patch/cut-squares.ts';
import { type PatchSupplies, patchKit } from '../../../src/calc/patch/kit.ts';
import { patchKitCalculation } from '../../../src/calc/patch/kit-declaration.ts';
import { amountIn, number, quantity } from '../../../src/quantity/quantity.ts';
import { rulesBehind } from '../../../src/quantity/working.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const rules = openRulebook(theProject().data);
const bead = { size: quantity(0.25, 'in'), shape: 'square' } as const;
const NEAR = 1e-6;

const holes = fc.integer({ min: 1, max: 300 });
const eighths = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((each) => each / 8);
/** A hole that leaves the square of metal no wider than the usual coil, and any membrane roll wider than its lap. */
const kits = fc.record({ holes, diameter: eighths(1, 20), roll: eighths(3, 60), long: eighths(60, 900) });
const supplies = ({ roll, long }: { roll: number; long: number }): PatchSupplies => ({
  membraneWidth: quantity(roll, 'in'),
  membraneLength: quantity(long / 12, 'ft/roll'),
  bead,
});

describe('the metal off the coil', () => {
  test('holds every square in as few rows as can be, and its waste is what is left', () => {
    fc.assert(
      fc.property(kits, (each) => {
        const { metal, layers } = patchKit(each.holes, quantity(each.diameter, 'in'), supplies(each), rules);
        const [s, a, w] = [layers.metal.amount, metal.abreast.amount, metal.width.amount];
        const rows = metal.length.amount / s;
        return (
          a >= 1 &&
          a * s <= w + NEAR &&
          (a + 1) * s > w - NEAR &&
          Math.abs(rows - Math.round(rows)) < NEAR &&
          rows * a >= each.holes - NEAR &&
          (rows - 1) * a < each.holes &&
          Math.abs(
            amountIn(metal.waste ?? quantity(-1, '1'), '1') * rows * s * w +
              each.holes * s * s -
              rows * s * w,
          ) <
            NEAR * rows * s * w
        );
      }),
    );
  });
});

describe('the membrane off the roll', () => {
  test('covers the square with the fewest strips, and is lapped only where the roll is narrower', () => {
    const lap = rules.value('patch.layers.overlap').amount;
    fc.assert(
      fc.property(kits, (each) => {
        const { membrane, layers } = patchKit(
          each.holes,
          quantity(each.diameter, 'in'),
          supplies(each),
          rules,
        );
        const [s, n, w] = [layers.membrane.amount, membrane.strips.amount, membrane.width.amount];
        const covers = (strips: number) => strips * w - (strips - 1) * lap;
        return (
          covers(n) >= s - NEAR &&
          (n === 1 || covers(n - 1) < s - NEAR) &&
          w >= s === (n === 1) &&
          amountIn(membrane.length, 'in') * w >= each.holes * s * s - NEAR
        );
      }),
    );
  });

  test('comes from whole rolls, of which none is too many, and no row runs over the end of one', () => {
    fc.assert(
      fc.property(kits, (each) => {
        const { membrane, layers } = patchKit(
          each.holes,
          quantity(each.diameter, 'in'),
          supplies(each),
          rules,
        );
        const rows = membrane.length.amount / layers.membrane.amount;
        const fromOne = Math.floor(each.long / layers.membrane.amount + 1e-9);
        const rolls = membrane.rolls?.amount ?? -1;
        return (
          Number.isInteger(rolls) && rolls * fromOne >= rows - NEAR && (rolls - 1) * fromOne < rows - NEAR
        );
      }),
    );
  });

  /** The recalled widths: 6, 9, 12, 18, 36 in. The square is the hole and 8 in. */
  const usual: readonly [diameter: number, width: number][] = [
    [1, 9],
    [4, 12],
    [6, 18],
    [10, 18],
    [10.125, 36],
    [28, 36],
  ];
  test.each(usual)(
    'over a hole of %d in comes off the roll of %d in where none is named',
    (diameter, width) => {
      const { membrane } = patchKit(1, quantity(diameter, 'in'), { coilWidth: quantity(60, 'in') }, rules);
      expect(membrane.width.amount).toBe(width);
      expect(membrane.strips.amount).toBe(1);
      expect(membrane.rolls).toBeUndefined();
    },
  );
});

describe('the whole kit', () => {
  test('never shrinks with more holes, and grows in step with them where nothing is rounded', () => {
    fc.assert(
      fc.property(kits, fc.integer({ min: 0, max: 50 }), (each, more) => {
        const hole = quantity(each.diameter, 'in');
        const [few, many] = [
          patchKit(each.holes, hole, supplies(each), rules),
          patchKit(each.holes + more, hole, supplies(each), rules),
        ];
        const rises = [
          [few.metal.length.amount, many.metal.length.amount],
          [few.membrane.length.amount, many.membrane.length.amount],
          [few.metal.rolls?.amount ?? 0, many.metal.rolls?.amount ?? 0],
          [few.sealant?.cartridges.amount ?? 0, many.sealant?.cartridges.amount ?? 0],
        ];
        return (
          rises.every(([a = 0, b = 0]) => b >= a - NEAR) &&
          many.screws.amount === (each.holes + more) * many.layers.screws.amount &&
          many.caps.amount === each.holes + more &&
          Math.abs(many.bead.amount * each.holes - few.bead.amount * (each.holes + more)) <
            NEAR * many.bead.amount * each.holes
        );
      }),
    );
  });

  test('is the same whatever units its sizes are typed in', () => {
    const inInches = patchKit(
      7,
      quantity(6, 'in'),
      { coilWidth: quantity(24, 'in'), membraneWidth: quantity(12, 'in'), bead },
      rules,
    );
    const metric = patchKit(
      7,
      quantity(152.4, 'mm'),
      {
        coilWidth: quantity(0.6096, 'm'),
        membraneWidth: quantity(1, 'ft'),
        bead: { size: quantity(6.35, 'mm'), shape: 'square' },
      },
      rules,
    );
    for (const part of ['metal', 'membrane'] as const) {
      expect(metric[part].abreast.amount).toBe(inInches[part].abreast.amount);
      expect(amountIn(metric[part].length, 'in')).toBeCloseTo(amountIn(inInches[part].length, 'in'), 9);
    }
    expect(metric.membrane.strips.amount).toBe(inInches.membrane.strips.amount);
    expect(metric.screws.amount).toBe(inInches.screws.amount);
    expect(metric.sealant?.withLost.amount).toBeCloseTo(inInches.sealant?.withLost.amount ?? 0, 9);
    expect(metric.sealant?.cartridges.amount).toBe(inInches.sealant?.cartridges.amount);
  });

  test('has no share of waste where squares take all of a coil and a roll, in whatever unit', () => {
    // 6 in with 2 in on either side twice: squares of 10 in and 14 in, which are 254 mm and 355.6 mm.
    for (const [coil, roll] of [
      [quantity(10, 'in'), quantity(14, 'in')],
      [quantity(254, 'mm'), quantity(355.6, 'mm')],
    ]) {
      const { metal, membrane } = patchKit(5, undefined, { coilWidth: coil, membraneWidth: roll }, rules);
      expect([metal.waste?.amount, membrane.waste?.amount]).toEqual([0, 0]);
    }
  });

  test('of no hole is nothing, and has no share of waste', () => {
    const kit = patchKit(0, undefined, { bead }, rules);
    expect(
      [kit.caps, kit.screws, kit.metal.length, kit.membrane.length, kit.bead].map((q) => q.amount),
    ).toEqual([0, 0, 0, 0, 0]);
    expect(kit.sealant?.cartridges.amount).toBe(0);
    expect([kit.metal.waste, kit.membrane.waste]).toEqual([undefined, undefined]);
  });

  test('has no sealant but its length where no bead is given: its size is not guessed', () => {
    const kit = patchKit(5, undefined, {}, rules);
    expect(kit.sealant).toBeUndefined();
    expect(kit.bead.amount).toBeGreaterThan(0);
  });

  test('names the rules it rests on', () => {
    const { sealant, metal } = patchKit(5, undefined, { bead }, rules);
    expect(sealant && rulesBehind(sealant.cartridges)).toEqual(
      expect.arrayContaining(['patch.sealant.lost', 'patch.sealant.cartridge', 'patch.layers.overlap']),
    );
    expect(rulesBehind(metal.length)).toEqual(
      expect.arrayContaining(['patch.stock.coil-width', 'access.roof-holes.diameter']),
    );
  });

  test.each([-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])('%d holes are refused', (count) => {
    expect(() => patchKit(count, undefined, {}, rules)).toThrow(/expected a whole number/);
  });
});

describe('what can’t be cut is refused in a sentence that names the field', () => {
  const given = { holes: 5, bead: '1/4 in', bead_shape: 'square', cartridge: 'small' };
  const clashes: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'a coil narrower than the metal',
      { coil_width: '9 in' },
      /^Width of the coil \(coil_width\): found 9 in, narrower than the metal; expected 10 in or more/,
    ],
    [
      'a roll of coil shorter than a square',
      { coil_length: '0.5 ft/roll' },
      /^Length of a roll of coil \(coil_length\): found 6 in, shorter than the square; expected 10 in or more/,
    ],
    [
      'a membrane no wider than its lap',
      { membrane_width: '2 in' },
      /^Width of the membrane roll \(membrane_width\): found 2 in, no wider than the lap; expected more than 2 in/,
    ],
    [
      'a roll of membrane shorter than a square',
      { membrane_length: '1 ft/roll' },
      /^Length of a roll of membrane \(membrane_length\): found 12 in, shorter than the square; expected 14 in/,
    ],
    [
      'a square that no usual roll covers',
      { diameter: '29 in', coil_width: '4 ft' },
      /^Width of the membrane roll \(membrane_width\): found nothing; expected a width, since no usual roll/,
    ],
    ['holes in part', { holes: '2.5' }, /^Holes \(holes\): found "2.5"; expected a whole number/],
    ['a bead of nothing', { bead: '0 in' }, /^Size of the bead \(bead\): found "0 in"; expected more than 0/],
    [
      'all of the sealant lost',
      { lost: '100 %' },
      /^Sealant lost \(lost\): found "100 %"; expected 90 % at most/,
    ],
    [
      'a cartridge that there is not',
      { cartridge: 'huge' },
      /^Cartridge \(cartridge\): found "huge"; expected one of: small; large/,
    ],
  ];
  test.each(clashes)('%s', (_, entries, says) => {
    const read = answer(patchKitCalculation, { ...given, ...entries }, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });

  test('strips are told, with how to lay them', () => {
    const read = answer(patchKitCalculation, { ...given, membrane_width: '9 in' }, rules);
    expect(read.ok && read.value.cautions).toContain('caution.patch.strips');
    expect(read.ok && read.value.remarks.map(remarkText).join(' ')).toContain(
      '2 strips that lap by 2 in or more',
    );
    const whole = answer(patchKitCalculation, given, rules);
    expect(whole.ok && whole.value.cautions).not.toContain('caution.patch.strips');
  });
});

// Three squares of 12 in side by side take 36 in of the roll, so that 3 need one row and 4 to 6 need two.
test.each([
  [3, 36, 12],
  [4, 36, 24],
  [5, 36, 24],
  [6, 36, 24],
  [5, 35, 36],
])(
  '%d squares of membrane from a roll %d in wide take %d in of it: a row that is begun is cut whole',
  (squares, width, long) => {
    const { length } = cutMembrane(
      number(squares),
      quantity(12, 'in'),
      { width: quantity(width, 'in'), roll: undefined },
      rules,
    );
    expect(amountIn(length, 'in')).toBeCloseTo(long, 9);
  },
);
