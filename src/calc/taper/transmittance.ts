import {
  amountIn,
  byMethod,
  named,
  number,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';

export const taperForms = [
  'uniform',
  'straight taper',
  'triangle, thickest at the apex',
  'triangle, thinnest at the apex',
] as const;
export type TaperForm = (typeof taperForms)[number];

/**
 * The mean transmittance of tapered insulation in plain numbers: R0 holds all that is uniform, R2 is what the taper adds from its
 * thinnest to its thickest. Closed forms of ISO 6946:2017 annex E. Below a ratio of one in a hundred thousand the first terms of
 * each series stand in, since the closed forms then lose their figures to cancelling.
 * By hand: ln(1 + 3/1)/3 = 1.386294/3.
 * @example meanTransmittance('straight taper', 1, 3).toFixed(6) // => '0.462098'
 */
export function meanTransmittance(form: TaperForm, r0: number, r2: number): number {
  const z = r2 / r0;
  if (form === 'uniform' || z === 0) return 1 / r0;
  const small = z < 1e-5;
  if (form === 'straight taper') return small ? (1 - z / 2 + (z * z) / 3) / r0 : Math.log1p(z) / r2;
  if (form === 'triangle, thickest at the apex') {
    return small ? (1 - z / 3 + (z * z) / 6) / r0 : (2 / r2) * ((1 + 1 / z) * Math.log1p(z) - 1);
  }
  return small ? (1 - (2 * z) / 3 + (z * z) / 2) / r0 : (2 / r2) * (1 - Math.log1p(z) / z);
}

const formulas: Readonly<Record<TaperForm, string>> = {
  uniform: '1/R0',
  'straight taper': 'ln(1 + R2/R0)/R2',
  'triangle, thickest at the apex': '2/R2·((1 + R0/R2)·ln(1 + R2/R0) − 1)',
  'triangle, thinnest at the apex': '2/R2·(1 − R0/R2·ln(1 + R2/R0))',
};

export interface TaperedTransmittance {
  readonly transmittance: Quantity<'thermal transmittance'>;
  /** 1 over the mean transmittance. */
  readonly resistance: Quantity<'thermal resistance'>;
}

/**
 * What U does a taper have, from what is uniform (R0) and what the taper adds (R2)?
 * By hand: ln(1 + 10/10)/10 = 0.693147/10.
 * @throws QuantityError if R0 is 0.
 * @example taperedTransmittance('straight taper', quantity(10, 'h ft2 F/Btu'), quantity(10, 'h ft2 F/Btu')).transmittance.amount.toFixed(6) // => '0.069315'
 */
export function taperedTransmittance(
  form: TaperForm,
  r0: Quantity<'thermal resistance'>,
  r2: Quantity<'thermal resistance'>,
): TaperedTransmittance {
  const amount = meanTransmittance(form, amountIn(r0, 'h ft2 F/Btu'), amountIn(r2, 'h ft2 F/Btu'));
  const transmittance = named(
    byMethod(formulas[form], [r0, r2], amount, 'Btu/(h ft2 F)'),
    'U',
    'Mean transmittance',
  );
  return { transmittance, resistance: named(over(number(1), transmittance), 'Re', 'Effective R') };
}

/** The mean of its R, by its area: a triangle is widest at its base. */
const meanOf: Readonly<
  Record<
    TaperForm,
    (thin: Quantity<'thermal resistance'>, thick: Quantity<'thermal resistance'>) => typeof thin
  >
> = {
  uniform: (thin) => thin,
  'straight taper': (thin, thick) => over(plus(thin, thick), number(2)),
  'triangle, thickest at the apex': (thin, thick) => over(plus(times(number(2), thin), thick), number(3)),
  'triangle, thinnest at the apex': (thin, thick) => over(plus(thin, times(number(2), thick)), number(3)),
};

/**
 * The R that the mean depth would claim: the mistake that a taper invites.
 * By hand: 1 + (9 + 31)/2; in a triangle that is thinnest at its apex 1 + (9 + 2 × 30)/3.
 * @example naiveResistance('straight taper', quantity(1, 'h ft2 F/Btu'), quantity(9, 'h ft2 F/Btu'), quantity(31, 'h ft2 F/Btu')).amount // => 21
 * @example naiveResistance('triangle, thinnest at the apex', quantity(1, 'h ft2 F/Btu'), quantity(9, 'h ft2 F/Btu'), quantity(30, 'h ft2 F/Btu')).amount // => 24
 */
export const naiveResistance = (
  form: TaperForm,
  constant: Quantity<'thermal resistance'>,
  thin: Quantity<'thermal resistance'>,
  thick: Quantity<'thermal resistance'>,
): Quantity<'thermal resistance'> =>
  named(plus(constant, meanOf[form](thin, thick)), 'Rn', 'R of the mean depth');
