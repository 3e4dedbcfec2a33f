import { describe, expect, test } from 'vitest';
import { workParts } from '../../src/job/parts/parts.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { ofWells, ofWellsIn, skylightsIn } from '../../src/job/wells.ts';
import { amountIn, quantity } from '../../src/quantity/quantity.ts';
import { data, exampleWith, planOf, rules } from './entries.ts';

const text = (changes: Record<string, unknown>) =>
  jobSheet(planOf(exampleWith(changes)), data.cautions, rules);

describe('holes of a plan that cuts none', () => {
  test('are not on its sheet, and neither is what is to be said of where they lie', () => {
    const [holes, lanes] = [text({}), text({ 'ways.chosen': 'gable end' })];
    expect(holes).toContain('back side: 5 holes');
    expect(lanes).not.toContain('back side: 5 holes');
    expect(lanes).toContain('the holes of this plan are not cut');
    expect(holes).not.toContain('The way taken is');
    const short = { 'home.length': '6 ft', 'roof.obstacles': [], 'survey.flues': 'none' };
    const departs = (changes: Record<string, unknown>) =>
      planOf(exampleWith({ ...short, ...changes })).cautions.some(
        ({ id }) => id === 'caution.layout.departs',
      );
    expect([departs({}), departs({ 'ways.chosen': 'gable end' })]).toEqual([true, false]);
  });

  test('a roof that is not metal is told that the patches are not for it', () => {
    expect(text({ 'roof.cover': 'shingles' })).toMatch(
      /HOLES[\s\S]*The cover of this roof is shingles[\s\S]*FILL/,
    );
    expect(text({})).not.toContain('The cover of this roof');
  });
});

test('a roof of 34 ft, which no holes suit, is told what departs from which rule; the example departs from none', () => {
  // By hand, as in tests/calc/holes: two holes reach 8 + 16 + 8 = 32 ft, so that the gap between them is 18 ft.
  const bare = {
    'roof.truss_spacing': '',
    'roof.first_truss': '',
    'roof.seam_spacing': '',
    'roof.first_seam': '',
  };
  const entries = {
    'home.length': '34 ft',
    'roof.obstacles': [],
    'survey.flues': 'none',
    'log.openings': [],
  };
  const [row] = planOf(exampleWith({ ...bare, ...entries })).rows;
  expect(row).toMatchObject({
    outcome: 'least departure',
    clash: expect.arrayContaining(['spacing']),
    departures: [{ rule: 'spacing', found: 216, by: 24 }],
  });
  expect(text({ ...bare, ...entries })).toMatch(/18 ft/);
  expect(planOf(exampleWith({})).rows[0]).toMatchObject({ clash: [], departures: [] });
});

test('the heat of a shingle roof lists no metal', () => {
  const [heat] = workParts(planOf(exampleWith({ 'roof.cover': 'shingles' })), rules).filter(
    ({ name }) => name === 'roof-heat',
  );
  const rows = heat?.state === 'answered' ? (heat.answer.tables?.layers?.rows ?? []) : [];
  expect(rows.map(({ layer }) => layer)).toContain('roof cover');
  expect(rows.map(({ layer }) => layer)).not.toContain('metal roof');
});

describe('the well of a skylight is told as not counted', () => {
  const skylight = {
    'roof.obstacles.0': {
      what: 'skylight',
      along: '32 ft',
      side: 'back',
      from_peak: '4 ft',
      across: '30 in',
    },
  };
  test('with the bags, and at the holes whose stretch it reaches into', () => {
    expect(text(skylight)).toContain('The well of the skylight at 32 ft is not counted');
    expect(text({})).not.toContain('skylight');
    const plan = planOf(exampleWith(skylight));
    const at = plan.rows[0]?.holes.map((hole) => ofWellsIn(plan, 'back', hole).length) ?? [];
    const reaches = plan.rows[0]?.holes.map(({ from, to }) => {
      const inches = (q: { amount: number; unit: string }) => (q.unit === 'ft' ? 12 * q.amount : q.amount);
      return inches(from) < 384 + 15 && inches(to) > 384 - 15 ? 1 : 0;
    });
    expect(at).toEqual(reaches);
    expect(at).toContain(1);
    expect(at).toContain(0);
  });

  test('each of several, and at both holes where it stands on the border of their stretches', () => {
    const at = (...places: string[]) =>
      planOf(
        exampleWith({
          'roof.obstacles': places.map((along) => ({ ...skylight['roof.obstacles.0'], along })),
          'survey.flues': 'none',
        }),
      );
    expect(ofWells(at('10 ft', '32 ft', '50 ft').job)).toHaveLength(3);
    // 30 in across: half of it is 15 in. Its middle 14 in before or behind the end of a stretch it reaches over; 15 in off it touches, and no more.
    const plan = at('32 ft');
    const border = (inches: number) => ({
      first: { from: quantity(0, 'in'), to: quantity(384 + inches, 'in') },
      second: { from: quantity(384 + inches, 'in'), to: quantity(792, 'in') },
    });
    const told = (inches: number) => {
      const { first, second } = border(inches);
      return [ofWellsIn(plan, 'back', first).length, ofWellsIn(plan, 'back', second).length];
    };
    expect(told(14)).toEqual([1, 1]);
    expect(told(-14)).toEqual([1, 1]);
    expect(told(15)).toEqual([1, 0]);
    expect(told(-15)).toEqual([0, 1]);
  });

  test('of a double-section home at the holes of its own half; of a single one at those of its only row', () => {
    const front = { 'roof.obstacles.0': { ...skylight['roof.obstacles.0'], side: 'front' } };
    const double = { 'home.sections': 'double', 'cavity.shape': 'one-slope' };
    const told = (changes: Record<string, unknown>) => {
      const plan = planOf(exampleWith(changes));
      return plan.rows.map(({ side, holes }) => [
        side,
        holes.some((hole) => ofWellsIn(plan, side, hole).length > 0),
      ]);
    };
    expect(told(front)).toEqual([['back', true]]);
    expect(told({ ...double, ...front })).toEqual([
      ['back', false],
      ['front', true],
    ]);
    expect(told({ ...double, ...skylight })).toEqual([
      ['back', true],
      ['front', false],
    ]);
  });

  test('and stands in the drawing of those holes where it was measured', () => {
    const stretch = { from: quantity(30, 'ft'), to: quantity(40, 'ft') };
    const front = { 'roof.obstacles.0': { ...skylight['roof.obstacles.0'], side: 'front' } };
    // The ridge of the example is 6 ft 11 in from the eave; 4 ft down the slope from it.
    for (const [changes, inchesFromEave] of [
      [skylight, 83 - 48],
      [front, 83 + 48],
    ] as const) {
      const plan = planOf(exampleWith(changes));
      const found = skylightsIn(plan, 'back', stretch);
      expect(found.map(({ along, at, across }) => [along, at, across].map((q) => amountIn(q, 'in')))).toEqual(
        [[384, inchesFromEave, 30]],
      );
      expect(skylightsIn(plan, 'back', { ...stretch, from: quantity(34, 'ft') })).toEqual([]);
    }
  });
});
