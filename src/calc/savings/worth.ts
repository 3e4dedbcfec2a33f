import { amountIn, byMethod, named, type Quantity } from '../../quantity/quantity.ts';

/**
 * What a sum that comes after so many years is worth today, as a share of it: (1 + d)^−n.
 * By hand: 1/1.25².
 * @example singlePresentWorth(0.25, 2).toFixed(9) // => '0.640000000'
 */
export const singlePresentWorth = (rate: number, years: number): number => (1 + rate) ** -years;

/**
 * What a yearly sum over so many years is worth today, as a multiple of it, when it grows by the escalation each year: the sum of
 * ((1 + e) / (1 + d))^t for t from 1 to n, which is (1 + e)/(d − e) · (1 − ((1 + e)/(1 + d))^n), and n where d and e are the same.
 * Written with log1p and expm1, so that it keeps its figures where the two rates lie close.
 * By hand: 1/1.25 + 1/1.25² = 0.8 + 0.64.
 * @example uniformPresentWorth(0.25, 0, 2).toFixed(9) // => '1.440000000'
 */
export function uniformPresentWorth(rate: number, escalation: number, years: number): number {
  const less = (rate - escalation) / (1 + rate);
  if (less === 0) return years;
  return ((1 - less) * -Math.expm1(years * Math.log1p(-less))) / less;
}

export interface Worth {
  readonly years: Quantity<'time'>;
  readonly rate: Quantity<'number'>;
  readonly escalation?: Quantity<'number'> | undefined;
}

/**
 * SPV: what is a dollar after so many years worth today? A pure number; years, and a real rate. NIST Handbook 135.
 * @example singlePresentWorthFactor({ years: quantity(1, 'year'), rate: quantity(25, 'percent') }).amount // => 0.8
 */
export const singlePresentWorthFactor = ({ years, rate }: Worth): Quantity<'number'> =>
  named(
    byMethod(
      '(1 + d)^−n',
      [rate, years],
      singlePresentWorth(amountIn(rate, '1'), amountIn(years, 'year')),
      '1',
    ),
    'SPV',
    'Present worth of a dollar at the end',
  );

/**
 * UPV, and UPV* where prices escalate: what is a dollar in each of so many years worth today? NIST Handbook 135.
 * @example presentWorthFactor({ years: quantity(5, 'year'), rate: quantity(0, 'percent') }).amount // => 5
 */
export function presentWorthFactor({ years, rate, escalation }: Worth): Quantity<'number'> {
  const [d, e] = [amountIn(rate, '1'), escalation ? amountIn(escalation, '1') : 0];
  const method =
    d === e
      ? 'n, since the rates cancel'
      : escalation
        ? '(1 + e)/(d − e)·(1 − ((1 + e)/(1 + d))^n)'
        : '((1 + d)^n − 1)/(d·(1 + d)^n)';
  return named(
    byMethod(
      method,
      [rate, ...(escalation ? [escalation] : []), years],
      uniformPresentWorth(d, e, amountIn(years, 'year')),
      '1',
    ),
    escalation ? 'UPV*' : 'UPV',
    'Present worth of a dollar in each year',
  );
}
