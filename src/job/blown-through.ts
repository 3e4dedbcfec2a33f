import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { bagsFor, tooFewToTell } from '../calc/fill/bags.ts';
import { excess, plus, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { type MarkedOpening, openingsOfRow } from './parts/marked-openings.ts';
import type { PlannedRow, WorkedJob } from './planned.ts';

/**
 * How many bags are blown through an opening of a hole: those of its own stretch, less what lies behind a ring, and what it blows behind that of a
 * neighbour.
 * By hand: 100 ft3 × 1.5 lb/ft3 = 150 lb, in bags of 30 lb.
 * @example bagsThrough({ job: { fill: { density: quantity(1.5, 'lb/ft3'), bag_weight: quantity(30, 'lb/bag') } } }, { blown: quantity(100, 'ft3') }).amount // => 5
 */
export const bagsThrough = (
  { job: { fill } }: WorkedJob,
  { blown }: Pick<MarkedOpening, 'blown'>,
): Quantity<'pieces'> => bagsFor(blown, fill.density, fill.bag_weight).bags;

/**
 * What is said beside the bags of a hole where not as many are blown through it as its stretch takes: the ring of a flue or a light keeps its
 * stream from some of them, or it blows some behind the ring of a neighbour. Undefined where the two are alike.
 * @example ofBlownThrough(plan, plan.rows[0], 1, rules) // => undefined
 */
export function ofBlownThrough(
  plan: WorkedJob,
  row: PlannedRow,
  number: number,
  rules: Rulebook,
): Remark | undefined {
  const opening = openingsOfRow(plan, row, rules).find(({ hole }) => hole.number === number);
  if (!opening) return undefined;
  const { hole, ofNeighbours } = opening;
  const bags = bagsThrough(plan, opening);
  const apart = plus(excess(hole.bags, bags), excess(bags, hole.bags));
  if (tooFewToTell(apart)) return undefined;
  const here = said`blow ${printed(bags, { figures: 3 })} here`;
  return ofNeighbours
    ? said`${here}, ${printed(bagsThrough(plan, { blown: ofNeighbours }), { figures: 2 })} of them behind a ring: see its hose card`
    : said`${here}: the rest of its stretch lies behind a ring, see its hose card`;
}
