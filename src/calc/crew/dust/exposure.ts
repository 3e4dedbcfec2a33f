import type { CautionId } from '../../../generated/rule-types.ts';
import {
  byMethod,
  compare,
  named,
  number,
  over,
  type Quantity,
  QuantityError,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';
import type { Material } from '../../fill/material.ts';

const dustVerdicts = ['within the limits', 'over a recommended limit', 'over a legal limit'] as const;
export type DustVerdict = (typeof dustVerdicts)[number];

type Concentration = Quantity<'density'> | Quantity<'pieces per volume'>;

/** What was measured in the air that people breathe, each an average of the shift. */
export interface DustMeasured {
  readonly total: Quantity<'density'> | undefined;
  readonly respirable: Quantity<'density'> | undefined;
  /** A count of fine glass fibres; held against a limit for glass fibre only. */
  readonly fibres: Quantity<'pieces per volume'> | undefined;
}

/** One measurement against one limit. */
export interface DustAgainst {
  readonly what: string;
  /** Construction law has a limit for total dust only; the fine part is held to that of general industry. */
  readonly standing: 'law' | 'law for general industry' | 'recommended';
  readonly measured: Concentration;
  readonly limit: Concentration;
  /** How many times the limit. */
  readonly times: Quantity<'number'>;
}

export interface DustExposure {
  readonly against: readonly DustAgainst[];
  /** The worst of them: what a respirator must make good. */
  readonly factor: Quantity<'number'>;
  readonly verdict: DustVerdict;
  /** The kind of respirator that protects least and still suffices; 'none' within the limits, undefined where no kind listed suffices. */
  readonly respirator: string | undefined;
  readonly cautions: readonly CautionId[];
}

/** The kind that suffices only where its fit was measured, as the rulebook calls it. */
export const MEASURED_FIT = 'full facepiece, its fit measured by instrument';

/**
 * Is there too much dust, and which respirator would suffice until there is less?
 * Each measurement over its limit; the law's limits for any dust, the recommended ones for glass fibre too. The worst decides.
 * By hand: 30 mg/m3 over the legal 15.
 * @throws QuantityError if nothing was measured that a limit is known for.
 * @example dustExposure({ total: quantity(30, 'mg/m3') }, 'cellulose', rules).factor.amount.toFixed(6) // => '2.000000'
 */
export function dustExposure(measured: DustMeasured, material: Material, rules: Rulebook): DustExposure {
  const against = heldAgainst(measured, material, rules);
  const factor = named(worstOf(against.map(({ times }) => times)), 'x', 'Worst of them, times its limit');
  const tooMuch = against.filter(({ times }) => compare(times, number(1)) > 0);
  const verdict: DustVerdict = tooMuch.some(({ standing }) => standing !== 'recommended')
    ? 'over a legal limit'
    : tooMuch.length > 0
      ? 'over a recommended limit'
      : 'within the limits';
  const respirator =
    tooMuch.length === 0 ? 'none' : rules.find('safety.dust.respirators', { factor }, 'kind');
  const cautions: CautionId[] = [];
  if (!respirator) cautions.push('caution.dust.beyond');
  if (verdict === 'over a legal limit') cautions.push('caution.dust.legal');
  if (respirator === MEASURED_FIT) cautions.push('caution.dust.full-facepiece');
  if (tooMuch.some(({ standing }) => standing === 'recommended')) cautions.push('caution.dust.recommended');
  if (tooMuch.length > 0) cautions.push('caution.dust.programme');
  else cautions.push('caution.before.wear');
  cautions.push('caution.dust.other-dust');
  return { against, factor, verdict, respirator, cautions };
}

function worstOf(times: readonly Quantity<'number'>[]): Quantity<'number'> {
  if (times.length === 0)
    throw new QuantityError('found nothing measured, expected a concentration that a limit is known for');
  return byMethod('the most of them', times, Math.max(...times.map(({ amount }) => amount)), '1');
}

function heldAgainst(
  { total, respirable, fibres }: DustMeasured,
  material: Material,
  rules: Rulebook,
): DustAgainst[] {
  const hold = <D extends 'density' | 'pieces per volume'>(
    what: string,
    standing: DustAgainst['standing'],
    symbol: string,
    measured: Quantity<D> | undefined,
    limit: Quantity<D>,
  ): DustAgainst[] =>
    measured
      ? [
          {
            what,
            standing,
            measured: measured as Quantity as Concentration,
            limit: limit as Quantity as Concentration,
            times: named(
              over<Quantity['dimension'], Quantity['dimension']>(measured, limit) as Quantity<'number'>,
              symbol,
              `${what}, times the limit`,
            ),
          },
        ]
      : [];
  const glass = material === 'glass fibre';
  return [
    ...hold('Total dust', 'law', 'xd', total, rules.value('safety.dust.total')),
    ...hold(
      'Respirable dust',
      'law for general industry',
      'xr',
      respirable,
      rules.value('safety.dust.respirable'),
    ),
    ...hold(
      'Total glass-fibre dust',
      'recommended',
      'xg',
      glass ? total : undefined,
      rules.value('safety.dust.glass-total'),
    ),
    ...hold(
      'Glass fibres',
      'recommended',
      'xf',
      glass ? fibres : undefined,
      rules.value('safety.dust.glass-fibres'),
    ),
  ];
}
