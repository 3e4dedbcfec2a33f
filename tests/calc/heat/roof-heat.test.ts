import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boards } from '../../../src/calc/ceiling/fields.ts';
import { answer, type Figure } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { heat } from '../../../src/calc/heat/declaration.ts';
import { oldInsulation } from '../../../src/calc/heat/old-insulation.ts';
import { uniformResistance } from '../../../src/calc/heat/uniform.ts';
import { format } from '../../../src/quantity/format.ts';
import { amountIn, type Quantity, quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { within } from '../quadrature.ts';

/** The amount of a figure; none where there is no such figure, so that nothing holds of it. */
const amountOf = (figure: Figure | undefined): number =>
  typeof figure?.value === 'object' ? figure.value.amount : Number.NaN;

const { data } = theProject();
const rules = openRulebook(data);

type Entries = Readonly<Record<string, unknown>>;

const slopes: Entries = {
  shape: 'two-slope',
  width: '14 ft',
  eave: '3 in',
  ridge: '15 in',
  board: 'gypsum 1/2 in',
  material: 'glass fibre',
  label_r_per_inch: '3.5 R per in',
  framing_share: 'the federal share of the ceiling',
};

const answered = (entries: Entries) => {
  const read = answer(heat, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

const figure = (entries: Entries, name: string): Quantity => {
  const value = answered(entries).figures[name]?.value;
  if (value === undefined || typeof value === 'string') throw new Error(`no quantity "${name}"`);
  return value;
};
const resistance = (entries: Entries, name: string): number =>
  amountIn(figure(entries, name) as Quantity<'thermal resistance'>, 'h ft2 F/Btu');

describe('the ceiling board', () => {
  /** The handbook's rounded figures for k 0.16 W/(m K), to half of the last place. */
  const printed: readonly [board: (typeof boards)[number], r: number][] = [
    ['gypsum 5/16 in', 0.28],
    ['gypsum 3/8 in', 0.34],
    ['gypsum 1/2 in', 0.45],
    ['gypsum 5/8 in', 0.56],
  ];
  test.each(printed)('%s has R-%d', (board, r) => {
    const { board: found, remarks } = uniformResistance(board, undefined, rules);
    expect(Math.abs(amountIn(found, 'h ft2 F/Btu') - r)).toBeLessThanOrEqual(0.005);
    expect(remarks).toEqual([]);
  });

  test('half an inch of wood-fibre panel has half of R-2.49', () => {
    const { board } = uniformResistance('wood-fibre panel', quantity(0.5, 'in'), rules);
    expect(amountIn(board, 'h ft2 F/Btu')).toBeCloseTo(1.245, 12);
  });

  test.each(['wood-fibre panel', 'other or not known'] as const)(
    '%s without a thickness gets none, and says so',
    (board) => {
      const { board: found, remarks } = uniformResistance(board, undefined, rules);
      expect(found.amount).toBe(0);
      expect(remarks.map(remarkText)).toEqual([expect.stringMatching(/gets no R, on the safe side/)]);
    },
  );
});

test.each<[title: string, depth: Quantity<'length'> | undefined]>([
  ['not told', undefined],
  ['told as a depth of nothing', quantity(0, 'in')],
])('there is no old insulation where it is %s', (_, depth) => {
  expect(oldInsulation({ depth, condition: undefined, pressedDepth: undefined }, rules)).toBeUndefined();
});

describe('the whole roof', () => {
  test('by hand: two slopes of R 11.73 to 53.73, against a truss of wood', () => {
    const rc = 0.61 + 0.17 + 0.0127 / 0.16 / 0.17611018368230585;
    const between = Math.log((rc + 52.5) / (rc + 10.5)) / 42;
    // Two chords are 3 in of wood, so the truss has R0 = rc + 3.33 at the eave and 42 more at the ridge.
    const through = Math.log((rc + 3.33 + 42) / (rc + 3.33)) / 42;
    const whole = 0.9 * between + 0.1 * through;
    expect(within(1e-9, resistance(slopes, 'cavity_resistance'), 1 / between)).toBe(true);
    expect(within(1e-9, resistance(slopes, 'resistance_after'), 1 / whole)).toBe(true);
  });

  test('the answer stands first, then before, then what the mean depth would claim', () => {
    expect(Object.keys(answered(slopes).figures).slice(0, 3)).toEqual([
      'resistance_after',
      'resistance_before',
      'naive_after',
    ]);
  });

  // By hand: 0.61 + 0.45 + 8 × 3.5 + 0.17 = 29.2, wherever it is asked for.
  test('a level cavity without old insulation is told neither of thin places nor of what lies there', () => {
    const [whyTheyDiffer, stillAir] = answered({
      ...slopes,
      shape: 'level',
      eave: '8 in',
      ridge: '',
    }).remarks.map(remarkText);
    expect(whyTheyDiffer).toMatch(
      /^The mean depth would claim R-29\.2\. It is as deep everywhere, so the cross-section gives the same; /,
    );
    expect(stillAir).toMatch(/^Before, the air above the ceiling gets no R/);
  });

  test('says why its R is less than the mean depth claims, and what a still air space would add', () => {
    const { remarks } = answered(slopes);
    expect(remarks.map(remarkText)[0]).toMatch(
      /mean depth would claim R-32\.7\. .* cross-section gives R-27\.6; .* roof has R-26\.\d/,
    );
    expect(remarks.map(remarkText)[1]).toMatch(/leaks.*R-0\.85 to R-0\.97/);
    const unknown = answered({ ...slopes, board: 'other or not known' }).remarks.map(remarkText);
    expect(unknown[0]).toMatch(/^The ceiling board gets no R, on the safe side: /);
    expect(unknown.slice(1)).toHaveLength(remarks.length);
  });

  test('never shows its R without the caution that it is not the R of a receipt', () => {
    expect(answered(slopes).cautions).toContain('caution.roof-heat.not-a-receipt');
  });

  test('our own estimate of R per inch brings its caution and its spread with it', () => {
    const { label_r_per_inch: _, ...rest } = slopes;
    const { cautions, figures } = answered({ ...rest, density: '1.5 lb/ft3' });
    expect(cautions).toContain('caution.fill.estimate');
    const [low, mid, high] = ['resistance_low', 'resistance_after', 'resistance_high'].map((name) =>
      amountOf(figures[name]),
    );
    expect(low).toBeLessThan(mid ?? 0);
    expect(mid).toBeLessThan(high ?? 0);
  });

  test.each([
    ['zone 1', '0.116 Btu/(h·ft²·°F)'],
    ['zone 2', '0.096 Btu/(h·ft²·°F)'],
    ['zone 3', '0.079 Btu/(h·ft²·°F)'],
  ])('the limit of %s stands beside it as a yardstick only', (energy_zone, limit) => {
    const { remarks, figures } = answered({ ...slopes, energy_zone });
    expect(format(figures.whole_home_limit?.value as Quantity)).toBe(limit);
    expect(remarks.map(remarkText).at(-1)).toMatch(
      /whole envelope of a new home, not on its ceiling.*says nothing of the whole home/,
    );
  });

  /** By the working: or so of films and board, and 3.5 an inch of 9 in on the mean, is far above the 1/0.079 of the limit. */
  test.each([
    ['a deep roof', {}, 'below'],
    ['a roof of an inch', { eave: '1 in', ridge: '1 in' }, 'above'],
  ])('%s lies on its side of the limit', (_, more, side) => {
    expect(
      answered({ ...slopes, energy_zone: 'zone 3', ...more })
        .remarks.map(remarkText)
        .at(-1),
    ).toMatch(`, lies ${side} it;`);
  });

  /**
   * The federal table leaves blown fill a share of its nominal R, and the films and the ceiling add theirs. By hand, a roof of 3.5 in to 14 in
   * and a nominal 10 in: 35 % of depth at the edge, for which the table has 62 %. Nominal R: 3.5 x 10; with 2 in of old at 3 an inch 3 x 2 + 3.5 x 8; with old
   * insulation as deep as that or deeper 3 x 10.
   */
  const restrictions: readonly [what: string, more: Entries, nominal: number][] = [
    ['without old insulation', {}, 35],
    ['with 2 in of it', { old_depth: '2 in', old_r_per_inch: '3 R per in' }, 34],
    ['with 10 in of it', { old_depth: '10 in', old_r_per_inch: '3 R per in' }, 30],
    ['with 12 in of it', { old_depth: '12 in', old_r_per_inch: '3 R per in' }, 30],
  ];
  test.each(restrictions)('the restricted part by the federal table, %s', (_, more, nominal) => {
    const entries = { ...slopes, eave: '3.5 in', ridge: '14 in', nominal_depth: '10 in', ...more };
    const films = amountIn(uniformResistance('gypsum 1/2 in', undefined, rules).total, 'h ft2 F/Btu');
    expect(resistance(entries, 'restricted_by_table')).toBeCloseTo(films + 0.62 * nominal, 9);
    // From 3.5 in to 10 in is 6.5 in of the 10.5 in that each slope rises.
    expect(amountIn(figure(entries, 'restricted_share') as Quantity<'number'>, '1')).toBeCloseTo(
      6.5 / 10.5,
      8,
    );
    expect(amountIn(figure(entries, 'restricted_ratio') as Quantity<'number'>, '1')).toBeCloseTo(0.35, 12);
  });

  test('a level roof at its nominal depth is restricted nowhere', () => {
    const { figures } = answered({ ...slopes, shape: 'level', eave: '9 in', ridge: '' });
    expect(Object.keys(figures).filter((name) => name.startsWith('restricted'))).toEqual([]);
  });

  test('a roof whose nominal depth is that of its ridge alone, in another unit, is restricted all over', () => {
    expect(
      amountIn(
        figure({ ...slopes, nominal_depth: '38.1 cm' }, 'restricted_share') as Quantity<'number'>,
        '1',
      ),
    ).toBeCloseTo(1, 8);
  });
});

const clashes: readonly [title: string, entries: Entries, says: RegExp][] = [
  [
    'a nominal depth that the roof has nowhere: the table would leave its share of an R that is never there',
    { ...slopes, nominal_depth: '15 1/8 in' },
    /\(nominal_depth\): found 1 ft 3 1\/8 in; expected no more than the cavity’s 1 ft 3 in, or the insulation has its full R nowhere\.$/,
  ],
  [
    'no R per inch and no density',
    { ...slopes, label_r_per_inch: '' },
    /\(label_r_per_inch\): found neither an R per inch nor a density; expected one of the two/,
  ],
  [
    'a density for which nothing is published',
    { ...slopes, label_r_per_inch: '', density: '7 lb/ft3' },
    /\(label_r_per_inch\): found nothing, and none is published for glass fibre at 7 lb\/ft³/,
  ],
  [
    'a thickness beside gypsum board',
    { ...slopes, board_thickness: '1/2 in' },
    /\(board_thickness\): found 1\/2 in beside the board "gypsum 1\/2 in"; expected a thickness for wood-fibre panel only/,
  ],
  [
    'pressed, without the depth once pressed',
    { ...slopes, old_depth: '3 in', old_condition: 'pressed by the new fill' },
    /\(pressed_depth\): found nothing; expected its depth under the new fill/,
  ],
  [
    'pressed to more than its depth',
    { ...slopes, old_depth: '3 in', old_condition: 'pressed by the new fill', pressed_depth: '4 in' },
    /\(pressed_depth\): found 4 in, more than its full 3 in/,
  ],
  [
    'a pressed depth of insulation that lies loose',
    { ...slopes, old_depth: '3 in', pressed_depth: '2 in' },
    /\(pressed_depth\): found 2 in of insulation that lies loose/,
  ],
  [
    'pressed, where there is none',
    { ...slopes, old_condition: 'pressed by the new fill', pressed_depth: '2 in' },
    /\(old_depth\): found none, though it is pressed/,
  ],
  [
    'a pressed depth, where there is none and nobody said that it is pressed',
    { ...slopes, pressed_depth: '2 in' },
    /\(old_depth\): found none, though it is pressed/,
  ],
  [
    'old insulation to the roof',
    { ...slopes, old_depth: '15 in' },
    /\(old_depth\): found 1 ft 3 in; expected less than the cavity’s 1 ft 3 in: no room is left for new fill/,
  ],
  [
    'framing from trusses without a spacing',
    { ...slopes, framing_share: 'from the trusses' },
    /\(truss_spacing\): found nothing; expected a spacing/,
  ],
  [
    'trusses closer than they are wide',
    { ...slopes, framing_share: 'from the trusses', truss_spacing: '1 in' },
    /\(truss_spacing\): found 1 in; expected no less than the width of a truss member, 1 1\/2 in/,
  ],
  [
    'an eave deeper than the ridge',
    { ...slopes, eave: '16 in' },
    /\(eave\): found 16 in, deeper than the ridge/,
  ],
];

describe('entries that can’t be true together are one sentence that names the field', () => {
  test.each(clashes)('%s', (_, entries, says) => {
    const read = answer(heat, entries, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((n) => n.toFixed(4));
const anyRoof = fc
  .record({
    shape: fc.constantFrom('two-slope', 'bowed', 'one-slope', 'level'),
    width: number(100, 200),
    eave: number(0, 4),
    rise: number(1, 14),
    perInch: number(2, 4.5),
    old: number(0, 4),
    pressed: number(0.2, 1),
    isPressed: fc.boolean(),
    board: fc.constantFrom(...boards),
    framing: fc.boolean(),
  })
  .map((any) => {
    const inch = (amount: number) => ({ inch: `${amount} in`, cm: `${amount * 2.54} cm` });
    const eave = Number(any.eave);
    const ridge = eave + Number(any.rise) + 4;
    const old = Number(any.old);
    const pressed = any.isPressed && old > 0;
    const made = (unit: 'inch' | 'cm'): Entries => ({
      ...slopes,
      shape: any.shape,
      width: inch(Number(any.width))[unit],
      eave: inch(any.shape === 'level' ? ridge : eave)[unit],
      ridge: inch(ridge)[unit],
      board: any.board,
      label_r_per_inch: `${any.perInch} R per in`,
      old_depth: inch(old)[unit],
      ...(pressed
        ? { old_condition: 'pressed by the new fill', pressed_depth: inch(old * Number(any.pressed))[unit] }
        : {}),
      ...(any.framing ? { framing_share: 'from the trusses', truss_spacing: inch(24)[unit] } : {}),
    });
    return { inches: made('inch'), metric: made('cm'), perInch: Number(any.perInch), pressed };
  });

const RUNS = { numRuns: 60 };

describe('any roof as they are built', () => {
  test('has amounts that are numbers above nought, R between the framing no better than the mean depth claims', () => {
    fc.assert(
      fc.property(anyRoof, ({ inches }) => {
        const { figures } = answered(inches);
        const amounts = Object.values(figures).map(({ value }) =>
          typeof value === 'string' ? 1 : value.amount,
        );
        const r = (name: string) => amountOf(figures[name]);
        return (
          amounts.every((amount) => Number.isFinite(amount) && amount >= 0) &&
          r('cavity_resistance') <= r('naive_after') * (1 + 1e-9)
        );
      }),
      RUNS,
    );
  });

  test('is no worse for more R per inch, and better after than before where the old insulation lies loose', () => {
    fc.assert(
      fc.property(anyRoof, ({ inches, perInch, pressed }) => {
        const more = resistance(
          { ...inches, label_r_per_inch: `${perInch + 1} R per in` },
          'resistance_after',
        );
        const after = resistance(inches, 'resistance_after');
        return (
          more >= after * (1 - 1e-9) &&
          (pressed || after >= resistance(inches, 'resistance_before') * (1 - 1e-9))
        );
      }),
      RUNS,
    );
  });

  test('is the same in centimetres, to a part in 10^9', () => {
    fc.assert(
      fc.property(anyRoof, ({ inches, metric }) =>
        ['resistance_after', 'resistance_before', 'naive_after', 'cavity_resistance'].every((name) =>
          within(1e-9, resistance(metric, name), resistance(inches, name)),
        ),
      ),
      RUNS,
    );
  });
});
