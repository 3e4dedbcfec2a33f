import { describe, expect, test } from 'vitest';
import { heldBy } from '../../src/job/cautions.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { exampleFlue, exampleWith, planOf, rules, told } from './entries.ts';

const lightOf = (kind: string, along = '12 ft') => [
  { kind, along, side: 'back', from_eave: '4 ft', across: '7 in' },
];
const flueOf = (kind: string) => [{ ...exampleFlue, kind }];

describe('a survey that found none of what is entered is told off', () => {
  const light = lightOf('light, not rated for contact');
  test.each([
    // The example has one furnace flue on its roof, and no light.
    ['no flue, and one on the roof', { 'survey.flues': 'none' }, 'survey.flues'],
    ['no flue, and none', { 'survey.flues': 'none', 'roof.obstacles': [] }, undefined],
    ['flues not looked at', { 'survey.flues': '' }, undefined],
    ['no light, and one in the ceiling', { 'ceiling.lights': light }, 'survey.lights'],
    [
      'no light, and a rated one in the ceiling',
      { 'ceiling.lights': lightOf('light, rated for contact and airtight') },
      'survey.lights',
    ],
    ['lights held clear', { 'ceiling.lights': light, 'survey.lights': 'not rated, held clear' }, undefined],
  ])('%s', (_, changes, field) => {
    const [sentence] = told(exampleWith(changes));
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field}): found "none" in the survey, and 1`);
  });
});

test.each([
  [[exampleFlue], '1 hot flue on the roof'],
  [[exampleFlue, { ...exampleFlue, along: '20 ft' }], '2 hot flues on the roof'],
])('it is said of how many flues the survey knows nothing', (flues, words) => {
  expect(told(exampleWith({ 'survey.flues': 'none', 'roof.obstacles': flues }))[0]).toContain(words);
});

describe('what the survey found and nobody placed is asked for', () => {
  const rated = lightOf('light, rated for contact and airtight');
  const cellulose = { 'fill.material': 'cellulose', 'fill.density': '1.6 lb/ft3' };
  test.each<[string, Record<string, unknown>, string | undefined]>([
    ['a shielded flue', { 'roof.obstacles': [] }, 'roof.obstacles'],
    ['a vent alone is no flue', { 'roof.obstacles.1.what': 'plumbing vent' }, 'roof.obstacles'],
    ['a light held clear', { 'survey.lights': 'not rated, held clear' }, 'ceiling.lights'],
    [
      'a light held clear, and a rated one placed',
      { 'survey.lights': 'not rated, held clear', 'ceiling.lights': rated },
      'ceiling.lights',
    ],
    [
      'rated lights, and one placed that is not',
      {
        'survey.lights': 'all rated for contact',
        'ceiling.lights': lightOf('light, not rated for contact'),
      },
      'survey.lights',
    ],
    [
      'rated lights, and of two placed one that is not',
      {
        'survey.lights': 'all rated for contact',
        'ceiling.lights': [...rated, ...lightOf('light, not rated for contact', '40 ft')],
      },
      'survey.lights',
    ],
    [
      'rated lights in cellulose',
      { ...cellulose, 'survey.lights': 'all rated for contact' },
      'ceiling.lights',
    ],
    [
      'rated lights held clear in cellulose',
      { ...cellulose, 'survey.lights': 'all rated, and held clear' },
      'ceiling.lights',
    ],
    [
      'rated lights held clear, and one placed that is not rated',
      {
        'survey.lights': 'all rated, and held clear',
        'ceiling.lights': lightOf('light, not rated for contact'),
      },
      'survey.lights',
    ],
    [
      'a connector that a mechanic let stand, and none placed',
      { 'survey.connectors': 'a mechanic let each stand' },
      'roof.obstacles',
    ],
    ['rated lights that glass fibre may bury', { 'survey.lights': 'all rated for contact' }, undefined],
    [
      'rated lights that mineral wool may bury',
      { 'fill.material': 'mineral wool', 'survey.lights': 'all rated for contact' },
      undefined,
    ],
    // The stop of the survey holds the plan, and tells more.
    ['a flue without a shield', { 'roof.obstacles': [], 'survey.flues': 'some not shielded' }, undefined],
  ])('%s', (_, changes, field) => {
    const [sentence] = told(exampleWith(changes));
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field}): found`);
  });
});

describe('a single-wall connector holds the plan until a mechanic has looked at it', () => {
  const connector = { 'roof.obstacles': flueOf('connector, solid fuel') };
  const stands = { ...connector, 'survey.connectors': 'a mechanic let each stand' };
  const vent = { 'roof.obstacles': flueOf('listed double-wall vent or chimney') };
  test.each<[string, Record<string, unknown>, string[], string]>([
    ['nobody has looked', connector, ['caution.flue.connector'], 'not ready'],
    [
      'nobody has looked, and it is not placed as one yet',
      { 'survey.connectors': 'no mechanic has looked' },
      ['caution.flue.connector'],
      'not ready',
    ],
    ['a mechanic has', stands, [], 'ready'],
    ['a listed vent', vent, [], 'ready'],
  ])('%s', (_, changes, held, verdict) => {
    const plan = planOf(exampleWith(changes));
    expect(heldBy(plan).map(({ id }) => id)).toEqual(held);
    // The sheet of the survey tells the same.
    const [outcome] = workParts(plan, rules).filter(({ name }) => name === 'readiness');
    const { verdict: said, stops } = (outcome?.state === 'answered' && outcome.answer.figures) || {};
    expect([said?.value, stops?.value]).toEqual([verdict, expect.objectContaining({ amount: held.length })]);
  });
});

describe('a roof that nobody goes on', () => {
  test('and that holes are to be cut in is not ready, on the sheet of the survey too', () => {
    const verdict = (changes: Record<string, unknown>) =>
      planOf(exampleWith({ 'survey.roof_carries': 'nobody goes on it', ...changes })).readiness.verdict;
    expect([verdict({}), verdict({ 'ways.chosen': 'gable end' })]).toEqual(['not ready', 'ready']);
    const [outcome] = workParts(planOf(exampleWith({ 'survey.roof_carries': 'nobody goes on it' })), rules);
    expect(outcome?.state === 'answered' && outcome.answer.figures.verdict?.value).toBe('not ready');
  });

  const held = (changes: Record<string, unknown>) =>
    heldBy(planOf(exampleWith({ 'survey.roof_carries': 'nobody goes on it', ...changes }))).map(
      ({ id }) => id,
    );
  test('holds the plan of holes in it, and of no other way', () => {
    expect(held({})).toContain('caution.roof.carries-crew');
    expect(held({ 'ways.chosen': 'gable end' })).toEqual([]);
  });
});

test('a survey that was not looked at everywhere is told beside the plan', () => {
  const told = (changes: Record<string, unknown>) =>
    planOf(exampleWith(changes)).cautions.some(({ id }) => id === 'caution.before.not-looked');
  expect([told({}), told({ 'survey.pests': '' }), told({ survey: {} })]).toEqual([false, true, true]);
});

test('a ring on the border of two stretches is told at both holes, and its volume counts once', () => {
  const flue = (along: string) => [
    { what: 'furnace flue', along, side: 'front', from_peak: '3 ft', across: '8 in' },
  ];
  const kept = (along: string) =>
    planOf(exampleWith({ 'roof.obstacles': flue(along) })).rows[0]?.holes.map((hole) => hole.kept.length);
  // Where the first stretch ends; a ring of 8 in and 2 in about it reaches 6 in either way.
  const border = planOf(exampleWith({ 'roof.obstacles': flue('12 ft') })).rows[0]?.holes[0]?.to;
  expect(border?.amount).toBeDefined();
  const inches = (border?.amount ?? 0) * (border?.unit === 'ft' ? 12 : 1);
  expect(kept(`${inches - 2} in`)).toEqual([1, 1, 0, 0, 0]);
  expect(kept(`${inches + 2} in`)).toEqual([1, 1, 0, 0, 0]);
  expect(kept(`${inches - 24} in`)).toEqual([1, 0, 0, 0, 0]);
  // It touches the border, and no more.
  expect(kept(`${inches - 6} in`)).toEqual([1, 0, 0, 0, 0]);
  expect(kept(`${inches + 6} in`)).toEqual([0, 1, 0, 0, 0]);
  const volume = (along: string) => planOf(exampleWith({ 'roof.obstacles': flue(along) })).volume.amount;
  expect(volume(`${inches - 2} in`)).toBeCloseTo(volume(`${inches - 24} in`), 6);
  // Wherever its middle lies, on the very border or at an end of the roof too, the stretches add up to the cavity.
  const two = [...flue(`${inches - 3} in`), ...flue(`${inches + 3} in`)];
  for (const flues of [flue(`${inches} in`), flue('0 in'), flue('66 ft'), two]) {
    const plan = planOf(exampleWith({ 'roof.obstacles': flues }));
    const stretches = plan.rows[0]?.holes.map((hole) => amountIn(hole.volume, 'ft3')) ?? [];
    expect(stretches.reduce((sum, each) => sum + each, 0)).toBeCloseTo(amountIn(plan.volume, 'ft3'), 6);
  }
});

describe('a double-section home is told by one half of it', () => {
  test.each([
    ['two-slope', true],
    ['bowed', true],
    ['one-slope', false],
    ['level', false],
  ])('%s', (shape, refused) => {
    const [sentence = ''] = told(exampleWith({ 'home.sections': 'double', 'cavity.shape': shape }));
    expect(sentence.includes(`(cavity.shape): found ${shape} for a double-section home`)).toBe(refused);
  });
});

describe('cellulose keeps off lights that are rated for contact too', () => {
  const lights = lightOf('light, rated for contact and airtight');
  const inCellulose = {
    'fill.material': 'cellulose',
    'fill.density': '1.6 lb/ft3',
    'ceiling.lights': lights,
  };
  test.each<[string, Record<string, unknown>, string[]]>([
    [
      'rated, and nothing holds the fill off',
      { ...inCellulose, 'survey.lights': 'all rated for contact' },
      ['caution.before.lights'],
    ],
    ['rated, and held clear', { ...inCellulose, 'survey.lights': 'all rated, and held clear' }, []],
    ['rated, under glass fibre', { 'ceiling.lights': lights, 'survey.lights': 'all rated for contact' }, []],
  ])('%s', (_, changes, held) => {
    expect(heldBy(planOf(exampleWith(changes))).map(({ id }) => id)).toEqual(held);
  });
});
