import { describe, expect, test } from 'vitest';
import { cavity } from '../../../src/calc/cavity/declaration.ts';
import { complaints, printed } from '../told.ts';

/** A roof of two slopes, 3 in at the eave, 15 in at the ridge, 160 in wide. */
const roof = { shape: 'two-slope', width: '160 in', eave: '3 in', ridge: '15 in' };

describe('a place beyond the other eave is refused where it was typed', () => {
  test.each([
    {
      title: 'the place of the depth',
      more: { at: '161 in' },
      says: 'Depth wanted at (at): found 13 ft 5 in; expected a place inside the cavity, which is 13 ft 4 in wide.',
    },
    {
      title: 'the second space kept open, not the first',
      more: {
        length: '20 ft',
        kept_open: [
          { across: '9 in', at: '5 ft' },
          { across: '9 in', at: '14 ft' },
        ],
      },
      says: 'Its place, from the eave (space kept open 2) (kept_open.1.at): found 14 ft; expected a place inside the cavity, which is 13 ft 4 in wide.',
    },
  ])('$title', ({ more, says }) => expect(complaints(cavity, { ...roof, ...more })).toEqual([says]));

  test.each([
    { title: 'the other eave itself', more: { at: '160 in' } },
    { title: 'the eave it is measured from', more: { at: '0 in' } },
    { title: 'no place, and nothing kept open', more: {} },
  ])('$title is taken', ({ more }) => expect(complaints(cavity, { ...roof, ...more })).toEqual([]));
});

// By hand: 3 in at either eave, 15 in at 80 in; at a quarter of the width half way up, 9 in. Mean depth (3 + 15) / 2 = 9 in.
test.each([
  ['0 in', '3 in'],
  ['40 in', '9 in'],
  ['80 in', '1 ft 3 in'],
  ['120 in', '9 in'],
  ['160 in', '3 in'],
])('two slopes: at %s the cavity is %s deep', (at, depth) => {
  expect(printed(cavity, { ...roof, at }).figures.depth_at).toBe(depth);
});
