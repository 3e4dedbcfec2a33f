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
  ['Eleven feet, or twenty-seven pounds.', ['Eleven feet', 'seven pounds']],
  ['Not thirteen, fourteen, seventeen, eighteen or nineteen bags.', ['nineteen bags']],
  [
    'At seventy degrees, eighty degrees or ninety degrees.',
    ['seventy degrees', 'eighty degrees', 'ninety degrees'],
  ],
  ['Two thousand pounds, a dozen bags.', ['thousand pounds', 'dozen bags']],
  ['Zero volts. A quarter inch.', ['Zero volts', 'quarter inch']],
  [
    'Half an inch, a third of an hour, a quarter of a pound.',
    ['Half an inch', 'third of an hour', 'quarter of a pound'],
  ],
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
  ['Wait two hours, then 20 minutes.', ['two hours', '20 minutes']],
  ['Blow 12 bags.', ['12 bags']],
  ['It resists 19 h ft2 F/Btu.', ['19 h ft2 F/Btu']],
  ['Not below 1.25 lb a cubic foot.', ['1.25 lb']],
  ['Not below 1.25 lb/ft³ or 20 kg/m3.', ['1.25 lb/ft³', '20 kg/m3']],
  ['Above 50 kV, and 750 V at most.', ['50 kV', '750 V']],
  ['A 15-amp circuit of 120 volts.', ['15-amp', '120 volts']],
  ['In gusts of 25 mph.', ['25 mph']],
  ['At 90 F or 32 °C; 90 degrees is hot.', ['90 F', '32 °C', '90 degrees']],
  ['Burns 2 gal, 3 gallons, 9 kWh or 4 kilowatt-hours.', ['2 gal', '3 gallons', '9 kWh', '4 kilowatt-hours']],
  ['For 20 min, for 8 h, for 30 seconds.', ['20 min', '8 h', '30 seconds']],
  ['More than 5 mg/m3 of dust, or 1 f/cc.', ['5 mg/m3', '1 f/cc']],
  ['A gauge of 30 psi, of 50 Pa.', ['30 psi', '50 Pa']],
  ['Order 10 yd, or ten yards.', ['10 yd', 'ten yards']],
  ['Of 3 in w.c. and 1 perm.', ['3 in w.c.', '1 perm']],
  ['It costs $1,800 or $2.50 a gallon.', ['$1,800', '$2.50']],
  ['At 350 ft/min, 120 cfm.', ['350 ft/min', '120 cfm']],
  ['A loss of 12 Btu/(h·°F), 3 W and 2 million Btu.', ['12 Btu/(h·°F)', '3 W', '2 million Btu']],
  ['A noise of 85 dBA.', ['85 dBA']],
  ['Of 30 lbs in 2 hrs, 40 pcf, 5 meters.', ['30 lbs', '2 hrs', '40 pcf', '5 meters']],
  ['A squirt of 10 fl oz, or 10 ounces.', ['10 fl oz', '10 ounces']],
  ['Keep .5 in off (.5 in).', ['.5 in', '.5 in']],
  ['Of 4 oz and four oz in all.', ['4 oz', 'four oz']],
  ['Pull with 40#, or 40 # at most.', ['40#', '40 #']],
  ['A sheet of 6 mil, or six mils.', ['6 mil', 'six mils']],
  ['Of 20 A, 7.5 A and 15-A.', ['20 A', '7.5 A', '15-A']],
  ['A heater of 9 kW.', ['9 kW']],
  [
    'It has R 19, R of 38, an R value of 11 or R-values of 30.',
    ['R 19', 'R of 38', 'R value of 11', 'R-values of 30'],
  ],
  ['Keep 3 **in** off.', ['3 **in']],
  ['Keep **3** in, _4 in_ or `5` in off.', ['3** in', '4 in', '5` in']],
  ['Keep 3&nbsp;in or 4&#160;in off.', ['3&nbsp;in', '4&#160;in']],
  ['Keep 3\u00a0in or 4\u202fin off.', ['3\u00a0in', '4\u202fin']],
  ['Keep ３ in or １０．５ in off.', ['３ in', '１０．５ in']],
  ['A 10‑inch square, 6–8 ft off.', ['10‑inch', '6–8 ft']],
  ['About 1½ in, 1 ½ in or 1 1⁄2 in.', ['1½ in', '1 ½ in', '1 1⁄2 in']],

  ['There is one in the middle.', []],
  ['Put two in each corner.', []],
  ['A home of 1979 with a double section.', []],
  ['Step 2 of the list.', []],
  ['See 24 CFR part 3280 and 1926.501(b).', []],
  ['A foot in the door, a pound of flesh.', []],
  ['Half of it, and twice as many bags.', []],
  ['The number R is not a value.', []],
  ['Hole H2in is a name.', []],
  ['Homes of the 1970s, or of the 1970’s.', []],
  ['Look at “step 2” and ‘step 3’ again.', []],
  ['Drive 4 screws about 3 holes in 2 pushes.', []],
  ['Two million homes, and 2 million more.', []],
  ['Take option 2 v 3.', []],
  ['Homes built until 1976. A later one is marked.', []],
  ['An extinguisher of 2-A:10-B:C.', []],
  ['Homes of 1976 – in the north more of them.', []],
  ['Drive 5 #8 screws.', []],
  ['Step_2_a, or 3* as many; see *in* 1979.', []],
  ['One push, two screws, one second try.', ['one second']],
  ['Hold it firmly, one hand on each side.', []],
  ['A thousand homes, half of a wall, a quarter turn.', []],
  ['', []],
];

describe('a number with a unit is caught, other words are let pass', () => {
  test.each(sentences)('%s', (sentence, caught) => {
    expect(bareQuantitiesIn(sentence).map(({ text }) => text)).toEqual(caught);
  });

  test.each<[sentence: string, measured: string]>([
    ['Keep half an inch off.', 'length'],
    ['Of .5 in.', 'length'],
    ['A sheet of 6 mils.', 'length'],
    ['Two yards off.', 'length'],
    ['Of 4 oz.', 'weight'],
    ['Of 40#.', 'weight'],
    ['Of 3 **in**.', 'length'],
    ['Up to R-19.', 'thermal resistance'],
    ['It resists 19 h ft2 F/Btu.', 'thermal resistance'],
    ['It costs $5.', 'money'],
    ['A heater of 9 kW.', 'heat flow'],
  ])('of "%s" the number is told as a %s', (sentence, measured) => {
    expect(bareQuantitiesIn(sentence)).toMatchObject([{ dimension: measured }]);
  });
  test('of amperes the rulebook has no kind of value', () => {
    expect(bareQuantitiesIn('Of 20 A.')).toMatchObject([{ dimension: undefined }]);
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
