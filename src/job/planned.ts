import type { Readiness } from '../calc/before/readiness.ts';
import type { FreeSection, Section } from '../calc/cavity/section.ts';
import type { CeilingLoad } from '../calc/ceiling/load.ts';
import type { FieldProblem } from '../calc/declare/read-fields.ts';
import type { Remark } from '../calc/declare/remark.ts';
import type { ResistancePerInch } from '../calc/fill/resistance.ts';
import type { Departure } from '../calc/holes/lay-out.ts';
import type { RuleName } from '../calc/holes/problem.ts';
import type { CautionId } from '../generated/rule-types.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';
import type { HotPlace, KeptSpace } from './kept-open.ts';

/** One hole with the stretch of cavity that is filled through it. */
export interface PlannedHole {
  readonly number: number;
  readonly along: Quantity<'length'>;
  /** How far it lies from its even place; towards the starting end is negative. */
  readonly moved: Quantity<'length'>;
  readonly movedFar: boolean;
  /** The metal patch would cross a seam, which could not be avoided. */
  readonly overSeam: boolean;
  readonly from: Quantity<'length'>;
  readonly to: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
  readonly weight: Quantity<'weight'>;
  readonly bags: Quantity<'pieces'>;
  /** Spaces that the fill keeps clear of, and that reach into its stretch. */
  readonly kept: readonly KeptSpace[];
}

/** One row of holes along the roof. */
export interface PlannedRow {
  readonly side: 'back' | 'front';
  readonly outcome: 'meets every rule' | 'least departure' | 'no room';
  readonly holes: readonly PlannedHole[];
  /** From each hole to the next. */
  readonly gaps: readonly Quantity<'length'>[];
  readonly evenPlaces: readonly Quantity<'length'>[];
  readonly clash: readonly RuleName[];
  readonly departures: readonly Departure[];
}

/** A caution with the part of the plan where it stands. */
export interface PlacedCaution {
  readonly id: CautionId;
  readonly at: 'before' | 'layout' | 'fill' | 'ceiling';
}

/** One job, worked: what pages, drawings, print, the command line and the tests all read. */
export interface WorkedJob {
  readonly job: JobValues;
  readonly rulebook: string;
  readonly section: Section;
  readonly free: FreeSection;
  /** How deep the old insulation lies under the new fill; undefined where there is none. */
  readonly oldOnceFilled: Quantity<'length'> | undefined;
  readonly rows: readonly PlannedRow[];
  readonly trusses: readonly number[];
  readonly seams: readonly number[];
  readonly volume: Quantity<'volume'>;
  readonly weight: Quantity<'weight'>;
  readonly bags: Quantity<'pieces'>;
  readonly bagsToLoad: Quantity<'pieces'>;
  readonly resistance: ResistancePerInch | undefined;
  readonly load: CeilingLoad;
  /** Is the home ready to be filled? */
  readonly readiness: Readiness;
  /** Every hot flue and recessed light, in the order they are entered. */
  readonly hot: readonly HotPlace[];
  readonly cautions: readonly PlacedCaution[];
  /** What the plan of holes is for, where another way in is taken. */
  readonly ofWay: readonly Remark[];
  readonly remarks: readonly Remark[];
  /** Entries beside the plan that could not be read: the parts that ask for them wait. */
  readonly unread?: readonly FieldProblem[];
}
