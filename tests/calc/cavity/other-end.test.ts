import { expect, test } from 'vitest';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { quantity } from '../../../src/quantity/quantity.ts';

const inches = (amount: number) => quantity(amount, 'in');

/** Two depths, the last so many inches off the far end of a cavity 166 in wide. */
const lastOff = (off: number) => () =>
  cavitySection({
    shape: 'measured',
    width: inches(166),
    eave: undefined,
    ridge: undefined,
    points: [
      { from_eave: inches(0), depth: inches(4) },
      { from_eave: inches(166 + off), depth: inches(15) },
    ],
  });

test.each([0, 1 / 16, -1 / 16])(
  'a depth measured %s in off the far end, no more than a tape shows, is at it',
  (off) => {
    expect(lastOff(off)).not.toThrow();
  },
);

test.each([1 / 8, -1 / 8])('one that is %s in off is not', (off) => {
  expect(lastOff(off)).toThrow();
});
