import { describe, expect, test } from 'vitest';
import { exampleWith, planOf, told } from './entries.ts';

const openings = (...entries: readonly [opening: number, bags: string, state: string][]) =>
  entries.map(([opening, bags, state]) => ({ side: 'back', opening, bags, state }));

const logOf = (list: unknown, onTruck?: string) =>
  planOf(exampleWith({ 'log.openings': list, ...(onTruck ? { 'log.on_truck': onTruck } : {}) })).log;

describe('the bags of a job as they go in', () => {
  test('an empty log has every opening not begun, and the plan’s bags on the truck', () => {
    const plan = planOf(exampleWith({ 'log.openings': [] }));
    expect(plan.log.openings.map(({ verdict }) => verdict)).toEqual(Array(5).fill('not begun'));
    expect(plan.log.used.amount).toBe(0);
    expect(plan.log.left.amount).toBe(plan.bagsToLoad.amount);
    expect(plan.log.stillToGo.amount).toBeCloseTo(plan.bags.amount, 9);
  });

  test('what is used leaves the truck; a full opening asks for no more', () => {
    const log = logOf(openings([1, '6.75 bags', 'full'], [2, '3 1/2 bags', 'filling']), '38 bags');
    expect(log.used.amount).toBe(10.25);
    expect(log.left.amount).toBe(27.75);
    const [first, second, ...rest] = log.openings;
    expect([first?.verdict, second?.verdict]).toEqual(['full, as planned', 'filling']);
    const asked =
      (second?.planned.amount ?? 0) - 3.5 + rest.reduce((sum, { planned }) => sum + planned.amount, 0);
    expect(log.stillToGo.amount).toBeCloseTo(asked, 9);
    expect(log.enough).toBe(true);
  });

  test('a truck that runs short says so', () => {
    expect(logOf(openings([1, '6.75 bags', 'full']), '10 bags').enough).toBe(false);
    expect(logOf(openings([1, '6.75 bags', 'full']), '6 bags').left.amount).toBe(-0.75);
  });

  test('an entry for an opening that the plan no longer has is kept, and counts as used', () => {
    const log = logOf(openings([1, '1 bags', 'filling'], [9, '2 bags', 'full']));
    expect(log.strays.map(({ opening }) => opening)).toEqual([9]);
    expect(log.used.amount).toBe(3);
  });

  test.each([
    [openings([1, '6.8 bags', 'full']), 'log.openings.0.bags', 'whole quarters'],
    [openings([1, '6 bags', 'full'], [1, '2 bags', 'full']), 'log.openings.1.opening', 'a second time'],
    [openings([0, '6 bags', 'full']), 'log.openings.0.opening', 'a whole number from 1 to 99'],
    [openings([1, '6 lb', 'full']), 'log.openings.0.bags', 'a count such as 3.25 bags'],
  ])('%j is told off at %s', (list, field, words) => {
    const [sentence = ''] = told(exampleWith({ 'log.openings': list }));
    expect(sentence).toContain(`(${field})`);
    expect(sentence).toContain(words);
  });
});
