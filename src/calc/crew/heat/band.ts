import type { CautionId } from '../../../generated/rule-types.ts';
import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  named,
  type Quantity,
  warmerBy,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

const heatBands = ['caution', 'moderate', 'high', 'very high'] as const;
export type HeatBand = (typeof heatBands)[number];

export interface HeatRisk {
  /** The heat index, with what full sun may add. */
  readonly felt: Quantity<'temperature reading'>;
  readonly band: HeatBand;
  /** The indices where one band ends and the next begins. */
  readonly borders: readonly Quantity<'temperature reading'>[];
  /** How much warmer it may get before the next band; absent in the last. */
  readonly toNext: Quantity<'temperature'> | undefined;
  readonly cautions: readonly CautionId[];
}

const cautionsOf: Readonly<Record<HeatBand, readonly CautionId[]>> = {
  caution: ['caution.heat.basic'],
  moderate: ['caution.heat.sick', 'caution.heat.moderate'],
  high: ['caution.heat.sick', 'caution.heat.high', 'caution.heat.moderate'],
  'very high': ['caution.heat.very-high', 'caution.heat.sick', 'caution.heat.high', 'caution.heat.moderate'],
};

/**
 * How great is the risk of the heat, by the heat index and whether people work in full sun?
 * All that full sun may add is added. An index on the border of two bands is in the graver one, but for the last, which begins above its border.
 * @example heatRisk(quantity(95, 'F'), true, rules).band // => 'high'
 */
export function heatRisk(
  index: Quantity<'temperature reading'>,
  inFullSun: boolean,
  rules: Rulebook,
): HeatRisk {
  const sun = rules.value('safety.heat.full-sun');
  const felt = inFullSun
    ? named(
        byMethod('HI + s', [index, sun], amountIn(index, 'F') + amountIn(sun, 'F difference'), 'F'),
        'HIs',
        'Heat index with full sun',
      )
    : inUnit(index, 'F');
  const moderate = rules.value('safety.heat.moderate-from');
  const high = rules.value('safety.heat.high-from');
  const veryHigh = rules.value('safety.heat.very-high-above');
  const [band, next]: readonly [HeatBand, Quantity<'temperature reading'>?] =
    compare(felt, moderate) < 0
      ? ['caution', moderate]
      : compare(felt, high) < 0
        ? ['moderate', high]
        : compare(felt, veryHigh) <= 0
          ? ['high', veryHigh]
          : ['very high'];
  return {
    felt,
    band,
    borders: [moderate, high, veryHigh],
    toNext: next && named(warmerBy(next, felt), 'ΔHI', 'Up to the next band'),
    cautions: cautionsOf[band],
  };
}
