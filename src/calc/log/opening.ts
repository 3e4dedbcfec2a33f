import type { CautionId } from '../../generated/rule-types.ts';
import {
  amountIn,
  compare,
  excess,
  inUnit,
  larger,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
  smaller,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { bagsFor } from '../fill/bags.ts';

export const openingStates = ['filling', 'full'] as const;
export type OpeningState = (typeof openingStates)[number];

const openingVerdicts = [
  'not begun',
  'filling',
  'over the plan and not full',
  'full, as planned',
  'full, light',
  'full, heavy',
] as const;
export type OpeningVerdict = (typeof openingVerdicts)[number];

/** What an opening is meant to take. */
export interface OpeningPlan {
  readonly volume: Quantity<'volume'>;
  readonly density: Quantity<'density'>;
  readonly bagWeight: Quantity<'weight of a piece'>;
  /** The highest density that the ceiling carries at this depth, where one is known; 0 where it carries nothing more. */
  readonly highestDensity?: Quantity<'density'> | undefined;
}

/** How an opening stands after so many bags. */
export interface OpeningSoFar {
  readonly verdict: OpeningVerdict;
  readonly bags: Quantity<'pieces'>;
  readonly planned: Quantity<'pieces'>;
  /** The same as a crew counts it: to the nearest quarter, or the one below where that is more than the ceiling carries. */
  readonly target: Quantity<'pieces'>;
  readonly weight: Quantity<'weight'>;
  /** Weight so far over the whole volume: the density once the fill has spread through it. */
  readonly density: Quantity<'density'>;
  /** What the plan still asks for, and of a full opening what it is short by; 0 where more went in than planned. */
  readonly left: Quantity<'pieces'>;
  readonly cautions: readonly CautionId[];
}

/** Of a bag, as it is counted. */
export const QUARTER = 0.25;
/** A count to the nearest quarter may be off by this, however little an opening takes. */
const HALF_A_QUARTER = quantity(QUARTER / 2, 'bag');
/** Bags are counted in quarters; floating arithmetic makes a quarter a trillionth more here and there. */
const NOISE = 1e-9;

/**
 * Does an opening take so few bags that a count in quarters can't tell light from heavy? Then half a quarter is more than what counts as near
 * enough, and several of them are judged together.
 * @example tooFewToJudge(quantity(0.68, 'bag'), rules) // => true
 */
export const tooFewToJudge = (planned: Quantity<'pieces'>, rules: Rulebook): boolean =>
  compare(times(planned, rules.value('fill.bag.near-enough')), HALF_A_QUARTER) < 0;

/** Are these bags a whole number of quarters? @example inQuarters(quantity(2.75, 'bag')) // => true */
export function inQuarters(bags: Quantity<'pieces'>): boolean {
  const quarters = amountIn(bags, 'bag') / QUARTER;
  return Math.abs(quarters - Math.round(quarters)) <= NOISE * Math.max(1, quarters);
}

/**
 * Is an opening light, heavy or as planned after so many bags? While it is still being filled only too many bags can be told;
 * whether it is light shows when it is full. Near enough is the usual spread of bags used against bags planned, or half a quarter of a bag
 * where that is more: a small bay cannot be counted any nearer. An opening that nothing went into is light.
 * By hand: 40 ft3 × 1.5 lb/ft3 = 60 lb, which is two bags of 30 lb, and one is in.
 * @throws EntriesClash if the volume is 0, or the bags are not in quarters.
 * @example openingSoFar({ volume: quantity(40, 'ft3'), density: quantity(1.5, 'lb/ft3'), bagWeight: quantity(30, 'lb/bag') }, quantity(1, 'bag'), 'filling', rules).left.amount // => 1
 */
export function openingSoFar(
  { volume, density, bagWeight, highestDensity }: OpeningPlan,
  bags: Quantity<'pieces'>,
  state: OpeningState,
  rules: Rulebook,
): OpeningSoFar {
  if (volume.amount === 0) {
    throw new EntriesClash({
      field: 'volume',
      label: 'Volume of the opening’s stretch',
      found: 'none',
      expected: 'more than 0, or nothing can be filled through it',
    });
  }
  if (!inQuarters(bags)) {
    throw new EntriesClash({
      field: 'bags',
      label: 'Bags blown so far',
      found: `${bags.amount} bags`,
      expected: 'whole quarters of a bag, such as 2.25 bags or 2 1/2 bags',
    });
  }
  const { bags: planned } = bagsFor(volume, density, bagWeight);
  const weight = named(times(bags, bagWeight), 'w', 'Weight blown so far');
  const reached = named(inUnit(over(weight, volume), 'lb/ft3'), 'ρr', 'Density reached');
  const near = rules.value('fill.bag.near-enough');
  const most = larger(times(planned, plus(number(1), near)), plus(planned, HALF_A_QUARTER));
  const least = smaller(times(planned, minus(number(1), near)), minus(planned, HALF_A_QUARTER));
  const verdict = verdictOf(bags, least, most, state);
  const overloaded = highestDensity !== undefined && compare(reached, highestDensity) > 0;
  return {
    verdict,
    bags,
    planned,
    target: targetOf(planned, highestDensity && over(times(highestDensity, volume), bagWeight)),
    weight,
    density: reached,
    left: named(excess(planned, bags), 'n left', 'Bags the plan still asks for'),
    cautions: overloaded
      ? // Of a ceiling that carries too much already, none is told where more fill may be wanting.
        ['caution.log.overloaded', ...cautionsOf[verdict].filter((id) => id !== 'caution.log.light')]
      : cautionsOf[verdict],
  };
}

/** Bags in quarters: the nearest, but none that lies above the most and its plan does not. */
function targetOf(planned: Quantity<'pieces'>, most: Quantity<'pieces'> | undefined): Quantity<'pieces'> {
  const quarters = amountIn(planned, 'bag') / QUARTER;
  const nearest = Math.round(quarters);
  const tooMany =
    most !== undefined && nearest > quarters && nearest * QUARTER > amountIn(most, 'bag') + NOISE;
  return quantity((tooMany ? nearest - 1 : nearest) * QUARTER, 'bag');
}

function verdictOf(
  bags: Quantity<'pieces'>,
  least: Quantity<'pieces'>,
  most: Quantity<'pieces'>,
  state: OpeningState,
): OpeningVerdict {
  const overPlan = compare(bags, most) > 0;
  if (state === 'filling') {
    if (overPlan) return 'over the plan and not full';
    return bags.amount === 0 ? 'not begun' : 'filling';
  }
  if (overPlan) return 'full, heavy';
  return bags.amount === 0 || compare(bags, least) < 0 ? 'full, light' : 'full, as planned';
}

const cautionsOf: Readonly<Record<OpeningVerdict, readonly CautionId[]>> = {
  'not begun': [],
  filling: [],
  'over the plan and not full': ['caution.log.over-plan'],
  'full, as planned': [],
  'full, light': ['caution.log.light'],
  'full, heavy': ['caution.log.heavy'],
};
