import { describe, expect, test } from 'vitest';
import { cautionSentence } from '../../src/job/caution-sentence.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { withinReach } from '../../src/job/within-reach.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { data, exampleWith, planOf, rules, told } from './entries.ts';

const openings = (...entries: readonly [opening: number, bags: string, state: string][]) =>
  entries.map(([opening, bags, state]) => ({ side: 'back', opening, bags, state }));

const logOf = (list: unknown, onTruck?: string) =>
  fillLog(
    planOf(exampleWith({ 'log.openings': list, ...(onTruck ? { 'log.on_truck': onTruck } : {}) })),
    rules,
  );

describe('the bags of a job as they go in', () => {
  test('an empty log has every opening not begun, and the plan’s bags on the truck', () => {
    const plan = planOf(exampleWith({ 'log.openings': [] }));
    const log = fillLog(plan, rules);
    expect(log.openings.map(({ verdict }) => verdict)).toEqual(Array(5).fill('not begun'));
    expect(log.used.amount).toBe(0);
    expect(log.left.amount).toBe(plan.bagsToLoad.amount);
    expect(log.stillToGo?.amount).toBeCloseTo(plan.bags.amount, 9);
  });

  test('what is used leaves the truck; a full opening asks for no more', () => {
    const log = logOf(openings([1, '6.75 bags', 'full'], [2, '3 1/2 bags', 'filling']), '38 bags');
    expect(log.used.amount).toBe(10.25);
    expect(log.left.amount).toBe(27.75);
    const [first, second, ...rest] = log.openings;
    expect([first?.verdict, second?.verdict]).toEqual(['full, as planned', 'filling']);
    const asked =
      (second?.planned.amount ?? 0) - 3.5 + rest.reduce((sum, { planned }) => sum + planned.amount, 0);
    expect(log.stillToGo?.amount).toBeCloseTo(asked, 9);
    expect(log.enough).toBe(true);
  });

  test('a lane that the old insulation fills up to the roof is no opening, and the rest are logged', () => {
    const plan = planOf(
      exampleWith({ 'ways.chosen': 'gable end', 'hose.spread': '1 ft', 'old.depth': '10 in', heat: {} }),
    );
    const log = fillLog(plan, rules);
    // The roof lies below 10 in from either eave on. At 13 ft 10 in with lanes a foot apart there are 14.
    expect(log.openings.length).toBeGreaterThan(0);
    expect(log.openings.length).toBeLessThan(14);
    expect(log.openings.every(({ planned }) => planned.amount > 0)).toBe(true);
    expect(log.openings.map(({ opening }) => opening.number)).not.toContain(1);
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
    [openings([0, '6 bags', 'full']), 'log.openings.0.opening', 'a whole number from 1 to 1201'],
    [openings([1, '6 lb', 'full']), 'log.openings.0.bags', 'a count such as 3.25 bags'],
  ])('%j is told off at %s', (list, field, words) => {
    const [sentence = ''] = told(exampleWith({ 'log.openings': list }));
    expect(sentence).toContain(`(${field})`);
    expect(sentence).toContain(words);
  });
});

describe('the log of a job that is not filled through roof holes', () => {
  const taken = (chosen: string, more: Readonly<Record<string, unknown>> = {}) =>
    planOf(exampleWith({ 'ways.chosen': chosen, 'log.openings': [], ...more }));
  const figureOf = (plan: ReturnType<typeof planOf>, part: string, name: string): Quantity => {
    const outcome = workParts(plan, rules, true).find((each) => each.name === part);
    const value = outcome?.state === 'answered' ? outcome.answer.figures[name]?.value : undefined;
    if (typeof value !== 'object') throw new Error(`found no ${name} of ${part}`);
    return value;
  };

  test.each([
    ['gable end', 'gable-lanes', 'lanes', 'Lane 1'],
    ['lifted roof edge', 'edge-bays', 'bays', 'Bay 1'],
  ])(
    '%s: an opening for each of them, and together they ask for all its bags',
    (chosen, part, count, first) => {
      const plan = taken(chosen);
      const log = fillLog(plan, rules);
      expect(log.openings[0]?.opening.name).toBe(first);
      expect(log.openings).toHaveLength(figureOf(plan, part, count).amount);
      const all = (log.stillToGo?.amount ?? Number.NaN) + (log.beyondReach?.amount ?? 0);
      expect(all).toBeCloseTo(figureOf(plan, part, 'bags').amount, 9);
    },
  );

  test('both edges: each bay has an opening at either, named by its edge', () => {
    const log = fillLog(taken('lifted roof edge', { 'ways.edges': 'both edges' }), rules);
    const names = log.openings.map(({ opening }) => opening.name);
    expect(names).toContain('Bay 1, back side');
    expect(names).toContain('Bay 1, front side');
    expect(new Set(names).size).toBe(names.length);
  });

  test.each([
    // From 15 in down to 3 in: the ridge is the deeper edge, and all is filled from the shallower one.
    ['back', ['15 in', '3 in'], 'front'],
    ['front', ['3 in', '15 in'], 'back'],
  ])(
    'both edges of a cavity deepest at its %s edge: nothing is filled through that one',
    (_, [back, front], side) => {
      const points = [
        { from_eave: '0 in', depth: back },
        { from_eave: '160 in', depth: front },
      ];
      const plan = taken('lifted roof edge', {
        cavity: { shape: 'measured', width: '160 in', points },
        'ways.edges': 'both edges',
        'roof.obstacles': [],
        'survey.flues': 'none',
      });
      const { openings } = fillLog(plan, rules);
      expect(openings.length).toBeGreaterThan(0);
      expect(new Set(openings.map(({ opening }) => opening.side))).toEqual(new Set([side]));
    },
  );

  test('where the tube goes into no bay, the log says so, and counts the bays whole', () => {
    // Over the old insulation the eave of the example has 1 in left, and the tube is 2 in.
    const log = fillLog(taken('lifted roof edge', { 'hose.tube': '2 in' }), rules);
    expect([log.openings.length > 0, log.shut]).toEqual([true, log.openings.length]);
    expect(log.beyondReach).toBeUndefined();
    expect(fillLog(taken('lifted roof edge', { 'hose.tube': '1 in' }), rules).shut).toBe(0);
  });

  test('what lies beyond the reach of the hose is in no lane’s bags, and stands by itself', () => {
    // No flue, about which nothing is filled.
    const reach = { 'hose.reach': '20 ft', 'roof.obstacles': [], 'survey.flues': 'none' };
    const log = fillLog(taken('gable end', reach), rules);
    // Of 66 ft the hose comes 20 ft from either end, so 26/66 are left over of each lane, the roof being as deep all along.
    const beyond = log.beyondReach?.amount ?? 0;
    const all = beyond + (log.stillToGo?.amount ?? 0);
    expect(beyond / all).toBeCloseTo(26 / 66, 6);
  });

  describe('of a double-section home one edge of which is lifted', () => {
    // By hand: 12 in less two chords of 1 1/2 in over 1 1/2 of every 24 in are 11.8125 in; x 10 ft x 40 ft = 393.75 ft3 a section, which at
    // 1.5 lb/ft3 are 19.6875 bags of 30 lb.
    const section = 19.6875;
    const oneEdge = (list: unknown) =>
      fillLog(
        taken('lifted roof edge', {
          'home.sections': 'double',
          'home.length': '40 ft',
          cavity: { shape: 'level', width: '10 ft', eave: '12 in' },
          'ways.edges': 'one edge',
          'hose.reach': '30 ft',
          old: {},
          heat: {},
          'roof.obstacles': [],
          'survey.flues': 'none',
          'log.openings': list,
        }),
        rules,
      );
    const bay = (opening: number) => ({
      way: 'lifted roof edge',
      side: 'back',
      opening,
      bags: '1 bag',
      state: 'full',
    });
    test.each<[string, unknown, number]>([
      ['nothing is in', [], section],
      ['each of its twenty bays is closed', Array.from({ length: 20 }, (_, place) => bay(place + 1)), 0],
    ])('the bags of the other section are told where %s', (_, list, toGo) => {
      const log = oneEdge(list);
      expect(log.openings).toHaveLength(20);
      expect(log.stillToGo?.amount).toBeCloseTo(toGo, 9);
      expect(log.beyondReach?.amount).toBeCloseTo(section, 9);
    });
  });

  test('what a tube reaches goes by the taper, not by its length alone', () => {
    const plan = taken('lifted roof edge', {
      'cavity.shape': 'two-slope',
      'cavity.width': '14 ft',
      'ways.edges': 'both edges',
      'hose.tube': '2 in',
      'hose.reach': '3 ft',
      old: {},
      'roof.obstacles': [],
      'survey.flues': 'none',
    });
    // From 3 in at the eave the roof rises 12 in over 84: 36 in in it is 3 + 36/7 = 8.142857 in high. Of (3 + 15)/2 x 84 = 756 in2 that is
    // (3 + 8.142857)/2 x 36 = 200.5714. Two chords of 1 1/2 in over 1 1/2 of every 24 in take 0.1875 in of either: 740.25 and 193.8214.
    const share = 193.8214286 / 740.25;
    const log = fillLog(plan, rules);
    const all = (log.stillToGo?.amount ?? 0) + (log.beyondReach?.amount ?? 0);
    expect((log.stillToGo?.amount ?? 0) / all).toBeCloseTo(share, 7);
    expect((withinReach(plan, rules)?.amount ?? 0) / plan.bags.amount).toBeCloseTo(share, 7);
  });

  test('where the lanes wait, the log says for what, and drops nothing that was counted', () => {
    const plan = taken('gable end', {
      'hose.spread': '',
      'log.openings': openings([1, '2 bags', 'full']),
    });
    const log = fillLog(plan, rules);
    expect(withinReach(plan, rules)).toBeUndefined();
    expect(log.unknown).toMatch(/waits for: Spread to each side\.$/);
    // What no opening takes is not known before the openings are.
    expect(log.beyondReach).toBeUndefined();
    expect(log.openings).toEqual([]);
    expect([log.used.amount, log.strays]).toEqual([2, []]);
    // No 0 that could be read as done, and no word that the truck runs short.
    expect([log.stillToGo, log.enough]).toEqual([undefined, true]);
  });

  test('what went in through a hole before the way was changed is no lane’s, and counts as used', () => {
    const [hole] = openings([1, '2 bags', 'full']);
    const list = [hole, { ...hole, way: 'gable end', bags: '3 bags' }];
    const log = fillLog(taken('gable end', { 'log.openings': list }), rules);
    expect(log.openings[0]?.bags.amount).toBe(3);
    expect([log.used.amount, log.strays.map(({ bags }) => bags.amount)]).toEqual([5, [2]]);
    expect(told(exampleWith({ 'log.openings': [...list, list[1]] }))[0]).toContain('a second time');
  });

  test('no hole is marked or patched, and the plan says that its holes are not cut', () => {
    const plan = taken('gable end');
    const outcomes = workParts(plan, rules, true);
    for (const name of ['hose-marks', 'patch-kit', 'patch-layers'])
      expect(outcomes.filter((each) => each.name === name).map(({ state }) => state)).toEqual(['nothing']);
    expect(plan.ofWay[0]).toMatch(/^The way taken is the gable end: the holes of this plan are not cut/);
    expect(planOf(exampleWith({})).remarks.some((each) => String(each).includes('not cut'))).toBe(false);
  });

  test('the hose, drawn back at the speed of its lane for its minutes, has come its pushes', () => {
    const plan = taken('gable end');
    const rate = workParts(plan, rules, true).find(({ name }) => name === 'blowing-rate');
    const rows = rate?.state === 'answered' ? (rate.answer.tables?.openings?.rows ?? []) : [];
    const lanes = workParts(plan, rules, true).find(({ name }) => name === 'gable-lanes');
    const pushes = lanes?.state === 'answered' ? (lanes.answer.tables?.lanes?.rows ?? []) : [];
    expect(rows).toHaveLength(pushes.length);
    for (const [place, { time, speed }] of rows.entries()) {
      const came = amountIn(time as Quantity<'time'>, 'min') * amountIn(speed as Quantity<'speed'>, 'ft/min');
      const { from_start, from_far_end } = pushes[place] ?? {};
      const pushed =
        amountIn(from_start as Quantity<'length'>, 'ft') + amountIn(from_far_end as Quantity<'length'>, 'ft');
      expect(came).toBeCloseTo(pushed, 9);
    }
  });
});

test('the sheet tells the log: what is in, on the truck and to go, what is short, each opening, and what is wrong with it', () => {
  const plan = planOf(
    exampleWith({
      log: {
        on_truck: '40 bags',
        openings: [
          { side: 'back', opening: 1, bags: '6 bags', state: 'full' },
          { side: 'front', opening: 3, bags: '1 bag', state: 'filling' },
        ],
      },
    }),
  );
  const [, text = ''] = jobSheet(plan, data.cautions, rules).split('\nFILL LOG\n');
  const [used = '', short = '', ...lines] = text.split('\n\n')[0]?.split('\n') ?? [];
  // Of 35.8 bags opening 1 takes 6.98, both to three figures: 28.76 to 28.88 are to go, and with 6 it is closed 0.98 short. 40 less 7 are 33.
  expect(used).toMatch(/^ {2}7 bags in, 33 bags left on the truck, 28\.[89] bags to go$/);
  const [, by] = /^ {2}closed ([\d.]+) bags short of the plan; 0 bags beyond it elsewhere$/.exec(short) ?? [];
  expect(Number(by)).toBeCloseTo(0.98, 2);
  expect(lines).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/^ {2}Hole 1: 6 bags of 6\.98 bags, .*: full, light$/),
      expect.stringMatching(/^ {2}Hole 2: 0 bags of .*: not begun$/),
      expect.stringMatching(/hole 3.*: 1 bag, no longer in the plan$/i),
      cautionSentence(data.cautions['caution.log.light'], rules),
    ]),
  );
});
