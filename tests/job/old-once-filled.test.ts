import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules, told } from './entries.ts';

/** The example with 4 in of old batts at 1.9 lb/ft3 of new fill, which a board of 2.2 lb/ft2 carries where they lie loose. */
const heavy = (heat: Readonly<Record<string, string>>) =>
  exampleWith({ 'old.depth': '4 in', 'fill.density': '1.9 lb/ft3', heat });
const pressed = (depth: string) => ({ old_condition: 'pressed by the new fill', pressed_depth: depth });

describe('what old insulation gives way is filled, weighed and bought', () => {
  /**
   * By hand. 15 in at the ridge; old batts of 0.51 lb/ft3 weigh 4/12 · 0.51 = 0.17 lb/ft2 however they lie.
   * Loose: 11/12 · 1.9 + 0.17. Pressed to 1 1/2 in: 13.5/12 · 1.9 + 0.17, and no more than 2.03/(13.5/12) lb/ft3 may go in.
   * Section: 1831.535343255 in2 as for the example; loose the batts stand above the eave of 3 in, pressed they take 1.5 · 166 and the
   * upper chord 1.5 · 166 · 1.5/24.
   */
  test.each<[title: string, heat: Readonly<Record<string, string>>, load: number, verdict: string]>([
    ['lying loose', {}, (11 / 12) * 1.9 + 0.17, 'carries it'],
    ['pressed to 1 1/2 in', pressed('1 1/2 in'), (13.5 / 12) * 1.9 + 0.17, 'does not carry it'],
  ])('on the ceiling, %s', (_, heat, load, verdict) => {
    const plan = planOf(heavy(heat));
    expect(amountIn(plan.load.total, 'lb/ft2')).toBeCloseTo(load, 12);
    expect(plan.load.verdict).toBe(verdict);
  });

  test('the density that passes goes by the fill above it', () => {
    const { highestDensity } = planOf(heavy(pressed('1 1/2 in'))).load;
    expect(highestDensity && amountIn(highestDensity, 'lb/ft3')).toBeCloseTo(2.03 / (13.5 / 12), 9);
  });

  test('the section that is left for new fill goes by it', () => {
    const { free } = planOf(heavy(pressed('1 1/2 in'))).free;
    expect(amountIn(free, 'in2')).toBeCloseTo(1831.535343255 - 249 - 15.5625, 8);
  });
});

describe('that it is counted as loose is said where nobody told how it lies, and there alone', () => {
  test.each<[title: string, entries: Record<string, unknown>, told: boolean]>([
    ['some, and nothing told', { heat: {} }, true],
    ['none', { old: {}, heat: {} }, false],
    ['none, told as a depth of nothing', { old: { depth: '0 in' }, heat: {} }, false],
    ['loose, as told', { heat: { old_condition: 'lies loose at its full depth' } }, false],
    ['pressed, as told', { heat: pressed('1 in') }, false],
  ])('%s', (_, entries, told) => {
    const said = planOf(exampleWith(entries)).remarks.map(remarkText);
    expect(said.some((words) => words.startsWith('The old insulation is counted as lying loose'))).toBe(told);
  });
});

describe('that the room for hose and tube is counted above it as pressed is said where it is pressed, and there alone', () => {
  const sheets = ['ways-in', 'gable-lanes', 'edge-bays'];
  test.each<[title: string, entries: Record<string, unknown>, told: boolean]>([
    ['pressed', { heat: pressed('1 in') }, true],
    ['pressed to its full depth', { heat: pressed('2 in') }, false],
    ['lying loose', { heat: {} }, false],
    ['none', { old: {}, heat: {} }, false],
  ])('%s', (_, entries, told) => {
    const runs = workParts(planOf(exampleWith(entries)), rules, true).filter(({ name }) =>
      sheets.includes(name),
    );
    const said = runs.map(
      (run) =>
        run.state === 'answered' &&
        run.answer.remarks.map(remarkText).some((words) => words.startsWith('Room for hose and tube')),
    );
    expect(said).toEqual(sheets.map(() => told));
  });
});

describe('entries about it that can’t be true together hold the plan', () => {
  test.each([
    ['deeper than it lies now', { 'heat.pressed_depth': '3 in' }, 'more than its full 2 in'],
    ['pressed to nobody knows what', { heat: { old_condition: 'pressed by the new fill' } }, 'found nothing'],
    ['loose and yet pressed', { heat: { pressed_depth: '1 in' } }, 'insulation that lies loose'],
  ])('%s', (_, entries, words) => {
    const [sentence = ''] = told(exampleWith(entries));
    expect(sentence).toContain('Depth once pressed (heat.pressed_depth)');
    expect(sentence).toContain(words);
  });

  test('where there is none, nothing is held by how it would be pressed', () => {
    expect(planOf(exampleWith({ old: {} })).oldOnceFilled).toBeUndefined();
    expect(planOf(exampleWith({ old: { depth: '0 in' } })).oldOnceFilled).toBeUndefined();
  });

  test('a density of it without its depth is told at the depth: unsaid, the ceiling would bear less than lies on it', () => {
    expect(told(exampleWith({ old: { density: '8 lb/ft3' } }))).toEqual([
      'Depth of the old insulation (old.depth): found nothing, and a density of it; expected how deep it lies now, or none.',
    ]);
    expect(told(exampleWith({ old: { depth: 'none', density: '8 lb/ft3' } }))).toEqual([]);
  });
});
