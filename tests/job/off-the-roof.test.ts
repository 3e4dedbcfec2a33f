import { describe, expect, test } from 'vitest';
import { exampleWith, told } from './entries.ts';

const flue = (side: string, from_peak: string) => [
  { what: 'furnace flue', along: '46 ft 6 in', side, from_peak, across: '12 in' },
];
const light = (from_eave: string) => [
  { kind: 'light, not rated for contact', along: '12 ft', side: 'back', from_eave, across: '7 in' },
];

describe('what is entered beyond the edge of the roof is told, not moved to the edge', () => {
  // The cavity is 166 in across, its peak over the middle: 83 in to either eave, the roof rising 15 in at most. hypot(83, 15) = 84.34 in.
  test.each([
    ['on the slope', { 'roof.obstacles': flue('back', '6 ft 11 in') }, undefined],
    ['just beyond', { 'roof.obstacles': flue('back', '7 ft 1 in') }, 'roof.obstacles.0.from_peak'],
    ['on the other side', { 'roof.obstacles': flue('front', '7 ft 1 in') }, 'roof.obstacles.0.from_peak'],
    ['a light at the far eave', { 'ceiling.lights': light('13 ft 10 in') }, undefined],
    ['a light beyond it', { 'ceiling.lights': light('13 ft 11 in') }, 'ceiling.lights.0.from_eave'],
  ])('%s', (_, changes, field) => {
    const [sentence, ...others] = told(exampleWith(changes));
    expect(others).toEqual([]);
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field})`);
  });

  test('half a double home is one slope, as wide as the half', () => {
    const half = { 'home.sections': 'double', 'cavity.shape': 'one-slope' };
    // hypot(166, 15) = 166.68 in, which is 13 ft 10.7 in.
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '13 ft 10 in') }))).toEqual([]);
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '13 ft 11 in') }))[0]).toContain(
      'at most 13 ft 10 5/8 in from there',
    );
  });
});
