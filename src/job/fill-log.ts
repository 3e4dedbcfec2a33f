import { EntriesClash } from '../calc/declare/calculation.ts';
import { inQuarters, type OpeningSoFar, openingSoFar } from '../calc/log/opening.ts';
import { minus, named, plus, type Quantity, quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';
import type { PlannedHole, PlannedRow, WorkedJob } from './planned.ts';

/** An opening of the plan with what went in through it. */
export interface LoggedOpening extends OpeningSoFar {
  readonly side: PlannedRow['side'];
  readonly hole: PlannedHole;
  readonly state: 'filling' | 'full';
}

/** The whole job's bags as they went in. */
export interface FillLog {
  readonly openings: readonly LoggedOpening[];
  readonly used: Quantity<'pieces'>;
  /** Bags the plan still asks for in openings that are not full. */
  readonly stillToGo: Quantity<'pieces'>;
  /** On the truck at the start: as typed, else as many as the plan loads. */
  readonly loaded: Quantity<'pieces'>;
  /** Below 0 where more was used than was loaded: one of the two counts is wrong. */
  readonly left: Quantity<'pieces'>;
  readonly enough: boolean;
  /** Entries that belong to no opening of the plan, since the plan changed after them. */
  readonly strays: readonly LogEntry[];
}

type LogEntry = NonNullable<JobValues['log']['openings']>[number];

/**
 * How does the job stand after the bags that went in so far? An opening that is filled but not planned is kept as a stray, never
 * dropped: its bags are used up all the same.
 * @throws EntriesClash for bags not in quarters, and for an opening entered twice.
 */
export function fillLog(
  log: JobValues['log'],
  plan: Pick<WorkedJob, 'rows' | 'bagsToLoad' | 'load' | 'job'>,
  rules: Rulebook,
): FillLog {
  const entries = log.openings ?? [];
  for (const [place, entry] of entries.entries()) checkEntry(entry, place, entries);
  const planned = plan.rows.flatMap(({ side, holes }) => holes.map((hole) => ({ side, hole })));
  const openings = planned.map(({ side, hole }): LoggedOpening => {
    const entry = entries.find((each) => each.side === side && each.opening === hole.number);
    const state = entry?.state ?? 'filling';
    const { density, bag_weight } = plan.job.fill;
    const soFar = openingSoFar(
      { volume: hole.volume, density, bagWeight: bag_weight, highestDensity: plan.load.highestDensity },
      entry?.bags ?? quantity(0, 'bag'),
      state,
      rules,
    );
    return { ...soFar, side, hole, state };
  });
  const strays = entries.filter(
    (entry) => !planned.some(({ side, hole }) => entry.side === side && entry.opening === hole.number),
  );
  const sum = (all: readonly Quantity<'pieces'>[]) => all.reduce(plus, quantity(0, 'bag'));
  const used = named(sum(entries.map(({ bags }) => bags)), 'n used', 'Bags used');
  const stillToGo = named(
    sum(openings.filter(({ state }) => state === 'filling').map(({ left }) => left)),
    'n go',
    'Bags still to go in',
  );
  const loaded = log.on_truck ?? plan.bagsToLoad;
  const left = named(minus(loaded, used), 'n truck', 'Bags left on the truck');
  return { openings, used, stillToGo, loaded, left, enough: left.amount >= stillToGo.amount - 1e-9, strays };
}

function checkEntry({ side, opening, bags }: LogEntry, place: number, all: readonly LogEntry[]): void {
  const field = `log.openings.${place}`;
  if (!inQuarters(bags)) {
    throw new EntriesClash({
      field: `${field}.bags`,
      label: 'Bags blown so far',
      found: `${bags.amount} bags`,
      expected: 'whole quarters of a bag, such as 2.25 bags or 2 1/2 bags',
    });
  }
  if (all.findIndex((each) => each.side === side && each.opening === opening) < place) {
    throw new EntriesClash({
      field: `${field}.opening`,
      label: 'Opening',
      found: `opening ${opening} on the ${side} side a second time`,
      expected: 'one entry for each opening',
    });
  }
}
