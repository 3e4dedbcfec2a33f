import type { CautionId } from '../../generated/rule-types.ts';
import type { FormatOptions } from '../../quantity/format.ts';
import {
  amountIn,
  compare,
  inUnit,
  minus,
  named,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { type Remark, said } from '../declare/remark.ts';

const verdicts = ['carries it', 'does not carry it', 'unrated'] as const;
export type Verdict = (typeof verdicts)[number];

/** What lies on the ceiling, and whether the board is rated to carry it. */
export interface CeilingLoad {
  readonly new: Quantity<'load'>;
  readonly old: Quantity<'load'> | undefined;
  readonly total: Quantity<'load'>;
  readonly limit: Quantity<'load'> | undefined;
  readonly verdict: Verdict;
  /** The highest density that passes at this depth; absent without a limit, or where the old insulation alone is too heavy. */
  readonly highestDensity: Quantity<'density'> | undefined;
  /** The greatest depth of new fill that passes at this density. */
  readonly greatestDepth: Quantity<'length'> | undefined;
  readonly cautions: readonly CautionId[];
}

/** How the most that passes is printed: never rounded up, or what is printed would not pass. */
export const mostThatPasses = { figures: 3, round: 'down' } as const satisfies FormatOptions;

/** What may be carried is printed as it was published or written, however many figures that takes. */
const LIMIT_FIGURES = 9;
export const asLimit = { figures: LIMIT_FIGURES, round: 'down' } as const satisfies FormatOptions;

const MOST_FIGURES = 15;

/**
 * How is a load printed beside its limit? To three figures, or to as many more as show on which side of it the load stands.
 * @example besideLimit(quantity(2.2004, 'lb/ft2'), quantity(2.2, 'lb/ft2')) // => { figures: 5 }
 */
export function besideLimit(
  load: Quantity<'load'>,
  limit: Quantity<'load'> | undefined,
): { readonly figures: number } {
  let figures = 3;
  if (limit && compare(load, limit) !== 0)
    while (figures < MOST_FIGURES && sideAsPrinted(load, limit, figures) !== Math.sign(compare(load, limit)))
      figures += 1;
  return { figures };
}

/** On which side of its limit does a load stand as both are printed, the limit in full? Above is 1. */
const sideAsPrinted = (load: Quantity<'load'>, limit: Quantity<'load'>, figures: number): number =>
  Math.sign(
    Number(load.amount.toPrecision(figures)) -
      Number(amountIn(limit, load.unit as 'lb/ft2').toPrecision(LIMIT_FIGURES)),
  );

/** What an engineer wrote of a ceiling, as it is entered. */
export interface Engineers {
  readonly engineer_load?: Quantity<'load'> | undefined;
  readonly engineer?: string | undefined;
}

/** The load that an engineer gave in writing; without who gave it, it is nobody's, and does not count. */
export const engineersLoad = ({ engineer_load, engineer }: Engineers): Quantity<'load'> | undefined =>
  engineer ? engineer_load : undefined;

/**
 * What may a board on its framing carry? The published limit of the two; an engineer's load where there is none, or where it is less.
 * Undefined where neither is known, and nothing is guessed.
 * @example loadLimit('wood-fibre panel', quantity(16, 'in'), rules) // => undefined
 */
export function loadLimit(
  board: string,
  framing: Quantity<'length'>,
  rules: Rulebook,
  engineers?: Quantity<'load'>,
): Quantity<'load'> | undefined {
  const published = rules.find('ceiling.board.limit', { board, framing }, 'load')?.low;
  if (!engineers) return published;
  return published && compare(published, engineers) <= 0 ? published : engineers;
}

/** Whose limit a ceiling is held against, in a sentence, where it is an engineer's; and that one does not count yet. */
export function ofEngineer(given: Engineers, limit: Quantity<'load'> | undefined): string[] {
  const { engineer_load, engineer } = given;
  if (!engineer_load) return [];
  if (!engineer) return ['An engineer’s load counts only once you enter who gave it.'];
  return limit === engineer_load
    ? [`What the ceiling may carry was given in writing by: ${engineer}. Keep the paper with the job.`]
    : ['The published limit of this board is no more than the engineer’s load, and holds.'];
}

/** Old insulation as it is entered. */
interface OldEntered {
  readonly depth: Quantity<'length'> | undefined;
  readonly density: Quantity<'density'> | undefined;
}

/**
 * The old insulation that lies on a ceiling; of one that nobody weighed, the heavier end of the lightest published batts.
 * @throws EntriesClash for a density without a depth: its weight would be left out unseen.
 * @example oldOnCeiling({ depth: quantity(2, 'in'), density: quantity(1, 'lb/ft3') }, rules)?.density.amount // => 1
 */
export function oldOnCeiling({ depth, density }: OldEntered, rules: Rulebook) {
  if (depth) return { depth, density: density ?? rules.range('thermal.batt.light-density').high };
  if (!density) return undefined;
  throw new EntriesClash({
    field: 'old_depth',
    label: 'Depth of the old insulation',
    found: 'nothing, and a density of it',
    expected: 'how deep it lies now, or none',
  });
}

/** Why the old insulation weighs what it does, where there is some and nobody weighed it. */
export function ofOldDensity({ depth, density }: OldEntered, rules: Rulebook): Remark[] {
  if (!depth || depth.amount === 0 || density) return [];
  const { low, high } = rules.range('thermal.batt.light-density');
  return [
    said`The old insulation is taken at ${high}, the heavier end of the lightest published batts, ${low} to ${high}; wet or dirty it weighs more.`,
  ];
}

/** New fill by its depth and density, or by the weight per area on its label. */
export type NewFill =
  | { readonly depth: Quantity<'length'>; readonly density: Quantity<'density'> }
  | { readonly weight: Quantity<'load'> };

/** How heavy is insulation of a depth and a density on what carries it? */
const weightOn = (depth: Quantity<'length'>, density: Quantity<'density'>): Quantity<'load'> =>
  inUnit(times(depth, density), 'lb/ft2');

/**
 * Does the ceiling carry the fill at its deepest place, with the old insulation added?
 * The board's limit is the published one for its kind and framing; a board or framing without one is unrated unless an engineer gave a
 * load for it, and nothing is guessed.
 * By hand: 1 ft × 1.5 lb/ft3, and 0.5 ft × 1 lb/ft3 of old insulation.
 * @example ceilingLoad('gypsum 1/2 in', quantity(16, 'in'), { depth: quantity(1, 'ft'), density: quantity(1.5, 'lb/ft3') }, { depth: quantity(6, 'in'), density: quantity(1, 'lb/ft3') }, rules).total.amount.toFixed(6) // => '2.000000'
 */
export function ceilingLoad(
  board: string,
  framing: Quantity<'length'>,
  fill: NewFill,
  old: { readonly depth: Quantity<'length'>; readonly density: Quantity<'density'> } | undefined,
  rules: Rulebook,
  engineers?: Quantity<'load'>,
): CeilingLoad {
  const fresh =
    'weight' in fill
      ? fill.weight
      : named(weightOn(fill.depth, fill.density), 'qn', 'Weight of the new fill on the ceiling');
  const oldLoad =
    old && named(weightOn(old.depth, old.density), 'qo', 'Weight of the old insulation on the ceiling');
  const total = named(oldLoad ? plus(fresh, oldLoad) : fresh, 'q', 'Weight on the ceiling');
  const limit = loadLimit(board, framing, rules, engineers);
  if (!limit) {
    return {
      new: fresh,
      old: oldLoad,
      total,
      limit,
      verdict: 'unrated',
      highestDensity: undefined,
      greatestDepth: undefined,
      cautions: ['caution.ceiling.unrated'],
    };
  }
  const passes = compare(total, limit) <= 0;
  const left = named(oldLoad ? minus(limit, oldLoad) : limit, 'ql', 'Weight left for new fill');
  const room = 'depth' in fill && (!oldLoad || compare(limit, oldLoad) > 0);
  return {
    new: fresh,
    old: oldLoad,
    total,
    limit,
    verdict: passes ? 'carries it' : 'does not carry it',
    highestDensity: room ? named(over(left, fill.depth), 'ρ most', 'Highest density that passes') : undefined,
    greatestDepth: room
      ? named(over(left, fill.density), 'd most', 'Greatest depth of new fill that passes')
      : undefined,
    cautions: passes ? ['caution.ceiling.sound-first'] : ['caution.ceiling.overloaded'],
  };
}
