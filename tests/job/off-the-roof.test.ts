import { describe, expect, test } from 'vitest';
import { exampleWith, told } from './entries.ts';

const flue = (side: string, from_peak: string) => [
  { what: 'furnace flue', along: '46 ft 6 in', side, from_peak, across: '12 in' },
];
const light = (from_eave: string, along = '12 ft') => ({
  'survey.lights': 'not rated, held clear',
  'ceiling.lights': [
    { kind: 'light, not rated for contact', along, side: 'back', from_eave, across: '7 in' },
  ],
});

/** A cavity whose depths were measured, each at its distance from the eave. */
const measured = (...points: readonly (readonly [from_eave: string, depth: string])[]) => ({
  'cavity.shape': 'measured',
  'cavity.ridge': undefined,
  'cavity.points': points.map(([from_eave, depth]) => ({ from_eave, depth })),
});

describe('what is entered beyond the edge of the roof is told, not moved to the edge', () => {
  // The cavity is 166 in across, its peak over the middle: 83 in to either eave, the roof rising 15 in at most: 98 in, 8 ft 2 in.
  test.each([
    ['on the slope', { 'roof.obstacles': flue('back', '8 ft 2 in') }, undefined],
    ['just beyond', { 'roof.obstacles': flue('back', '8 ft 2 1/8 in') }, 'roof.obstacles.0.from_peak'],
    ['on the other side', { 'roof.obstacles': flue('front', '8 ft 2 1/8 in') }, 'roof.obstacles.0.from_peak'],
    ['a light at the far eave', light('13 ft 10 in'), undefined],
    ['a light beyond it', light('13 ft 11 in'), 'ceiling.lights.0.from_eave'],
    ['a light at the far end', light('4 ft', '66 ft'), undefined],
    ['a light beyond the far end', light('4 ft', '66 ft 1/8 in'), 'ceiling.lights.0.along'],
    ['the first truss at the far end', { 'roof.first_truss': '66 ft' }, undefined],
    ['the first truss beyond it', { 'roof.first_truss': '66 ft 1/8 in' }, 'roof.first_truss'],
    ['the first seam beyond it', { 'roof.first_seam': '66 ft 1/8 in' }, 'roof.first_seam'],
  ])('%s', (_, changes, field) => {
    const [sentence, ...others] = told(exampleWith(changes));
    expect(others).toEqual([]);
    if (field === undefined) expect(sentence).toBeUndefined();
    else expect(sentence).toContain(`(${field})`);
  });

  test.each(['back', 'front'])(
    'measured with its peak off the middle, the longer slope is let pass on either side: %s',
    (side) => {
      // The peak 60 in from the back eave, 106 in from the front one, and 15 in high: 121 in, 10 ft 1 in.
      const peaked = measured(['0 in', '4 in'], ['60 in', '15 in'], ['13 ft 10 in', '4 in']);
      const of = (from_peak: string) =>
        told(exampleWith({ ...peaked, 'roof.obstacles': flue(side, from_peak) }));
      expect(of('10 ft 1 in').filter((each) => each.includes('from_peak'))).toEqual([]);
      expect(of('10 ft 1 1/8 in')[0]).toContain('at most 10 ft 1 in from there');
    },
  );

  test('half a double-section home is one slope, as wide as the half', () => {
    const half = { 'home.sections': 'double', 'cavity.shape': 'one-slope' };
    // 166 + 15 = 181 in, which is 15 ft 1 in.
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '15 ft 1 in') }))).toEqual([]);
    expect(told(exampleWith({ ...half, 'roof.obstacles': flue('front', '15 ft 2 in') }))[0]).toContain(
      'at most 15 ft 1 in from there',
    );
    // And however its depths were measured, the peak of the home is at the marriage line.
    const bulged = measured(['0 in', '4 in'], ['60 in', '15 in'], ['13 ft 10 in', '4 in']);
    expect(
      told(exampleWith({ ...half, ...bulged, 'roof.obstacles': flue('front', '15 ft 2 in') }))[0],
    ).toContain('at most 15 ft 1 in from there');
  });

  test('a measured roof that is level is as long on either side as it is wide', () => {
    const level = measured(['0 in', '10 in'], ['13 ft 10 in', '10 in']);
    expect(told(exampleWith({ ...level, 'roof.obstacles': flue('back', '2 ft') }))).toEqual([]);
    expect(told(exampleWith({ ...level, 'roof.obstacles': flue('front', '2 ft') }))).toEqual([]);
  });
});

describe('what is entered twice is told, since its room would be taken off twice', () => {
  const twice = (what: object, more: object) => [what, { ...what, ...more }];
  const [one] = flue('back', '2 ft');
  const vent = { ...one, what: 'plumbing vent' };
  const [lamp] = light('4 ft')['ceiling.lights'];
  const flues = (more: object) => ({ 'roof.obstacles': twice({ ...one }, more) });
  const lights = (more: object) => ({ ...light('4 ft'), 'ceiling.lights': twice({ ...lamp }, more) });
  test.each<[string, Record<string, unknown>, string | undefined]>([
    ['a flue twice', flues({}), 'roof.obstacles.1.along'],
    [
      'its place in inches, its width another',
      flues({ along: '558 in', across: '10 in' }),
      'roof.obstacles.1.along',
    ],
    ['on the other side', flues({ side: 'front' }), undefined],
    [
      'at the peak, once from either side',
      { 'roof.obstacles': twice({ ...one, from_peak: '0 in' }, { side: 'front' }) },
      'roof.obstacles.1.along',
    ],
    ['farther along', flues({ along: '50 ft' }), undefined],
    ['farther down', flues({ from_peak: '3 ft' }), undefined],
    ['a plumbing vent, which has no ring', { 'roof.obstacles': [one, vent, vent] }, undefined],
    [
      'at one place in either section of a double home',
      { 'home.sections': 'double', 'cavity.shape': 'one-slope', ...flues({ side: 'front' }) },
      undefined,
    ],
    [
      'twice in one section of a double home',
      { 'home.sections': 'double', 'cavity.shape': 'one-slope', ...flues({}) },
      'roof.obstacles.1.along',
    ],
    ['a light twice', lights({}), 'ceiling.lights.1.along'],
    // 166 in across, the peak over the middle: 83 in from the eave.
    [
      'a light below a flue at the peak',
      { ...light('83 in', '46 ft 6 in'), 'roof.obstacles': flue('back', '0 in') },
      undefined,
    ],
    ['two lights', lights({ from_eave: '6 ft' }), undefined],
    // The cavity of the example is 13 ft 10 in wide.
    [
      'a light once from either eave',
      lights({ side: 'front', from_eave: '9 ft 10 in' }),
      'ceiling.lights.1.along',
    ],
  ])('%s', (_, changes, field) => {
    const [sentence] = told(exampleWith(changes));
    if (field === undefined) expect(sentence).toBeUndefined();
    else {
      expect(sentence).toContain(`(${field})`);
      expect(sentence).toMatch(
        field.startsWith('ceiling') ? /a light at .* a second time/ : /a flue at .* a second time/,
      );
    }
  });
});
