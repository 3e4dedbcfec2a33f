import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { patchLayers } from '../../../src/calc/patch/layers.ts';
import { patchLayersCalculation } from '../../../src/calc/patch/layers-declaration.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const { data } = theProject();
const rules = openRulebook(data);
const diameters = fc.integer({ min: 1, max: 16 * 48 }).map((sixteenths) => sixteenths / 16);

/** Every length, area and count of a patch, as plain numbers. */
const plain = (diameter: Quantity<'length'>): number[] => {
  const layers = patchLayers(diameter, rules);
  return [
    ...[
      layers.cap,
      layers.metal,
      layers.membrane,
      layers.beads.underMetal,
      layers.beads.roundCap,
      layers.beads.roundMembrane,
      layers.beads.all,
    ].map((each) => amountIn(each, 'in')),
    amountIn(layers.metalArea, 'in2'),
    amountIn(layers.membraneArea, 'in2'),
    amountIn(layers.screws, 'screw'),
  ];
};

describe('the layers of a patch', () => {
  test('over the hole of the rulebook are those that its own rules work out', () => {
    const layers = patchLayers(undefined, rules);
    expect(layers.metal.amount).toBe(rules.value('patch.layers.metal-side').amount);
    expect(layers.membrane.amount).toBe(rules.value('patch.layers.membrane-side').amount);
    expect(layers.cap.amount).toBe(rules.value('patch.layers.cap-diameter').amount);
    expect(layers.cap.amount).toBe(rules.value('access.roof-holes.diameter').amount);
  });

  test('over any hole reach the same overlap beyond one another, and every number is finite and above 0', () => {
    fc.assert(
      fc.property(diameters, (diameter) => {
        const { cap, metal, membrane, overlap } = patchLayers(quantity(diameter, 'in'), rules);
        return (
          cap.amount === diameter &&
          Math.abs((metal.amount - diameter) / 2 - overlap.amount) < 1e-9 &&
          Math.abs((membrane.amount - metal.amount) / 2 - overlap.amount) < 1e-9 &&
          plain(quantity(diameter, 'in')).every((amount) => Number.isFinite(amount) && amount > 0)
        );
      }),
    );
  });

  test('over a larger hole are never smaller, and never take fewer screws or less bead', () => {
    fc.assert(
      fc.property(diameters, fc.integer({ min: 0, max: 64 }), (diameter, sixteenths) => {
        const [less, more] = [
          plain(quantity(diameter, 'in')),
          plain(quantity(diameter + sixteenths / 16, 'in')),
        ];
        return less.every((amount, at) => (more[at] ?? 0) >= amount - 1e-9);
      }),
    );
  });

  test('are the same whatever unit the hole is typed in', () => {
    fc.assert(
      fc.property(diameters, (diameter) => {
        const typed = plain(quantity(diameter, 'in'));
        return [quantity(diameter / 12, 'ft'), quantity(diameter * 25.4, 'mm')].every((other) =>
          plain(other).every((amount, at) => Math.abs(amount - (typed[at] ?? 0)) < 1e-6),
        );
      }),
    );
  });

  test('the screws stand within the place of the bead', () => {
    const { low, high } = rules.range('patch.sealant.under-metal');
    const inset = rules.value('patch.screws.inset');
    expect(inset.amount).toBeGreaterThan(low.amount);
    expect(inset.amount).toBeLessThan(high.amount);
    // By hand: half-way between 1/4 and 1/2 in.
    expect(inset.amount).toBe(0.375);
  });
});

const worked = (given: Readonly<Record<string, unknown>>) => {
  const read = answer(patchLayersCalculation, given, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

describe('the answer about a patch', () => {
  test('says it where the cap is not the usual one, and only there', () => {
    expect(worked({ diameter: '8 in' }).remarks.map(remarkText).join(' ')).toContain(
      'The usual cap is 6 in across',
    );
    expect(worked({ diameter: '6 in' }).remarks.map(remarkText).join(' ')).not.toContain('usual cap');
    expect(worked({}).remarks.map(remarkText).join(' ')).not.toContain('usual cap');
  });

  test('tells the driving order in words, run by run', () => {
    expect(worked({}).tables?.driving?.rows.map(({ screws }) => screws)).toEqual([
      '1 to 4',
      '5 to 12',
      '13 to 20',
      '21 to 28',
      '29 to 36',
    ]);
    expect(worked({ diameter: '5 in' }).tables?.driving?.rows[1]?.where).toContain(
      'the last in the corner itself',
    );
  });

  test('carries the warnings of patching, and that a vent is no patch', () => {
    expect(worked({}).cautions).toEqual(
      expect.arrayContaining(['caution.patch.cold', 'caution.patch.sharp', 'caution.patch.vent-is-no-patch']),
    );
    expect(data.cautions['caution.patch.cold']?.do).toMatch(/label .* governs/);
  });

  const refused: readonly [string, string, RegExp][] = [
    ['nothing across', '0 in', /Diameter of the hole \(diameter\): found "0 in"; expected more than 0/],
    ['less than nothing', '-6 in', /Diameter of the hole \(diameter\): found .*; expected/],
    ['no unit', '6', /found "6", a number with no unit; expected a length/],
    ['a weight', '6 lb', /found "6 lb" \(weight\); expected a length/],
    ['wider than a person', '9 ft', /found "9 ft"; expected 4 ft at most/],
  ];
  test.each(refused)('a hole of %s is refused in a sentence', (_, diameter, says) => {
    const read = answer(patchLayersCalculation, { diameter }, rules);
    expect(read.ok ? '' : read.problems.map(sentence).join(' ')).toMatch(says);
  });
});
