import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tooFewToJudge } from '../../src/calc/log/opening.ts';
import { countedOn } from '../../src/calc/log/together.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { amountIn, type Quantity, quantity } from '../../src/quantity/quantity.ts';
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

/** Openings of which each takes so many bags, and has none yet. */
const untouched = (planned: readonly number[]) =>
  planned.map((each) => ({ bags: 0, planned: each, open: true }));

describe('bays that take too little to be judged alone are judged together', () => {
  test('a bag or so is little, by the share that counts as near enough', () => {
    // Half a quarter is a tenth, the share of the rulebook, of 1.25 bags.
    expect([0.68, 1.24, 1.26].map((bags) => tooFewToJudge(quantity(bags, 'bag'), rules))).toEqual([
      true,
      true,
      false,
    ]);
  });

  const { openings, groups } = fillLog(bayed([]), rules);
  const [first] = groups;
  const planned = first?.openings.map((each) => each.planned.amount) ?? [];
  const all = planned.reduce((sum, each) => sum + each, 0);

  test('all of them stand in groups of one side, of eight at the most', () => {
    expect(groups.length).toBeGreaterThan(4);
    for (const { openings: some, side } of groups) {
      expect(some.length).toBeLessThanOrEqual(8);
      expect(new Set(some.map(({ opening }) => opening.side))).toEqual(new Set([side]));
    }
    expect(groups.flatMap((each) => each.openings)).toHaveLength(openings.length);
    expect(first?.planned.amount).toBeCloseTo(all, 9);
  });

  test('one that overloads its ceiling stops the group too, whose bags would pass if they were spread: its own line may be folded away', () => {
    // Half a bay holds less than 13 ft 10 in × 2 ft × 12.1 in / 2, 14 ft3: 2.5 bags of 30 lb there are over 5 lb/ft3, and 1.88 lb/ft3 passes.
    const [group] = fillLog(bayed([entry('back', 2, 2.5, 'filling')]), rules).groups;
    expect(group?.bags.amount).toBeLessThan(group?.planned.amount ?? 0);
    expect(group?.openings[1]?.cautions).toEqual(['caution.log.overloaded']);
    expect(group?.cautions).toContain('caution.log.overloaded');
    expect(first?.cautions).not.toContain('caution.log.overloaded');
  });

  const half = (bags: number) => Math.round(bags * 4) / 4;
  test.each<[string, number, string, readonly string[]]>([
    ['as many as planned', half(all), 'full, as planned', []],
    ['a fifth more', half(all * 1.2), 'full, heavy', ['caution.log.heavy']],
    ['a fifth less', half(all * 0.8), 'full, light', ['caution.log.light']],
  ])('%s', (_, bags, verdict, cautions) => {
    const shares = countedOn(untouched(planned), bags);
    const entries = shares.map((each, place) => entry('back', place + 1, each));
    const log = fillLog(bayed(entries), rules);
    expect(log.groups[0]?.verdict).toBe(verdict);
    expect(log.groups[0]?.cautions.filter((id) => /light|heavy/.test(id))).toEqual(cautions);
    // None of its bays is told as light or heavy by rounding alone.
    expect(new Set(log.groups[0]?.openings.map((each) => each.verdict))).toEqual(
      new Set(['full, judged with its group']),
    );
    expect(log.groups[0]?.openings.flatMap(({ cautions }) => cautions)).toEqual([]);
  });

  /*
   * Every bay of this part takes a like share of the first six: with a quarter of a bag off the count of all of them, they are still heavier than
   * the ceiling carries, though each by itself may be a slip of the count, and the empty ones beside them would carry the rest.
   */
  test('bays side by side that are overloaded together stop the group, however many beside them are empty', () => {
    const highest = amountIn(bayed([]).load.highestDensity as Quantity<'density'>, 'lb/ft3');
    const carried = planned.map((bags) => (bags * highest) / 1.5);
    const quarters = carried.map((bags) => Math.ceil(bags * 4) / 4);
    const of = (count: number) =>
      fillLog(
        bayed(quarters.slice(1, 1 + count).map((bags, place) => entry('back', place + 2, bags))),
        rules,
      );
    const over = (count: number) =>
      quarters.slice(1, 1 + count).reduce((sum, each) => sum + each, 0) -
      0.25 -
      carried.slice(1, 1 + count).reduce((sum, each) => sum + each, 0);
    // As many as it takes for what they are over, each by less than a quarter, to be more than the quarter of the count.
    const enough = [1, 2, 3, 4, 5, 6].find((count) => over(count) > 0) ?? Number.NaN;
    expect(enough).toBeGreaterThan(1);
    expect(of(enough).groups[0]?.cautions[0]).toBe('caution.log.overloaded');
    expect(of(enough - 1).groups[0]?.cautions).not.toContain('caution.log.overloaded');
    expect(of(enough).openings.flatMap(({ cautions }) => cautions)).not.toContain('caution.log.overloaded');
  });

  test('a bay that is overloaded whatever the count may be off is told by itself', () => {
    const log = fillLog(bayed([entry('back', 1, 3)]), rules);
    expect(log.openings[0]?.cautions).toEqual(['caution.log.overloaded']);
  });
});

describe('a group keeps its company, and its name tells who is in it', () => {
  const notFilled = (...numbers: number[]) =>
    numbers.map((number) => ({
      ...entry('back', number, 0, 'filling'),
      not_filled: 'neither hose nor tube goes in',
    }));
  const back = (entries: unknown) =>
    fillLog(bayed(entries), rules).groups.filter(({ side }) => side === 'back');
  const numbersIn = (entries: unknown) =>
    back(entries).map(({ openings }) => openings.map(({ opening }) => opening.number));
  // 33 bays at either edge, in five parts as even as can be: 33/5, 66/5, 99/5 and 132/5 are 7, 13, 20 and 26 to the nearest.
  const parts = [
    [1, 2, 3, 4, 5, 6, 7],
    [8, 9, 10, 11, 12, 13],
    [14, 15, 16, 17, 18, 19, 20],
    [21, 22, 23, 24, 25, 26],
    [27, 28, 29, 30, 31, 32, 33],
  ];
  test.each<[string, readonly number[], string]>([
    ['all are filled', [], 'Bays 1 to 7, back side'],
    ['the fourth is not', [4], 'Bays 1 to 3 and 5 to 7, back side'],
    ['the first is not', [1], 'Bays 2 to 7, back side'],
    ['two are not', [2, 6], 'Bays 1, 3 to 5 and 7, back side'],
    ['a pair and one are left', [3, 4, 5, 6], 'Bays 1, 2 and 7, back side'],
  ])('%s', (_, none, name) => {
    const entries = notFilled(...none);
    expect(back(entries)[0]?.name).toBe(name);
    expect(numbersIn(entries)).toEqual(parts.map((part) => part.filter((number) => !none.includes(number))));
  });

  test('one that is left alone is no group', () => {
    const none = [1, 2, 3, 4, 5, 6];
    expect(numbersIn(notFilled(...none))).toEqual(parts.slice(1));
    const left = fillLog(bayed([...notFilled(...none), entry('back', 7, 2)]), rules).openings.find(
      ({ opening }) => opening.name === 'Bay 7, back side',
    );
    expect(left?.verdict).toBe('full, heavy');
  });
});

describe('a count of openings together', () => {
  const bay = (bags: number, open = true, planned = 0.7) => ({ bags, planned, open });
  const closed = [bay(1, false), bay(1, false), bay(1, false)];
  test.each<[string, Parameters<typeof countedOn>[0], number, readonly number[]]>([
    [
      'a quarter more goes into an open one, and what was counted at closed ones stays',
      [...closed, bay(0), bay(0), bay(0), bay(0)],
      0.25,
      [1, 1, 1, 0.25, 0, 0, 0],
    ],
    ['the next goes to the one that is behind', [...closed, bay(0.25), bay(0)], 0.25, [1, 1, 1, 0.25, 0.25]],
    ['what was counted at an open one stays too', [bay(0.75), bay(0), bay(0)], 0.5, [0.75, 0.25, 0.25]],
    ['the one that takes more gets more', [bay(0, true, 0.6), bay(0, true, 1.2)], 0.75, [0.25, 0.5]],
    // Of a quarter 0.19 belong in the one that takes three times as much, and 0.06 in the other.
    [
      'the first quarter goes to the one that takes the most',
      [bay(0, true, 1), bay(0, true, 3)],
      0.25,
      [0, 0.25],
    ],
    // Two bags and a quarter: 0.5625 belong in the first, which has none, and 1.6875 in the other, which has 2.
    ['and then to the one that is behind its share', [bay(0, true, 1), bay(2, true, 3)], 0.25, [0.25, 2]],
    [
      'a quarter less comes from the open one that is ahead',
      [...closed, bay(0.25), bay(0.5)],
      -0.25,
      [1, 1, 1, 0.25, 0.25],
    ],
    ['with nothing in the open ones nothing is taken', [...closed, bay(0), bay(0)], -0.25, [1, 1, 1, 0, 0]],
    ['nor more than they have', [...closed, bay(0.25), bay(0.25)], -1, [1, 1, 1, 0, 0]],
    ['with none open nothing changes', closed, 1, [1, 1, 1]],
  ])('%s', (_, openings, more, expected) => {
    expect(countedOn(openings, more)).toEqual(expected);
  });

  const openings = fc.array(
    fc.record({
      bags: fc.integer({ min: 0, max: 12 }).map((quarters) => quarters / 4),
      planned: fc.double({ min: 0.05, max: 3, noNaN: true }),
      open: fc.boolean(),
    }),
    { minLength: 1, maxLength: 8 },
  );
  const sum = (all: readonly number[]) => all.reduce((running, each) => running + each, 0);

  test('is in quarters, adds up, and leaves closed ones alone', () => {
    fc.assert(
      fc.property(openings, fc.integer({ min: -60, max: 60 }), (before, quarters) => {
        const after = countedOn(before, quarters / 4);
        const inOpen = sum(before.filter(({ open }) => open).map(({ bags }) => bags));
        const more = before.some(({ open }) => open) ? Math.max(quarters / 4, -inOpen) : 0;
        expect(sum(after)).toBe(sum(before.map(({ bags }) => bags)) + more);
        for (const [place, bags] of after.entries()) {
          const was = before[place];
          expect(bags).toBeGreaterThanOrEqual(0);
          expect(bags * 4).toBe(Math.round(bags * 4));
          if (!was?.open) expect(bags).toBe(was?.bags);
          else expect(Math.sign(bags - was.bags) * Math.sign(quarters)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test('from nothing gives each its share by the plan, to half a bag', () => {
    fc.assert(
      fc.property(openings, fc.integer({ min: 0, max: 400 }), (some, quarters) => {
        const planned = some.map((each) => each.planned);
        for (const [place, bags] of countedOn(untouched(planned), quarters / 4).entries())
          expect(Math.abs(bags - ((quarters / 4) * (planned[place] ?? 0)) / sum(planned))).toBeLessThan(0.5);
      }),
    );
  });
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
