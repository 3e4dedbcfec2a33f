import { describe, expect, test } from 'vitest';
import { exampleWith, told } from './entries.ts';

const flue = (side: string, from_peak: string) => [
  { what: 'furnace flue', along: '46 ft 6 in', side, from_peak, across: '12 in' },
];
const light = (from_eave: string) => ({
  'survey.lights': 'not rated, held clear',
  'ceiling.lights': [
    { kind: 'light, not rated for contact', along: '12 ft', side: 'back', from_eave, across: '7 in' },
  ],
});

describe('what is entered beyond the edge of the roof is told, not moved to the edge', () => {
  // The cavity is 166 in across, its peak over the middle: 83 in to either eave, the roof rising 15 in at most: 98 in, 8 ft 2 in.
  test.each([
    ['on the slope', { 'roof.obstacles': flue('back', '8 ft 2 in') }, undefined],
    ['just beyond', { 'roof.obstacles': flue('back', '8 ft 2 1/8 in') }, 'roof.obstacles.0.from_peak'],
    ['on the other side', { 'roof.obstacles': flue('front', '8 ft 2 1/8 in') }, 'roof.obstacles.0.from_peak'],
    ['a light at the far eave', light('13 ft 10 in'), undefined],
    ['a light beyond it', light('13 ft 11 in'), 'ceiling.lights.0.from_eave'],
  ])('%s', (_, changes, field) => {
    const [sentence, ...others] = told(exampleWith(changes));
    expect(others).toEqual([]);
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field})`);
  });

  test('half a double home is one slope, as wide as the half', () => {
    const half = { 'home.sections': 'double', 'cavity.shape': 'one-slope' };
    // 166 + 15 = 181 in, which is 15 ft 1 in.
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '15 ft 1 in') }))).toEqual([]);
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '15 ft 2 in') }))[0]).toContain(
      'at most 15 ft 1 in from there',
    );
  });

  test('a measured roof that is level is as long on either side as it is wide', () => {
    const level = {
      'cavity.shape': 'measured',
      'cavity.points': [
        { from_eave: '0 in', depth: '10 in' },
        { from_eave: '13 ft 10 in', depth: '10 in' },
      ],
    };
    expect(told(exampleWith({ ...level, 'roof.obstacles': flue('back', '2 ft') }))).toEqual([]);
    expect(told(exampleWith({ ...level, 'roof.obstacles': flue('front', '2 ft') }))).toEqual([]);
  });
});
