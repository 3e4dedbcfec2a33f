import { expect, test } from 'vitest';
import { unbroken } from '../../src/quantity/unbroken.ts';

// By hand: ~ stands where no line may end.
test.each([
  ['a number and its unit hold together', '6.61 bags', '6.61~bags'],
  ['a weight holds to its unit, and may part from what it is the weight of', '30 lb a bag', '30~lb a bag'],
  ['feet hold to their inches, and these to their fraction', '1 ft 10 1/2 in', '1~ft~10~1/2~in'],
  ['feet alone may part from what follows', '3 ft above the edge', '3~ft above the edge'],
  ['a resistance holds to what it is per', 'R-3.14 per in', 'R-3.14~per~in'],
  ['a weight to its area and its thickness', '14.1 lb/ft² per in', '14.1~lb/ft² per~in'],
  ['both ends of a range hold together', '0.51 lb/ft² to 0.6 lb/ft²', '0.51~lb/ft² to 0.6~lb/ft²'],
  ['a unit of eight characters holds', '100 °F·daysx', '100~°F·daysx'],
  ['one of nine may go to the next line', '100 °F·daysxy', '100 °F·daysxy'],
  ['so may a long unit', '0.1357 Btu/(h·ft²·°F)', '0.1357 Btu/(h·ft²·°F)'],
  ['what has no space is left as it is', 'R-3.73', 'R-3.73'],
  ['nothing is left nothing', '', ''],
])('%s', (_, amount, expected) => {
  expect(unbroken(amount)).toBe(expected.replaceAll('~', '\u00a0'));
});
