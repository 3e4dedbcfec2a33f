import type { CeilingLoad } from '../calc/ceiling/load.ts';
import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { bagsFor, tooFewToTell } from '../calc/fill/bags.ts';
import { type OpeningSoFar, openingSoFar, QUARTER, tooFewToJudge } from '../calc/log/opening.ts';
import type { CautionId } from '../generated/rule-types.ts';
import {
  compare,
  excess,
  minus,
  named,
  over,
  plus,
  type Quantity,
  quantity,
  times,
} from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { type LogEntry, wayOf } from './log-entries.ts';
import { numbersInWords } from './numbers-in-words.ts';
import { holdsNothing, type Opening, openingsOf } from './openings.ts';
import type { WorkedJob } from './planned.ts';

/** An opening of the plan with what went in through it. */
export interface LoggedOpening extends Omit<OpeningSoFar, 'verdict'> {
  readonly opening: Opening;
  readonly state: 'filling' | 'full';
  /** Why nothing more goes in, where the crew said so: the plan asks it for no more. */
  readonly notFilled: LogEntry['not_filled'];
  readonly verdict: OpeningSoFar['verdict'] | 'full, judged with its group' | 'not filled';
}

/** Openings side by side that each take too little to be judged alone: counted and judged together. */
export interface LoggedGroup extends OpeningSoFar {
  readonly name: string;
  /** Its place among the parts of the openings, which stays whatever of them is filled. */
  readonly part: number;
  readonly side: Opening['side'];
  readonly openings: readonly LoggedOpening[];
  readonly state: 'filling' | 'full';
}

/** The whole job's bags as they went in. */
export interface FillLog {
  readonly openings: readonly LoggedOpening[];
  /** Of the openings those that are counted together, a group after the other. */
  readonly groups: readonly LoggedGroup[];
  /** Why the openings are not known, in a sentence; undefined where they are. */
  readonly unknown: string | undefined;
  readonly used: Quantity<'pieces'>;
  /** Bags the plan still asks for in openings that are not full; undefined while the openings are not known. */
  readonly stillToGo: Quantity<'pieces'> | undefined;
  /** Bags that openings closed as full, or not filled, are short of the plan; and that others took beyond it. */
  readonly short: Quantity<'pieces'>;
  readonly beyondPlan: Quantity<'pieces'>;
  /** On the truck at the start: as typed, else as many as the plan loads. */
  readonly loaded: Quantity<'pieces'>;
  /** Below 0 where more was used than was loaded: one of the two counts is wrong. */
  readonly left: Quantity<'pieces'>;
  /** Does what is left on the truck fill the plan? True too while it is not known what is still to go. */
  readonly enough: boolean;
  /**
   * Bags of the plan that no opening takes: beyond the reach of hose or tube, or in a section whose edge is not lifted. Undefined where there
   * are none.
   */
  readonly beyondReach: Quantity<'pieces'> | undefined;
  /** Openings that neither hose nor tube goes into. */
  readonly shut: number;
  /** Entries that belong to no opening of the plan, since the plan changed after them. */
  readonly strays: readonly LogEntry[];
}

const NO_DENSITY = quantity(0, 'lb/ft3');

/** The highest density that the ceiling carries: none under old insulation that is too heavy by itself; undefined where nobody rated it. */
const mostCarried = ({ verdict, highestDensity }: CeilingLoad): Quantity<'density'> | undefined =>
  highestDensity ?? (verdict === 'does not carry it' ? NO_DENSITY : undefined);

/** Does the hose or tube not go into this opening at all? */
const shut = ({ reached }: Opening): boolean => holdsNothing(reached);

/**
 * What is blown through an opening: what the hose reaches, or the stretch that it reaches would be filled too dense. Into one that it does not go
 * into, the whole goes in some other way.
 */
export const toBlow = (opening: Opening): Quantity<'volume'> =>
  shut(opening) ? opening.volume : opening.reached;

/**
 * Of each opening that blows behind the flue of a neighbour, how many of its bags go there: the neighbour's plan is smaller by as many, or
 * both would be judged wrongly.
 */
export const blownBehind = (openings: readonly LoggedOpening[], plan: WorkedJob): readonly Remark[] =>
  openings.flatMap(({ opening: { name, ofNeighbours } }) => {
    if (!ofNeighbours) return [];
    const { density, bag_weight } = plan.job.fill;
    const there = printed(bagsFor(ofNeighbours, density, bag_weight).bags, { figures: 2 });
    return [
      said`About ${there} of ${name.toLowerCase()} go behind the ring of its neighbour, and are counted at ${name.toLowerCase()}.`,
    ];
  });

/** Does the plan still ask for bags here? */
export const isOpen = ({
  state,
  notFilled,
}: Pick<LoggedOpening, 'state'> & Partial<Pick<LoggedOpening, 'notFilled'>>): boolean =>
  state === 'filling' && !notFilled;

/** So many openings are counted together at the most, whatever they take: more would hide where it went wrong. A count, of our own choice. */
const MOST_TOGETHER = 8;

/**
 * The openings of one side, in order, that each take too little to be judged alone: about as many in each part, whichever of them are filled,
 * so that no count changes company.
 */
function partsOf(openings: readonly LoggedOpening[], rules: Rulebook): readonly (readonly LoggedOpening[])[] {
  const runs: LoggedOpening[][] = [[]];
  for (const each of openings) {
    const run = runs[runs.length - 1] ?? [];
    if (!tooFewToJudge(each.planned, rules)) runs.push([]);
    else if (run.length === 0 || run[0]?.opening.side === each.opening.side) run.push(each);
    else runs.push([each]);
  }
  return runs.flatMap((run) => {
    const parts = Math.ceil(run.length / MOST_TOGETHER);
    return Array.from({ length: parts }, (_, part) =>
      run.slice(Math.round((part * run.length) / parts), Math.round(((part + 1) * run.length) / parts)),
    );
  });
}

function groupsOf(
  openings: readonly LoggedOpening[],
  plan: WorkedJob,
  rules: Rulebook,
  highestDensity: Quantity<'density'> | undefined,
): LoggedGroup[] {
  const { density, bag_weight: bagWeight } = plan.job.fill;
  const double = new Set(openings.map(({ opening }) => opening.side)).size > 1;
  // On either side by turns in the plan, on one side after the other in the log.
  const bySide = (['back', 'front'] as const).flatMap((side) =>
    openings.filter(({ opening }) => opening.side === side),
  );
  return partsOf(bySide, rules).flatMap((all, part): LoggedGroup[] => {
    const run = all.filter(({ notFilled }) => !notFilled);
    // One that is left by itself is judged by itself.
    if (run.length < 2) return [];
    const volume = run.map(({ opening }) => toBlow(opening)).reduce(plus);
    const bags = run.map((each) => each.bags).reduce(plus);
    const state = run.some(isOpen) ? 'filling' : 'full';
    const [first] = run.map(({ opening }) => opening);
    const soFar = openingSoFar({ volume, density, bagWeight, highestDensity }, bags, state, rules);
    const within = run.map((each) => withinGroup(each, bagWeight, highestDensity));
    return [
      {
        part,
        ...soFar,
        // The ceiling below one of them is stopped for though the fill, spread through all, would pass.
        cautions: [
          ...new Set<CautionId>([
            ...(someOverloaded(run, bagWeight, highestDensity) ? (['caution.log.overloaded'] as const) : []),
            ...within.flatMap(({ cautions }) => cautions),
            ...soFar.cautions,
          ]),
        ],
        name: `${first?.what}s ${numbersInWords(run.map(({ opening }) => opening.number))}${double ? `, ${first?.side} side` : ''}`,
        side: first?.side ?? 'back',
        state,
        openings: within,
      },
    ];
  });
}

function verdictWithin({ state, bags }: LoggedOpening): LoggedOpening['verdict'] {
  if (state === 'full') return 'full, judged with its group';
  return bags.amount === 0 ? 'not begun' : 'filling';
}

const QUARTER_BAG = quantity(QUARTER, 'bag');

/**
 * How heavy lies the fill in openings side by side, at the least: a count begins and ends at the nearest quarter, so all of them together may be
 * off by one.
 */
const surely = (
  run: readonly LoggedOpening[],
  bagWeight: Quantity<'weight of a piece'>,
): Quantity<'density'> =>
  over(
    times(excess(run.map(({ bags }) => bags).reduce(plus), QUARTER_BAG), bagWeight),
    run.map(({ opening }) => toBlow(opening)).reduce(plus),
  );

/**
 * An opening of a group: whether it is light or heavy is told of the group alone. What is overloaded by more than a quarter of a bag is told
 * of it; what may be, by the count, is warned of.
 */
function withinGroup(
  each: LoggedOpening,
  bagWeight: Quantity<'weight of a piece'>,
  highestDensity: Quantity<'density'> | undefined,
): LoggedOpening {
  const above = (density: Quantity<'density'>) => highestDensity && compare(density, highestDensity) > 0;
  return {
    ...each,
    verdict: verdictWithin(each),
    cautions: above(surely([each], bagWeight))
      ? ['caution.log.overloaded']
      : above(each.density)
        ? ['caution.log.near-limit']
        : [],
  };
}

/** Are some openings side by side, in which anything lies, overloaded together, whatever the count may be off? Those beside them carry nothing of it. */
function someOverloaded(
  run: readonly LoggedOpening[],
  bagWeight: Quantity<'weight of a piece'>,
  highestDensity: Quantity<'density'> | undefined,
): boolean {
  if (!highestDensity) return false;
  return run.some((_, from) =>
    run.some(
      (_, to) => to >= from && compare(surely(run.slice(from, to + 1), bagWeight), highestDensity) > 0,
    ),
  );
}

/**
 * How does the job stand after the bags that went in so far, opening by opening of the way in that is taken? An opening that is filled but
 * not planned is kept as a stray, never dropped: its bags are used up all the same.
 */
export function fillLog(plan: WorkedJob, rules: Rulebook): FillLog {
  const { log, fill } = plan.job;
  const entries = log.openings ?? [];
  const found = openingsOf(plan, rules);
  const planned = found.known ? found.openings : [];
  const isOf = (entry: LogEntry, { way, side, number }: Opening) =>
    wayOf(entry) === way && entry.side === side && entry.opening === number;
  const highestDensity = mostCarried(plan.load);
  const openings = planned.map((opening): LoggedOpening => {
    const entry = entries.find((each) => isOf(each, opening));
    const state = entry?.state ?? 'filling';
    const { density, bag_weight } = fill;
    const soFar = openingSoFar(
      { volume: toBlow(opening), density, bagWeight: bag_weight, highestDensity },
      entry?.bags ?? quantity(0, 'bag'),
      state,
      rules,
    );
    const notFilled = entry?.not_filled;
    if (!notFilled) return { ...soFar, opening, state, notFilled };
    // Light or heavy is no matter where nothing more goes in; what the ceiling bears already is.
    const cautions = soFar.cautions.filter((id) => id === 'caution.log.overloaded');
    return { ...soFar, opening, state, notFilled, verdict: 'not filled', cautions };
  });
  const groups = groupsOf(openings, plan, rules, highestDensity);
  const together = new Map(groups.flatMap((each) => each.openings.map((one) => [one.opening.name, one])));
  // What a group took is counted once, and not bay by bay: quarters shared out are no count of a bay.
  const counted = [...groups, ...openings.filter(({ opening }) => !together.has(opening.name))];
  // While the openings are not known, no entry can be told to be a stray.
  const strays = found.known
    ? entries.filter((entry) => !planned.some((opening) => isOf(entry, opening)))
    : [];
  const sum = (all: readonly Quantity<'pieces'>[]) => all.reduce(plus, quantity(0, 'bag'));
  const used = named(sum(entries.map(({ bags }) => bags)), 'n used', 'Bags used');
  const stillToGo = found.known
    ? named(sum(counted.filter(isOpen).map(({ left }) => left)), 'n go', 'Bags still to go in')
    : undefined;
  const taken = openings.map((each) => each.planned);
  const beyondReach = found.known ? excess(plan.bags, sum(taken)) : quantity(0, 'bag');
  const loaded = log.on_truck ?? plan.bagsToLoad;
  const left = named(minus(loaded, used), 'n truck', 'Bags left on the truck');
  return {
    openings: openings.map((each) => together.get(each.opening.name) ?? each),
    groups,
    short: named(
      sum(counted.filter((each) => !isOpen(each)).map(({ left }) => left)),
      'n short',
      'Bags short of the plan',
    ),
    beyondPlan: named(
      sum(counted.map(({ bags, planned }) => excess(bags, planned))),
      'n over',
      'Bags beyond the plan',
    ),
    unknown: found.known ? undefined : found.why,
    used,
    stillToGo,
    loaded,
    left,
    beyondReach: tooFewToTell(beyondReach)
      ? undefined
      : named(beyondReach, 'n beyond', 'Bags of the plan that no opening takes'),
    enough: !stillToGo || compare(left, stillToGo) >= 0,
    shut: planned.filter(shut).length,
    strays,
  };
}
