import type { CautionId } from '../../generated/rule-types.ts';
import { excess, named, plus, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Room, type RoomExhaust, roomExhaust, shortfallOf } from './rooms.ts';
import { factoryRate, wholeHouseRate } from './whole-house.ts';

export interface HomeToAir {
  readonly floor: Quantity<'area'>;
  readonly bedrooms: Quantity<'number'>;
  readonly rooms: readonly Room[];
  /** What a fan that runs all the time moves already. */
  readonly existing: Quantity<'air flow'> | undefined;
}

/** All the rates of a home: what the standard asks, what the factory provided, what the rooms lack, what is left to install. */
export interface FreshAir {
  readonly wholeHouse: Quantity<'air flow'>;
  readonly factory: Quantity<'air flow'>;
  readonly rooms: readonly RoomExhaust[];
  readonly shortfall: Quantity<'air flow'>;
  readonly madeUp: Quantity<'air flow'>;
  /** Whole-house rate and what is made up for, together. */
  readonly total: Quantity<'air flow'>;
  /** What a new fan must move all the time; 0 where the one that is there does it. */
  readonly toInstall: Quantity<'air flow'>;
  readonly cautions: readonly CautionId[];
}

/**
 * How much fresh air does the home need, and how much of it must a new fan move? In cfm, by ASHRAE 62.2 for homes in use.
 * Nothing is credited for leaks.
 * By hand: 0.03 × 1000 ft2 + 7.5 × 3 people = 52.5 cfm, of which a fan moves 40 already.
 * @example freshAir({ floor: quantity(1000, 'ft2'), bedrooms: number(2), rooms: [], existing: quantity(40, 'cfm') }, rules).toInstall.amount // => 12.5
 */
export function freshAir(home: HomeToAir, rules: Rulebook): FreshAir {
  const wholeHouse = wholeHouseRate(home.floor, home.bedrooms, rules);
  const rooms = home.rooms.map((room, at) => roomExhaust(room, at + 1, rules));
  const { total: shortfall, madeUp } = shortfallOf(rooms, rules);
  const total = named(plus(wholeHouse, madeUp), 'qtot', 'Rate in all');
  return {
    wholeHouse,
    factory: factoryRate(home.floor, rules),
    rooms,
    shortfall,
    madeUp,
    total,
    toInstall: named(home.existing ? excess(total, home.existing) : total, 'qn', 'Rate to install'),
    cautions: [
      'caution.air.outdoors',
      'caution.air.backdraft',
      ...(rooms.length > 0 ? (['caution.air.recalled'] as const) : []),
      'caution.air.adopted',
    ],
  };
}
