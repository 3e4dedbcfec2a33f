import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/calc/declare/calculation.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import type { JobEntries } from '../../src/job/job-file.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** The answers of one calculation of a job, in order. */
const answersOf = (entries: JobEntries, name: string): readonly Answer[] =>
  workParts(planOf(entries), rules, true).flatMap((each) =>
    each.name === name && each.state === 'answered' ? [each.answer] : [],
  );
const only = (entries: JobEntries, name: string): Answer => {
  const [answer] = answersOf(entries, name);
  if (!answer) throw new Error(`found no answer of ${name}, expected one`);
  return answer;
};
const amount = (answer: Answer, name: string, unit: string): number =>
  amountIn(answer.figures[name]?.value as Quantity, unit as never);
const cell = (answer: Answer, way: string, column: string): string =>
  String(answer.tables?.ways?.rows.find((row) => row.way === way)?.[column]);

const level = {
  'home.sections': 'double',
  'cavity.shape': 'level',
  'cavity.eave': '10 in',
  'cavity.ridge': undefined,
  'roof.obstacles': [],
  'survey.flues': 'none',
};

describe('what two sheets say of one thing is the same', () => {
  test('a chimney at the marriage line takes off the plan what it takes off its lanes: the half that stands in its section', () => {
    // By hand: 24 in and 2 in on both sides are 28 in, half of π/4 · 28² · 10 in3, where the cavity is 10 in deep and empty.
    const half = ((Math.PI / 4) * 28 * 28 * 10) / 2 / 1728;
    const chimney = {
      what: 'other hot flue',
      kind: 'masonry chimney',
      along: '20 ft',
      side: 'back',
      from_peak: '0 in',
      across: '24 in',
    };
    const without = { ...level, 'old.depth': 'none', 'hose.spread': '2 ft' };
    const withIt = { ...without, 'roof.obstacles': [chimney], 'survey.flues': 'all shielded' };
    const lanes = (entries: JobEntries) =>
      answersOf(entries, 'gable-lanes').reduce((sum, each) => sum + amount(each, 'volume', 'ft3'), 0);
    const [bare, stood] = [exampleWith(without), exampleWith(withIt)];
    expect(amountIn(planOf(bare).volume, 'ft3') - amountIn(planOf(stood).volume, 'ft3')).toBeCloseTo(half, 8);
    expect(lanes(stood)).toBeCloseTo(amountIn(planOf(stood).volume, 'ft3'), 8);
  });

  test('the hose, drawn back at the speed told for as long as the opening takes, has come all its pushes', () => {
    const entries = exampleWith({});
    const [rate] = answersOf(entries, 'blowing-rate');
    const holes = planOf(entries).rows.flatMap((row) => row.holes);
    const most = holes.reduce((best, hole, place) => {
      const weight = holes[best]?.weight.amount ?? 0;
      return hole.weight.amount > weight ? place : best;
    }, 0);
    const marks = answersOf(entries, 'hose-marks')[most];
    if (!rate || !marks) throw new Error('found no rate or no marks, expected both');
    const weight = (place: number) => amountIn(holes[place]?.weight as Quantity<'weight'>, 'lb');
    // The last is the largest, and blows what the one before it holds back. 12 lb/min of the weighed run of the example.
    const before = answersOf(entries, 'hose-marks')[most - 1] as Answer;
    const heldThere = (weight(most - 1) * amount(before, 'unreached', 'percent')) / 100;
    const minutes = (weight(most) + heldThere) / 12;
    expect(amount(rate, 'speed', 'ft/min') * minutes).toBeCloseTo(amount(marks, 'all', 'ft'), 9);
  });

  test('and so at every opening: its own minutes at its own speed come to all its pushes, and the minutes to its bags less those held back behind a flue, which are its neighbour’s', () => {
    const entries = exampleWith({});
    const [rate] = answersOf(entries, 'blowing-rate');
    const holes = planOf(entries).rows.flatMap((row) => row.holes);
    const marks = answersOf(entries, 'hose-marks');
    const rows = rate?.tables?.openings?.rows ?? [];
    expect(rows).toHaveLength(holes.length);
    const heldAt = (place: number) => amount(marks[place] as Answer, 'unreached', 'percent');
    for (const [place, { time, speed }] of rows.entries()) {
      const minutes = amountIn(time as Quantity<'time'>, 'min');
      const weight = amountIn(holes[place]?.weight as Quantity<'weight'>, 'lb');
      // The flue stands in the fourth stretch, on the side of the fifth opening.
      const ofFourth = (amountIn(holes[3]?.weight as Quantity<'weight'>, 'lb') * heldAt(3)) / 100;
      expect(minutes * 12).toBeCloseTo(weight * (1 - heldAt(place) / 100) + (place === 4 ? ofFourth : 0), 9);
      const pushed = amount(marks[place] as Answer, 'all', 'ft');
      expect(minutes * amountIn(speed as Quantity<'speed'>, 'ft/min')).toBeCloseTo(pushed, 9);
    }
    expect(marks.map((each) => amount(each, 'unreached', 'percent') > 0)).toEqual([
      false,
      false,
      false,
      true,
      false,
    ]);
    const typed = answersOf(exampleWith({ 'machine.strip': '2 ft2' }), 'blowing-rate')[0];
    // 12 lb/min over 1.5 lb/ft3 through 2 ft2, at each of them alike.
    for (const { speed } of typed?.tables?.openings?.rows ?? [])
      expect(amountIn(speed as Quantity<'speed'>, 'ft/min')).toBeCloseTo(12 / (1.5 * 2), 9);
  });

  test.each([
    ['the stream comes to all but what the flue hides', { 'hose.stream_reach': '2 ft' }],
    ['it leaves a little of every stretch besides', { 'hose.stream_reach': '10 in' }],
    // The hose of 2 in does not go into the outer lanes of so shallow a cavity.
    [
      'into some of them no hose goes',
      { 'ways.chosen': 'gable end', 'cavity.eave': '1 in', 'cavity.ridge': '10 in', 'log.openings': [] },
    ],
  ])('the minutes at every opening blow the bags that the log asks of it, where %s', (_, changes) => {
    const entries = exampleWith(changes);
    const rate = only(entries, 'blowing-rate');
    const rows = rate.tables?.openings?.rows ?? [];
    const asked = fillLog(planOf(entries), rules).openings.map(({ planned }) => planned.amount);
    expect(asked.length).toBeGreaterThan(3);
    // 12 lb/min of the weighed run of the example, in bags of 30 lb.
    const minutes = rows.map(({ time }) => amountIn(time as Quantity<'time'>, 'min'));
    expect(minutes).toEqual(asked.map((bags) => expect.closeTo((bags * 30) / 12, 9)));
    // What is told above the table is told of the one that takes the most: the last of the holes, a lane in the middle.
    expect(amount(rate, 'opening_time', 'min')).toBeCloseTo(Math.max(...minutes), 9);
  });

  test('from the gable the hose is drawn back as the strip of its lane asks, though it reaches a part of the lane only', () => {
    const entries = exampleWith({ 'ways.chosen': 'gable end' });
    const [rate] = answersOf(entries, 'blowing-rate');
    const lanes = only(entries, 'gable-lanes').tables?.lanes?.rows ?? [];
    const rows = rate?.tables?.openings?.rows ?? [];
    expect(rows).toHaveLength(lanes.length);
    for (const [place, { area, left }] of lanes.entries()) {
      expect(amountIn(left as Quantity<'length'>, 'ft')).toBeGreaterThan(0);
      // 12 lb/min at 1.5 lb/ft3 fill 8 ft3/min; a flue's open column in a lane leaves a little less to fill.
      const byHand = 8 / amountIn(area as Quantity<'area'>, 'ft2');
      const found = amountIn(rows[place]?.speed as Quantity<'speed'>, 'ft/min');
      expect(found / byHand).toBeGreaterThan(0.999999);
      expect(found / byHand).toBeLessThan(1.02);
    }
  });

  test('bags for what lies beyond the reach are those of the volume that the lanes leave over; of holes there are none', () => {
    const entries = exampleWith({ 'ways.chosen': 'gable end' });
    const left = amount(only(entries, 'gable-lanes'), 'left_volume', 'ft3');
    const beyond = fillLog(planOf(entries), rules).beyondReach;
    // At 1.5 lb/ft3 in bags of 30 lb.
    expect(beyond?.amount).toBeCloseTo((left * 1.5) / 30, 9);
    expect(fillLog(planOf(exampleWith({})), rules).beyondReach).toBeUndefined();
  });

  test('a roof whose trusses are not known says so in the plan, and one whose trusses are does not', () => {
    const said = (changes: Readonly<Record<string, unknown>>) =>
      planOf(exampleWith(changes)).cautions.some(({ id }) => id === 'caution.layout.trusses-unknown');
    expect(said({})).toBe(false);
    expect(said({ 'roof.truss_spacing': undefined, 'roof.first_truss': undefined })).toBe(true);
    expect(said({ 'roof.trusses_measured': [{ at: '1 in' }, { at: '25 in' }] })).toBe(true);
  });

  test('patches are worked for a metal roof only', () => {
    const states = (cover: string) =>
      workParts(planOf(exampleWith({ 'roof.cover': cover })), rules, true)
        .filter(({ name }) => name === 'patch-kit' || name === 'patch-layers')
        .map(({ state }) => state);
    expect(states('metal')).toEqual(['answered', 'answered']);
    expect(states('shingles')).toEqual(['nothing', 'nothing']);
  });

  test('the time left at one more level is told without any times in noise', () => {
    const entries = exampleWith({ noise: { next_level: '100 dBA' } });
    // 29 CFR 1926.52, table D-2: 100 dBA for 2 hours.
    expect(amount(only(entries, 'noise-dose'), 'left', 'h')).toBeCloseTo(2, 9);
  });

  test('a tube of 1 in is held against the eave as the bays hold it: 3 in less 2 in of old insulation leave room', () => {
    const wide = only(exampleWith({ 'hose.tube': undefined }), 'ways-in');
    const narrow = only(exampleWith({ 'hose.tube': '1 in' }), 'ways-in');
    expect(cell(wide, 'lifted roof edge', 'ruled_out')).toContain('2 in wide');
    expect(cell(narrow, 'lifted roof edge', 'ruled_out')).not.toContain('wide');
  });

  test('a flue in the way of the lanes is told beside the gable end', () => {
    expect(cell(only(exampleWith({}), 'ways-in'), 'gable end', 'unknown')).toContain(
      'behind the ring of a flue',
    );
    expect(
      cell(
        only(exampleWith({ 'roof.obstacles': [], 'survey.flues': 'none', 'ceiling.lights': [] }), 'ways-in'),
        'gable end',
        'unknown',
      ),
    ).not.toContain('behind the ring of a flue');
  });

  test('of a double-section home each half is compared, with the holes of its own row and one edge', () => {
    const entries = exampleWith({ ...level, 'ways.edges': 'both edges' });
    const compared = answersOf(entries, 'ways-in');
    expect(compared.map((each) => amount(each, 'holes_openings', '1'))).toEqual(
      planOf(entries).rows.map(({ holes }) => holes.length),
    );
    const tubes = answersOf(entries, 'edge-bays').map((each) => amount(each, 'tube', 'in'));
    expect(tubes).toHaveLength(2);
    for (const [place, each] of compared.entries())
      expect(amount(each, 'edge_push', 'in')).toBeCloseTo(tubes[place] ?? Number.NaN, 9);
  });

  test('from a hole of a double-section home the peak lies as far as the rule puts the hole below it, in a level cavity too', () => {
    const entries = exampleWith(level);
    const below = amountIn(rules.value('access.roof-holes.below-peak'), 'in');
    const rows = answersOf(entries, 'hose-marks').flatMap((each) => each.tables?.marks?.rows ?? []);
    const straightUp = rows.filter((row) => row.clock === '12:00');
    expect(straightUp.length).toBeGreaterThan(0);
    for (const row of straightUp)
      expect(amountIn(row.distance as Quantity<'length'>, 'in')).toBeCloseTo(below, 9);
  });
});
