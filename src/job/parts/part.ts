import { type Answer, type Calculation, EntriesClash } from '../../calc/declare/calculation.ts';
import type { Field, Fields, Values } from '../../calc/declare/field.ts';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import type { Remark } from '../../calc/declare/remark.ts';
import { whichOfList } from '../../calc/declare/which-of-list.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { heldBy } from '../cautions.ts';
import { jobFields } from '../job-fields.ts';
import type { WorkedJob } from '../planned.ts';
import { type FoundByPlan, restingOnPlan } from './found-by-plan.ts';

/** The values of a calculation as a job knows them: what it does not know yet is undefined. */
export type Known<F extends Fields> = { readonly [N in keyof Values<F>]: Values<F>[N] | undefined };

/** One working of a part; a title of its own where the part is worked more than once, for each opening or each half. */
export interface PartRun<F extends Fields = Fields> {
  readonly title?: string;
  readonly values: Known<F>;
  /** The way in the job to each entry of a list that several lists of the job make up. */
  readonly entries?: { readonly [N in keyof F]?: readonly string[] };
  /** Of the values those that are no entry of anybody: what the plan itself counted. */
  readonly found?: FoundByPlan;
  /** What the plan says beside the answer, since it knows more than the calculation is told. */
  readonly remarks?: readonly Remark[];
}

/** One calculation as a part of the job: its values come from the worked plan and from the job's own entries. */
export interface JobPart<F extends Fields = Fields> {
  readonly calculation: Calculation<F>;
  /** The way in the job to each field of the calculation that the job asks for. */
  readonly asked: { readonly [N in keyof F]?: string };
  /** The way in the job to an entry of a list, where the place in it is not the job's own. */
  readonly askedIn?: (field: string) => string | undefined;
  /** What it needs of the job beside what is asked: an entry, or a whole group. */
  readonly needs?: readonly string[];
  /**
   * It is worked while a stop holds the plan too: it settles stops, or guards the crew; or it settles the one that is named. What tells of
   * the fill waits behind them.
   */
  readonly whileHeld?: true | CautionId;
  /** The runs; a sentence where this home has nothing to work out. */
  readonly runs: (plan: WorkedJob, rules: Rulebook) => readonly PartRun<F>[] | string;
}

/** A part whose field types don't matter to the caller. */
// biome-ignore lint/suspicious/noExplicitAny: a list of parts with different fields has no narrower type
export type AnyPart = JobPart<any>;

/** Declares a part of the job, with the types of its values following from its calculation. */
export const part = <F extends Fields>(declared: JobPart<F>): JobPart<F> => declared;

/** An entry that a part waits for, and the way to it in the job. */
export interface Wanted {
  readonly label: string;
  readonly field: string;
}

/** What came of one run: its answer, what it waits for, what is wrong, why there is nothing to work out, or that a stop holds it. */
export type PartOutcome = { readonly name: string; readonly title: string } & (
  | {
      readonly state: 'answered';
      readonly answer: Answer;
      readonly values: unknown;
      /** Of the values those that the plan itself found. */
      readonly found?: FoundByPlan;
    }
  | { readonly state: 'waiting'; readonly wanted: readonly Wanted[] }
  | { readonly state: 'wrong'; readonly problem: FieldProblem }
  | { readonly state: 'nothing'; readonly why: string }
  | { readonly state: 'held' }
);

/**
 * Works a part of the job, run by run. Each run fails alone: a missing entry or entries that clash are told, and the rest of the job stands.
 * @example workPart(jobParts[0], plan, rules)[0].state // => 'answered'
 */
export function workPart(declared: AnyPart, plan: WorkedJob, rules: Rulebook): readonly PartOutcome[] {
  const { name, title } = declared.calculation;
  const unread = plan.unread?.find(({ field }) => asksFor(declared, field));
  if (unread) return [{ name, title, state: 'wrong', problem: unread }];
  let runs: ReturnType<AnyPart['runs']>;
  try {
    runs = declared.runs(plan, rules);
  } catch (error) {
    if (!(error instanceof EntriesClash)) throw error;
    return [{ name, title, state: 'wrong', problem: inJob(declared, error.problem) }];
  }
  if (typeof runs === 'string') return [{ name, title, state: 'nothing', why: runs }];
  return runs.map((run) => ({ name, title: run.title ?? title, ...worked(declared, run, rules) }));
}

/** Does a part ask for an entry, or for the list or the group that it is in? */
export const asksFor = ({ asked, needs = [] }: Pick<AnyPart, 'asked' | 'needs'>, field: string): boolean =>
  [...Object.values(asked), ...needs].some((way) => field === way || field.startsWith(`${way}.`));

type Outcome = PartOutcome extends infer O
  ? O extends PartOutcome
    ? Omit<O, 'name' | 'title'>
    : never
  : never;

function worked(
  declared: AnyPart,
  { values, entries, found, remarks = [] }: PartRun,
  rules: Rulebook,
): Outcome {
  const wanted = missing(declared, values as Readonly<Record<string, unknown>>);
  if (wanted.length > 0) return { state: 'waiting', wanted };
  try {
    const alone = declared.calculation.work(values, rules);
    const answer = { ...alone, remarks: [...remarks, ...alone.remarks] };
    return found
      ? { state: 'answered', answer: restingOnPlan(answer, found), values, found }
      : { state: 'answered', answer, values };
  } catch (error) {
    if (!(error instanceof EntriesClash)) throw error;
    return { state: 'wrong', problem: inJob(declared, error.problem, entries) };
  }
}

/** The calculation's fields that must have a value and have none. */
const missing = (declared: AnyPart, values: Readonly<Record<string, unknown>>): Wanted[] =>
  Object.entries(declared.calculation.fields as Fields).flatMap(([name, field]) => {
    return values[name] === undefined && !field.optional ? [wantedFor(declared, name, field)] : [];
  });

const wantedFor = (declared: AnyPart, name: string, field: Field): Wanted => {
  const way = declared.asked[name];
  if (!way)
    throw new Error(
      `${declared.calculation.name}: found no way in the job to "${name}", expected one in "asked"`,
    );
  return { label: labelAt(way) ?? field.label, field: way };
};

/** The name of the job's own field at a way. @example labelAt('survey.leaks') // => 'Leaks' */
export function labelAt(way: string): string | undefined {
  let fields: Fields | undefined = jobFields;
  let label: string | undefined;
  for (const key of way.split('.')) {
    const field: Field | undefined = fields?.[key];
    // The place in a list has no name of its own.
    if (!field) continue;
    label = field.label;
    fields = 'of' in field ? field.of : undefined;
  }
  return label;
}

/** A problem at a calculation's field, told at the job's own. */
const inJob = (declared: AnyPart, problem: FieldProblem, entries?: PartRun['entries']): FieldProblem =>
  whichOfList(jobFields, { ...problem, field: wayInJob(declared, problem.field, entries) });

function wayInJob(declared: AnyPart, field: string, entries: PartRun['entries'] = {}): string {
  const own = declared.askedIn?.(field);
  if (own) return own;
  const [head = '', ...rest] = field.split('.');
  const entry = entries[head]?.[Number(rest[0])];
  if (entry) return [entry, ...rest.slice(1)].join('.');
  const way = declared.asked[head];
  return way ? [way, ...rest].join('.') : field;
}

/**
 * Does a part wait while these stops hold the plan?
 * @example waitsBehind({ whileHeld: true }, ['caution.before.wet']) // => false
 */
export const waitsBehind = (
  { whileHeld }: { readonly whileHeld?: AnyPart['whileHeld'] },
  held: readonly string[],
): boolean => whileHeld !== true && held.length > 0 && !held.some((id) => id === whileHeld);

/** Does an open stop of this plan hold a part behind it? */
export const isHeld = (declared: AnyPart, plan: WorkedJob): boolean =>
  waitsBehind(
    declared,
    heldBy(plan).map(({ id }) => id),
  );

/** A list that holds nothing counts as not entered, where a calculation can't do without one. */
export const unlessEmpty = <T>(list: readonly T[] | undefined): readonly T[] | undefined =>
  list && list.length > 0 ? list : undefined;
