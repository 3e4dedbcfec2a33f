import {
  byMethod,
  inches,
  inUnit,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  times,
  total,
} from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';
import { openWithin } from '../cavity/open-within.ts';
import type { Section } from '../cavity/section.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { bagsFor } from '../fill/bags.ts';
import { keptOff, type Ring, ringTold, runsInto } from './flue-ring.ts';
import type { GableEnds } from './lane-fields.ts';
import { reachOf } from './reach.ts';
import { fits, freeStrip, less, roomForHose, type Taken } from './strip.ts';

/** A cavity that is filled along its length, from one gable end or from both. */
export interface LaneProblem extends Taken {
  readonly length: Quantity<'length'>;
  readonly section: Section;
  readonly ends: GableEnds;
  /** How far the fill spreads to each side of the hose. */
  readonly spread: Quantity<'length'>;
  /** How far the hose or tube at hand can be pushed; left out, the usual reach of a flexible hose. */
  readonly reach?: Quantity<'length'> | undefined;
  readonly rings?: readonly Ring[];
  readonly density: Quantity<'density'>;
  readonly bagWeight: Quantity<'weight of a piece'>;
}

/** One lane along the home: where the hose runs, and what it leaves. */
export interface Lane {
  readonly number: number;
  readonly from: Quantity<'length'>;
  readonly to: Quantity<'length'>;
  /** Where the hose runs, from the eave. */
  readonly middle: Quantity<'length'>;
  readonly room: Quantity<'length'>;
  /** Does the hose go through? */
  readonly feedable: boolean;
  readonly area: Quantity<'area'>;
  /** The hose to push in from each end: to the middle, to the other end, or to the ring about a flue; nothing at an end that stays shut. */
  readonly hoseFromStart: Quantity<'length'>;
  readonly hoseFromFarEnd: Quantity<'length'>;
  readonly fromStart: Quantity<'length'>;
  readonly fromFarEnd: Quantity<'length'>;
  /** What no push covers: at the lower end of the reach, and at its upper end. */
  readonly left: Quantity<'length'>;
  readonly leftAtBest: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
  readonly leftVolume: Quantity<'volume'>;
  readonly bags: Quantity<'pieces'>;
  /** Of them what the hose comes to, and is blown. */
  readonly within: Quantity<'pieces'>;
  /** A push here stops before the ring kept open about a flue. */
  readonly stopsAtRing: boolean;
}

export interface Lanes {
  readonly lanes: readonly Lane[];
  readonly laneWidth: Quantity<'length'>;
  /** What each push would have to be, with nothing in its way. */
  readonly push: Quantity<'length'>;
  readonly reach: QuantityRange<'length'>;
  readonly hose: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
  readonly leftVolume: Quantity<'volume'>;
  readonly bags: Quantity<'pieces'>;
  /** The most that is left over in one lane. */
  readonly left: Quantity<'length'>;
  readonly leftAtBest: Quantity<'length'>;
}

/** More lanes than this are a slip in the spread. */
const MOST_LANES = 40;
/**
 * In how many lanes is the cavity filled from its gable ends, how far does each push have to go, and what is left over?
 * Lanes are as wide as the fill spreads to both sides of the hose, or a little less, so that they share the width evenly. The hose
 * runs along the middle of its lane, through every truss, and stops before the ring kept open about a flue; where a ring keeps one push
 * short of the middle, the one from the other end goes on to it.
 * By hand: 14 ft in lanes of 4 ft at the most.
 * @throws EntriesClash for a spread that makes more lanes than anyone works.
 * @example gableLanes({ section: cavitySection({ shape: 'level', width: quantity(14, 'ft'), eave: quantity(12, 'in') }), length: quantity(60, 'ft'), ends: 'both ends', spread: quantity(2, 'ft'), density: quantity(1.5, 'lb/ft3'), bagWeight: quantity(30, 'lb/bag') }, rules).lanes.length // => 4
 */
export function gableLanes(problem: LaneProblem, rules: Rulebook): Lanes {
  const { section, length, spread, ends } = problem;
  const count = Math.max(1, Math.ceil(inches(section.width) / (2 * inches(spread)) - 1e-9));
  if (!(count <= MOST_LANES)) {
    throw new EntriesClash({
      field: 'spread',
      label: 'Spread to each side',
      found: `a spread that makes ${count} lanes`,
      expected: `${MOST_LANES} lanes at most`,
    });
  }
  const lanesAcross = named(
    byMethod('the fewest no wider than the spread to both sides', [section.width, spread], count, '1'),
    'nl',
    'Lanes across the cavity',
  );
  const laneWidth = named(over(section.width, lanesAcross), 'b', 'Width of a lane');
  const push = named(
    inUnit(ends === 'both ends' ? over(length, number(2)) : length, 'ft'),
    'p',
    ends === 'both ends' ? 'Push from each end, to the middle' : 'Push from the one end, to the other',
  );
  const reach = reachOf(problem.reach, rules);
  const hose = rules.value('access.hose.diameter');
  const lanes = Array.from({ length: count }, (_, place) =>
    lane(place, { ...problem, laneWidth, push, reach, hose }, rules),
  );
  const most = (of: (lane: Lane) => Quantity<'length'>): Quantity<'length'> =>
    lanes.map(of).reduce((a, b) => (inches(b) > inches(a) ? b : a));
  return {
    lanes,
    laneWidth,
    push,
    reach,
    hose,
    volume: named(total(lanes.map(({ volume }) => volume)), 'V', 'Volume of all lanes'),
    leftVolume: named(total(lanes.map(({ leftVolume }) => leftVolume)), 'V left', 'Volume left over'),
    bags: named(total(lanes.map(({ bags }) => bags)), 'n', 'Bags for all lanes'),
    left: most(({ left }) => left),
    leftAtBest: most(({ leftAtBest }) => leftAtBest),
  };
}

interface Worked extends Omit<LaneProblem, 'reach'> {
  readonly laneWidth: Quantity<'length'>;
  readonly push: Quantity<'length'>;
  readonly reach: QuantityRange<'length'>;
  readonly hose: Quantity<'length'>;
}

/**
 * How far the hose is to go in from each end, in inches: its push, or to the ring about a flue. Where a ring keeps the one short of its
 * push, the other goes on past the middle, up to its own side of the ring.
 */
function pushesOf(
  length: number,
  push: number,
  rings: readonly { readonly from: number; readonly to: number }[],
): { readonly first: number; readonly last: number } {
  const [first, last] = [
    Math.max(0, Math.min(length, ...rings.map(({ from }) => from))),
    Math.max(0, Math.min(length, ...rings.map(({ to }) => length - to))),
  ];
  return {
    first: last < push ? first : Math.min(first, push),
    last: first < push ? last : Math.min(last, push),
  };
}

function lane(place: number, problem: Worked, rules: Rulebook): Lane {
  const { section, length, laneWidth, push, reach, hose, ends, rings = [] } = problem;
  const edge = (count: number) =>
    named(times(laneWidth, number(count)), 'y', 'Edge of the lane, from the eave');
  const [from, to] = [edge(place), edge(place + 1)];
  const middle = named(over(plus(from, to), number(2)), 'ym', 'Where the hose runs, from the eave');
  const room = roomForHose(section, middle, problem, problem.trussSpacing !== undefined, rules);
  const feedable = fits(hose, room);
  const ringsTold = rings.length === 0 ? [] : [middle, hose, ...rings.flatMap(ringTold)];
  const inTheWay = rings.flatMap((ring) => {
    const met = runsInto(inches(ring.along), inches(ring.at) - inches(middle), keptOff(ring, hose));
    return met ? [met] : [];
  });
  const stops = pushesOf(inches(length), inches(push), inTheWay);
  /** How far is pushed from an end, with a reach; nothing where the hose does not fit, or the end stays shut. */
  const covered = (
    limit: number,
    of: Quantity<'length'>,
    open: boolean,
    name: string,
  ): Quantity<'length'> => {
    const amount = feedable && open ? Math.min(limit, inches(of)) : 0;
    const method = feedable
      ? 'the push, past the middle where a ring stops the other one, or the reach of the hose, or the ring kept open about a flue, whichever comes first'
      : 'the hose does not fit';
    return named(
      inUnit(byMethod(method, [push, of, hose, room, ...ringsTold], amount, 'in'), 'ft'),
      'c',
      name,
    );
  };
  const pushed = (of: Quantity<'length'>) => {
    const start = covered(stops.first, of, true, 'Covered from the starting end');
    const far = covered(stops.last, of, ends === 'both ends', 'Covered from the far end');
    // A push to the middle from both ends leaves a bit of floating noise and no more.
    const rest = minus(minus(inUnit(length, 'ft'), start), far);
    const left = named(
      Math.abs(rest.amount) < 1e-9 ? { ...rest, amount: 0 } : rest,
      'e',
      'Left over, that no push covers',
    );
    return { start, far, left };
  };
  const sure = pushed(reach.low);
  const wanted = (limit: number, open: boolean, name: string): Quantity<'length'> =>
    named(
      inUnit(
        byMethod(
          'the push, past the middle where a ring stops the other one, or to the ring kept open about a flue, whichever comes first',
          [push, ...ringsTold],
          open ? limit : 0,
          'in',
        ),
        'ft',
      ),
      'h',
      name,
    );
  const area = freeStrip(section, from, to, problem, rules);
  const open = (startEnd: number, farEnd: number): number[] =>
    openWithin(
      section,
      rings,
      { across: [inches(from), inches(to)], along: [startEnd, farEnd] },
      problem.oldDepth,
    );
  const whole = times(area, inUnit(length, 'ft'));
  const volume = less(whole, rings, open(0, inches(length)), 'V', 'Volume of the lane');
  const openLeft = open(inches(sure.start), inches(length) - inches(sure.far));
  const leftVolume = less(times(area, sure.left), rings, openLeft, 'V left', 'Volume left over in the lane');
  const bagsOf = (held: Quantity<'volume'>) => bagsFor(held, problem.density, problem.bagWeight).bags;
  return {
    number: place + 1,
    from,
    to,
    middle,
    room,
    feedable,
    area,
    hoseFromStart: wanted(stops.first, true, 'Hose to push in from the starting end'),
    hoseFromFarEnd: wanted(stops.last, ends === 'both ends', 'Hose to push in from the far end'),
    fromStart: sure.start,
    fromFarEnd: sure.far,
    left: sure.left,
    leftAtBest: pushed(reach.high).left,
    volume,
    leftVolume,
    bags: bagsOf(volume),
    within: bagsOf(minus(volume, leftVolume)),
    stopsAtRing: feedable && inTheWay.length > 0,
  };
}
