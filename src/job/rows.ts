import { keptWithin } from '../calc/cavity/open-within.ts';
import type { FreeSection, Section } from '../calc/cavity/section.ts';
import { fillVolume } from '../calc/cavity/volume.ts';
import { bagsFor } from '../calc/fill/bags.ts';
import type { LayoutResult, layOut } from '../calc/holes/lay-out.ts';
import { layoutProblem, layoutRestsOn } from '../calc/holes/roof.ts';
import type { Layout } from '../calc/holes/search.ts';
import {
  amountIn,
  byMethod,
  compare,
  inUnit,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
} from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';
import type { KeptSpace } from './kept-open.ts';
import type { PlannedHole, PlannedRow } from './planned.ts';

const outcomes = {
  'meets-every-rule': 'meets every rule',
  'least-departure': 'least departure',
  'no-room': 'no room',
} as const satisfies Record<LayoutResult['outcome'], PlannedRow['outcome']>;

interface Cavity {
  readonly section: Section;
  readonly free: FreeSection;
  /** How deep the old insulation lies under the new fill. */
  readonly old: Quantity<'length'> | undefined;
}

/** Finds where the holes go: a caller that works one job at every key may give one that remembers. */
export type FindLayout = typeof layOut;

/** Where do the holes of one side go, and what goes in through each? */
export function planRow(
  job: JobValues,
  side: 'back' | 'front',
  cavity: Cavity,
  kept: readonly KeptSpace[],
  rules: Rulebook,
  findLayout: FindLayout,
): PlannedRow {
  const { length } = job.home;
  const found = findLayout(layoutProblem(length, job.roof, side, rules));
  const row = {
    side,
    outcome: outcomes[found.outcome],
    clash: found.outcome === 'meets-every-rule' ? [] : found.clash,
    departures: found.outcome === 'least-departure' ? found.departures : [],
  };
  if (found.outcome === 'no-room') return { ...row, holes: [], gaps: [], evenPlaces: [] };
  const places = holePlaces(found.layout, job, rules);
  return {
    ...row,
    holes: places.map((along, place) =>
      plannedHole({ place, along, places, layout: found.layout, job, cavity, kept, rules }),
    ),
    gaps: places.slice(1).map((along, place) => minus(along, places[place] ?? along)),
    evenPlaces: found.layout.evenPlaces.map((amount) => byMethod('even place', [length], amount, 'in')),
  };
}

/** Where the holes lie, each with all that its place rests on. */
function holePlaces(layout: Layout, { home, roof }: JobValues, rules: Rulebook): Quantity<'length'>[] {
  const operands = layoutRestsOn(home.length, roof, rules);
  return layout.positions.map((amount, place) =>
    named(
      byMethod(
        'search of every place on the tape: fewest holes, fewest patches over a seam, most even gaps, least moved',
        operands,
        amount,
        'in',
      ),
      `x${place + 1}`,
      `Hole ${place + 1}, from the starting end`,
    ),
  );
}

/** A hole where the layout put it, and what it is worked with. */
interface LaidHole {
  /** Which of its row it is, from 0, and where that is along the roof. */
  readonly place: number;
  readonly along: Quantity<'length'>;
  /** Where all of the row are. */
  readonly places: readonly Quantity<'length'>[];
  readonly layout: Layout;
  readonly job: JobValues;
  readonly cavity: Cavity;
  readonly kept: readonly KeptSpace[];
  readonly rules: Rulebook;
}

function plannedHole({ place, along, places, layout, job, cavity, kept, rules }: LaidHole): PlannedHole {
  const { section, free, old } = cavity;
  const [before, after] = [places[place - 1], places[place + 1]];
  const middle = (a: Quantity<'length'>, b: Quantity<'length'>) => over(plus(a, b), number(2));
  const from = before ? middle(before, along) : quantity(0, 'in');
  const to = after ? middle(along, after) : job.home.length;
  const reachesIn = ({ along: middle, across }: KeptSpace) =>
    compare(plus(middle, over(across, number(2))), from) > 0 &&
    compare(minus(middle, over(across, number(2))), to) < 0;
  const stretch = named(inUnit(minus(to, from), 'ft'), 'Lz', 'Length of its stretch');
  const open = keptWithin(section, kept, [from, to], old);
  const { net } = fillVolume(free, stretch, open);
  const { weight, bags } = bagsFor(net, job.fill.density, job.fill.bag_weight);
  const moved = quantity(layout.moved[place] ?? 0, 'in');
  return {
    number: place + 1,
    along,
    moved,
    movedFar: Math.abs(moved.amount) > amountIn(rules.value('access.roof-holes.usual-move'), 'in'),
    overSeam: layout.overSeam[place] ?? false,
    from,
    to,
    volume: net,
    weight,
    bags,
    kept: kept.filter(reachesIn),
  };
}
