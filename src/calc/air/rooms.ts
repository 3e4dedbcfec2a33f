import { compare, excess, named, type Quantity, quantity, times, total } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { RoomKind, RunningWay } from './fields.ts';

/** A bath or kitchen as it is found. */
export interface Room {
  readonly name: string;
  readonly room: RoomKind;
  /** What its fan moves to the outdoors; none where there is no fan. */
  readonly flow: Quantity<'air flow'> | undefined;
  readonly runs: RunningWay;
  readonly windowOpens: boolean;
}

/** A room with what is asked of its fan, and what it lacks. */
export interface RoomExhaust extends Room {
  /** By the standard, for the way the fan runs; on demand where no rate is entered for a fan that runs all the time. */
  readonly asked: Quantity<'air flow'>;
  readonly askedRuns: RunningWay;
  /** The rate that its fan is held against: that on demand for a fan that runs all the time and does less than is asked of such a one. */
  readonly heldAgainst: Quantity<'air flow'>;
  /** By the factory rule. */
  readonly factory: Quantity<'air flow'>;
  /** What is to be made up for: 0 where the fan does enough, or a window forgives the rest. */
  readonly shortfall: Quantity<'air flow'>;
}

const none = quantity(0, 'cfm');
const required = <T>(found: T | undefined, what: string): T => {
  if (found === undefined) throw new Error(`found no rate for ${what}, expected one in the rulebook`);
  return found;
};

/**
 * What is asked of a room's exhaust, and what does it lack? In cfm, by ASHRAE 62.2 section 5, and its appendix for homes in use as recalled.
 * A fan that runs all the time and does what is asked of such a fan lacks nothing; one that does less is measured against the rate on
 * demand, since that is the one the appendix knows. `place` numbers the room in the working, from 1.
 * By hand: 50 cfm on demand, less the 20 that the fan moves and the 20 that a window forgives.
 * @example roomExhaust({ name: 'bath', room: 'bath', flow: quantity(20, 'cfm'), runs: 'on demand', windowOpens: true }, 1, rules).shortfall.amount // => 10
 */
export function roomExhaust(room: Room, place: number, rules: Rulebook): RoomExhaust {
  const rate = (runs: RunningWay) =>
    rules.find('ventilation.local.exhaust', { room: room.room, runs }, 'rate')?.low;
  const onDemand = required(rate('on demand'), `a ${room.room} on demand`);
  const allTheTime = room.runs === 'all the time' ? rate('all the time') : undefined;
  const measured = room.flow ?? none;
  const enough = allTheTime !== undefined && compare(measured, allTheTime) >= 0;
  const lacks = excess(onDemand, measured);
  const forgiven = room.windowOpens ? excess(lacks, rules.value('ventilation.local.window-credit')) : lacks;
  return {
    ...room,
    asked: allTheTime ?? onDemand,
    askedRuns: allTheTime ? 'all the time' : 'on demand',
    heldAgainst: enough ? allTheTime : onDemand,
    factory: required(
      rules.find('ventilation.local.factory-exhaust', { room: room.room }, 'rate')?.low,
      `a ${room.room} in the factory rule`,
    ),
    shortfall: named(enough ? none : forgiven, `qs${place}`, `Shortfall of the ${room.name}`),
  };
}

/** What the rooms lack in all, and the share of it that the whole-house fan may make up. */
export interface Shortfall {
  readonly total: Quantity<'air flow'>;
  readonly madeUp: Quantity<'air flow'>;
}

/**
 * How much more must the whole-house fan move for rooms that lack exhaust? In cfm; 0 without rooms. Source of the method: memory.
 * By hand: a quarter of 40 cfm.
 * @example shortfallOf([{ shortfall: quantity(40, 'cfm') }], rules).madeUp.amount // => 10
 */
export function shortfallOf(rooms: readonly RoomExhaust[], rules: Rulebook): Shortfall {
  const all = named(
    rooms.length > 0 ? total(rooms.map(({ shortfall }) => shortfall)) : none,
    'qt',
    'Shortfall of the rooms',
  );
  return {
    total: all,
    madeUp: named(times(all, rules.value('ventilation.local.shortfall-share')), 'qu', 'Made up for'),
  };
}
