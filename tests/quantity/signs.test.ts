import { expect, test } from 'vitest';
import { withSigns } from '../../src/quantity/signs.ts';

test.each([
  ['an amount', '1.5 lb/ft3', '1.5 lb/ft³'],
  ['an area', '924 ft2', '924 ft²'],
  ['a unit of more words, as it is printed', '0.145 Btu/(h ft2 F)', '0.145 Btu/(h·ft²·°F)'],
  ['the same where its power is raised already', '0.145 Btu/(h ft² F)', '0.145 Btu/(h·ft²·°F)'],
  ['a range below nought', '-2 m2 K/W', '-2 m²·K/W'],
  ['units in a sentence', 'Glass fibre at 1.5 lb/ft3, in 4 ft2.', 'Glass fibre at 1.5 lb/ft³, in 4 ft².'],
  ['a unit without a power, as it is', '70 F', '70 F'],
  ['no unit', 'R-38 of 2', 'R-38 of 2'],
  ['nothing', '', ''],
])('%s', (_, typed, printed) => {
  expect(withSigns(typed)).toBe(printed);
});
