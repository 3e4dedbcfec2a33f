import { describe, expect, test } from 'vitest';
import { fillLog } from '../../src/job/fill-log.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const logOf = (openings: unknown, onTruck?: string) =>
  fillLog(
    planOf(exampleWith({ 'log.openings': openings, ...(onTruck ? { 'log.on_truck': onTruck } : {}) })),
    rules,
  );
const opening = (number: number, bags: string, state = 'full') => ({
  side: 'back',
  opening: number,
  bags,
  state,
});

/**
 * By hand, from the figures of the example (example.test.ts): the free section is 1566.972843255 in2, and the first hole serves the first 154 in
 * of the roof, clear of the flue: 1566.972843255 · 154 / 1728 = 139.649200 ft3. The ceiling passes up to 1.88 lb/ft3, which is 262.5405 lb, in
 * bags of 30 lb 8.7513. Of the plan's 1.5 lb/ft3 it takes 6.9825.
 */
describe('an opening that holds more than the ceiling carries is flagged, full or not', () => {
  test.each<[bags: string, overloaded: boolean]>([
    ['8.75 bags', false],
    ['9 bags', true],
  ])('nothing more goes in, and %s lie there: %s', (bags, overloaded) => {
    const closed = { ...opening(1, bags, 'filling'), not_filled: 'neither hose nor tube goes in' };
    expect(logOf([closed]).openings[0]?.cautions).toEqual(overloaded ? ['caution.log.overloaded'] : []);
  });

  test.each<[bags: string, state: string, overloaded: boolean]>([
    ['6.75 bags', 'full', false],
    ['8.75 bags', 'full', false],
    ['9 bags', 'full', true],
    ['8.75 bags', 'filling', false],
    ['9 bags', 'filling', true],
  ])('%s, %s: %s', (bags, state, overloaded) => {
    const [first, ...others] = logOf([opening(1, bags, state)]).openings;
    expect(first?.cautions.includes('caution.log.overloaded')).toBe(overloaded);
    expect(others.flatMap(({ cautions }) => cautions)).not.toContain('caution.log.overloaded');
  });
});

/** By hand (example.test.ts) the plan takes 35.83447373805 bags, of which none is in. */
describe('the truck is told to hold enough only where its bags fill the plan', () => {
  test.each<[onTruck: string, enough: boolean]>([
    ['34 bags', false],
    ['35 bags', false],
    ['35.75 bags', false],
    ['36 bags', true],
    ['37 bags', true],
  ])('nothing in yet, %s on the truck: %s', (onTruck, enough) => {
    expect(logOf([], onTruck).enough).toBe(enough);
  });

  // Seven bags in each of five full openings are 35, and nothing is still to go.
  test.each<[onTruck: string, enough: boolean, left: number]>([
    ['34.75 bags', false, -0.25],
    ['35 bags', true, 0],
    ['35.25 bags', true, 0.25],
  ])('all openings full with 35 bags, %s on the truck: %s', (onTruck, enough, left) => {
    const log = logOf(
      [1, 2, 3, 4, 5].map((number) => opening(number, '7 bags')),
      onTruck,
    );
    expect([log.stillToGo?.amount, log.left.amount, log.enough]).toEqual([0, left, enough]);
  });
});
