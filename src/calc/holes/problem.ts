/** The layout problem and its answers in plain numbers: every length in inches, from the starting end of the roof. */

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** A stretch that is closed to the middle of a hole; its two ends are free. */
export interface Blocked {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

export interface LayoutProblem {
  readonly length: number;
  /** The step from one candidate place to the next. */
  readonly grid: number;
  /** Allowed distance of the first hole from the starting end. */
  readonly first: Range;
  /** Allowed distance of the last hole from the far end. */
  readonly last: Range;
  /** Allowed distance from hole to hole. */
  readonly spacing: Range;
  readonly holeDiameter: number;
  /** Side of the metal patch: kept clear of seams where it can be, and never over another patch. */
  readonly patchSide: number;
  /** Centre lines of the members. */
  readonly trusses: readonly number[];
  readonly memberWidth: number;
  readonly seams: readonly number[];
  readonly obstacles: readonly Blocked[];
}

export const ruleNames = ['first', 'last', 'spacing', 'trusses', 'seams', 'obstacles'] as const;
export type RuleName = (typeof ruleNames)[number];

export interface Layout {
  readonly positions: readonly number[];
  readonly evenPlaces: readonly number[];
  /** From the even place to the hole; towards the starting end is negative. */
  readonly moved: readonly number[];
  /** Does the metal patch of a hole cross a seam? */
  readonly overSeam: readonly boolean[];
  readonly gaps: readonly number[];
  /** Largest gap less smallest gap. */
  readonly spread: number;
}

/** One rule not held: what was found, what is allowed, by how much it is missed. */
export type Departure =
  | { readonly rule: 'first' | 'last'; readonly found: number; readonly allowed: Range; readonly by: number }
  | {
      readonly rule: 'spacing';
      readonly between: readonly [number, number];
      readonly found: number;
      readonly allowed: Range;
      readonly by: number;
    };

export type LayoutResult =
  | { readonly outcome: 'meets-every-rule'; readonly layout: Layout }
  | {
      readonly outcome: 'least-departure';
      readonly clash: readonly RuleName[];
      readonly layout: Layout;
      readonly departures: readonly Departure[];
    }
  | { readonly outcome: 'no-room'; readonly clash: readonly RuleName[] };

const MOST_PLACES = 100_000;
const MOST_LINES = 2_000;

const refuse = (field: string, found: unknown, expected: string): never => {
  throw new RangeError(`${field}: found ${found}, expected ${expected}`);
};

/** @throws RangeError naming the field, what was found and what is expected, for a problem that makes no sense or is too large. */
export function checkProblem(problem: LayoutProblem): void {
  for (const field of ['length', 'grid', 'holeDiameter', 'patchSide'] as const) {
    if (!(Number.isFinite(problem[field]) && problem[field] > 0))
      refuse(field, problem[field], 'a finite length above 0');
  }
  if (!(Number.isFinite(problem.memberWidth) && problem.memberWidth >= 0))
    refuse('memberWidth', problem.memberWidth, 'a finite length, 0 or more');
  for (const field of ['first', 'last', 'spacing'] as const) {
    const { low, high } = problem[field];
    if (!(Number.isFinite(low) && Number.isFinite(high) && low >= 0 && low <= high))
      refuse(field, `${low} to ${high}`, 'a range of finite lengths, the lower end first');
  }
  for (const field of ['trusses', 'seams'] as const) {
    if (problem[field].length > MOST_LINES) refuse(field, problem[field].length, `${MOST_LINES} at most`);
    for (const place of problem[field]) if (!Number.isFinite(place)) refuse(field, place, 'finite places');
  }
  if (problem.obstacles.length > MOST_LINES)
    refuse('obstacles', problem.obstacles.length, `${MOST_LINES} at most`);
  for (const { from, to } of problem.obstacles)
    if (!(from <= to)) refuse('obstacles', `${from} to ${to}`, 'a stretch, its start first');
  if (problem.length / problem.grid > MOST_PLACES)
    refuse('length', `${problem.length / problem.grid} places`, `${MOST_PLACES} places on the grid at most`);
}
