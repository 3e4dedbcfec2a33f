import { describe, expect, test } from 'vitest';
import { restingOn } from '../../src/rulebook/changed.ts';
import { valueChange } from '../../src/rulebook/changes/judge.ts';
import { FormulaError, rulesIn, workOut } from '../../src/rulebook/formula.ts';
import { type Formula, formulaSchema, type RawRule, type RuleValue } from '../../src/rulebook/schema.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();

const rule = (value: RuleValue): RawRule => ({
  title: 'A thing',
  says: 'It is so.',
  value,
  source: { kind: 'practice' },
  applies_to: 'Every home.',
});

const derived = (formula: Formula, unit = 'in'): RawRule => rule({ kind: 'exact', formula, unit });

const book = (formula: Formula, unit?: string): ReadonlyMap<string, RawRule> =>
  new Map([
    ['a.hole', rule({ kind: 'exact', number: 6, unit: 'in' })],
    ['a.overlap', rule({ kind: 'at-least', number: 2, unit: 'in' })],
    ['a.gap', rule({ kind: 'between', low: 12, high: 16, unit: 'ft' })],
    ['a.share', rule({ kind: 'at-most', number: 10, unit: 'percent' })],
    ['a.metal', derived({ add: [{ rule: 'a.hole' }, { times: [2, { rule: 'a.overlap' }] }] })],
    ['a.sides', rule({ kind: 'one-of', choices: ['back'] })],
    ['a.odd', rule({ kind: 'exact', number: 2, unit: 'furlong' })],
    ['a.x', derived(formula, unit)],
  ]);

/** By hand. */
const worked: readonly [title: string, formula: Formula, unit: string, amount: number][] = [
  ['a number stands for itself', 3, '1', 3],
  [
    '6 in and twice 2 in are 10 in',
    { add: [{ rule: 'a.hole' }, { times: [2, { rule: 'a.overlap' }] }] },
    'in',
    10,
  ],
  [
    'a derived rule builds on a derived rule: 10 in and twice 2 in',
    { add: [{ rule: 'a.metal' }, { times: [2, { rule: 'a.overlap' }] }] },
    'in',
    14,
  ],
  ['the lower end of a range', { rule: 'a.gap', part: 'low' }, 'ft', 12],
  ['the upper end of a range', { rule: 'a.gap', part: 'high' }, 'ft', 16],
  [
    'the result is counted in the unit of the rule: 12 ft are 144 in',
    { rule: 'a.gap', part: 'low' },
    'in',
    144,
  ],
  [
    '16 ft less 12 ft are 4 ft',
    {
      subtract: [
        { rule: 'a.gap', part: 'high' },
        { rule: 'a.gap', part: 'low' },
      ],
    },
    'ft',
    4,
  ],
  ['half of 6 in is 3 in', { divide: [{ rule: 'a.hole' }, 2] }, 'in', 3],
  ['16 ft over 6 in is 32', { divide: [{ rule: 'a.gap', part: 'high' }, { rule: 'a.hole' }] }, '1', 32],
  ['a tenth of 6 in is 0.6 in', { times: [{ rule: 'a.hole' }, { rule: 'a.share' }] }, 'in', 0.6],
];

describe('a derived value is worked out from other rules', () => {
  test.each(worked)('%s', (_, formula, unit, amount) => {
    expect(workOut('a.x', book(formula, unit))).toBeCloseTo(amount, 12);
  });
});

const refused: readonly [title: string, formula: Formula, message: RegExp][] = [
  ['a circle is told with its way', { add: [1, { rule: 'a.x' }] }, /a circle: a\.x -> a\.x/],
  ['a rule that there is not', { rule: 'a.none' }, /"a\.none", which is no rule/],
  ['a rule of words has no value', { rule: 'a.sides' }, /"a\.sides", a one-of/],
  ['an unknown unit is named', { rule: 'a.odd' }, /unknown unit "furlong"/],
  [
    'a range of which neither end is named',
    { add: [1, { rule: 'a.gap' }] },
    /^a\.x: found "a\.gap", a range, by itself, expected one end of it, as part: low or part: high$/,
  ],
  [
    'an end of what is no range',
    { rule: 'a.hole', part: 'high' },
    /^a\.x: found part: high of "a\.hole", a single value, expected the rule without a part$/,
  ],
  [
    'an end of a bound',
    { rule: 'a.overlap', part: 'low' },
    /^a\.x: found part: low of "a\.overlap", a single value, expected the rule without a part$/,
  ],
  [
    'an end of a derived value',
    { rule: 'a.metal', part: 'low' },
    /^a\.x: found part: low of "a\.metal", a single value/,
  ],
];

describe('a formula that can’t be worked out says why', () => {
  test.each(refused)('%s', (_, formula, message) => {
    const attempt = () => workOut('a.x', book(formula));
    expect(attempt).toThrow(FormulaError);
    expect(attempt).toThrow(message);
  });

  test('a circle of two is told from where it starts', () => {
    const rules = new Map([
      ['a.one', derived({ rule: 'a.two' })],
      ['a.two', derived({ rule: 'a.one' })],
    ]);
    expect(() => workOut('a.one', rules)).toThrow('a circle: a.one -> a.two -> a.one');
  });

  test('a result that is not measured in the unit of its rule is refused', () => {
    expect(() => workOut('a.x', book({ rule: 'a.hole' }, 'lb'))).toThrow(/length.*expected a weight/);
  });
});

describe('a formula is read with care', () => {
  test('the rules in it come out in the order they stand', () => {
    expect(
      rulesIn({
        add: [
          { rule: 'b.c' },
          { times: [2, { rule: 'a.b', part: 'low' }] },
          { subtract: [{ rule: 'd.e' }, 1] },
        ],
      }),
    ).toEqual(['b.c', 'a.b', 'd.e']);
  });

  const misshapen: readonly [string, unknown][] = [
    ['an unknown operation', { power: [2, 3] }],
    ['one operand where two are needed', { add: [1] }],
    ['three operands of a subtraction', { subtract: [3, 2, 1] }],
    ['two operations in one', { add: [1, 2], times: [1, 2] }],
    ['an id in the wrong form', { rule: 'Not An Id' }],
    ['text', '2 + 2'],
  ];
  test.each(misshapen)('%s is no formula', (_, given) => {
    expect(formulaSchema.safeParse(given).success).toBe(false);
  });
});

test('what rests on a value by way of another rests on it too', () => {
  // The cap has the size of the hole; the metal overlaps the hole all round, and the membrane the metal.
  const on = restingOn(data, 'access.roof-holes.diameter');
  expect([...on].filter((id) => id.startsWith('patch.layers.')).sort()).toEqual(
    expect.arrayContaining(['patch.layers.membrane-side', 'patch.layers.metal-side']),
  );
  expect([...on]).toContain('access.roof-holes.diameter');
  expect([...on]).not.toContain('patch.layers.overlap');
  expect([...restingOn(data, 'patch.layers.metal-side')]).not.toContain('access.roof-holes.diameter');
});

describe('an amount in another unit is the same amount, to the last place that floating numbers leave of it', () => {
  const inches = (number: number): RuleValue => ({ kind: 'at-most', number, unit: 'in' });
  const millimeters = (number: number): RuleValue => ({ kind: 'at-most', number, unit: 'mm' });
  // An inch is 25.4 mm.
  test.each([0.1, 0.3, 1.1, 2.2, 3.3, 4.7, 7.9, 16])('%s in', (number) => {
    const metric = millimeters(Number((number * 25.4).toPrecision(12)));
    expect(valueChange(inches(number), metric, 'lower is stricter')).toBeUndefined();
    expect(valueChange(metric, inches(number), 'lower is stricter')).toBeUndefined();
    expect(valueChange(inches(number), millimeters(number * 25.4 + 0.001), 'lower is stricter')).toBe(
      'looser',
    );
  });
});
