import { type Remark, said } from '../../calc/declare/remark.ts';
import { tooFewToTell } from '../../calc/fill/bags.ts';
import { clock, readingTowards } from '../../calc/marks/directions.ts';
import { type HoseMarks, seenFrom } from '../../calc/marks/marks.ts';
import { keptOff, type Ring } from '../../calc/ways/flue-ring.ts';
import { format } from '../../quantity/format.ts';
import { byMethod, inches, inUnit, named, type Quantity, times } from '../../quantity/quantity.ts';

/** An opening of a row with the marks that were found for it. */
export interface Marked {
  readonly name: string;
  readonly bags: Quantity<'pieces'>;
  /** None where its own entries clash. */
  readonly found: HoseMarks | undefined;
}

const two = { figures: 2 } as const;

/**
 * What is said at each opening of a row about what lies behind a flue: at the one whose stream does not come there, how much of its fill to
 * hold back and which opening blows it; at that one, the push towards the flue. Openings in the order they stand along the roof.
 * @example behindFlues([]) // => []
 */
export function behindFlues(row: readonly Marked[]): readonly (readonly Remark[])[] {
  const remarks: Remark[][] = row.map(() => []);
  for (const [place, { name, bags, found }] of row.entries()) {
    if (!found) continue;
    for (const [nth, ring] of (found.opening.rings ?? []).entries()) {
      const share = found.behind[nth];
      if (!share) continue;
      const held = named(times(bags, inUnit(share, '1')), 'nb', 'Bags that belong behind the flue');
      if (tooFewToTell(held)) continue;
      const beyond = inches(ring.along) > inches(found.opening.along) ? place + 1 : place - 1;
      const other = row[beyond];
      if (!other) {
        remarks[place]?.push(
          'No opening of the plan lies behind the flue. What its ring keeps the stream from stays thin, unless you reach it another way.',
        );
        continue;
      }
      remarks[place]?.push(
        said`About ${format(held, two)} of this opening’s fill belong behind the flue. Hold them back: ${other.name.toLowerCase()} blows them.`,
      );
      if (other.found) remarks[beyond]?.push(towardsFlue(other.found, ring, name, held));
    }
  }
  return remarks;
}

/** The push from an opening towards a flue in the stretch of its neighbour, up to the ring less the stand-off. */
function towardsFlue(from: HoseMarks, ring: Ring, neighbour: string, held: Quantity<'pieces'>): Remark {
  const { opening, hose } = from;
  const { x, y } = seenFrom(opening, ring);
  const minutes = readingTowards(x, y);
  const standOff = opening.standOff ? inches(opening.standOff) : 0;
  const mark = byMethod(
    'from the opening to the ring about the flue, less the stand-off',
    [
      opening.along,
      opening.across,
      ring.along,
      ring.at,
      ring.across,
      hose,
      ...(opening.standOff ? [opening.standOff] : []),
    ],
    Math.max(0, Math.hypot(x, y) - keptOff(ring, hose) - standOff),
    'in',
  );
  return said`Push towards the flue of ${neighbour.toLowerCase()} as well: at ${clock(minutes)}, tape at ${format(mark, { tape: 8, round: 'down' })}. Blow there about ${format(held, two)}, which ${neighbour.toLowerCase()} holds back.`;
}
