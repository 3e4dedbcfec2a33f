import type { CautionId } from '../../../generated/rule-types.ts';
import {
  amountIn,
  byMethod,
  compare,
  excess,
  inUnit,
  minus,
  named,
  number,
  over,
  type Quantity,
  QuantityError,
  times,
  total,
} from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

const aims = ['light', 'on target', 'heavy'] as const;
/** Where a fill, or the mean of all, lies beside the target. */
type Aim = (typeof aims)[number];

const boxVerdicts = [
  ...aims,
  'on target in the mean, but uneven',
  'on target so far, by too few fills',
] as const;
export type BoxVerdict = (typeof boxVerdicts)[number];

/** One fill of the box on the scales: box and fill, and the empty box. */
export interface BoxFill {
  readonly gross: Quantity<'weight'>;
  readonly tare: Quantity<'weight'>;
}

/** What the fills of a test box say about the machine. */
export interface TestBox {
  readonly volume: Quantity<'volume'>;
  /** The net weight and density of each fill, in the order given. */
  readonly fills: readonly { readonly net: Quantity<'weight'>; readonly density: Quantity<'density'> }[];
  readonly mean: Quantity<'density'>;
  readonly lowest: Quantity<'density'>;
  readonly highest: Quantity<'density'>;
  /** Highest less lowest, as a share of the mean; absent for one fill, which has no spread. */
  readonly spread: Quantity<'number'> | undefined;
  /** Sample standard deviation; absent for one fill. */
  readonly deviation: Quantity<'density'> | undefined;
  /** Mean less target, as a share of the target: below 0 where the machine blows light. */
  readonly departure: Quantity<'number'>;
  /** The departures between which the machine is on target. */
  readonly nearEnough: readonly [low: Quantity<'number'>, high: Quantity<'number'>];
  readonly verdict: BoxVerdict;
  /** Fills that by themselves lie farther from the target than is near enough. */
  readonly offTarget: number;
  readonly cautions: readonly CautionId[];
}

const asShare = (q: Quantity<'density'>, of: Quantity<'density'>): Quantity<'number'> =>
  inUnit(over(q, of), 'percent');

/** The volume of a box from its inside sizes. @example boxVolume(quantity(12, 'in'), quantity(1, 'ft'), quantity(24, 'in')).amount // => 2 */
export const boxVolume = (
  length: Quantity<'length'>,
  width: Quantity<'length'>,
  height: Quantity<'length'>,
): Quantity<'volume'> => named(times(times(length, width), height), 'Vb', 'Volume of the box');

/**
 * What density does the machine lay, how much does it differ from fill to fill, and is it on target?
 * Near enough is the rulebook's share for bags used against bags planned: in one volume, bags follow density.
 * By hand: 6 lb and 5 lb in 4 ft3 are 1.5 and 1.25 lb/ft3.
 * @throws QuantityError for no fills at all, or a net weight that is not above 0.
 * @example testBox(quantity(4, 'ft3'), [{ gross: quantity(16, 'lb'), tare: quantity(10, 'lb') }, { gross: quantity(15, 'lb'), tare: quantity(10, 'lb') }], quantity(1.5, 'lb/ft3'), undefined, rules).mean.amount.toFixed(6) // => '1.375000'
 */
export function testBox(
  volume: Quantity<'volume'>,
  weighed: readonly BoxFill[],
  target: Quantity<'density'>,
  allowedSpread: Quantity<'number'> | undefined,
  rules: Rulebook,
): TestBox {
  const fills = weighed.map(({ gross, tare }, at) => {
    const net = named(minus(gross, tare), `w${at + 1}`, `Net weight of fill ${at + 1}`);
    if (!(net.amount > 0))
      throw new QuantityError(`found a net weight of ${net.amount} ${net.unit}, expected more than 0`);
    return { net, density: named(over(net, volume), `ρ${at + 1}`, `Density of fill ${at + 1}`) };
  });
  const densities = fills.map(({ density }) => density);
  const mean = named(over(total(densities), number(densities.length)), 'ρm', 'Mean density');
  const lowest = named(extreme('the least of them', Math.min, densities), 'ρ least', 'Lowest density');
  const highest = named(extreme('the most of them', Math.max, densities), 'ρ most', 'Highest density');
  const several = densities.length > 1;
  const spread = several
    ? named(asShare(excess(highest, lowest), mean), 'sr', 'Spread, as a share of the mean')
    : undefined;
  const nearEnough = rules.value('fill.bag.near-enough');
  const departureOf = (density: Quantity<'density'>) => {
    const off = minus(density, target);
    return asShare(compare(density, target) === 0 ? { ...off, amount: 0 } : off, target);
  };
  const least = times(nearEnough, number(-1));
  const judge = (departure: Quantity<'number'>): Aim =>
    compare(departure, least) < 0 ? 'light' : compare(departure, nearEnough) > 0 ? 'heavy' : 'on target';
  const departure = named(departureOf(mean), 'e', 'Mean against the target');
  const aim = judge(departure);
  const offTarget = densities.filter((density) => judge(departureOf(density)) !== 'on target').length;
  const tooWide = spread && allowedSpread && compare(spread, allowedSpread) > 0;
  const few = densities.length < rules.value('fill.test-box.fills').amount;
  const cautions: CautionId[] = [];
  if (aim === 'light') cautions.push('caution.machine.light');
  if (aim === 'heavy') cautions.push('caution.machine.heavy');
  if (tooWide) cautions.push('caution.machine.uneven');
  if (few) cautions.push('caution.machine.few-fills');
  cautions.push('caution.fill.maker-governs');
  return {
    volume,
    fills,
    mean,
    lowest,
    highest,
    spread,
    deviation: spread && deviationOf(densities, mean, spread.amount === 0),
    departure,
    nearEnough: [least, nearEnough],
    verdict: verdictOf(aim, tooWide || offTarget > 0, few),
    offTarget,
    cautions,
  };
}

/** A mean on target says nothing of a machine that blows uneven, or of one that was hardly tried. */
function verdictOf(aim: Aim, uneven: boolean, few: boolean): BoxVerdict {
  if (aim !== 'on target') return aim;
  if (uneven) return 'on target in the mean, but uneven';
  return few ? 'on target so far, by too few fills' : aim;
}

const extreme = (
  method: string,
  pick: (...amounts: number[]) => number,
  densities: readonly Quantity<'density'>[],
): Quantity<'density'> =>
  byMethod(method, densities, pick(...densities.map((density) => amountIn(density, 'lb/ft3'))), 'lb/ft3');

function deviationOf(
  densities: readonly Quantity<'density'>[],
  mean: Quantity<'density'>,
  alike: boolean,
): Quantity<'density'> {
  const middle = amountIn(mean, 'lb/ft3');
  const squares = densities.reduce((sum, density) => sum + (amountIn(density, 'lb/ft3') - middle) ** 2, 0);
  return named(
    byMethod(
      '√(Σ(ρi − ρm)²/(n − 1))',
      [mean, ...densities],
      alike ? 0 : Math.sqrt(squares / (densities.length - 1)),
      'lb/ft3',
    ),
    'sd',
    'Standard deviation of the fills',
  );
}
