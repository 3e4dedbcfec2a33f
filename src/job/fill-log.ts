import { bagsFor, tooFewToTell } from '../calc/fill/bags.ts';
import { type OpeningSoFar, openingSoFar } from '../calc/log/opening.ts';
import { amountIn, minus, named, plus, type Quantity, quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { type LogEntry, wayOf } from './log-entries.ts';
import { type Opening, openingsOf } from './openings.ts';
import type { WorkedJob } from './planned.ts';

/** An opening of the plan with what went in through it. */
export interface LoggedOpening extends OpeningSoFar {
  readonly opening: Opening;
  readonly state: 'filling' | 'full';
}

/** The whole job's bags as they went in. */
export interface FillLog {
  readonly openings: readonly LoggedOpening[];
  /** Why the openings are not known, in a sentence; undefined where they are. */
  readonly unknown: string | undefined;
  readonly used: Quantity<'pieces'>;
  /** Bags the plan still asks for in openings that are not full; undefined while the openings are not known. */
  readonly stillToGo: Quantity<'pieces'> | undefined;
  /** On the truck at the start: as typed, else as many as the plan loads. */
  readonly loaded: Quantity<'pieces'>;
  /** Below 0 where more was used than was loaded: one of the two counts is wrong. */
  readonly left: Quantity<'pieces'>;
  /** Does what is left on the truck fill the plan? True too while it is not known what is still to go. */
  readonly enough: boolean;
  /** Bags of the plan for what lies beyond the reach of hose or tube, to be reached another way; undefined where nothing does. */
  readonly beyondReach: Quantity<'pieces'> | undefined;
  /** Openings that neither hose nor tube goes into. */
  readonly shut: number;
  /** Entries that belong to no opening of the plan, since the plan changed after them. */
  readonly strays: readonly LogEntry[];
}

/** Does the hose or tube not go into this opening at all? */
const shut = ({ reached }: Opening): boolean => amountIn(reached, 'in3') < 1e-6;

/** What is blown through an opening: what the hose reaches. Into one that it does not go into, the whole goes in some other way. */
const toBlow = (opening: Opening): Quantity<'volume'> => (shut(opening) ? opening.volume : opening.reached);

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
  const openings = planned.map((opening): LoggedOpening => {
    const entry = entries.find((each) => isOf(each, opening));
    const state = entry?.state ?? 'filling';
    const { density, bag_weight } = fill;
    const soFar = openingSoFar(
      { volume: toBlow(opening), density, bagWeight: bag_weight, highestDensity: plan.load.highestDensity },
      entry?.bags ?? quantity(0, 'bag'),
      state,
      rules,
    );
    return { ...soFar, opening, state };
  });
  // While the openings are not known, no entry can be told to be a stray.
  const strays = found.known
    ? entries.filter((entry) => !planned.some((opening) => isOf(entry, opening)))
    : [];
  const sum = (all: readonly Quantity<'pieces'>[]) => all.reduce(plus, quantity(0, 'bag'));
  const used = named(sum(entries.map(({ bags }) => bags)), 'n used', 'Bags used');
  const stillToGo = found.known
    ? named(
        sum(openings.filter(({ state }) => state === 'filling').map(({ left }) => left)),
        'n go',
        'Bags still to go in',
      )
    : undefined;
  const leftOver = planned.reduce(
    (all, opening) => plus(all, minus(opening.volume, toBlow(opening))),
    quantity(0, 'ft3'),
  );
  const { bags: beyondReach } = bagsFor(leftOver, fill.density, fill.bag_weight);
  const loaded = log.on_truck ?? plan.bagsToLoad;
  const left = named(minus(loaded, used), 'n truck', 'Bags left on the truck');
  return {
    openings,
    unknown: found.known ? undefined : found.why,
    used,
    stillToGo,
    loaded,
    left,
    beyondReach: tooFewToTell(beyondReach)
      ? undefined
      : named(beyondReach, 'n beyond', 'Bags for what lies beyond the reach'),
    enough: !stillToGo || left.amount >= stillToGo.amount - 1e-9,
    shut: planned.filter(shut).length,
    strays,
  };
}
