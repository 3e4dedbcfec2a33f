import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharedOut, tooFewToJudge } from '../../src/calc/log/opening.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { data, exampleWith, planOf, rules } from './entries.ts';

/** The example by its lifted edges, which the tube goes into: about forty bays at either, each of less than a bag. */
const bayed = (openings: unknown, more: Record<string, unknown> = {}) =>
  planOf(
    exampleWith({
      'ways.chosen': 'lifted roof edge',
      'ways.edges': 'both edges',
      'cavity.eave': '6 in',
      'hose.tube': '2 in',
      'hose.reach': '12 ft',
      'log.openings': openings,
      ...more,
    }),
  );
const entry = (side: string, opening: number, bags: number, state = 'full') => ({
  way: 'lifted roof edge',
  side,
  opening,
  bags: `${bags} bags`,
  state,
});

describe('bays that take too little to be judged alone are judged together', () => {
  test('a bag or so is little, by the share that counts as near enough', () => {
    // Half a quarter is a tenth, the share of the rulebook, of 1.25 bags.
    expect([0.68, 1.24, 1.26].map((bags) => tooFewToJudge(quantity(bags, 'bag'), rules))).toEqual([
      true,
      true,
      false,
    ]);
  });

  const { openings, stretches } = fillLog(bayed([]), rules);
  const [first] = stretches;
  const planned = first?.openings.map((each) => each.planned.amount) ?? [];
  const all = planned.reduce((sum, each) => sum + each, 0);

  test('all of them stand in stretches of one side, of eight at the most', () => {
    expect(stretches.length).toBeGreaterThan(4);
    for (const { openings: some, side } of stretches) {
      expect(some.length).toBeLessThanOrEqual(8);
      expect(new Set(some.map(({ opening }) => opening.side))).toEqual(new Set([side]));
    }
    expect(stretches.flatMap((each) => each.openings)).toHaveLength(openings.length);
    expect(first?.planned.amount).toBeCloseTo(all, 9);
  });

  const half = (bags: number) => Math.round(bags * 4) / 4;
  test.each<[string, number, string]>([
    ['as many as planned', half(all), 'full, as planned'],
    ['a fifth more', half(all * 1.2), 'full, heavy'],
    ['a fifth less', half(all * 0.8), 'full, light'],
  ])('%s', (_, bags, verdict) => {
    const shares = sharedOut(bags, planned);
    const entries = shares.map((each, place) => entry('back', place + 1, each));
    const log = fillLog(bayed(entries), rules);
    expect(log.stretches[0]?.verdict).toBe(verdict);
    // None of its bays is told as light or heavy by rounding alone.
    expect(new Set(log.stretches[0]?.openings.map((each) => each.verdict))).toEqual(
      new Set(['full, judged with its stretch']),
    );
    expect(log.stretches[0]?.openings.flatMap(({ cautions }) => cautions)).toEqual([]);
  });

  test('a bay that is overloaded whatever the count may be off is told by itself', () => {
    const log = fillLog(bayed([entry('back', 1, 3)]), rules);
    expect(log.openings[0]?.cautions).toEqual(['caution.ceiling.overloaded']);
  });
});

test('what is shared out is in quarters, adds up, and is no farther from its share than a quarter', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 400 }),
      fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), { minLength: 1, maxLength: 8 }),
      (quarters, planned) => {
        const bags = quarters / 4;
        const shares = sharedOut(bags, planned);
        const all = planned.reduce((sum, each) => sum + each, 0);
        expect(shares.reduce((sum, each) => sum + each, 0)).toBe(bags);
        for (const [place, share] of shares.entries()) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share * 4).toBe(Math.round(share * 4));
          expect(Math.abs(share - (bags * (planned[place] ?? 0)) / all)).toBeLessThanOrEqual(0.25 + 1e-9);
        }
      },
    ),
  );
});

describe('the sums of a log add up to its plan', () => {
  const hole = (opening: number, bags: number, state: string, more = {}) => ({
    side: 'back',
    opening,
    bags: `${bags} bags`,
    state,
    ...more,
  });
  const empty = { not_filled: 'neither hose nor tube goes in' };
  test.each<[string, unknown[]]>([
    ['nothing in', []],
    ['one closed short', [hole(1, 6, 'full')]],
    ['one closed beyond', [hole(1, 9, 'full')]],
    ['one not filled', [hole(1, 6.75, 'full'), hole(2, 0, 'filling', empty)]],
    ['one filled to a part, and no further', [hole(2, 2, 'filling', empty)]],
  ])('%s', (_, openings) => {
    const plan = planOf(exampleWith({ 'log.openings': openings }));
    const { used, stillToGo, short, beyondPlan } = fillLog(plan, rules);
    expect(used.amount + (stillToGo?.amount ?? 0) + short.amount - beyondPlan.amount).toBeCloseTo(
      plan.bags.amount,
      9,
    );
  });

  test('an opening that is not filled asks for no more, and says why', () => {
    const plan = planOf(exampleWith({ 'log.openings': [hole(2, 0, 'filling', empty)] }));
    const log = fillLog(plan, rules);
    expect(log.openings[1]?.verdict).toBe('not filled');
    expect(log.short.amount).toBeCloseTo(log.openings[1]?.planned.amount ?? 0, 9);
    expect(
      jobSheet(
        planOf(exampleWith({ 'log.openings': [hole(1, 1, 'full'), hole(2, 0, 'filling', empty)] })),
        data.cautions,
        rules,
      ),
    ).toContain('Hole 2: 0 bags of');
  });

  test('an opening that left the plan is on the text sheet too', () => {
    const plan = planOf(exampleWith({ 'log.openings': [hole(1, 6.75, 'full'), hole(9, 2, 'full')] }));
    expect(jobSheet(plan, data.cautions, rules)).toContain(
      'Hole 9 of the roof holes, back side: 2 bags, no longer in the plan',
    );
  });
});
