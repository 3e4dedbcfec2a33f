import { format } from '../../quantity/format.ts';
import {
  compare,
  excess,
  inUnit,
  minus,
  named,
  over,
  type Quantity,
  quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import type { PricedFuel } from './fuel.ts';
import { presentWorthFactor, type Worth } from './worth.ts';

export interface SavingGiven {
  readonly area: Quantity<'area'>;
  readonly before: Quantity<'thermal transmittance'>;
  readonly after: Quantity<'thermal transmittance'>;
  /** Heating degree-days of a year. */
  readonly degreeDays: Quantity<'degree-days'>;
  readonly efficiency: Quantity<'number'>;
  readonly fuel: PricedFuel;
}

export interface YearlySaving {
  /** Heat that no longer leaves through the roof in a year. */
  readonly heat: Quantity<'heat'>;
  /** Heat in the fuel that is not bought in a year. */
  readonly fuelHeat: Quantity<'heat'>;
  /** The same as gallons or cubic feet; absent for electricity. */
  readonly fuelVolume: Quantity<'volume'> | undefined;
  /** Money saved in a year, as a sum. */
  readonly sum: Quantity<'money'>;
  /** The same as a rate. */
  readonly money: Quantity<'money rate'>;
  /** Carbon dioxide not given off in a year; absent for electricity. */
  readonly carbon: Quantity<'weight'> | undefined;
}

const YEAR = quantity(1, 'year');

/**
 * What does a lower U save in a year? Area × (U1 − U2) × degree-days is the heat; over the efficiency, the fuel; times its price, the
 * money. Heating only: cooling and leaking air are not counted.
 * By hand: 1000 ft2 × 0.1 × 6000 F days × 24 h = 14.4 million Btu, over 0.8 are 18, at $20.
 * @throws EntriesClash if U after is more than U before.
 * @example yearlySaving({ area: quantity(1000, 'ft2'), before: quantity(0.15, 'Btu/(h ft2 F)'), after: quantity(0.05, 'Btu/(h ft2 F)'), degreeDays: quantity(6000, 'F day'), efficiency: quantity(80, 'percent'), fuel: { price: quantity(20, '$/million Btu') } }).sum.amount.toFixed(6) // => '360.000000'
 */
export function yearlySaving({
  area,
  before,
  after,
  degreeDays,
  efficiency,
  fuel,
}: SavingGiven): YearlySaving {
  if (compare(after, before) > 0) {
    throw new EntriesClash({
      field: 'u_after',
      label: 'U or R after',
      found: `U ${format(after)} after, more than ${format(before)} before`,
      expected: 'less heat through the roof after than before: the two may be swapped',
    });
  }
  const coefficient = named(
    times(area, named(excess(before, after), 'ΔU', 'What U falls by')),
    'ΔUA',
    'What the heat loss falls by',
  );
  const heat = named(
    inUnit(times(coefficient, degreeDays), 'million Btu'),
    'Q',
    'Heat kept in the home in a year',
  );
  const fuelHeat = named(over(heat, efficiency), 'F', 'Heat in the fuel saved in a year');
  const sum = named(times(fuel.price, fuelHeat), 'M', 'Money saved in a year');
  return {
    heat,
    fuelHeat,
    fuelVolume:
      fuel.heatContent &&
      named(
        inUnit(over(fuelHeat, fuel.heatContent), volumeUnit(fuel.heatContent)),
        'Vf',
        'Fuel saved in a year',
      ),
    sum,
    money: named(over(sum, YEAR), 'S', 'Saving a year'),
    carbon: fuel.carbon && named(times(fuel.carbon, fuelHeat), 'C', 'Carbon dioxide not given off in a year'),
  };
}

/** Gas is counted as its heat content is given: by the cubic foot, not by the gallon. */
const volumeUnit = (content: Quantity<'heat per volume'>) => (content.unit === 'Btu/ft3' ? 'ft3' : 'gal');

const testVerdicts = ['passes', 'does not pass'] as const;

export interface LifetimeWorth {
  readonly factor: Quantity<'number'>;
  readonly presentWorth: Quantity<'money'>;
}

/**
 * What are all the savings of the measure's life worth today?
 * By hand: five years of $100, nothing discounted.
 * @example lifetimeWorth(quantity(100, '$'), { years: quantity(5, 'year'), rate: quantity(0, 'percent') }).presentWorth.amount // => 500
 */
export function lifetimeWorth(sum: Quantity<'money'>, worth: Worth): LifetimeWorth {
  const factor = presentWorthFactor(worth);
  return { factor, presentWorth: named(times(factor, sum), 'PW', 'Present worth of the savings') };
}

export interface Investment {
  /** Absent where nothing is saved: it is never paid back. */
  readonly payback: Quantity<'time'> | undefined;
  readonly net: Quantity<'money'>;
  readonly ratio: Quantity<'number'>;
  readonly verdict: (typeof testVerdicts)[number];
}

/**
 * Does the measure pay, by simple payback and by the cost test of 10 CFR 440.21(d)?
 * By hand: $1000 over $250 a year.
 * @example investment(quantity(1000, '$'), quantity(250, '$/year'), quantity(3000, '$'), rules).payback.amount.toFixed(6) // => '4.000000'
 */
export function investment(
  cost: Quantity<'money'>,
  money: Quantity<'money rate'>,
  presentWorth: Quantity<'money'>,
  rules: Rulebook,
): Investment {
  const ratio = named(over(presentWorth, cost), 'SIR', 'Savings to investment');
  const least = rules.value('energy.cost-test.ratio');
  return {
    payback: money.amount > 0 ? named(inUnit(over(cost, money), 'year'), 'Tp', 'Simple payback') : undefined,
    net: named(minus(presentWorth, cost), 'NS', 'Present worth of the savings less the cost'),
    ratio,
    verdict: compare(ratio, least) >= 0 ? 'passes' : 'does not pass',
  };
}
