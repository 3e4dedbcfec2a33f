import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceiling } from '../../src/calc/ceiling/declaration.ts';
import { boards } from '../../src/calc/ceiling/fields.ts';
import { besideLimit, ceilingLoad, loadLimit, ofEngineer } from '../../src/calc/ceiling/load.ts';
import { answer } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { format } from '../../src/quantity/format.ts';
import { parseQuantity } from '../../src/quantity/parse.ts';
import { amountIn, type Quantity, quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const rules = openRulebook(theProject().data);

interface Laid {
  readonly board?: string;
  readonly framing?: number;
  readonly depth: number | Quantity<'length'>;
  readonly density: number | Quantity<'density'>;
  readonly old?: number;
  readonly oldDensity?: number;
}

const load = ({ board = 'gypsum 1/2 in', framing = 16, depth, density, old = 0, oldDensity = 0.5 }: Laid) =>
  ceilingLoad(
    board,
    quantity(framing, 'in'),
    {
      depth: typeof depth === 'number' ? quantity(depth, 'in') : depth,
      density: typeof density === 'number' ? quantity(density, 'lb/ft3') : density,
    },
    old === 0 ? undefined : { depth: quantity(old, 'in'), density: quantity(oldDensity, 'lb/ft3') },
    rules,
  );

/** The fact sheet's limits as the rule holds them; weight by hand: inches over 12, times lb/ft3, old insulation added. */
const judged: readonly [
  title: string,
  laid: Laid,
  total: number,
  limit: number | undefined,
  verdict: string,
][] = [
  ['12 in at 1.5 on 1/2 in board at 16 in', { depth: 12, density: 1.5 }, 1.5, 2.2, 'carries it'],
  ['the same at 24 in', { depth: 12, density: 1.5, framing: 24 }, 1.5, 1.3, 'does not carry it'],
  [
    'the same on 5/8 in board at 24 in',
    { depth: 12, density: 1.5, framing: 24, board: 'gypsum 5/8 in' },
    1.5,
    2.2,
    'carries it',
  ],
  ['with 6 in of old insulation at 0.5', { depth: 12, density: 1.5, old: 6 }, 1.75, 2.2, 'carries it'],
  [
    'framing between two rows takes the wider',
    { depth: 12, density: 1.5, framing: 19.2 },
    1.5,
    1.3,
    'does not carry it',
  ],
  [
    'framing closer than any row takes the first',
    { depth: 12, density: 1.5, framing: 12 },
    1.5,
    2.2,
    'carries it',
  ],
  ['17.6 in at 1.5 is the limit itself', { depth: 17.6, density: 1.5 }, 2.2, 2.2, 'carries it'],
  ['17.7 in at 1.5 is above it', { depth: 17.7, density: 1.5 }, 2.2125, 2.2, 'does not carry it'],
  ['framing beyond the last row', { depth: 1, density: 1, framing: 24.5 }, 1 / 12, undefined, 'unrated'],
  [
    'a board without a published limit',
    { depth: 1, density: 1, board: 'gypsum 3/8 in' },
    1 / 12,
    undefined,
    'unrated',
  ],
];

describe('the weight is held against the published limit', () => {
  test.each(judged)('%s', (_, laid, total, limit, verdict) => {
    const found = load(laid);
    expect(amountIn(found.total, 'lb/ft2')).toBeCloseTo(total, 12);
    expect(found.limit?.amount).toBe(limit);
    expect(found.verdict).toBe(verdict);
  });
});

describe('of the published limit and an engineer’s load the lesser holds', () => {
  // The fact sheet has 2.2 lb/ft2 for half-inch board at 16 in.
  test.each<[engineers: number, holds: number, whose: RegExp]>([
    [2.1, 2.1, /^What the ceiling may carry was given in writing by: R\. Alder\./],
    [2.2, 2.2, /^The published limit of this board is no more than the engineer’s load, and holds\.$/],
    [2.3, 2.2, /^The published limit of this board is no more than the engineer’s load, and holds\.$/],
  ])('%d lb/ft2: %d lb/ft2', (engineers, holds, whose) => {
    const given = { engineer_load: quantity(engineers, 'lb/ft2'), engineer: 'R. Alder' };
    const limit = loadLimit('gypsum 1/2 in', quantity(16, 'in'), rules, given.engineer_load);
    expect(limit?.amount).toBe(holds);
    expect(ofEngineer(given, limit)).toEqual([expect.stringMatching(whose)]);
  });
});

describe('an unrated ceiling has a stop and no limit', () => {
  const rated = ['gypsum 1/2 in', 'gypsum 5/8 in'];
  test.each(boards.filter((board) => !rated.includes(board)))('%s', (board) => {
    expect(load({ board, depth: 1, density: 1 })).toMatchObject({
      verdict: 'unrated',
      limit: undefined,
      highestDensity: undefined,
      greatestDepth: undefined,
      cautions: ['caution.ceiling.unrated'],
    });
  });
  test('the caution of an unrated and of an overloaded ceiling is a stop', () => {
    const { cautions } = theProject().data;
    expect(cautions['caution.ceiling.unrated']?.level).toBe('stop');
    expect(cautions['caution.ceiling.overloaded']?.level).toBe('stop');
    expect(load({ depth: 40, density: 2 }).cautions).toEqual(['caution.ceiling.overloaded']);
  });
});

const board = fc.constantFrom(
  { board: 'gypsum 1/2 in', framing: 16 },
  { board: 'gypsum 1/2 in', framing: 24 },
  { board: 'gypsum 5/8 in', framing: 24 },
);
const depth = fc.integer({ min: 1, max: 8 * 36 }).map((eighths) => eighths / 8);
const density = fc.integer({ min: 20, max: 400 }).map((hundredths) => hundredths / 100);
const old = fc.integer({ min: 0, max: 8 * 8 }).map((eighths) => eighths / 8);
const laid = fc.record({ of: board, depth, density, old }).map(({ of, ...rest }) => ({ ...of, ...rest }));
/** The smallest change that a person could mean. */
const HAIR = 1 + 1e-6;

describe('the highest density and the greatest depth lie on the limit', () => {
  test('put back in, the ceiling just carries it; with a hair more it does not', () => {
    fc.assert(
      fc.property(laid, (each) => {
        const { highestDensity, greatestDepth } = load(each);
        if (!highestDensity || !greatestDepth)
          throw new Error('found no room, expected some: 8 in of old insulation weigh a third of a pound');
        const more = <Q extends Quantity>(q: Q): Q => ({ ...q, amount: q.amount * HAIR });
        return (
          load({ ...each, density: highestDensity }).verdict === 'carries it' &&
          load({ ...each, depth: greatestDepth }).verdict === 'carries it' &&
          load({ ...each, density: more(highestDensity) }).verdict === 'does not carry it' &&
          load({ ...each, depth: more(greatestDepth) }).verdict === 'does not carry it'
        );
      }),
      { numRuns: 2000 },
    );
  });

  test('as they are printed, and typed in again, the ceiling carries them', () => {
    fc.assert(
      fc.property(laid, (each) => {
        const read = answer(
          ceiling,
          {
            board: each.board,
            framing: `${each.framing} in`,
            depth: `${each.depth} in`,
            density: `${each.density} lb/ft3`,
            old_depth: `${each.old} in`,
            old_density: '0.5 lb/ft3',
          },
          rules,
        );
        if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
        const printed = (name: string) => {
          const figure = read.value.figures[name];
          return format(figure?.value as Quantity, figure?.format);
        };
        const dense = parseQuantity(printed('highest_density'), { dimension: 'density' });
        const deep = parseQuantity(printed('greatest_depth'), { dimension: 'length' });
        return (
          load({ ...each, density: dense }).verdict === 'carries it' &&
          load({ ...each, depth: deep }).verdict === 'carries it'
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('old insulation that is too heavy by itself leaves no density and no depth', () => {
    expect(load({ depth: 1, density: 1, framing: 24, old: 36, oldDensity: 0.5 })).toMatchObject({
      verdict: 'does not carry it',
      highestDensity: undefined,
      greatestDepth: undefined,
    });
  });

  test('more depth, density or old insulation never makes a ceiling carry what it did not', () => {
    fc.assert(
      fc.property(laid, fc.double({ min: 1, max: 3, noNaN: true }), (each, more) => {
        if (load(each).verdict === 'carries it') return true;
        const heavier: Laid[] = [
          { ...each, depth: each.depth * more },
          { ...each, density: each.density * more },
          { ...each, old: each.old * more },
        ];
        return heavier.every((laying) => load(laying).verdict === 'does not carry it');
      }),
    );
  });
});

describe('a load is printed so that it is told from its limit', () => {
  // By hand: how many figures it takes until the two numbers differ. 2.2 is the limit of half-inch gypsum at 16 in, in lb/ft2.
  test.each([
    [1.6, 2.2, '1.6 lb/ft²'],
    [2.2, 2.2, '2.2 lb/ft²'],
    [2.2004, 2.2, '2.2004 lb/ft²'],
    [2.19996, 2.2, '2.19996 lb/ft²'],
    [2.204, 2.2, '2.204 lb/ft²'],
    [2.206, 2.2, '2.21 lb/ft²'],
    // Three figures would print 2.2 beside 2.203, and 2.2 beside 2.198: on the other side.
    [2.2049, 2.203, '2.205 lb/ft²'],
    [2.196, 2.198, '2.196 lb/ft²'],
    [1.23456, undefined, '1.23 lb/ft²'],
  ])('%s held against %s: %s', (amount, limit, text) => {
    const held = quantity(amount, 'lb/ft2');
    expect(format(held, besideLimit(held, limit === undefined ? undefined : quantity(limit, 'lb/ft2')))).toBe(
      text,
    );
  });
});

describe('the new fill is told in one way', () => {
  const given = { board: 'gypsum 1/2 in', framing: '16 in' };
  const clashes: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'a weight beside a depth',
      { weight: '1 lb/ft2', depth: '3 in' },
      /found a weight per area beside a depth or density/,
    ],
    [
      'a weight beside a density',
      { weight: '1 lb/ft2', density: '1.5 lb/ft3' },
      /found a weight per area beside a depth or density/,
    ],
    // Whichever of the two were taken, the other, which may be the heavier, would be dropped unsaid.
    [
      'a weight beside both',
      { weight: '3 lb/ft2', depth: '3 in', density: '1.5 lb/ft3' },
      /found a weight per area beside a depth or density/,
    ],
    ['a depth alone', { depth: '3 in' }, /found neither depth and density nor a weight per area/],
    ['nothing', {}, /found neither depth and density nor a weight per area/],
    // Left out unsaid, its weight would not be on the ceiling.
    [
      'a density of old insulation without its depth',
      { weight: '1 lb/ft2', old_density: '8 lb/ft3' },
      /^Depth of the old insulation \(old_depth\): found nothing, and a density of it; expected how deep it lies now, or none\.$/,
    ],
  ];
  test.each(clashes)('%s is one sentence that names the field', (_, entries, says) => {
    const read = answer(ceiling, { ...given, ...entries }, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });

  test('old insulation that nobody entered is told to be counted as none; what is entered as none is not', () => {
    const said = (more: object) => {
      const read = answer(ceiling, { ...given, weight: '1 lb/ft2', ...more }, rules);
      return read.ok ? read.value.remarks : undefined;
    };
    expect(said({})).toEqual(['No old insulation is counted: enter how deep it lies, if there is any.']);
    expect(said({ old_depth: 'none' })).toEqual([]);
    expect(said({ old_depth: 'none', old_density: '8 lb/ft3' })).toEqual([]);
  });

  test('old insulation of unknown density weighs as much as the heavier of the lightest batts: 12 in at 0.51', () => {
    const read = answer(ceiling, { ...given, weight: '1 lb/ft2', old_depth: '12 in' }, rules);
    expect(read.ok && amountIn(read.value.figures.total?.value as Quantity<'load'>, 'lb/ft2')).toBeCloseTo(
      1.51,
      12,
    );
  });
});
