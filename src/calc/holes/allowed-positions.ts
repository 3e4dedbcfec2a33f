import { common, leftOver, type Stretches, stretch } from './intervals.ts';
import { atOrAfter, atOrBefore, pastOf, shortOf } from './marks.ts';
import type { LayoutProblem, RuleName } from './problem.ts';

/** The rules of one roof, put onto the marks of its tape. */
export interface Tape {
  /** Where a hole may lie. */
  readonly allowed: Stretches;
  /** The part of it where the patch clears every seam, and the part where it lies over one. */
  readonly clear: Stretches;
  readonly overSeam: Stretches;
  readonly first: Stretches;
  readonly last: Stretches;
  readonly leastGap: number;
  readonly mostGap: number;
}

/**
 * Which marks may a hole lie on, the first and the last hole too, and how far apart may two lie?
 * Rules that are not kept are left out. Without the spacing rule two patches still may not overlap.
 * @throws RangeError where the grid is so coarse that no mark lies on the roof.
 * @example onTheTape(bareRoof(66), new Set(ruleNames)).leastGap // => 144 * 8
 */
export function onTheTape(problem: LayoutProblem, kept: ReadonlySet<RuleName>): Tape {
  const { length, grid, first, last, spacing, patchSide } = problem;
  const from = atOrAfter(problem.holeDiameter / 2, grid);
  const to = atOrBefore(length - problem.holeDiameter / 2, grid);
  if (from > to) throw new RangeError(`grid: found ${grid}, expected a step that leaves a mark on the roof`);
  const onRoof = stretch(from, to);
  const allowed = leftOver(taken(problem, kept), from, to);
  const offSeams = leftOver(seamStretches(problem), from, to);
  const within = (low: number, high: number) => stretch(atOrAfter(low, grid), atOrBefore(high, grid));
  return {
    allowed,
    clear: common(allowed, offSeams),
    overSeam: common(allowed, leftOver(offSeams, from, to)),
    first: kept.has('first') ? within(first.low, first.high) : onRoof,
    last: kept.has('last') ? within(length - last.high, length - last.low) : onRoof,
    leastGap: atOrAfter(kept.has('spacing') ? Math.max(spacing.low, patchSide) : patchSide, grid),
    mostGap: kept.has('spacing') ? Math.min(atOrBefore(spacing.high, grid), to - from) : to - from,
  };
}

/** Marks that members, seams and obstacles take: a hole that touches a member or a seam is not clear of it. */
function taken(problem: LayoutProblem, kept: ReadonlySet<RuleName>): number[] {
  const { grid, holeDiameter, memberWidth } = problem;
  const marks: number[] = [];
  const touching = (places: readonly number[], reach: number) => {
    for (const place of places) marks.push(atOrAfter(place - reach, grid), atOrBefore(place + reach, grid));
  };
  if (kept.has('trusses')) touching(problem.trusses, (holeDiameter + memberWidth) / 2);
  if (kept.has('seams')) touching(problem.seams, holeDiameter / 2);
  if (kept.has('obstacles')) {
    for (const { from, to } of problem.obstacles) marks.push(pastOf(from, grid), shortOf(to, grid));
  }
  return marks;
}

/** Marks where the patch would lie over a seam; a patch that only touches it does not. */
function seamStretches({ seams, patchSide, grid }: LayoutProblem): number[] {
  return seams.flatMap((seam) => [pastOf(seam - patchSide / 2, grid), shortOf(seam + patchSide / 2, grid)]);
}
