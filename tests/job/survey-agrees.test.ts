import { describe, expect, test } from 'vitest';
import { heldBy } from '../../src/job/cautions.ts';
import { exampleWith, planOf, told } from './entries.ts';

describe('a survey that found none of what is entered is told off', () => {
  const light = [
    {
      kind: 'light, not rated for contact',
      along: '12 ft',
      side: 'back',
      from_eave: '4 ft',
      across: '7 in',
    },
  ];
  test.each([
    // The example has one furnace flue on its roof, and no light.
    ['no flue, and one on the roof', { 'survey.flues': 'none' }, 'survey.flues'],
    ['no flue, and none', { 'survey.flues': 'none', 'roof.obstacles': [] }, undefined],
    ['flues not looked at', { 'survey.flues': '' }, undefined],
    ['no light, and one in the ceiling', { 'ceiling.lights': light }, 'survey.lights'],
    ['lights held clear', { 'ceiling.lights': light, 'survey.lights': 'not rated, held clear' }, undefined],
  ])('%s', (_, changes, field) => {
    const [sentence] = told(exampleWith(changes));
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field}): found "none" in the survey, and 1`);
  });
});

describe('a roof that nobody goes on', () => {
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
  expect(kept(`${inches - 2} in`)?.slice(0, 2)).toEqual([1, 1]);
  expect(kept(`${inches - 24} in`)?.slice(0, 2)).toEqual([1, 0]);
  const volume = (along: string) => planOf(exampleWith({ 'roof.obstacles': flue(along) })).volume.amount;
  expect(volume(`${inches - 2} in`)).toBeCloseTo(volume(`${inches - 24} in`), 6);
});
