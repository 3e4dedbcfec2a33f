import type { CautionId } from '../../../generated/rule-types.ts';
import {
  byMethod,
  compare,
  excess,
  inUnit,
  named,
  number,
  over,
  type Quantity,
  quantity,
  times,
  total,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

const noiseVerdicts = ['within the limit', 'over the limit', 'too loud for any time'] as const;
export type NoiseVerdict = (typeof noiseVerdicts)[number];

/** A time spent at a level. */
export interface NoisePeriod {
  readonly level: Quantity<'sound level'>;
  readonly time: Quantity<'time'>;
}

/** A period with what the table allows at its level: a time, any time (too quiet to count), or none (too loud). */
export interface JudgedPeriod extends NoisePeriod {
  readonly allowed: Quantity<'time'> | 'any' | 'none';
  /** Its part of the dose; absent where no time is allowed. */
  readonly part: Quantity<'number'> | undefined;
}

export interface NoiseDose {
  readonly periods: readonly JudgedPeriod[];
  /** Absent where a period is louder than the table goes. */
  readonly dose: Quantity<'number'> | undefined;
  readonly verdict: NoiseVerdict;
  readonly cautions: readonly CautionId[];
}

/**
 * How long may a day hold a noise of this level? Between two rows of the table the louder one answers; beyond its last row there is no time.
 * @example allowedTime(quantity(96, 'dBA'), rules).amount // => 3
 */
export function allowedTime(level: Quantity<'sound level'>, rules: Rulebook): JudgedPeriod['allowed'] {
  if (compare(level, rules.value('safety.noise.counted-from')) < 0) return 'any';
  return rules.find('safety.noise.allowed', { level }, 'time')?.low ?? 'none';
}

/**
 * What part of the noise that a day allows do these periods make, added up?
 * The sum of each time over the time allowed at its level; no periods make no dose.
 * @example noiseDose([{ level: quantity(90, 'dBA'), time: quantity(4, 'h') }], rules).dose.amount // => 0.5
 */
export function noiseDose(given: readonly NoisePeriod[], rules: Rulebook): NoiseDose {
  const periods = given.map(({ level, time }, at): JudgedPeriod => {
    const allowed = allowedTime(level, rules);
    if (allowed === 'none') return { level, time, allowed, part: undefined };
    const part =
      allowed === 'any'
        ? byMethod('too quiet to count', [level, rules.value('safety.noise.counted-from')], 0, '1')
        : over(time, allowed);
    return { level, time, allowed, part: named(part, `F${at + 1}`, `Part of period ${at + 1}`) };
  });
  const parts = periods.flatMap(({ part }) => (part ? [part] : []));
  if (parts.length < periods.length) {
    return {
      periods,
      dose: undefined,
      verdict: 'too loud for any time',
      cautions: ['caution.noise.above-table', 'caution.noise.wear'],
    };
  }
  const dose = named(parts.length > 0 ? total(parts) : number(0), 'F', 'Dose of the day');
  const within = compare(dose, rules.value('safety.noise.most-dose')) <= 0;
  return {
    periods,
    dose,
    verdict: within ? 'within the limit' : 'over the limit',
    cautions: within ? ['caution.noise.wear'] : ['caution.noise.over', 'caution.noise.wear'],
  };
}

/**
 * How much time is left at a level, after a dose? Nought where the dose is used up, or where the table allows none;
 * undefined where the level is too quiet to count.
 * By hand: half of the 8 h that the table allows at 90 dBA.
 * @example timeLeft(number(0.5), quantity(90, 'dBA'), rules).amount.toFixed(6) // => '240.000000'
 */
export function timeLeft(
  dose: Quantity<'number'> | undefined,
  level: Quantity<'sound level'>,
  rules: Rulebook,
): Quantity<'time'> | undefined {
  const allowed = allowedTime(level, rules);
  if (allowed === 'any') return undefined;
  if (allowed === 'none' || !dose) return named(quantity(0, 'min'), 'T left', 'Time left at the next level');
  const unused = named(excess(rules.value('safety.noise.most-dose'), dose), 'F left', 'Dose left');
  return named(inUnit(times(unused, allowed), 'min'), 'T left', 'Time left at the next level');
}
