import { mostHoles } from './most-holes.ts';

/** From the one to the other, both allowed. In inches. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** A stretch of the roof where the middle of a hole may not lie; its two ends are allowed. In inches from the start. */
export interface Blocked {
  readonly from: number;
  readonly to: number;
  readonly name: string;
}

/** One roof, as the search for its holes takes it. Every number is in inches; places are measured from the start. */
export interface LayoutProblem {
  readonly length: number;
  /** The step of the tape: a hole lies at a whole number of steps from the start. */
  readonly grid: number;
  /** How far the first hole may lie from the start. */
  readonly first: Range;
  /** How far the last hole may lie from the far end. */
  readonly last: Range;
  /** From one hole to the next. */
  readonly spacing: Range;
  readonly holeDiameter: number;
  /** Side of the square metal patch. It should clear the seams, and it never overlaps the next patch. */
  readonly patchSide: number;
  /** Centre lines of the members, in any order. */
  readonly trusses: readonly number[];
  readonly memberWidth: number;
  readonly seams: readonly number[];
  /** Worked out by the caller from the size, the patch and the place on the slope. */
  readonly obstacles: readonly Blocked[];
}

/** What a layout has to hold. The first three may be departed from where nothing holds them all; the others never. */
export const ruleNames = ['first', 'last', 'spacing', 'trusses', 'seams', 'obstacles'] as const;
export type RuleName = (typeof ruleNames)[number];

/** The longest distance, in inches: past sixteen miles a number can no longer hold the billionth of an inch that makes a tie. */
const FARTHEST = 1_000_000;
/** The finest tape, in inches: a tie has to stay far below one step. */
const FINEST_STEP = 1e-6;
/** The largest tape that is searched: 200 ft to the sixteenth of an inch takes 38,400 steps. */
const MOST_STEPS = 40_000;
/** The most trusses, seams or obstacles: a list longer than one to the inch of 200 ft is a slip of the pen. */
const MOST_ENTRIES = 3_000;
/**
 * What keeps even a search that finds nothing easy to a twentieth of a second: steps of the tape times the holes that may lie on
 * it, and steps of the tape times the steps that the first and the last hole may choose from, both ranges added up.
 */
const MOST_STEPS_TIMES_HOLES = 1_500_000;
const MOST_STEPS_TIMES_ENDS = 120_000_000;

const refuse = (field: string, found: number | string, expected: string): never => {
  throw new RangeError(`${field}: found ${found}, expected ${expected}`);
};

function finite(field: string, value: number): void {
  if (!Number.isFinite(value)) refuse(field, value, 'a finite number of inches');
  if (Math.abs(value) > FARTHEST) refuse(field, value, `at most ${FARTHEST} inches`);
}

function ordered(field: string, { low, high }: Range): void {
  finite(`${field}.low`, low);
  finite(`${field}.high`, high);
  if (low < 0) refuse(`${field}.low`, low, '0 or more');
  if (low > high) refuse(field, `${low} to ${high}`, 'the lower end first');
}

function listed(field: string, count: number): void {
  if (count > MOST_ENTRIES) refuse(field, `${count} of them`, `at most ${MOST_ENTRIES}`);
}

/**
 * Can this roof be searched at all?
 * @throws RangeError naming the field, what was found and what is expected: a number that is not finite, nothing long, a range
 * upside down, a patch smaller than its hole, a hole longer than the roof, or more than can be searched in a moment.
 */
export function checkProblem(problem: LayoutProblem): void {
  const { length, grid, holeDiameter, patchSide, memberWidth, trusses, seams, obstacles } = problem;
  for (const [field, value] of Object.entries({ length, grid, holeDiameter, patchSide, memberWidth })) {
    finite(field, value);
  }
  for (const [field, value] of Object.entries({ length, grid, holeDiameter })) {
    if (value <= 0) refuse(field, value, 'more than 0');
  }
  if (grid < FINEST_STEP) refuse('grid', grid, `at least ${FINEST_STEP}`);
  if (memberWidth < 0) refuse('memberWidth', memberWidth, '0 or more');
  if (patchSide < holeDiameter) {
    refuse('patchSide', patchSide, `at least the hole’s diameter of ${holeDiameter}`);
  }
  if (length < holeDiameter) refuse('length', length, `at least the hole’s diameter of ${holeDiameter}`);
  if (length / grid > MOST_STEPS) {
    refuse('length', `${Math.ceil(length / grid)} steps of ${grid}`, `at most ${MOST_STEPS} steps`);
  }
  for (const field of ['first', 'last', 'spacing'] as const) ordered(field, problem[field]);
  checkWork(problem);
  for (const field of ['trusses', 'seams', 'obstacles'] as const) listed(field, problem[field].length);
  for (const [at, place] of trusses.entries()) finite(`trusses[${at}]`, place);
  for (const [at, place] of seams.entries()) finite(`seams[${at}]`, place);
  for (const [at, { from, to }] of obstacles.entries()) {
    finite(`obstacles[${at}].from`, from);
    finite(`obstacles[${at}].to`, to);
    if (from > to) refuse(`obstacles[${at}]`, `${from} to ${to}`, 'the lower end first');
  }
}

function checkWork({ length, grid, first, last, spacing, patchSide }: LayoutProblem): void {
  const steps = length / grid;
  const tape = `on a tape of ${Math.ceil(steps)} steps`;
  const holes = Math.min(mostHoles(length, spacing.high), Math.floor(length / patchSide) + 1);
  if (steps * holes > MOST_STEPS_TIMES_HOLES) {
    const least = length / Math.floor(MOST_STEPS_TIMES_HOLES / steps / 2);
    refuse('spacing.high', spacing.high, `at least ${least} ${tape}`);
  }
  const inside = ({ low, high }: Range) => Math.max(Math.min(high, length) - low, 0);
  const ends = inside(first) + inside(last);
  if ((steps * ends) / grid > MOST_STEPS_TIMES_ENDS) {
    refuse(
      'first and last',
      `ranges ${ends} wide together`,
      `at most ${(MOST_STEPS_TIMES_ENDS * grid) / steps} ${tape}`,
    );
  }
}
