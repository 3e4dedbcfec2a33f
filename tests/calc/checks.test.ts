import { describe, expect, test } from 'vitest';
import { type CheckResult, runCheck } from '../../src/calc/checks/run-check.ts';
import { citedByCheck } from '../../src/rulebook/cited-by-check.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import type { Check } from '../../src/rulebook/schema.ts';
import { theProject } from '../the-project.ts';

const { data, files } = theProject();
const rules = openRulebook(data);

describe('what is published and what was worked by hand comes out', () => {
  test.each(files.checks.map(({ id, entry }) => ({ id, title: entry.title, check: entry })))(
    '$title ($id)',
    ({ check }) => {
      const { trouble, figures, holds } = runCheck(check, rules);
      expect({ trouble, missed: figures.filter((each) => !each.holds) }).toEqual({
        trouble: undefined,
        missed: [],
      });
      const {
        expect: wanted,
        says = [],
        does_not_say = [],
        cautions = [],
        no_cautions = [],
        refuses,
      } = check;
      expect(figures).toHaveLength(
        Object.keys(wanted).length +
          [...says, ...does_not_say, ...cautions, ...no_cautions].length +
          (refuses === undefined ? 0 : 1),
      );
      expect(holds).toBe(true);
    },
  );

  test('every check names its document, or shows its working by hand', () => {
    for (const { entry } of files.checks) {
      const cited = citedByCheck(entry.from);
      if (entry.from.kind === 'hand') expect(entry.from.working.length, entry.title).toBeGreaterThan(20);
      else expect(cited, entry.title).toBeDefined();
      if (cited) expect(data.documents[cited.document], entry.title).toBeDefined();
    }
  });
});

/** The published examples that the calculations are held to: in which document, at which clause, by how many checks at the least. */
const published: readonly [calculation: string, document: string, clause: RegExp, least: number][] = [
  ['restricted-edge', 'cfr-24-3280', /example/, 1],
  ['tapered-transmittance', 'wac-51-11c', /A102\.2\.6\(1\)/, 4],
  ['tapered-transmittance', 'wac-51-11c', /A102\.2\.6\(2\)/, 4],
  ['tapered-transmittance', 'wac-51-11c', /uniform/, 6],
  ['layers', 'ashrae-fundamentals-27', /example 2/, 2],
  ['layers', 'ashrae-fundamentals-27', /example 3, parallel/, 1],
  ['layers', 'ashrae-fundamentals-27', /example 3, isothermal/, 2],
  ['moisture', 'ashrae-fundamentals-27', /example 8/, 3],
  ['dew-point', 'ashrae-fundamentals-2017-1', /table 3/, 4],
  ['dew-point', 'ashrae-fundamentals-2017-1', /example 1/, 1],
  ['fill', 'doe-loose-fill', /inches at R-38/, 2],
  ['fill', 'doe-loose-fill', /R per inch and density/, 12],
  ['ceiling-load', 'doe-loose-fill', /density and weight at R-38$/, 6],
  ['ceiling-load', 'doe-loose-fill', /loose fills, rows on ceiling board/, 9],
  ['ceiling-load', 'doe-loose-fill', /loose fills, weight at R-38 and the rows/, 18],
  ['savings', 'penn-state-energy', /./, 1],
  ['present-worth', 'nist-135', /factor/, 4],
  ['fresh-air', 'ashrae-62-2', /table 4\.1a/, 10],
  ['noise-dose', 'cfr-29-1926', /1926\.52\(d\)\(2\)\(iii\)/, 1],
  ['sheet-weight', 'steel-gauge', /0\.1345 in/, 1],
  ['fuel-cost', 'eia-heat-contents', /comparison/, 2],
  ['fuel-cost', 'eia-carbon', /from .* kg/, 2],
  ['ceiling-load', 'ornl-roof-cavity', /./, 1],
  ['sealant', 'sealant-coverage', /10\.1 fl oz/, 2],
  ['fresh-air', 'cfr-24-3280', /3280\.103\(b\)/, 3],
  // Every cell of the printed table: six sizes, two kinds, eight flows.
  ['exhaust-duct', 'irc', /^M1506\.2, table$/, 96],
  ['cavity-ventilation', 'cfr-24-3280', /3280\.504\(d\)\(1\)/, 1],
  ['line-clearance', 'cfr-29-1910', /1910\.333\(c\)\(3\)/, 1],
];

describe('each published example is a check that names its document', () => {
  test.each(published)('%s: %s, %s', (calculation, document, clause, least) => {
    const naming = files.checks.filter(({ entry }) => {
      const cited = citedByCheck(entry.from);
      return entry.calculation === calculation && cited?.document === document && clause.test(cited.clause);
    });
    expect(naming.length).toBeGreaterThanOrEqual(least);
  });
});

/** A check that holds; by hand: 130 x 1.5 = 195 lb, over 30 = 6.5 bags. */
const sound: Check = {
  title: 'A space of 130 ft3',
  calculation: 'fill',
  given: { material: 'glass fibre', volume: '130 ft3', density: '1.5 lb/ft3', bag_weight: '30 lb/bag' },
  expect: { weight: '195 lb', bags: '6.5 bag' },
  from: { kind: 'hand', working: '130 x 1.5 = 195 lb. 195/30 = 6.5.' },
};
const ceiling: Check = {
  ...sound,
  calculation: 'ceiling-load',
  given: { board: 'gypsum 1/2 in', framing: '16 in', weight: '1 lb/ft2' },
  expect: { verdict: 'carries it' },
};

/** Everything a failing check says, on one line. */
const told = ({ trouble, figures }: CheckResult): string =>
  [
    trouble ?? '',
    ...figures
      .filter(({ holds }) => !holds)
      .map((each) => `${each.figure}: found ${each.found}, expected ${each.expected}`),
  ]
    .filter(Boolean)
    .join('; ');

const failing: readonly [title: string, check: Check, says: RegExp][] = [
  [
    'a value that does not come out',
    { ...sound, expect: { weight: '196 lb' } },
    /^weight: found 195 lb, expected 196 lb$/,
  ],
  [
    'one wrong value among right ones',
    { ...sound, expect: { weight: '195 lb', bags: '7 bag' } },
    /^bags: found 6\.5 bags, expected 7 bag$/,
  ],
  [
    'a value in another unit, a little off',
    { ...sound, expect: { weight: '88.4 kg' } },
    /^weight: found 88\.45\d* kg, expected 88\.4 kg$/,
  ],
  [
    'a value off by a little more than its tolerance',
    { ...sound, expect: { weight: '196 lb' }, tolerance: '0.9 lb' },
    /^weight: found 195 lb/,
  ],
  [
    'a value off by a little more than its share',
    { ...sound, expect: { weight: '200 lb' }, tolerance: '2.4 %' },
    /^weight: found 195 lb/,
  ],
  [
    'a tolerance that can’t be read',
    { ...sound, tolerance: 'about' },
    /^weight: found "about", expected a weight/,
  ],
  [
    'a figure that there is not',
    { ...sound, expect: { wieght: '195 lb' } },
    /^wieght: found no such figure; did you mean "weight"\?/,
  ],
  [
    'a figure that is like none',
    { ...sound, expect: { temperature: '20 lb' } },
    /^temperature: found no such figure, /,
  ],
  [
    'a value that measures something else',
    { ...sound, expect: { weight: '195 ft' } },
    /^weight: found "195 ft" \(length\), expected a weight/,
  ],
  ['a value without its unit', { ...sound, expect: { weight: 195 } }, /no unit/],
  [
    'the wrong word',
    { ...ceiling, expect: { verdict: 'does not carry it' } },
    /^verdict: found carries it, expected does not carry it$/,
  ],
  [
    'a truth for a word',
    { ...ceiling, expect: { verdict: true } },
    /^verdict: found carries it, expected true$/,
  ],
  [
    'a calculation that there is not',
    { ...sound, calculation: 'filling' },
    /^found no calculation "filling", expected one of cavity-section, hole-layout, fill, ceiling-load, /,
  ],
  [
    'an entry that can’t be read',
    { ...sound, given: { ...sound.given, density: '1.5' } },
    /^Density wanted \(density\): found "1\.5", a number with no unit; expected /,
  ],
  [
    'an entry that there is not',
    { ...sound, given: { ...sound.given, volum: '1 ft3' } },
    /^Unknown entry \(volum\): found the unknown key "volum"; expected "volume"\.$/,
  ],
  [
    'an entry that is left out',
    { ...sound, given: { volume: '130 ft3' } },
    /Material \(material\): found nothing.*Density wanted.*Net weight of a bag/,
  ],
  [
    'entries that clash',
    { ...ceiling, given: { ...ceiling.given, depth: '3 in' } },
    /^Depth of the new fill \(depth\): found a weight per area beside/,
  ],
];

describe('a check can fail, and says why', () => {
  test('the check that the failing ones are made from holds', () => {
    expect(runCheck(sound, rules).holds).toBe(true);
    expect(runCheck(ceiling, rules).holds).toBe(true);
  });

  test.each(failing)('%s', (_, check, says) => {
    const result = runCheck(check, rules);
    expect(result.holds).toBe(false);
    expect(told(result)).toMatch(says);
  });

  test('a check that expects nothing does not hold', () => {
    expect(runCheck({ ...sound, expect: {} }, rules).holds).toBe(false);
  });
});

/** Two fills of a box: too few, so a caution stands; of clashing entries none is worked. */
const fewFills: Check = {
  ...sound,
  calculation: 'test-box',
  given: {
    length: '1 ft',
    width: '1 ft',
    height: '1 ft',
    fills: [
      { gross: '1.5 lb', tare: '0 lb' },
      { gross: '1.5 lb', tare: '0 lb' },
    ],
    target: '1.5 lb/ft3',
  },
  expect: {},
};
const [few, light] = ['caution.machine.few-fills', 'caution.machine.light'];
const clashing = { ...ceiling.given, depth: '3 in' };

describe('a check may hold words, cautions and a refusal', () => {
  test.each<[title: string, more: Partial<Check>, said: string]>([
    ['a caution that stands', { cautions: [few] }, ''],
    [
      'a caution that does not stand',
      { cautions: [light] },
      'cautions: found no caution.machine.light, expected caution.machine.light',
    ],
    ['no caution where none stands', { no_cautions: [light] }, ''],
    [
      'no caution where one stands',
      { no_cautions: [few] },
      'cautions: found caution.machine.few-fills, expected no caution.machine.few-fills',
    ],
    ['words that a remark says', { says: ['3 fills that are asked for'] }, ''],
    ['words that no remark says', { does_not_say: ['4 fills'] }, ''],
    [
      'words that a remark says, and must not',
      { does_not_say: ['3 fills that are asked for'] },
      'remarks: found Of the 3 fills that are asked for, 2 were weighed., expected not "3 fills that are asked for"',
    ],
    ['a cell of a table', { expect: { 'fills.2.net': '1.5 lb' } }, ''],
    [
      'a cell of a table that is another',
      { expect: { 'fills.2.net': '1.6 lb' } },
      'fills.2.net: found 1.5 lb, expected 1.6 lb',
    ],
    [
      'a row of a table that there is not',
      { expect: { 'fills.3.net': '1.5 lb' } },
      'fills.3.net: found no such figure, expected 1.5 lb',
    ],
    [
      'a refusal of entries that can be worked',
      { refuses: 'a depth' },
      'refusal: found an answer, expected a depth',
    ],
    [
      'a refusal of entries that clash',
      { calculation: 'ceiling-load', given: clashing, refuses: 'a weight per area beside a depth' },
      '',
    ],
  ])('%s', (_, more, said) => {
    const result = runCheck({ ...fewFills, ...more }, rules);
    expect(told(result)).toBe(said);
    expect(result.holds).toBe(said === '');
  });

  test('words that the refusal does not say', () => {
    const result = runCheck({ ...ceiling, given: clashing, expect: {}, refuses: 'too deep' }, rules);
    expect(result.holds).toBe(false);
    expect(told(result)).toMatch(/^refusal: found Depth of the new fill \(depth\): .*, expected too deep$/);
  });
});

/** By hand: 195 lb is 5 lb, which is 2.5 %, below 200 lb. */
const allowed: readonly [tolerance: string | undefined, expected: string, holds: boolean][] = [
  ['5 lb', '200 lb', true],
  ['5', '200 lb', true],
  ['4.99 lb', '200 lb', false],
  ['2.5 %', '200 lb', true],
  ['2.49 %', '200 lb', false],
  ['0 lb', '195 lb', true],
  [undefined, '195 lb', true],
  [undefined, '195.0001 lb', false],
  [' 2.5 % ', '200 lb', true],
  ['2.5   %', '200 lb', true],
  ['2.5%', '200 lb', true],
  ['2.5 % or so', '200 lb', false],
];

describe('a tolerance is an amount or a share of what is expected', () => {
  test.each(allowed)('%s about %s', (tolerance, expected, holds) => {
    const check = {
      ...sound,
      expect: { weight: expected },
      ...(tolerance === undefined ? {} : { tolerance }),
    };
    expect(runCheck(check, rules).holds).toBe(holds);
  });
});
