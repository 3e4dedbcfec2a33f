import { expect, test } from 'vitest';
import { inQuartersText } from '../../../src/islands/fill-log/quarters.ts';
import { quantity } from '../../../src/quantity/quantity.ts';

// By hand: an eighth and more goes up to the next quarter.
test.each([
  ['nothing', 0, '0 bags'],
  ['hardly anything is not nothing', 0.01, 'less than 1/4 bag'],
  ['just below an eighth', 0.124, 'less than 1/4 bag'],
  ['an eighth', 0.125, '1/4 bag'],
  ['a quarter', 0.25, '1/4 bag'],
  ['one', 1, '1 bag'],
  ['just above one', 1.2, '1 1/4 bags'],
  ['a count', 10.25, '10 1/4 bags'],
  ['what a plan comes to, beside a count', 25.4, '25 1/2 bags'],
  ['the same, less', 25.37, '25 1/4 bags'],
])('%s', (_, amount, words) => {
  expect(inQuartersText(quantity(amount, 'bag'))).toBe(words);
});
