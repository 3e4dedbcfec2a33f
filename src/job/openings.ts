import type { Values } from '../calc/declare/field.ts';
import { sentence } from '../calc/declare/read-fields.ts';
import type { edgeBayFields } from '../calc/ways/bay-fields.ts';
import { baysFrom } from '../calc/ways/bays-declaration.ts';
import type { Way } from '../calc/ways/compare.ts';
import type { gableLaneFields } from '../calc/ways/lane-fields.ts';
import { lanesFrom } from '../calc/ways/lanes-declaration.ts';
import { amountIn, minus, named, plus, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { openingNames } from './log-entries.ts';
import { oncePerPlan } from './once-per-plan.ts';
import { halves } from './parts/home.ts';
import { markedOpenings } from './parts/marked-openings.ts';
import { type PartOutcome, workPart } from './parts/part.ts';
import { gableLanesPart, liftedEdgePart } from './parts/ways.ts';
import type { PlannedRow, WorkedJob } from './planned.ts';
import { USUAL_WAY, wayTaken } from './way-taken.ts';

/** One opening that the cavity is filled through: a hole in the roof, a lane from the gable end, a bay under the lifted edge. */
export interface Opening {
  readonly way: Way;
  readonly what: 'Hole' | 'Lane' | 'Bay';
  /** The row, the section or the edge that it is in. */
  readonly side: PlannedRow['side'];
  readonly number: number;
  /** What it is called: by its side too, where there are two. */
  readonly name: string;
  /** Along the roof for a hole and for the beginning of a bay; from the eave for a lane. */
  readonly at: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
  /** The hose or tube that is pushed in, all together; undefined for a hole, whose marks tell it. */
  readonly pushed?: Quantity<'length'>;
  /**
   * What of the volume lies along that hose or tube, the rest being left over: nothing where it does not go in. Of a hole all but what lies
   * behind a flue, and what it blows behind the flue of a neighbour.
   */
  readonly reached: Quantity<'volume'>;
  /** The last of these. */
  readonly ofNeighbours?: Quantity<'volume'>;
}

/** Every opening of the way that is taken; or, in a sentence, why they are not known. */
export type Openings =
  | { readonly known: true; readonly openings: readonly Opening[] }
  | { readonly known: false; readonly why: string };

type Sided = Omit<Opening, 'name' | 'way' | 'what'>;

/** Floating noise is no volume. @example holdsNothing(quantity(0, 'ft3')) // => true */
export const holdsNothing = (volume: Quantity<'volume'>): boolean => amountIn(volume, 'in3') <= 1e-6;

/** Old insulation fills a shallow eave up to the roof: through a lane or a bay there, nothing is filled. */
const takesFill = ({ volume }: Sided): boolean => !holdsNothing(volume);

const known = (way: Way, all: readonly Sided[]): Openings => {
  const openings = all.filter(takesFill);
  const double = new Set(openings.map(({ side }) => side)).size > 1;
  return {
    known: true,
    openings: openings.map((each) => ({
      ...each,
      way,
      what: openingNames[way],
      name: `${openingNames[way]} ${each.number}${double ? `, ${each.side} side` : ''}`,
    })),
  };
};

/** Why a part is not answered, in a sentence; undefined where it is. */
function whyNot(outcome: PartOutcome): string | undefined {
  switch (outcome.state) {
    case 'answered':
      return undefined;
    case 'waiting':
      return `${outcome.title} waits for: ${outcome.wanted.map(({ label }) => label).join(', ')}.`;
    case 'wrong':
      return sentence(outcome.problem);
    case 'nothing':
      return outcome.why;
    case 'held':
      return `${outcome.title} waits behind the open stops.`;
  }
}

/**
 * Which openings is the cavity filled through, by the way in that is taken? Holes of the plan, unless the job says otherwise.
 * @example openingsOf(plan, rules).known // => true
 */
export const openingsOf = oncePerPlan((plan, rules): Openings => {
  const chosen = wayTaken(plan.job);
  if (chosen === USUAL_WAY)
    return known(
      chosen,
      markedOpenings(plan, rules).map(({ side, hole: { number, along, volume }, blown, ofNeighbours }) => ({
        side,
        number,
        at: along,
        volume,
        reached: blown,
        ...(ofNeighbours ? { ofNeighbours } : {}),
      })),
    );
  const outcomes = workPart(chosen === 'gable end' ? gableLanesPart : liftedEdgePart, plan, rules);
  const [why] = outcomes.flatMap((each) => whyNot(each) ?? []);
  if (why !== undefined) return { known: false, why };
  const found = outcomes.flatMap((outcome, place): readonly Sided[] => {
    if (outcome.state !== 'answered') return [];
    const half = halves(plan.job)[place] ?? 'back';
    return chosen === 'gable end'
      ? lanesAsOpenings(outcome.values as Values<typeof gableLaneFields>, half, rules)
      : baysAsOpenings(outcome.values as Values<typeof edgeBayFields>, half, plan, rules);
  });
  return known(chosen, found);
});

const lanesAsOpenings = (
  values: Values<typeof gableLaneFields>,
  side: PlannedRow['side'],
  rules: Rulebook,
): Sided[] =>
  lanesFrom(values, rules).lanes.map(({ number, middle, volume, leftVolume, fromStart, fromFarEnd }) => ({
    side,
    number,
    at: middle,
    volume,
    pushed: plus(fromStart, fromFarEnd),
    reached: named(minus(volume, leftVolume), 'Vr', 'Volume that the hose reaches'),
  }));

/** A bay has an opening at each edge that is lifted. Of a double-section home each section has one edge, which is the section's own. */
const baysAsOpenings = (
  values: Values<typeof edgeBayFields>,
  half: PlannedRow['side'],
  { job }: WorkedJob,
  rules: Rulebook,
): Sided[] => {
  const found = baysFrom(values, rules);
  return found.sides.flatMap(({ edge, tube: needed }, place) =>
    found.bays.flatMap(({ number, from, volumeBySide, leftBySide, pushed }): Sided[] => {
      const [volume, left, tube] = [volumeBySide[place], leftBySide[place], pushed[place]];
      // Where the cavity is deepest at an edge, nothing is filled through that one.
      if (!volume || !left || !tube || needed.amount === 0) return [];
      const side = job.home.sections === 'double' ? half : edge;
      const reached = named(minus(volume, left), 'Vr', 'Volume that the tube reaches');
      return [{ side, number, at: from, volume, pushed: tube, reached }];
    }),
  );
};
