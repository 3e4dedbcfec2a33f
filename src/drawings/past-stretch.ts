import type { Stretch } from '../calc/marks/directions.ts';
import type { HoseMarks } from '../calc/marks/marks.ts';
import { seenFrom } from '../calc/marks/opening.ts';
import { inches } from '../quantity/quantity.ts';

/**
 * What a card draws: the stretch, and past its ends as far as the rings that its opening blows behind. The same stretch where there are none.
 * By hand: a ring 12 in wide 132 in to the right reaches to 138 in.
 * @example drawnStretch({ stretch: { left: 84, right: 84, up: 80, down: 80 }, opening: { along: quantity(0, 'in'), across: quantity(80, 'in'), rings: [{ along: quantity(-132, 'in'), at: quantity(80, 'in'), across: quantity(12, 'in'), blownBehind: true }] } }).right // => 138
 */
export function drawnStretch({
  stretch,
  opening,
}: {
  readonly stretch: Stretch;
  readonly opening: Pick<HoseMarks['opening'], 'along' | 'across' | 'startingEnd' | 'rings'>;
}): Stretch {
  const past = (opening.rings ?? []).filter(({ blownBehind }) => blownBehind);
  const ends = past.flatMap((ring) => {
    const [{ x }, half] = [seenFrom(opening, ring), inches(ring.across) / 2];
    return [x - half, x + half];
  });
  return {
    ...stretch,
    left: Math.max(stretch.left, ...ends.map((x) => -x)),
    right: Math.max(stretch.right, ...ends),
  };
}
