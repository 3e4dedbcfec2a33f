import type { CautionId } from '../../../generated/rule-types.ts';
import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  minus,
  named,
  plus,
  type Quantity,
} from '../../../quantity/quantity.ts';
import type { UnitOf } from '../../../quantity/units.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';
import { loadLimit, type Verdict } from '../../ceiling/load.ts';

/** What air that can't get out does to the ceiling, with the insulation that lies on it. */
export interface TrappedAir {
  readonly air: Quantity<'load'>;
  readonly total: Quantity<'load'>;
  readonly limit: Quantity<'load'> | undefined;
  readonly verdict: Verdict;
  /** The highest pressure that passes, in the unit of the pressure given; absent without a limit, or where the insulation alone is too heavy. */
  readonly highestPressure: Quantity<'load'> | undefined;
  readonly cautions: readonly CautionId[];
}

/**
 * Does the ceiling carry the pressure of the air below the roof, and the insulation with it?
 * A pressure is a load on every part of the ceiling; both together are held against the published limit for the board on its framing.
 * A board or framing without a published limit is unrated unless an engineer gave a load for it, and nothing is guessed.
 * By hand: of the 2.2 lb/ft2 that the board carries, the insulation leaves 0.7 for the air.
 * @example trappedAir('gypsum 1/2 in', quantity(16, 'in'), quantity(0.5, 'lb/ft2'), quantity(1.5, 'lb/ft2'), rules).highestPressure.amount.toFixed(6) // => '0.700000'
 */
export function trappedAir(
  board: string,
  framing: Quantity<'length'>,
  pressure: Quantity<'load'>,
  insulation: Quantity<'load'>,
  rules: Rulebook,
  engineers?: Quantity<'load'>,
): TrappedAir {
  const air = named(
    byMethod('p as lb/ft²', [pressure], amountIn(pressure, 'lb/ft2'), 'lb/ft2'),
    'qa',
    'Load of the air on the ceiling',
  );
  const total = named(plus(air, insulation), 'q', 'Air and insulation on the ceiling');
  const limit = loadLimit(board, framing, rules, engineers);
  if (!limit) {
    return {
      air,
      total,
      limit,
      verdict: 'unrated',
      highestPressure: undefined,
      cautions: ['caution.ceiling.unrated', 'caution.ceiling.trapped-air'],
    };
  }
  const within = (load: Quantity<'load'>) => compare(load, limit) <= 0;
  const left = named(minus(limit, insulation), 'ql', 'Load left for the air');
  const passes = within(total);
  const grave: CautionId = within(insulation) ? 'caution.machine.pressed' : 'caution.ceiling.overloaded';
  return {
    air,
    total,
    limit,
    verdict: passes ? 'carries it' : 'does not carry it',
    highestPressure:
      compare(limit, insulation) > 0
        ? named(inUnit(left, pressure.unit as UnitOf<'load'>), 'p most', 'Highest pressure that passes')
        : undefined,
    cautions: [passes ? 'caution.ceiling.sound-first' : grave, 'caution.ceiling.trapped-air'],
  };
}
