import { describe, expect, test } from 'vitest';
import { bareQuantitiesIn } from '../../src/rulebook/bare-quantity.ts';

/** Sentences as people write them, and the numbers with a unit that a rule should stand behind; decided by reading them. */
const sentences: readonly [sentence: string, caught: readonly string[]][] = [
  ['Cut a 6 in hole.', ['6 in']],
  ['Cut a 6in hole.', ['6in']],
  ['Cut a 10-inch square.', ['10-inch']],
  ['A square of 10" is cut.', ['10"']],
  ['A square of 10″ is cut.', ['10″']],
  ['Move it two inches.', ['two inches']],
  ['A two-inch lip.', ['two-inch']],
  ['Keep half inches out of it.', ['half inches']],
  ['It has R-38.', ['R-38']],
  ['It has R38 or R-3.7 an inch.', ['R38', 'R-3.7']],
  ['Load 40 % more.', ['40 %']],
  ['Load 40% more, or 10 percent.', ['40%', '10 percent']],
  ['Bags of 3 1/2 pounds.', ['3 1/2 pounds']],
  ['Bags of 1,500 lb.', ['1,500 lb']],
  ['From 6 to 8 ft.', ['8 ft']],
  ['About ½ in thick.', ['½ in']],
  ['At 75° it sticks.', ['75°']],
  ['Wait 20 minutes, then two hours.', ['20 minutes', 'two hours']],
  ['Blow 12 bags.', ['12 bags']],
  ['Not below 1.25 lb a cubic foot.', ['1.25 lb']],

  ['There is one in the middle.', []],
  ['Put two in each corner.', []],
  ['A home of 1979 with a double section.', []],
  ['Step 2 of the list.', []],
  ['See 24 CFR part 3280 and 1926.501(b).', []],
  ['A foot in the door, a pound of flesh.', []],
  ['Half of it, and twice as many bags.', []],
  ['The number R is not a value.', []],
  ['Hole H2in is a name.', []],
  ['Hold it firmly, one hand on each side.', []],
  ['', []],
];

describe('a number with a unit is caught, other words are let pass', () => {
  test.each(sentences)('%s', (sentence, caught) => {
    expect(bareQuantitiesIn(sentence).map(({ text }) => text)).toEqual(caught);
  });

  test('the place of each is where it starts in the sentence, in order', () => {
    const sentence = 'Two feet, then R-38, then 6 in.';
    expect(bareQuantitiesIn(sentence).map(({ at }) => at)).toEqual([
      sentence.indexOf('Two feet'),
      sentence.indexOf('R-38'),
      sentence.indexOf('6 in'),
    ]);
  });
});
