import { asLimit, besideLimit, engineersLoad, loadLimit } from '../calc/ceiling/load.ts';
import type { Figure } from '../calc/declare/calculation.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { format } from '../quantity/format.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { rulesBehind } from '../quantity/working.ts';
import { openRulebook, type Rulebook, type RuleForCalculation } from '../rulebook/rulebook.ts';
import { heldBy } from './cautions.ts';
import { type AnyPart, type PartOutcome, waitsBehind, workPart } from './parts/part.ts';
import { jobParts } from './parts/parts.ts';
import type { WorkedJob } from './planned.ts';
import { pressedByAir } from './pressed-by-air.ts';

/** One figure as it was worked out. */
export interface RecordedFigure {
  readonly label: string;
  readonly text: string;
  /** Absent for a figure in words. */
  readonly amount?: number;
  readonly unit?: string;
  /**
   * The rules it rests on: those in the working of an amount; of words all that their calculation asked for, and those behind what it was given.
   * Absent for words of a record of version 2 or older, which has none for them.
   */
  readonly rules?: readonly string[];
}

/** One figure of a worked job, under a name that stays the same from one working to the next. */
export interface JobFigure {
  readonly name: string;
  readonly figure: RecordedFigure & { readonly rules: readonly string[] };
  /** As of a part: shown while a stop holds the plan too, or while the one that is named does. */
  readonly whileHeld: AnyPart['whileHeld'];
  /** The cautions that stand with its part. */
  readonly cautions: readonly CautionId[];
  /** All rules that its part asked for, and those behind what that was given: whether it is there at all may rest on any. */
  readonly ofPart: readonly string[];
}

/** The rulebook that a job was worked under, as plain data, so that what is asked of it can be watched. */
export interface OpenedFrom {
  readonly version: string;
  readonly rules: Readonly<Record<string, RuleForCalculation>>;
}

type Answered = Extract<PartOutcome, { readonly state: 'answered' }>;

const three = { figures: 3 } as const;
const tape = { tape: 8 } as const;

function watched<T>(book: OpenedFrom, work: (rules: Rulebook) => T): { result: T; asked: readonly string[] } {
  const asked = new Set<string>();
  const result = work(openRulebook(book, (id) => asked.add(id)));
  return { result, asked: [...asked] };
}

const allOf = (...ids: readonly (readonly string[])[]): readonly string[] => [...new Set(ids.flat())].sort();

/** A figure as a record has it; what words rest on no working tells, so it is given. */
const recorded = (
  { label, value, format: options }: Figure,
  ofWords: readonly string[],
): JobFigure['figure'] =>
  typeof value === 'string'
    ? { label, text: value, rules: ofWords }
    : {
        label,
        text: format(value, options),
        amount: value.amount,
        unit: value.unit,
        rules: rulesBehind(value),
      };

/** Every quantity in what a calculation was given, however deep it lies. */
function quantitiesIn(given: unknown): Quantity[] {
  if (typeof given !== 'object' || given === null) return [];
  return 'origin' in given && 'amount' in given
    ? [given as Quantity]
    : Object.values(given).flatMap(quantitiesIn);
}

/** The rules behind what the plan gave a part, quantities and words. */
const behindGiven = ({ values, found = {} }: Answered): readonly string[] =>
  rulesBehind(
    ...quantitiesIn(values),
    ...Object.values(found).flatMap((origin) => ('operands' in origin ? origin.operands : [])),
  );

const figuresOfPart = (declared: AnyPart, plan: WorkedJob, book: OpenedFrom): readonly JobFigure[] => {
  const { result, asked } = watched(book, (rules) => workPart(declared, plan, rules));
  return result.flatMap((outcome) => {
    if (outcome.state !== 'answered') return [];
    const { name, title, answer } = outcome;
    const ofPart = allOf(asked, behindGiven(outcome));
    return Object.entries(answer.figures).map(
      ([figure, each]): JobFigure => ({
        name: `${name}.${title}.${figure}`,
        figure: recorded({ ...each, label: `${title}: ${each.label}` }, ofPart),
        whileHeld: declared.whileHeld,
        cautions: answer.cautions,
        ofPart,
      }),
    );
  });
};

/** Every figure of a worked job, those behind an open stop too, each with the rules it rests on. */
export function figuresOfJob(plan: WorkedJob, book: OpenedFrom): readonly JobFigure[] {
  const { ceiling } = plan.job;
  const { load } = plan;
  const ofCeiling = allOf(
    watched(book, (rules) => loadLimit(ceiling.board, ceiling.framing, rules, engineersLoad(ceiling))).asked,
    rulesBehind(load.total, ...(load.limit ? [load.limit] : [])),
  );
  const ofStops = allOf(ofCeiling, watched(book, (rules) => pressedByAir(plan, rules)).asked);
  const ofPlan =
    (whileHeld: true | undefined) =>
    (
      name: string,
      label: string,
      value: Quantity | string | undefined,
      options?: Figure['format'],
      ofWords: readonly string[] = [],
    ): readonly JobFigure[] =>
      value === undefined
        ? []
        : [
            {
              name,
              figure: recorded({ label, value, ...(options ? { format: options } : {}) }, ofWords),
              whileHeld,
              cautions: [],
              ofPart: ofWords,
            },
          ];
  const [always, behindStops] = [ofPlan(true), ofPlan(undefined)];
  const held = heldBy(plan).map(({ id }) => id);
  return [
    ...always('plan.held', 'Stops that hold the plan', written(held), undefined, ofStops),
    ...always('plan.ceiling', 'The ceiling', load.verdict, undefined, ofCeiling),
    ...always(
      'plan.load',
      'Weight on the ceiling at the deepest place',
      load.total,
      besideLimit(load.total, load.limit),
    ),
    ...always('plan.limit', 'What the ceiling may carry', load.limit, asLimit),
    ...jobParts.flatMap((each) => figuresOfPart(each, plan, book)),
    ...behindStops('plan.volume', 'Volume to fill', plan.volume),
    ...behindStops('plan.weight', 'Weight of the fill', plan.weight),
    ...behindStops('plan.bags', 'Bags', plan.bags, three),
    ...behindStops('plan.bags_to_load', 'Bags to load', plan.bagsToLoad),
    ...behindStops('plan.resistance', 'R per inch', plan.resistance?.value, three),
    ...plan.rows.flatMap(({ side, holes }) =>
      holes.flatMap(({ number, along, bags }) => [
        ...behindStops(`holes.${side}.${number}.along`, `Hole ${number}, ${side} side`, along, tape),
        ...behindStops(`holes.${side}.${number}.bags`, `Bags, hole ${number}, ${side} side`, bags, three),
      ]),
    ),
  ];
}

/** What is written of the stops that hold a plan. */
const written = (held: readonly CautionId[]): string => held.join(', ') || 'none';

/**
 * Which stops held the plan as its figures were recorded? None where the record does not tell.
 * @example heldAsRecorded({}) // => []
 */
export function heldAsRecorded({
  'plan.held': held,
}: Readonly<Record<string, RecordedFigure>>): readonly string[] {
  return held === undefined || held.text === written([]) ? [] : held.text.split(', ');
}

/**
 * What of a job's figures is shown while stops hold it? Those behind them are none of a record.
 * @example shownWhile([], ['caution.before.wet']) // => {}
 */
export const shownWhile = (
  figures: readonly JobFigure[],
  held: readonly string[],
): Readonly<Record<string, JobFigure['figure']>> =>
  Object.fromEntries(
    figures.filter((each) => !waitsBehind(each, held)).map(({ name, figure }) => [name, figure]),
  );

/**
 * Which cautions stand with a part, where one of its figures is among those named?
 * @example cautionsWith([], ['plan.bags']) // => []
 */
export const cautionsWith = (figures: readonly JobFigure[], names: readonly string[]): CautionId[] => [
  ...new Set(figures.filter(({ name }) => names.includes(name)).flatMap(({ cautions }) => cautions)),
];
