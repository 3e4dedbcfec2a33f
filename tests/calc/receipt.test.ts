import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calc/declare/calculation.ts';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { remarkPieces, remarkText } from '../../src/calc/declare/remark.ts';
import { receipt } from '../../src/calc/receipt/declaration.ts';
import {
  makersPapers,
  type PartValues,
  type ReceiptValues,
  receiptFields,
} from '../../src/calc/receipt/fields.ts';
import { checkPart } from '../../src/calc/receipt/part-checks.ts';
import { askedBy, papers, receiptSheet } from '../../src/calc/receipt/sheet.ts';
import { amountIn, type Quantity, quantity } from '../../src/quantity/quantity.ts';
import { changedRulebook } from '../../src/rulebook/changed.ts';
import { openRulebook, type Rule } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();
const rules = openRulebook(data);

const part = {
  part: 'roof cavity',
  insulation: 'glass fibre',
  maker: 'as on the bag',
  area: '924 ft2',
  initial_thickness: '10 1/2 in',
  settled_thickness: '10 1/4 in',
  r_value: '38 h ft2 F/Btu',
  r_from: 'bag label',
  r_paper: 'row R 38',
  bags: '39 bags',
  installed_density: '1.45 lb/ft3',
  bag_weight: '30 lb/bag',
  label_weight: '1.25 lb/ft2',
};
const whole = {
  home: '14 Larkspur Lane',
  installer: 'Harrow Valley Home Repair',
  date: '2026-11-25',
  parts: [part],
};
const values = (given: unknown): ReceiptValues => {
  const read = readFields(receiptFields, given);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};
const sheet = (given: unknown) => receiptSheet(values(given), rules);
const answered = (given: unknown) => {
  const read = answer(receipt, given, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

/** As the section and the energy code have it; [460.17, energy code]. */
const asked: readonly [item: string, receipt: boolean, certificate: boolean][] = [
  ['coverage area', true, true],
  ['initial installed thickness', true, true],
  ['minimum settled thickness', true, true],
  ['R-value', true, true],
  ['number of bags', true, true],
  ['installed density', false, true],
  ['type of insulation', false, true],
  ['maker of the insulation', false, true],
  ['signature of the installer', true, true],
  ['date', true, true],
  ['posted in plain sight', false, true],
  ['net weight of a bag', false, false],
];

describe('who asks for what', () => {
  test.each(asked)('%s: receipt %s, certificate %s', (item, inReceipt, inCertificate) => {
    expect(askedBy(item, rules)).toEqual([
      ...(inReceipt ? [papers.receipt] : []),
      ...(inCertificate ? [papers.certificate] : []),
    ]);
  });

  test('every item of the two rules has its line on the sheet', () => {
    const items = ['paperwork.receipt.items', 'paperwork.certificate.items'].flatMap((id) => {
      const { value } = data.rules[id] ?? {};
      return value?.kind === 'table' ? value.rows.map(([item]) => String(item)) : [];
    });
    const { head, parts, signatures } = sheet(whole);
    const lines = [...head, ...(parts[0]?.rows ?? []), ...signatures];
    for (const paper of [papers.receipt, papers.certificate])
      expect(lines.some(({ askedBy: by }) => by.includes(paper))).toBe(true);
    const labels = lines.map(({ label }) => label.toLowerCase()).join('; ');
    const aliases: Readonly<Record<string, string>> = {
      'signature of the installer': 'signed by the installer',
      'posted in plain sight': 'posted at',
    };
    for (const item of items) expect(labels).toContain((aliases[item] ?? item).toLowerCase());
  });
});

describe('what is missing is listed', () => {
  test('nothing, where all is told', () => {
    expect(sheet(whole).missing).toEqual([]);
    expect(answered(whole).figures.verdict?.value).toBe('ready to sign');
  });

  const gaps: readonly [key: keyof typeof part, missing: readonly string[]][] = [
    ['maker', ['Maker of the insulation, roof cavity']],
    ['area', ['Coverage area, roof cavity']],
    ['initial_thickness', ['Initial installed thickness, roof cavity']],
    ['settled_thickness', ['Minimum settled thickness, roof cavity']],
    ['r_value', ['R-value, roof cavity']],
    ['bags', ['Number of bags, roof cavity']],
    ['installed_density', ['Installed density, roof cavity']],
    ['bag_weight', []],
    ['label_weight', []],
  ];
  test.each(gaps)('without %s: %j', (key, missing) => {
    const given = { ...whole, parts: [{ ...part, [key]: '' }] };
    expect(sheet(given).missing).toEqual(missing);
    expect(answered(given).figures.verdict?.value).toBe(
      missing.length === 0 ? 'ready to sign' : 'not complete',
    );
  });

  // By hand: 38 bags of 30 lb on 924 ft2 are 1.2338 lb/ft2, 39 are 1.2662; the label asks for 1.25.
  test('a sheet on which nothing is missing is not ready where the bags weigh less than the label asks for at its R', () => {
    const verdict = (more: object) =>
      answered({ ...whole, parts: [{ ...part, ...more }] }).figures.verdict?.value;
    expect(verdict({ bags: '38 bags' })).toBe('not to be signed for that R');
    expect(verdict({ bags: '38 bags', maker: '' })).toBe('not complete');
    expect(verdict({ bags: '38 bags', label_weight: '1.23 lb/ft2' })).toBe('ready to sign');
  });

  test('who writes it by hand is told the unit', () => {
    const rows =
      sheet({ ...whole, parts: [{ part: 'roof cavity', insulation: 'glass fibre' }] }).parts[0]?.rows ?? [];
    expect(rows.flatMap(({ label, value, unit }) => (value === undefined ? [[label, unit]] : []))).toEqual([
      ['Maker of the insulation', undefined],
      ['Coverage area', 'ft²'],
      ['Initial installed thickness', 'in'],
      ['Minimum settled thickness', 'in'],
      ['R-value', 'h·ft²·°F/Btu'],
      ['R copied from', undefined],
      ['Number of bags', 'bags'],
      ['Installed density', 'lb/ft³'],
      ['Net weight of a bag', 'lb a bag'],
    ]);
  });

  test('installer and date as well', () => {
    expect(sheet({ ...whole, installer: '', date: '' }).missing).toEqual(['Installer', 'Date']);
  });
});

describe('no R is worked out', () => {
  test('R on the sheet is the one typed, and its paper stands beside it', () => {
    const rows = sheet(whole).parts[0]?.rows ?? [];
    const r = rows.find(({ label }) => label === 'R-value')?.value as Quantity;
    expect(r).toMatchObject({
      amount: 38,
      unit: 'h ft2 F/Btu',
      origin: { from: 'input', field: 'parts.0.r_value' },
    });
    expect(rows.find(({ label }) => label === 'R copied from')?.value).toBe('bag label: row R 38');
  });

  test('a paper without its name is told alone', () => {
    const rows = sheet({ ...whole, parts: [{ ...part, r_value: '', r_paper: '' }] }).parts[0]?.rows ?? [];
    expect(rows.find(({ label }) => label === 'R copied from')?.value).toBe('bag label');
  });

  test('an R left empty stays empty, whatever else is told', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        (inches, density) => {
          const given = {
            ...whole,
            parts: [
              {
                ...part,
                r_value: '',
                initial_thickness: `${inches} in`,
                settled_thickness: `${inches} in`,
                installed_density: `${density.toFixed(3)} lb/ft3`,
              },
            ],
          };
          const rows = sheet(given).parts[0]?.rows ?? [];
          const { figures } = answered(given);
          return (
            rows.find(({ label }) => label === 'R-value')?.value === undefined &&
            Object.values(figures).every(
              ({ value }) => typeof value === 'string' || !value.dimension.includes('resistance'),
            )
          );
        },
      ),
      { numRuns: 100 },
    );
  });

  test('an estimate is not one of the maker’s papers', () => {
    expect(makersPapers.join(' ')).not.toMatch(/estimate|per inch|calculat/i);
    const read = answer(receipt, { ...whole, parts: [{ ...part, r_from: 'our estimate' }] }, rules);
    expect(read.ok).toBe(false);
  });
});

describe('parts are never added up', () => {
  const two = {
    ...whole,
    parts: [part, { ...part, part: 'floor cavity', area: '500 ft2', r_value: '22 h ft2 F/Btu' }],
  };

  test('each has its own rows, and no figure, row or column holds a sum', () => {
    const { parts } = sheet(two);
    expect(parts.map(({ name }) => name)).toEqual(['Roof cavity', 'Floor cavity']);
    const { figures, tables } = answered(two);
    const amounts = Object.values(figures).flatMap(({ value }) => (typeof value === 'string' ? [] : [value]));
    expect(
      amounts.filter(({ dimension }) => dimension === 'area' || dimension === 'thermal resistance'),
    ).toEqual([]);
    expect(JSON.stringify({ figures, tables })).not.toMatch(/1424|\b60\b/);
    expect(Object.keys(tables?.parts?.columns ?? {})).toEqual(['item', 'part_1', 'part_2', 'asked']);
    expect(tables?.parts?.rows.find(({ item }) => item === 'R-value')).toMatchObject({
      part_1: 'R-38',
      part_2: 'R-22',
    });
  });
});

const typed = (more: Partial<Record<keyof typeof part, string>>): PartValues => {
  const [first] = values({ ...whole, parts: [{ ...part, ...more }] }).parts;
  if (!first) throw new Error('found no part, expected one');
  return first;
};

describe('the bags against the label', () => {
  /** By hand: bags x lb a bag / ft2, against lb/ft2 of the label. */
  const weighed: readonly [
    bags: number,
    lb: number,
    ft2: number,
    label: number,
    weight: number,
    under: boolean,
  ][] = [
    [40, 30, 1000, 1.2, 1.2, false],
    [40, 30, 1000, 1.21, 1.2, true],
    [33, 25, 750, 1.1, 1.1, false],
    [1, 25, 1000, 0.5, 0.025, true],
  ];
  test.each(weighed)(
    '%d bags of %d lb on %d ft2, label %d: %d, under it: %s',
    (bags, lb, ft2, label, weight, under) => {
      const found = checkPart(
        typed({
          bags: `${bags} bags`,
          bag_weight: `${lb} lb/bag`,
          area: `${ft2} ft2`,
          label_weight: `${label} lb/ft2`,
        }),
        0,
        rules,
      );
      expect(amountIn(found.weight as Quantity<'load'>, 'lb/ft2')).toBeCloseTo(weight, 12);
      expect(found.underWeight).toBe(under);
      expect(found.remarks.map(remarkText).filter((each) => each.includes('of the label'))).toEqual(
        under
          ? [
              `roof cavity: the bags weigh ${weight} lb/ft² on this area, less than the ${label} lb/ft² of the label for the R stated.`,
            ]
          : [],
      );
    },
  );

  test('less than it is warned of', () => {
    const light = { ...whole, parts: [{ ...part, bags: '30 bags' }] };
    expect(answered(light).cautions[0]).toBe('caution.receipt.under-weight');
    expect(answered(whole).cautions).not.toContain('caution.receipt.under-weight');
  });

  test('a bag’s chart is one of open attics: told where the R is copied from a label, and of no other paper', () => {
    const always = ['caution.receipt.maker-data-only', 'caution.receipt.fact-sheet'];
    expect(answered(whole).cautions).toEqual(['caution.receipt.open-chart', ...always]);
    for (const r_from of ['fact sheet', 'test report or data sheet'])
      expect(answered({ ...whole, parts: [{ ...part, r_from }] }).cautions).toEqual(always);
    const second = [{ ...part, r_from: 'fact sheet' }, part];
    expect(answered({ ...whole, parts: second }).cautions).toContain('caution.receipt.open-chart');
  });

  test.each<[string, string, string, string | undefined]>([
    ['nothing against it', '', 'ready to sign', undefined],
    ['an opening is light', '', 'not to be signed before it is filled', 'caution.log.light'],
    ['an opening is light', 'lacking', 'not complete', 'caution.log.light'],
    ['a ceiling is overloaded', '', 'not to be signed before that stop is settled', 'caution.log.overloaded'],
    [
      'a ceiling is overloaded',
      'lacking',
      'not to be signed before that stop is settled',
      'caution.log.overloaded',
    ],
  ])('by the fill log %s, %s: %s', (log_says, lacking, verdict, caution) => {
    const given = { ...whole, log_says, ...(lacking ? { installer: '' } : {}) };
    const { figures, cautions } = answered(given);
    expect(figures.verdict?.value).toBe(verdict);
    expect(cautions.filter((id) => id.startsWith('caution.log.'))).toEqual(caution ? [caution] : []);
  });

  test('cannot be said where one of them is not told', () => {
    for (const key of ['bags', 'bag_weight', 'area', 'label_weight'] as const)
      expect(checkPart(typed({ [key]: '' }), 0, rules).underWeight).toBeUndefined();
  });

  test('more bags, or less area, never turn a weight that reaches into one that does not; units do not matter', () => {
    const count = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(count, count, fc.integer({ min: 50, max: 3000 }), (bags, more, ft2) => {
        const of = (n: number, area: Quantity<'area'>) =>
          checkPart({ ...typed({}), bags: quantity(n, 'bag'), area, installed_density: undefined }, 0, rules);
        const a = of(bags, quantity(ft2, 'ft2'));
        const b = of(bags + more, quantity(ft2, 'ft2'));
        const metric = of(bags, quantity(ft2 * 0.09290304, 'm2'));
        const [wa, wm] = [a.weight?.amount ?? Number.NaN, metric.weight?.amount ?? Number.NaN];
        return (a.underWeight || !b.underWeight) && Math.abs(wa - wm) <= 1e-9 * wa;
      }),
    );
  });

  /** 1.2 lb/ft2 over 1 ft is 1.2 lb/ft3; a tenth either way is near enough. */
  const densities: readonly [told: number, remarked: boolean][] = [
    [1.2, false],
    [1.1, false],
    [1.33, false],
    [1.05, true],
    [1.4, true],
  ];
  test.each(densities)(
    'a density of %d stated where the bags make 1.2 is remarked on: %s',
    (told, remarked) => {
      const found = checkPart(
        typed({
          bags: '40 bags',
          area: '1000 ft2',
          initial_thickness: '12 in',
          settled_thickness: '11 in',
          installed_density: `${told} lb/ft3`,
          label_weight: '',
        }),
        0,
        rules,
      );
      expect(found.remarks.length > 0).toBe(remarked);
    },
  );
});

describe('an R that no fill of the rulebook reaches is remarked on', () => {
  const beyond = (r_value: string, book: typeof rules): boolean =>
    checkPart(typed({ r_value }), 0, book).remarks.some((each) =>
      remarkText(each).includes('make more an inch'),
    );
  /** Over 10 1/4 in. The most of glass fibre is 4.12 an inch, and our estimate may be off by 10 %: 10.25 x 4.12 x 1.1 = 46.4. */
  test.each([
    ['46', false],
    ['47', true],
  ])('R %s over 10 1/4 in: %s', (r, remarked) => {
    expect(beyond(`${r} h ft2 F/Btu`, rules)).toBe(remarked);
  });

  /** The row of 5 an inch is the only one of its density, and no tenth of a pound: 10.25 x 5 x 1.1 = 56.4. */
  test.each([
    ['56', false],
    ['57', true],
  ])('a row for 1.85 lb/ft3 alone counts as any other: R %s, %s', (r, remarked) => {
    const { value } = data.rules['thermal.loose-fill.conductance'] as Rule;
    if (value.kind !== 'table') throw new Error('the densities are no table');
    const rows: (typeof value)['rows'] = [
      ['glass fibre', 'attic', [0.4, 0.5], 2.7],
      ['glass fibre', 'closed cavity', [1.85, 1.85], [4, 5]],
      ['cellulose', 'closed cavity', [3.5, 3.5], [6, 7]],
    ];
    const book = changedRulebook(data, { 'thermal.loose-fill.conductance': { ...value, rows } });
    expect(beyond(`${r} h ft2 F/Btu`, openRulebook(book))).toBe(remarked);
  });
});

describe('what the sheet says', () => {
  test('a closed cavity has no place for depth markers, and R comes from the maker', () => {
    const says = sheet(whole).statements.map(remarkText).join(' ');
    expect(says).toMatch(/depth marker for every 300 ft².*closed roof cavity has no place/);
    expect(says).toMatch(/R-value of each part is the maker’s/);
    expect(says).not.toMatch(/cellulose/);
  });

  test('its numbers lead to their rules', () => {
    const linked = sheet(whole)
      .statements.flatMap(remarkPieces)
      .flatMap((piece) => (typeof piece === 'string' ? [] : [[piece.rule, piece.text]]));
    expect(linked).toEqual([
      ['paperwork.receipt.tolerance', '10 %'],
      ['paperwork.certificate.markers-every', '300 ft²'],
    ]);
  });

  test('cellulose comes with its label', () => {
    const given = { ...whole, parts: [{ ...part, insulation: 'cellulose' }] };
    expect(sheet(given).statements.map(remarkText).join(' ')).toMatch(
      /bag label of the cellulose is handed over/,
    );
    expect(answered(given).cautions).toContain('caution.receipt.cellulose-label');
  });

  test('it is left to the pen to sign, date and post it', () => {
    expect(sheet(whole).signatures.every(({ value }) => value === undefined)).toBe(true);
  });
});

describe('bad entries come back as sentences', () => {
  const bad: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'no part',
      { parts: [] },
      /^Parts of the house \(parts\): found an empty list; expected one part or more\.$/,
    ],
    ['seven parts', { parts: Array(7).fill(part) }, /found 7 entries; expected 6 at most/],
    [
      'fill that settles upwards',
      { parts: [{ ...part, settled_thickness: '11 in' }] },
      /^Minimum settled thickness \(part of the house 1\) \(parts\.0\.settled_thickness\): found 11 in, more than the 10\.5 in installed; expected no more than the initial thickness, since fill settles; where the paper asks for more, its R is not there\.$/,
    ],
    [
      'an R without a paper',
      { parts: [part, { ...part, r_from: '' }] },
      /^R copied from \(part of the house 2\) \(parts\.1\.r_from\): found an R-value without the maker’s paper/,
    ],
    [
      'an R from a paper that nobody can find',
      { parts: [{ ...part, r_paper: '' }] },
      /^Which one \(part of the house 1\) \(parts\.0\.r_paper\): found an R-value without/,
    ],
    ['a day that the calendar lacks', { date: '2026-02-30' }, /^Date \(date\): found "2026-02-30"/],
    [
      'a fact sheet shown after the work',
      { fact_sheet: '2026-11-26' },
      /^Fact sheet shown \(fact_sheet\): found 2026-11-26, after the work was finished on 2026-11-25/,
    ],
    ['an R in inches', { parts: [{ ...part, r_value: '38 in' }] }, /found "38 in" \(length\)/],
  ];
  test.each(bad)('%s', (_, more, says) => {
    const read = answer(receipt, { ...whole, ...more }, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });
});
