import { describe, expect, test } from 'vitest';
import type { PartOutcome } from '../../src/job/parts/part.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules } from './entries.ts';

type Changes = Readonly<Record<string, unknown>>;

const runsOf = (name: string, changes: Changes): readonly PartOutcome[] =>
  workParts(planOf(exampleWith(changes)), rules, true).filter((each) => each.name === name);

/** What each run of a sheet was worked with. */
const given = (name: string, changes: Changes): readonly Readonly<Record<string, unknown>>[] =>
  runsOf(name, changes).map((run) => {
    if (run.state !== 'answered') throw new Error(`found ${JSON.stringify(run)}, expected an answer`);
    return run.values as Readonly<Record<string, unknown>>;
  });

const inchesOf = (name: string, value: string, changes: Changes): number =>
  amountIn(given(name, changes)[0]?.[value] as Quantity<'length'>, 'in');

/** A double-section home, whose sections the example's entries describe. */
const double = { 'home.sections': 'double', 'cavity.shape': 'one-slope', 'cavity.width': '14 ft' };

/** Skylights of 10 ft from end to end of 66 ft and from 1 ft below the peak to 11 ft, which leave that side of the roof no room for a hole. */
const noRoom = (side: string): Changes => ({
  'roof.obstacles': [5, 15, 25, 35, 45, 55, 65].map((feet) => ({
    what: 'skylight',
    along: `${feet} ft`,
    side,
    from_peak: '6 ft',
    across: '10 ft',
  })),
  'survey.flues': 'none',
  'log.openings': [],
});

describe('fall protection goes by the lesser of the two sizes of the whole roof, and by the edge of the ladder', () => {
  // By hand: the example is 66 ft by 13 ft 10 in; two sections of 14 ft are 28 ft.
  test.each<[title: string, changes: Changes, value: 'width' | 'height', byHand: number]>([
    ['a single section, narrower than it is long', {}, 'width', 166],
    ['two sections beside each other', double, 'width', 336],
    [
      'two sections that are wider than they are long',
      { ...double, 'home.length': '20 ft', 'roof.obstacles': [], 'survey.flues': 'none', 'log.openings': [] },
      'width',
      240,
    ],
    ['a width that was typed', { 'fall.width': '20 ft' }, 'width', 240],
    ['the edge that the ladder leans on', {}, 'height', 108],
    ['an edge that was typed, before that of the ladder', { 'fall.height': '12 ft' }, 'height', 144],
  ])('%s', (_, changes, value, byHand) => {
    expect(inchesOf('fall-protection', value, changes)).toBeCloseTo(byHand, 9);
  });
});

/** What was entered of the machine, and nothing else of it. */
const run = (machine: Changes): Changes => ({ machine });

describe('a sheet is worked as soon as one of its entries is there', () => {
  test.each<[title: string, name: string, changes: Changes, state: PartOutcome['state']]>([
    ['a ladder by its edge', 'ladder', { ladder: { height: '9 ft' } }, 'answered'],
    ['a ladder by its length', 'ladder', { ladder: { working: '10 ft' } }, 'answered'],
    ['no ladder', 'ladder', { ladder: {} }, 'nothing'],
    ['a line by its voltage', 'line-clearance', { line: { voltage: '7.2 kV' } }, 'answered'],
    ['a line by how near anything comes', 'line-clearance', { line: { gap: '14 ft' } }, 'answered'],
    ['no line', 'line-clearance', { line: {} }, 'nothing'],
    ['dust in all', 'dust', { dust: { material: 'glass fibre', total: '8 mg/m3' } }, 'answered'],
    ['its fine part', 'dust', { dust: { material: 'glass fibre', respirable: '1 mg/m3' } }, 'answered'],
    ['its fibres', 'dust', { dust: { material: 'glass fibre', fibres: '0.5 fibres/cm3' } }, 'answered'],
    ['the rate of a machine by the weight of a run', 'blowing-rate', run({ run_weight: '30 lb' }), 'wrong'],
    ['the rate of a machine by the time of a run', 'blowing-rate', run({ run_time: '2.5 min' }), 'wrong'],
    ['the rate of a machine as it was told', 'blowing-rate', run({ rate: '12 lb/min' }), 'answered'],
    ['no machine', 'blowing-rate', run({}), 'nothing'],
    ['no duct of a fan', 'exhaust-duct', { 'air.ducts': [] }, 'nothing'],
    ['no dust', 'dust', { dust: { material: 'glass fibre' } }, 'nothing'],
    ['neither flue nor light', 'clear-spaces', { 'roof.obstacles': [], 'survey.flues': 'none' }, 'nothing'],
  ])('%s', (_, name, changes, state) => {
    expect(runsOf(name, changes).map((run) => run.state)).toEqual([state]);
  });
});

test('the times in noise count beside the level of what comes next', () => {
  // 29 CFR 1910.95, table G-16: 95 dBA is allowed for 4 h and 100 dBA for 2 h, so that 2 h and half an hour are 1/2 and 1/4 of a day’s noise.
  const periods = [
    { level: '95 dBA', time: '2 h' },
    { level: '100 dBA', time: '30 min' },
  ];
  const [run] = runsOf('noise-dose', { noise: { periods, next_level: '100 dBA' } });
  const dose = run?.state === 'answered' ? run.answer.figures.dose?.value : undefined;
  expect(typeof dose === 'object' && amountIn(dose as Quantity<'number'>, 'percent')).toBeCloseTo(75, 9);
});

describe('whether the cavity is to be vented goes by what the survey says, and is not guessed', () => {
  // 24 CFR 3280.504(d): none is asked for in a single section under bare metal whose ceiling is sealed; else it is. What nobody knows decides nothing.
  test.each<[title: string, changes: Changes, verdict: string]>([
    ['bare metal, sealed', {}, 'not asked for'],
    ['bare metal, not sealed', { 'survey.penetrations': 'not sealed' }, 'asked for'],
    ['bare metal, and nobody looked for leaks', { 'survey.penetrations': '' }, 'not known'],
    ['metal of which nobody knows what lies below it', { 'survey.bare_metal': '' }, 'not known'],
    ['shingles, whatever the survey says of metal', { 'roof.cover': 'shingles' }, 'asked for'],
    ['a double-section home', double, 'asked for'],
  ])('%s', (_, changes, verdict) => {
    const [run] = runsOf('cavity-ventilation', changes);
    expect(run?.state === 'answered' && run.answer.figures.verdict?.value).toBe(verdict);
  });

  test('the floor is that of both sections: 66 ft × 28 ft / 300 of free area', () => {
    const [run] = runsOf('cavity-ventilation', double);
    const area = run?.state === 'answered' ? run.answer.figures.free_area?.value : undefined;
    expect(typeof area === 'object' && amountIn(area as Quantity<'area'>, 'ft2')).toBeCloseTo(
      (66 * 28) / 300,
      9,
    );
  });
});

describe('the moisture screen is given the ceiling board as the table of permeance names it', () => {
  const layers = (board: string) => given('moisture', { 'ceiling.board': board })[0]?.layers;
  test.each<[board: string, material: string]>([
    ['gypsum 1/2 in', 'gypsum board primed and painted'],
    ['gypsum 5/16 in', 'gypsum board primed and painted'],
    ['wood-fibre panel', 'wood-fibre board'],
  ])('%s', (board, material) => {
    expect(layers(board)).toContainEqual(expect.objectContaining({ what: 'ceiling board', material }));
  });

  test('a board that nobody knows is no board of the table, and is asked for', () => {
    expect(runsOf('moisture', { 'ceiling.board': 'other or not known' }).map((run) => run.state)).toEqual([
      'wrong',
    ]);
  });
});

describe('each half of a double-section home is given what stands in it', () => {
  const flue = {
    what: 'furnace flue',
    along: '46 ft 6 in',
    side: 'front',
    from_peak: '1 ft 6 in',
    across: '12 in',
  };
  const home = { ...double, 'roof.obstacles': [flue], 'ways.edges': 'both edges', 'hose.tube': '1 in' };
  const flues = (name: string, changes: Changes = home) =>
    given(name, changes).map((values) => (values.flues as readonly unknown[]).length);

  test.each(['gable-lanes', 'edge-bays'])('%s: the flue of the front half, and none', (name) => {
    expect(flues(name)).toEqual([0, 1]);
  });

  test('the ways in: the flue of the front half, and none', () => {
    const standing = given('ways-in', home).map(({ obstacles }) => (obstacles as readonly unknown[]).length);
    expect(standing).toEqual([0, 1]);
  });

  // What is placed decides; where nothing is, the survey, once it has looked at flues and at lights.
  test.each<[title: string, changes: Changes, back: string, front: string]>([
    ['the flue of the front half', {}, 'no', 'yes'],
    ['flues that nobody looked at', { 'survey.flues': '' }, 'not known', 'yes'],
    ['lights that nobody looked at', { 'survey.lights': 'not looked at' }, 'not known', 'yes'],
  ])('the ways in are told of %s', (_, changes, back, front) => {
    const asked = { ...home, 'ceiling.lights': [], 'survey.lights': 'none', ...changes };
    expect(given('ways-in', asked).map(({ hot_in_cavity }) => hot_in_cavity)).toEqual([back, front]);
  });

  test('with one edge to lift, that section alone', () => {
    const runs = runsOf('edge-bays', { ...home, 'ways.edges': 'one edge' });
    expect(runs.map(({ title }) => title)).toEqual([
      expect.stringContaining('the section whose edge is lifted'),
    ]);
  });

  test('from the front the starting end lies on the other hand', () => {
    const plan = planOf(exampleWith(home));
    const hands = plan.rows.flatMap(({ side, holes }) =>
      holes.map(() => (side === 'back' ? 'right hand' : 'left hand')),
    );
    expect(given('hose-marks', home).map(({ starting_end }) => starting_end)).toEqual(hands);
    expect(new Set(hands).size).toBe(2);
  });

  test('patches are counted for the holes of both rows', () => {
    const { rows } = planOf(exampleWith(home));
    const [back = 0, front = 0] = rows.map(({ holes }) => holes.length);
    expect(Math.min(back, front)).toBeGreaterThan(0);
    expect(given('patch-kit', home)[0]?.holes).toBe(back + front);
  });

  test('and for those of one row where the other finds no room', () => {
    const full = { ...home, ...noRoom('front') };
    const holes = planOf(exampleWith(full)).rows.map((row) => row.holes.length);
    expect(holes).toEqual([expect.toSatisfy((count: number) => count > 0), 0]);
    expect(given('patch-kit', full)[0]?.holes).toBe(holes[0]);
  });
});

test.each(['patch-kit', 'patch-layers', 'hose-marks'])(
  'with no hole on the roof, %s has nothing to tell',
  (name) => {
    expect(runsOf(name, noRoom('back')).map((run) => run.state)).toEqual(['nothing']);
  },
);

describe('the hose marks of an opening are given the rings that reach into its stretch', () => {
  const at = (along: string, side = 'front') => ({
    'roof.obstacles': [{ what: 'furnace flue', along, side, from_peak: '3 ft', across: '12 in' }],
  });
  const flues = (changes: Changes) =>
    given('hose-marks', changes).map((values) => (values.flues as readonly unknown[]).length);
  const to = planOf(exampleWith(at('12 ft'))).rows[0]?.holes[0]?.to;
  const border = to ? amountIn(to, 'in') : Number.NaN;

  // Half of 12 in and 2 in of clearance are 8 in.
  test.each([
    ['half an inch over the border of two stretches, both', -7.5, [1, 1, 0, 0, 0]],
    ['half an inch short of it, the one', -8.5, [1, 0, 0, 0, 0]],
    ['half an inch over from the other side, both', 7.5, [1, 1, 0, 0, 0]],
    ['half an inch short from there, the other', 8.5, [0, 1, 0, 0, 0]],
  ])('%s', (_, off, byHand) => {
    expect(flues(at(`${border + off} in`))).toEqual(byHand);
  });

  test('and in a double-section home those of its own half alone', () => {
    const home = { ...double, ...at('46 ft 6 in', 'front') };
    const { rows } = planOf(exampleWith(home));
    const found = flues(home);
    expect(found.slice(0, rows[0]?.holes.length)).not.toContain(1);
    expect(found.slice(rows[0]?.holes.length)).toContain(1);
  });
});

describe('a way in that can’t be taken, or of which nobody knows, is not worked', () => {
  test.each<[title: string, name: string, changes: Changes, state: PartOutcome['state']]>([
    ['no gable end', 'gable-lanes', { 'ways.gables': 'neither' }, 'nothing'],
    ['gable ends not known', 'gable-lanes', { 'ways.gables': 'not known' }, 'waiting'],
    ['no edge', 'edge-bays', { 'ways.edges': 'neither' }, 'nothing'],
    ['edges not known', 'edge-bays', { 'ways.edges': 'not known' }, 'waiting'],
  ])('%s', (_, name, changes, state) => {
    expect(runsOf(name, changes).map((run) => run.state)).toEqual([state]);
  });
});
