import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { restrictedEdge, taper } from '../../src/calc/taper/declaration.ts';
import { meanTransmittance, type TaperForm, taperForms } from '../../src/calc/taper/transmittance.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { integral, within } from './quadrature.ts';

const rules = openRulebook(theProject().data);

/** How wide each form is at a share of the way from its thinnest to its thickest; a triangle has twice the width of a rectangle at its base. */
const widthAt: Readonly<Record<TaperForm, (share: number) => number>> = {
  uniform: () => 1,
  'straight taper': () => 1,
  'triangle, thickest at the apex': (share) => 2 * (1 - share),
  'triangle, thinnest at the apex': (share) => 2 * share,
};

/** The mean of 1/R over the area of the form, by quadrature; it knows nothing of the closed forms. */
const meanByQuadrature = (form: TaperForm, r0: number, r2: number): number =>
  integral((share) => widthAt[form](share) / (r0 + (form === 'uniform' ? 0 : r2 * share)), 0, 1);

const tapers = taperForms.filter((form) => form !== 'uniform');
const sizes: readonly (readonly [r0: number, r2: number])[] = [
  [11.73, 42],
  [1.2, 50],
  [0.5, 0.25],
  [30, 1],
  [5, 5e-3],
  [5, 6e-5],
  [5, 4e-5],
  [5, 1e-9],
  [0.1, 10],
];

describe.each(taperForms)('the mean transmittance of a form: %s', (form) => {
  test.each(sizes)('R0 %d, R2 %d, as by quadrature to a part in 10^8', (r0, r2) => {
    expect(within(1e-9, meanTransmittance(form, r0, r2), meanByQuadrature(form, r0, r2))).toBe(true);
  });

  test('a taper of 0 is a uniform layer', () => {
    expect(meanTransmittance(form, 8, 0)).toBe(1 / 8);
  });

  test('the series and the closed form meet where one takes over from the other, to a part in 10^9', () => {
    const [below, above] = [
      meanTransmittance(form, 8, 8e-5 * (1 - 1e-9)),
      meanTransmittance(form, 8, 8e-5 * (1 + 1e-9)),
    ];
    expect(within(1e-9, below, above)).toBe(true);
  });
});

const r = fc.double({ min: 0.1, max: 100, noNaN: true });
/** Floating arithmetic may turn two equal values round by this share. */
const NOISE = 1e-9;

describe('more resistance never lets more heat through', () => {
  test.each(taperForms)('%s, with a thicker taper or a better rest', (form) => {
    fc.assert(
      fc.property(r, r, r, r, (r0, r2, more0, more2) => {
        const u = meanTransmittance(form, r0, r2);
        return (
          meanTransmittance(form, r0 + more0, r2) <= u * (1 + NOISE) &&
          meanTransmittance(form, r0, r2 + more2) <= u * (1 + NOISE)
        );
      }),
    );
  });

  test.each(tapers)(
    '%s: between its thinnest and its thickest, and never as good as its mean depth claims',
    (form) => {
      const meanShare = {
        'straight taper': 1 / 2,
        'triangle, thickest at the apex': 1 / 3,
        'triangle, thinnest at the apex': 2 / 3,
      };
      fc.assert(
        fc.property(r, r, (r0, r2) => {
          const effective = 1 / meanTransmittance(form, r0, r2);
          const claimed = r0 + r2 * meanShare[form as keyof typeof meanShare];
          return effective >= r0 * (1 - NOISE) && effective <= claimed * (1 + NOISE) && claimed <= r0 + r2;
        }),
      );
    },
  );
});

const told = (
  entries: Readonly<Record<string, unknown>>,
  declared: typeof taper | typeof restrictedEdge,
): string[] => {
  const read = answer(declared, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
};

const wedge = { form: 'straight taper', constant: '1 R', thin: '10 R', thick: '50 R' };
const edge = { kind: 'blown', nominal: '25 R', thickness: '10 in', edge: '2 in' };

describe('a taper is asked for in the resistance of its ends', () => {
  test('thin R-10 to thick R-50 with R-1 beside it: 40 / ln(51/11) = R-26.08, where its mean depth claims R-31', () => {
    const read = answer(taper, wedge, rules);
    if (!read.ok) throw new Error(read.problems.map(sentence).join());
    const amount = (name: string) =>
      amountIn(read.value.figures[name]?.value as Quantity<'thermal resistance'>, 'h ft2 F/Btu');
    expect(amount('resistance')).toBeCloseTo(40 / Math.log(51 / 11), 9);
    expect(amount('naive')).toBeCloseTo(31, 9);
  });

  test.each([
    ['thickest at the apex, two thirds of the way thin: 1 + (2 × 10 + 50)/3', 1 + 70 / 3],
    ['thinnest at the apex, two thirds of the way thick: 1 + (10 + 2 × 50)/3', 1 + 110 / 3],
  ])('the mean depth of a triangle goes by its area, and claims more than there is: %s', (title, claimed) => {
    const read = answer(taper, { ...wedge, form: `triangle, ${title.split(',')[0]}` }, rules);
    if (!read.ok) throw new Error(read.problems.map(sentence).join());
    const [resistance = 0, naive = 0] = ['resistance', 'naive'].map((name) =>
      amountIn(read.value.figures[name]?.value as Quantity<'thermal resistance'>, 'h ft2 F/Btu'),
    );
    expect(naive).toBeCloseTo(claimed, 9);
    expect(naive).toBeGreaterThan(resistance);
  });

  test('of a uniform layer nothing is said to overstate', () => {
    const read = answer(taper, { ...wedge, form: 'uniform' }, rules);
    expect(read.ok && Object.keys(read.value.figures)).toEqual(['resistance', 'transmittance']);
  });

  const clashes: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'no thick end',
      { ...wedge, thick: '' },
      /\(thick\): found nothing; expected an R, since the layer is not uniform/,
    ],
    [
      'the ends swapped',
      { ...wedge, thin: '60 R' },
      /\(thick\): found R-50, less than the thinnest at R-60; expected the thickest to be the more/,
    ],
    [
      'nothing at all at the thin end',
      { ...wedge, constant: '0 R', thin: '0 R' },
      /\(thick\): found no resistance at all at the thinnest place/,
    ],
  ];
  test.each(clashes)('%s is one sentence that names the field', (_, entries, says) => {
    expect(told(entries, taper)).toEqual([expect.stringMatching(says)]);
  });
});

/** From the table of the federal standard as the rule holds it, and by hand between its rows. */
const edges: readonly [
  title: string,
  entries: Readonly<Record<string, unknown>>,
  kept: number,
  resistance: number,
][] = [
  ['blown, a fifth of the thickness: 50 % of R-25', edge, 0.5, 12.5],
  ['blown, 22.5 %: half way from 50 to 54 %', { ...edge, edge: '2 1/4 in' }, 0.52, 13],
  ['a batt that tapers, a fifth: 60 %', { ...edge, kind: 'batt, tapered' }, 0.6, 15],
  ['a batt pressed evenly, a fifth: 28 %', { ...edge, kind: 'batt, squeezed evenly' }, 0.28, 7],
  ['nothing left at the edge, blown: 15 %', { ...edge, edge: '0 in' }, 0.15, 3.75],
  ['the full thickness keeps all', { ...edge, edge: '10 in' }, 1, 25],
];

describe('a restricted edge keeps what the table says', () => {
  test.each(edges)('%s', (_, entries, kept, resistance) => {
    const read = answer(restrictedEdge, entries, rules);
    if (!read.ok) throw new Error(read.problems.map(sentence).join());
    const { figures } = read.value;
    expect(amountIn(figures.kept?.value as Quantity<'number'>, '1')).toBeCloseTo(kept, 9);
    expect(amountIn(figures.resistance?.value as Quantity<'thermal resistance'>, 'h ft2 F/Btu')).toBeCloseTo(
      resistance,
      9,
    );
  });

  test('an edge thicker than the rest is one sentence that names the field', () => {
    expect(told({ ...edge, edge: '11 in' }, restrictedEdge)).toEqual([
      'Thickness at the edge (edge): found 11 in, more than the full 10 in; expected an edge no thicker than the rest.',
    ]);
  });
});
