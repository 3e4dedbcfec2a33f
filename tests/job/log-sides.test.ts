import { describe, expect, test } from 'vitest';
import { fillLog } from '../../src/job/fill-log.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules, told } from './entries.ts';

type Changes = Readonly<Record<string, unknown>>;

/** The example by both lifted edges, which the tube goes into and reaches all through: a bay every 2 ft, each of less than a bag. */
const byEdges: Changes = {
  'ways.chosen': 'lifted roof edge',
  'ways.edges': 'both edges',
  'cavity.eave': '6 in',
  'hose.tube': '2 in',
  'hose.reach': '12 ft',
  'roof.obstacles': [],
  'survey.flues': 'none',
};
const logOf = (openings: readonly Changes[], more: Changes = {}) =>
  fillLog(planOf(exampleWith({ ...byEdges, 'log.openings': openings, ...more })), rules);
const entry = (side: string, opening: number, bags: number, state = 'full', more: Changes = {}) => ({
  way: 'lifted roof edge',
  side,
  opening,
  bags: `${bags} bags`,
  state,
  ...more,
});
const sum = (all: readonly number[]): number => all.reduce((some, each) => some + each, 0);

describe('what goes in on one side is not counted on the other', () => {
  const both = [entry('back', 1, 0.5), entry('front', 1, 0.75, 'filling')];

  test('bays of one number at either edge are two entries', () => {
    expect(told(exampleWith({ ...byEdges, 'log.openings': both }))).toEqual([]);
    expect(
      told(exampleWith({ ...byEdges, 'log.openings': [...both, entry('front', 1, 0.25)] }))[0],
    ).toContain('(log.openings.2.opening): found opening 1 on the front side a second time');
  });

  test('and each has its own', () => {
    const first = logOf(both).openings.filter(({ opening }) => opening.number === 1);
    expect(first.map(({ opening, bags }) => [opening.name, bags.amount])).toEqual([
      ['Bay 1, back side', 0.5],
      ['Bay 1, front side', 0.75],
    ]);
  });

  const double = { 'home.sections': 'double', 'cavity.shape': 'one-slope', 'cavity.width': '14 ft' };
  test.each<[title: string, changes: Changes, what: string]>([
    ['lanes', { ...double, 'ways.chosen': 'gable end' }, 'Lane'],
    ['bays', { ...double, 'ways.edges': 'both edges' }, 'Bay'],
  ])('%s of a double-section home are told by their section', (_, changes, what) => {
    const names = logOf([], changes).openings.map(({ opening }) => opening.name);
    expect(names).toContain(`${what} 1, back side`);
    expect(names).toContain(`${what} 1, front side`);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('how many bays are judged together', () => {
  // A truss every 2 ft from the one end to the other.
  test.each<[length: string, together: readonly number[]]>([
    ['64 ft, 32 bays: four times eight', [8, 8, 8, 8]],
    ['16 ft, 8 bays', [8]],
    ['18 ft, 9 bays: about as many in each', [5, 4]],
    ['4 ft, 2 bays', [2]],
    ['2 ft, 1 bay, which has none beside it', []],
  ])('%s', (length, together) => {
    const { groups } = logOf([], {
      'home.length': length.split(',')[0],
      'cavity.shape': 'one-slope',
      'ways.edges': 'one edge',
    });
    expect(groups.map(({ openings }) => openings.length).sort((a, b) => b - a)).toEqual(together);
  });

  test('a bay that nothing more goes into is not counted with those beside it', () => {
    const closed = entry('back', 2, 0, 'filling', { not_filled: 'neither hose nor tube goes in' });
    const log = logOf([closed]);
    const inGroups = log.groups.flatMap(({ openings }) => openings.map(({ opening }) => opening.name));
    expect(inGroups).not.toContain('Bay 2, back side');
    expect(inGroups).toContain('Bay 2, front side');
    expect(log.openings.find(({ opening }) => opening.name === 'Bay 2, back side')?.verdict).toBe(
      'not filled',
    );
  });

  test('a group is full once the last of its bays is', () => {
    const bays = Array.from({ length: 8 }, (_, place) => place + 1);
    const state = (last: string) =>
      logOf(
        bays.map((bay) => entry('back', bay, 0.5, bay === 8 ? last : 'full')),
        { 'home.length': '16 ft' },
      ).groups.find(({ side }) => side === 'back')?.state;
    expect([state('filling'), state('full')]).toEqual(['filling', 'full']);
  });
});

describe('the sums go by what a group took, not by the quarters that its bays were given', () => {
  const empty = logOf([]);
  const [first] = empty.groups;
  const planned = first?.planned.amount ?? Number.NaN;
  const bays = first?.openings.map(({ opening }) => opening.number) ?? [];
  const all = sum(empty.groups.map((each) => each.planned.amount));
  // By hand: half a bag and a whole one by turns, which no bay of about a bag takes for itself.
  const entries = (state: string) =>
    bays.map((bay, place) => entry('back', bay, place % 2 === 0 ? 1.5 : 0.25, state));
  const used = sum(bays.map((_, place) => (place % 2 === 0 ? 1.5 : 0.25)));

  test('while they are filled', () => {
    const log = logOf(entries('filling'));
    expect(log.used.amount).toBe(used);
    expect(log.stillToGo?.amount).toBeCloseTo(all - planned + Math.max(0, planned - used), 9);
    expect(log.beyondPlan.amount).toBeCloseTo(Math.max(0, used - planned), 9);
  });

  test('and when they are full', () => {
    const log = logOf(entries('full'));
    expect(log.stillToGo?.amount).toBeCloseTo(all - planned, 9);
    expect(log.short.amount).toBeCloseTo(Math.max(0, planned - used), 9);
    expect(log.beyondPlan.amount).toBeCloseTo(Math.max(0, used - planned), 9);
  });
});

describe('a bay of a group is overloaded where its bags, less the quarter that a count may be off, are more than the ceiling carries there; short of that it is warned of', () => {
  test.each<[title: string, more: Changes]>([
    ['where the tube reaches all of it', {}],
    ['where it reaches a part, which all its bags lie in', { 'hose.reach': '3 ft' }],
  ])('%s', (_, more) => {
    const plan = planOf(exampleWith({ ...byEdges, ...more, 'log.openings': [] }));
    const highest = plan.load.highestDensity as Quantity<'density'>;
    const takes = fillLog(plan, rules).openings[2]?.planned.amount ?? Number.NaN;
    // The bags of the plan are those of 1.5 lb/ft3; of the highest density that the ceiling carries they are as many times more.
    const most = (takes * amountIn(highest, 'lb/ft3')) / 1.5;
    const quarterAbove = Math.ceil(most * 4) / 4;
    const cautions = (bags: number) =>
      logOf([entry('back', 2, bags)], more).openings.find(
        ({ opening }) => opening.name === 'Bay 2, back side',
      )?.cautions;
    expect(cautions(quarterAbove - 0.25)).toEqual([]);
    expect(cautions(quarterAbove)).toEqual(['caution.log.near-limit']);
    expect(cautions(quarterAbove + 0.25)).toEqual(['caution.log.overloaded']);
  });
});

test('on a ceiling that nobody rated, a bag is not called one too many: its stop says what is not known', () => {
  const hole = { side: 'back', opening: 1, bags: '6.75 bags', state: 'full' };
  const plan = planOf(exampleWith({ 'ceiling.board': 'wood-fibre panel', 'log.openings': [hole] }));
  expect(fillLog(plan, rules).openings[0]?.cautions).toEqual([]);
});
