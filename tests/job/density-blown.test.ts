import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { heldBy } from '../../src/job/cautions.ts';
import { densityBlown, ofDensityBlown } from '../../src/job/density-blown.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules, told } from './entries.ts';

/** Fills of the box of 4 ft3, each so many pounds net. */
const weighed = (...net: number[]) => ({
  'machine.fills': net.map((each) => ({ gross: `${10 + each} lb`, tare: '10 lb' })),
});

describe('the ceiling is held against its limit by what the machine was weighed to blow, where that is heavier', () => {
  // By hand, 13 1/2 in of new fill and 2 in of old at 0.51 lb/ft3: 8 lb in 4 ft3 are 2 lb/ft3, 9/8 · 2 + 0.085 = 2.335, above 2.2.
  test.each<[string, Record<string, unknown>, number, readonly string[]]>([
    ['nothing weighed', weighed(), 1.125 * 1.5 + 0.085, []],
    ['weighed lighter', weighed(5, 5), 1.125 * 1.5 + 0.085, []],
    // 2.05375 lb/ft2 pass, and with the 0.26 of the air they do not.
    ['weighed heavier', weighed(7, 7), 1.125 * 1.75 + 0.085, ['caution.machine.pressed']],
    ['so heavy that the ceiling is overloaded', weighed(8, 8, 8), 2.335, ['caution.ceiling.overloaded']],
  ])('%s', (_, changes, byHand, held) => {
    const plan = planOf(exampleWith(changes));
    expect(amountIn(plan.load.total, 'lb/ft2')).toBeCloseTo(byHand, 9);
    expect(heldBy(plan).map(({ id }) => id)).toEqual(held);
    const [air] = workParts(plan, rules, true).filter(({ name }) => name === 'trapped-air');
    const total = air?.state === 'answered' ? air.answer.figures.total?.value : undefined;
    // 0.05 in of water is 0.26 lb/ft2.
    expect(typeof total === 'object' && amountIn(total as typeof plan.load.total, 'lb/ft2')).toBeCloseTo(
      byHand + 0.05 * 5.2023,
      3,
    );
  });

  test('and both sheets say so', () => {
    const plan = planOf(exampleWith(weighed(7, 7)));
    const says = 'The load on the ceiling counts 1.75 lb/ft³, as the machine was weighed to blow';
    expect(ofDensityBlown(plan.job, rules).map(remarkText)[0]).toContain(says);
    const [air] = workParts(plan, rules).filter(({ name }) => name === 'trapped-air');
    expect(air?.state === 'answered' && air.answer.remarks.map(remarkText).join()).toContain(says);
    expect(ofDensityBlown(planOf(exampleWith(weighed(5))).job, rules)).toEqual([]);
    expect(amountIn(densityBlown(plan.job, rules), 'lb/ft3')).toBe(1.75);
  });
});

describe('weights that can’t be true hold the plan, and never count the ceiling as less loaded', () => {
  const heavy = { gross: '20 lb', tare: '10 lb' };
  test.each<[string, Record<string, unknown>, string]>([
    [
      'one tare as heavy as its gross weight, among heavy fills',
      { 'machine.fills': [heavy, heavy, { gross: '10 lb', tare: '10 lb' }] },
      '(machine.fills.2.tare): found 10 lb beside a gross weight of 10 lb',
    ],
    [
      'a tare above the gross weight',
      { 'machine.fills': [{ gross: '9 lb', tare: '10 lb' }] },
      '(machine.fills.0.tare)',
    ],
    [
      'fills of a box without its height',
      { 'machine.box_height': '' },
      'Inside height of the box (machine.box_height)',
    ],
    [
      'fills of a box without its length',
      { 'machine.box_length': '' },
      '(machine.box_length): found nothing',
    ],
    ['fills of a box without its width', { 'machine.box_width': '' }, '(machine.box_width): found nothing'],
    [
      'fills of a box without any size',
      { 'machine.box_length': '', 'machine.box_width': '' },
      '(machine.box_length)',
    ],
  ])('%s', (_, changes, says) => {
    expect(told(exampleWith(changes))).toEqual([expect.stringContaining(says)]);
  });

  test('a box without sizes is no matter while nothing was weighed', () => {
    expect(told(exampleWith({ 'machine.box_height': '', 'machine.fills': [] }))).toEqual([]);
  });
});

describe('a bag on a ceiling that carries nothing more is told as overloaded', () => {
  // The first entry of the example’s log is 6.75 bags in hole 1.
  const first = (changes: Record<string, unknown>) =>
    fillLog(planOf(exampleWith(changes)), rules).openings[0];
  const loose = { heat: {} };
  test.each<[string, Record<string, unknown>, boolean]>([
    ['as the example is', {}, false],
    // 2 in of old insulation at 6 lb/ft3 leave 1.2 lb/ft2 for 13 in of new fill: 1.11 lb/ft3.
    ['old insulation that leaves a little', { ...loose, 'old.density': '6 lb/ft3' }, true],
    // 4 in at 8 lb/ft3 are 2.67 lb/ft2, above 2.2 by themselves.
    ['old insulation too heavy by itself', { ...loose, old: { depth: '4 in', density: '8 lb/ft3' } }, true],
  ])('%s', (_, changes, told) => {
    expect(first(changes)?.cautions.includes('caution.log.overloaded')).toBe(told);
  });

  test('and an opening that nothing went into is not', () => {
    const old = { ...loose, old: { depth: '4 in', density: '8 lb/ft3' } };
    const log = fillLog(planOf(exampleWith({ ...old, 'log.openings': [] })), rules);
    expect(log.openings.flatMap(({ cautions }) => cautions)).toEqual([]);
  });
});
