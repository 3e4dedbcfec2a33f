import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AnyCalculation, answer, type Figure } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { fuelCost, presentWorth, savings } from '../../src/calc/savings/declaration.ts';
import { fuels } from '../../src/calc/savings/fuel.ts';
import { presentWorthFactor, singlePresentWorth, uniformPresentWorth } from '../../src/calc/savings/worth.ts';
import { format } from '../../src/quantity/format.ts';
import { amountIn, type Quantity, quantity } from '../../src/quantity/quantity.ts';
import type { UnitOf } from '../../src/quantity/units.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { within } from './quadrature.ts';

/** The amount of a figure; none where there is no such figure, so that nothing holds of it. */
const amountOf = (figure: Figure | undefined): number =>
  typeof figure?.value === 'object' ? figure.value.amount : Number.NaN;

const { data } = theProject();
const rules = openRulebook(data);

type Entries = Readonly<Record<string, unknown>>;

const answered = (declared: AnyCalculation, entries: Entries) => {
  const read = answer(declared, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};
const told = (declared: AnyCalculation, entries: Entries): string[] => {
  const read = answer(declared, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
};
const figure = (declared: AnyCalculation, entries: Entries, name: string, unit: string): number =>
  amountIn(
    answered(declared, entries).figures[name]?.value as Quantity,
    unit as UnitOf<Quantity['dimension']>,
  );

const home: Entries = {
  area: '1000 ft2',
  r_before: '10 R',
  r_after: '20 R',
  degree_days: '5000 F days',
  fuel: 'natural gas',
  efficiency: '80 %',
  price_of_heat: '1.2 $/therm',
  cost: '1000 $',
  life: '20 years',
  discount_rate: '3 %',
};

/** The present worth of a dollar in each year, added up year by year: it knows nothing of the closed form. */
const yearByYear = (rate: number, escalation: number, years: number): number =>
  Array.from({ length: years }, (_, at) => ((1 + escalation) / (1 + rate)) ** (at + 1)).reduce(
    (a, b) => a + b,
    0,
  );

const rates: readonly (readonly [rate: number, escalation: number, years: number])[] = [
  [0.03, 0, 15],
  [0.03, 0.02, 15],
  [0, 0, 20],
  [0, 0.02, 20],
  [0.04, 0.04, 12],
  [0.03, 0.03 + 1e-9, 25],
  [0.03, 0.03 - 1e-13, 25],
  [0.03, 0.08, 30],
  [0.1, -0.05, 100],
  [0.07, 0, 1],
];

describe('present worth', () => {
  test.each(rates)(
    'at %d with escalation %d over %d years, as added up year by year, to a part in 10^11',
    (d, e, n) => {
      expect(within(1e-11, uniformPresentWorth(d, e, n), yearByYear(d, e, n))).toBe(true);
    },
  );

  test('of a dollar at the end: 1/1.1² is 1/1.21', () => {
    expect(singlePresentWorth(0.1, 2)).toBeCloseTo(1 / 1.21, 14);
    expect(singlePresentWorth(0, 50)).toBe(1);
  });

  test('is less for a higher rate, more for a higher escalation, more for more years', () => {
    const rate = fc.double({ min: 0, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(rate, rate, fc.integer({ min: 1, max: 60 }), rate, (d, e, n, more) => {
        const now = uniformPresentWorth(d, e, n);
        return (
          uniformPresentWorth(d + more, e, n) <= now * (1 + 1e-12) &&
          uniformPresentWorth(d, e + more, n) >= now * (1 - 1e-12) &&
          uniformPresentWorth(d, e, n + 1) >= now
        );
      }),
    );
  });
});

describe('the saving', () => {
  // 1000 × (1/10 − 1/20) × 24 × 5000 = 6,000,000 Btu; over 0.8, 75 therms; at $1.20, $90.
  test('by hand: 75 therms at $1.20 are $90 a year', () => {
    expect(figure(savings, home, 'saving', '$/year')).toBeCloseTo(90, 9);
    expect(figure(savings, home, 'payback', 'year')).toBeCloseTo(1000 / 90, 9);
    expect(figure(savings, home, 'present_worth', '$')).toBeCloseTo(90 * yearByYear(0.03, 0, 20), 8);
  });

  test('what falls short of the cost test by a little is not printed as no less than it', () => {
    // $90 a year for 10 years, nothing discounted, over $900.30 is 0.99967.
    const { figures } = answered(savings, {
      ...home,
      life: '10 years',
      discount_rate: '0 %',
      cost: '900.30 $',
    });
    const { value, format: how } = figures.ratio as Figure;
    expect(figures.cost_test?.value).toBe('does not pass');
    expect(format(value as Quantity, how)).toBe('0.999');
  });

  test('gas by the cubic foot, a quarter more fuel than heat: 7,500,000 / 1039 ft3', () => {
    const { price_of_heat: _, ...rest } = home;
    const entries = { ...rest, price_per_volume: '0.01 $/ft3' };
    expect(figure(savings, entries, 'fuel_volume', 'ft3')).toBeCloseTo(7_500_000 / 1039, 6);
    expect(figure(savings, entries, 'saving', '$/year')).toBeCloseTo(75_000 / 1039, 8);
  });

  test('of nothing is nought, is never paid back, and does not pass', () => {
    const { figures } = answered(savings, { ...home, r_after: '10 R' });
    expect(amountOf(figures.saving)).toBe(0);
    expect(figures.payback?.value).toBe('never');
    expect(figures.cost_test?.value).toBe('does not pass');
  });

  test('without degree-days is nought too', () => {
    expect(figure(savings, { ...home, degree_days: '0 F days' }, 'saving', '$/year')).toBe(0);
  });

  test('exactly as much as the cost passes the test', () => {
    // 90 a year for ten years at a rate of 0 is 900.
    const entries = { ...home, cost: '900 $', life: '10 years', discount_rate: '0 %' };
    expect(answered(savings, entries).figures.cost_test?.value).toBe('passes');
    expect(answered(savings, { ...entries, cost: '900.01 $' }).figures.cost_test?.value).toBe(
      'does not pass',
    );
  });

  test('without a cost has no payback and no test', () => {
    const { cost: _, ...rest } = home;
    expect(Object.keys(answered(savings, rest).figures)).not.toContain('payback');
  });

  test('of electricity gives no carbon dioxide, and says why', () => {
    const { figures, remarks } = answered(savings, {
      ...home,
      fuel: 'electricity',
      price_of_heat: '0.15 $/kWh',
    });
    expect(figures.carbon).toBeUndefined();
    expect(remarks.map(remarkText).join()).toMatch(/No carbon dioxide is given for electricity/);
  });

  test('says which figures are the rulebook’s own where none were entered', () => {
    const { life: _, discount_rate: __, ...rest } = home;
    expect(answered(savings, rest).remarks.map(remarkText)[0]).toMatch(
      /rulebook’s own.*life of 20 years and a real discount rate of 3 %/,
    );
    expect(answered(savings, home).remarks).toEqual([]);
  });
});

describe('the federal statement on savings', () => {
  const STATEMENT =
    "Savings vary. Find out why in the seller's fact sheet on R-values. Higher R-values mean greater insulating power.";

  test('stands word for word', () => {
    expect(data.cautions['caution.savings.vary']?.says).toBe(STATEMENT);
  });

  test.each(fuels)('shows with every saving: %s', (fuel) => {
    const entries = { ...home, fuel, price_of_heat: '20 $/million Btu' };
    expect(answered(savings, entries).cautions[0]).toBe('caution.savings.vary');
  });

  test('shows with the present worth of a saving, and not with bare factors', () => {
    expect(answered(presentWorth, { yearly: '100 $' }).cautions).toContain('caution.savings.vary');
    expect(answered(presentWorth, { life: '10 years' }).cautions).toEqual([]);
  });
});

const noPrice = { ...home, price_of_heat: '' };
const clashes: readonly [title: string, declared: AnyCalculation, entries: Entries, says: RegExp][] = [
  [
    'both a U and an R',
    savings,
    { ...home, u_before: '0.1 Btu/(h ft2 F)' },
    /\(u_before\): found both a U and an R/,
  ],
  ['neither a U nor an R', savings, { ...home, r_after: '' }, /\(u_after\): found neither a U nor an R/],
  [
    'before and after swapped',
    savings,
    { ...home, r_before: '20 R', r_after: '10 R' },
    /\(u_after\): found U 0\.1 .* after, more than 0\.05 .* before; .*: the two may be swapped\.$/,
  ],
  [
    'no price',
    savings,
    noPrice,
    /\(price_of_heat\): found no price; expected a price of natural gas such as 1\.20/,
  ],
  [
    'no price of oil',
    fuelCost,
    { fuel: 'heating oil', efficiency: '80 %' },
    /\(price_of_heat\): found no price; expected a price of heating oil such as 3\.50 \$\/gal/,
  ],
  [
    'two prices',
    savings,
    { ...home, price_per_volume: '1 $/gal' },
    /\(price_per_volume\): found a price by volume beside a price by heat; expected one of the two/,
  ],
  [
    'electricity by the gallon',
    savings,
    { ...noPrice, fuel: 'electricity', price_per_volume: '1 $/gal' },
    /\(price_per_volume\): found \$1 per gal for electricity/,
  ],
  [
    'a heat content of electricity',
    savings,
    { ...home, fuel: 'electricity', heat_content: '1000 Btu/gal' },
    /\(heat_content\): found 1000 Btu\/gal for electricity/,
  ],
  [
    'a heat content with nothing to divide',
    savings,
    { ...home, heat_content: '1000 Btu/ft3' },
    /\(heat_content\): found 1000 Btu\/ft³ without a price by volume/,
  ],
  [
    'natural gas by the gallon',
    savings,
    { ...noPrice, price_per_volume: '$2.50/gal' },
    /\(price_per_volume\): found \$2\.50 per gal for natural gas; expected a price by the cubic foot of gas, such as 1\.20 \$\/ccf\.$/,
  ],
  [
    'natural gas by the gallon, its heat content too',
    savings,
    { ...noPrice, price_per_volume: '2.50 $/gal', heat_content: '140 Btu/gal' },
    /\(price_per_volume\): found \$2\.50 per gal for natural gas/,
  ],
  [
    'propane by the cubic foot, with the heat content of its liquid',
    fuelCost,
    { fuel: 'propane', efficiency: '80 %', price_per_volume: '$4 per ccf' },
    /\(price_per_volume\): found \$4 per ccf for propane; expected a price in \$\/gal; of metered gas, its heat content/,
  ],
  [
    'oil by the gallon, with a heat content by the cubic foot',
    fuelCost,
    { fuel: 'heating oil', efficiency: '80 %', price_per_volume: '4 $/gal', heat_content: '1000 Btu/ft3' },
    /\(price_per_volume\): found \$4 per gal for heating oil/,
  ],
  [
    'a share that may be a percentage or a ratio',
    savings,
    { ...home, efficiency: '0.8' },
    /\(efficiency\): found "0\.8", a number with no unit; expected a share such as 80 %\.$/,
  ],
  [
    'a furnace that gives more than it burns',
    savings,
    { ...home, efficiency: '300 %' },
    /\(efficiency\): found 300 % for natural gas; expected 100 % at most/,
  ],
  [
    'a part of a year',
    presentWorth,
    { life: '2.5 years' },
    /\(life\): found 2\.5 years; expected whole years/,
  ],
  ['half a year', presentWorth, { life: '6 h' }, /\(life\): found 6 h; expected whole years/],
  [
    'a price that falls to nothing',
    presentWorth,
    { escalation: '-100 %' },
    /\(escalation\): found −100 %; expected a fall of less than all of the price/,
  ],
  [
    'a negative rate',
    presentWorth,
    { discount_rate: '-1 %' },
    /\(discount_rate\): found "-1 %"; expected an amount above 0/,
  ],
  [
    'a bare number for a price',
    savings,
    { ...home, price_of_heat: '1.2' },
    /\(price_of_heat\): found "1\.2", a number with no unit/,
  ],
];

/** By hand, with 100 and 1000 ft3 to the ccf and the Mcf, as gas is billed. */
const metered: readonly [title: string, entries: Entries, dollars: number][] = [
  ['$1.00 a ccf of 100,000 Btu', { fuel: 'natural gas', price_per_volume: '$1.00/ccf' }, 10],
  ['$12 an Mcf of 1,000,000 Btu', { fuel: 'natural gas', price_per_volume: '$12 per Mcf' }, 12],
  [
    '$5 a ccf of propane at 2500 Btu/ft3',
    { fuel: 'propane', price_per_volume: '5 $/ccf', heat_content: '2500 Btu/ft3' },
    20,
  ],
];

describe('gas is priced as it is billed', () => {
  test.each(metered)('%s', (_, entries, dollars) => {
    const given = { efficiency: '80 %', heat_content: '1000 Btu/ft3', ...entries };
    expect(figure(fuelCost, given, 'fuel_price', '$/million Btu')).toBeCloseTo(dollars, 9);
  });
});

describe('entries that can’t be true together are one sentence that names the field', () => {
  test.each(clashes)('%s', (_, declared, entries, says) => {
    expect(told(declared, entries)).toEqual([expect.stringMatching(says)]);
  });
});

const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyHome = fc.record({
  area: amount(100, 3000),
  before: amount(2, 20),
  more: amount(0, 40),
  days: amount(0, 12000),
  efficiency: amount(30, 100),
  price: amount(1, 80),
});
const entriesOf = ({ area, before, more, days, efficiency, price }: Record<string, number>): Entries => ({
  area: `${area?.toFixed(5)} ft2`,
  r_before: `${before?.toFixed(5)} R`,
  r_after: `${((before ?? 0) + (more ?? 0)).toFixed(5)} R`,
  degree_days: `${days?.toFixed(5)} F days`,
  fuel: 'propane',
  efficiency: `${efficiency?.toFixed(5)} %`,
  price_of_heat: `${price?.toFixed(5)} $/million Btu`,
  cost: '1000 $',
});

describe('any home', () => {
  test('saves an amount that is a number and no less than nought', () => {
    fc.assert(
      fc.property(anyHome, (any) =>
        Object.values(answered(savings, entriesOf(any)).figures).every(
          ({ value, label }) =>
            typeof value === 'string' ||
            (Number.isFinite(value.amount) && (value.amount >= 0 || label.includes('less the cost'))),
        ),
      ),
    );
  });

  test('saves no less for more R, for a colder place, for dearer fuel, for a worse furnace', () => {
    const better = fc.constantFrom('more', 'days', 'price', 'efficiency');
    fc.assert(
      fc.property(anyHome, better, amount(0.1, 10), (any, which, by) => {
        const changed = {
          ...any,
          [which]: any[which as keyof typeof any] + (which === 'efficiency' ? -by : by),
        };
        return (
          figure(savings, entriesOf(changed), 'saving', '$/year') >=
          figure(savings, entriesOf(any), 'saving', '$/year') * (1 - 1e-9)
        );
      }),
    );
  });

  test('saves the same in SI units: m², W/(m² K), K days, by the exact factors', () => {
    fc.assert(
      fc.property(anyHome, (any) => {
        const { r_before: _, r_after: __, ...plain } = entriesOf(any);
        const u = (r: number) => `${1 / (Number(r.toFixed(5)) * 0.17611018368230585)} W/(m2 K)`;
        const metric = {
          ...plain,
          area: `${Number(any.area.toFixed(5)) * 0.3048 ** 2} m2`,
          u_before: u(any.before),
          u_after: u(any.before + any.more),
          degree_days: `${(Number(any.days.toFixed(5)) * 5) / 9} K days`,
        };
        const [si, usual] = [metric, entriesOf(any)].map((each) => figure(savings, each, 'saving', '$/year'));
        // The difference of two U that lie close loses figures, so the share is of what the old roof lets through.
        const whole = ((any.area / any.before) * any.days * 24 * (any.price / 1e6)) / (any.efficiency / 100);
        return Math.abs((si ?? 0) - (usual ?? 0)) <= 1e-9 * (whole + 1e-6);
      }),
    );
  });
});

// 20 years at 3 %: (1.03^20 − 1)/(0.03 · 1.03^20) = (1.806111 − 1)/0.054183 = 14.8775; at prices that rise by 3 % too, 20; that rise by 2 %:
// 1.02/0.01 · (1 − (1.02/1.03)^20) = 102 · (1 − 1.485947/1.806111) = 102 · 0.177267 = 18.0812.
test.each<[rate: number, escalation: number | undefined, factor: number, method: RegExp]>([
  [0, undefined, 20, /^n, since the rates cancel$/],
  [3, undefined, 14.8775, /^\(\(1 \+ d\)\^n − 1\)/],
  [3, 3, 20, /^n, since the rates cancel$/],
  [3, 2, 18.0812, /^\(1 \+ e\)\/\(d − e\)/],
])(
  'a dollar in each of 20 years, at %d %%, prices rising by %s: its working tells the equation that was used',
  (rate, escalation, factor, method) => {
    const found = presentWorthFactor({
      years: quantity(20, 'year'),
      rate: quantity(rate, 'percent'),
      ...(escalation === undefined ? {} : { escalation: quantity(escalation, 'percent') }),
    });
    expect(found.amount).toBeCloseTo(factor, 3);
    expect(found.origin.from === 'method' && found.origin.method).toMatch(method);
  },
);
