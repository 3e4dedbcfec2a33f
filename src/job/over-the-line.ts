import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { inches, quantity } from '../quantity/quantity.ts';
import { type KeptSpace, keptOpen } from './kept-open.ts';
import type { PlannedHole, PlannedRow, WorkedJob } from './planned.ts';

/** An opening of one section, and the stretch that is filled through it. */
interface OpeningAt extends Pick<PlannedRow, 'side'>, Pick<PlannedHole, 'from' | 'to'> {}

/** As exact as a tape is read. */
const NOISE = 1e-6;

const halfOf = ({ across }: KeptSpace): number => inches(across) / 2;

/** How far does it reach over the marriage line? Less than nothing where it stays short of it. */
const reachOver = (space: KeptSpace, { width }: WorkedJob['section']): number =>
  inches(space.at) + halfOf(space) - inches(width);

/** Is something entered for the other section where this stands, at the line, so that a hose there stops too? */
const isToldThere = (space: KeptSpace, all: readonly KeptSpace[], section: WorkedJob['section']): boolean =>
  all.some(
    (other) =>
      other.side !== space.side &&
      Math.abs(inches(other.along) - inches(space.along)) < halfOf(space) + NOISE &&
      reachOver(other, section) > -NOISE,
  );

/**
 * What is kept open in one section of a double home, reaches over the marriage line, and is not entered for the other section: no hose
 * there would stop before it. Of the whole home, or of what an opening is filled to.
 * @example ofMarriageLine(plan) // => []
 */
export function ofMarriageLine(
  { job, section, hot }: Pick<WorkedJob, 'job' | 'section' | 'hot'>,
  opening?: OpeningAt,
): Remark[] {
  if (job.home.sections !== 'double') return [];
  const all = keptOpen(hot);
  return all.flatMap((space) => {
    const over = reachOver(space, section);
    if (over <= NOISE || isToldThere(space, all, section)) return [];
    const [along, half] = [inches(space.along), halfOf(space)];
    if (
      opening &&
      (opening.side === space.side ||
        along + half <= inches(opening.from) ||
        along - half >= inches(opening.to))
    )
      return [];
    const other = space.side === 'back' ? 'front' : 'back';
    return [
      said`The room kept open about the ${space.what} at ${printed(space.along, { tape: 8 })} reaches ${printed(quantity(over, 'in'), { tape: 8, round: 'up' })} over the marriage line. Enter it for the ${other} side too, at the line: only then does a hose there stop before it.`,
    ];
  });
}
