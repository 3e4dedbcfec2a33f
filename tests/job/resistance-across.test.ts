import { describe, expect, test } from 'vitest';
import { resistanceAcross } from '../../src/job/resistance-across.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** The example's fill by a label of an inch, in a cavity 10 in deep all across, over 4 in of old insulation. */
const cavity = {
  cavity: { shape: 'level', width: '14 ft', eave: '10 in' },
  'old.depth': '4 in',
  'fill.label_r_per_inch': '3.5 R per in',
};

const inTheMiddle = (heat: Readonly<Record<string, string>>): readonly number[] => {
  const [at] = resistanceAcross(planOf(exampleWith({ ...cavity, heat })), rules, [84]);
  return at ? [at.low, at.value, at.high] : [];
};

describe('R across the home takes the old insulation as the heat through the roof does', () => {
  test.each<[title: string, heat: Readonly<Record<string, string>>, byHand: readonly number[]]>([
    // (10 - 4) x 3.5 = 21, and 4 x 3 = 12.
    [
      'loose, of an R per inch that was typed',
      { old_r_per_inch: '3 R per in', old_condition: 'lies loose at its full depth' },
      [33, 33, 33],
    ],
    // 4 in of R-3 an inch are R-12; pressed to half of that they keep 61 % by 24 CFR 3280.509(c), 7.32. (10 - 2) x 3.5 = 28.
    [
      'pressed to half its depth, which keeps part of its R and leaves more room for the fill',
      { old_r_per_inch: '3 R per in', old_condition: 'pressed by the new fill', pressed_depth: '2 in' },
      [35.32, 35.32, 35.32],
    ],
  ])('%s', (_, heat, byHand) => {
    const found = inTheMiddle(heat);
    expect(found).toHaveLength(byHand.length);
    for (const [place, value] of byHand.entries()) expect(found[place]).toBeCloseTo(value, 9);
  });

  test('where no old insulation lies, all of it is fill, whatever is said of its condition', () => {
    // 10 x 3.5.
    const plan = planOf(
      exampleWith({
        ...cavity,
        'old.depth': '0 in',
        'survey.old': undefined,
        heat: { old_condition: 'pressed by the new fill' },
      }),
    );
    expect(resistanceAcross(plan, rules, [84])).toEqual([{ across: 84, low: 35, value: 35, high: 35 }]);
  });

  test('of fill without an R per inch nothing is told', () => {
    // No row of the published table is of so light a fill, and no label tells.
    const plan = planOf(
      exampleWith({ ...cavity, 'fill.label_r_per_inch': '', 'fill.density': '0.1 lb/ft3' }),
    );
    expect(plan.resistance).toBeUndefined();
    expect(resistanceAcross(plan, rules, [84])).toEqual([]);
  });

  test('of no typed R it has the ends of the published range', () => {
    const [low = 0, value = 0, high = 0] = inTheMiddle({ old_condition: 'lies loose at its full depth' });
    expect(low).toBeLessThan(value);
    expect(value - low).toBeCloseTo(high - value, 9);
  });
});
