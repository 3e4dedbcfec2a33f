import { type Read, readFields } from '../calc/declare/read-fields.ts';
import type { CautionId } from '../generated/rule-types.ts';
import type { Rulebook, RuleForCalculation } from '../rulebook/rulebook.ts';
import type { RuleValue } from '../rulebook/schema.ts';
import { heldBy, isOfCeiling } from './cautions.ts';
import { type JobValues, jobFields } from './job-fields.ts';
import type { JobRecord } from './record.ts';
import {
  cautionsWith,
  figuresOfJob,
  heldAsRecorded,
  type JobFigure,
  type RecordedFigure,
  shownWhile,
} from './record-figures.ts';
import { amountAs, toldApart } from './told-apart.ts';
import { workJob } from './work.ts';

/** A figure that comes out another way than it was recorded, with the rules behind it that changed. */
export interface DifferingFigure {
  readonly name: string;
  readonly label: string;
  /** Undefined where there was, or is, no such figure. The two are never the same text: where they would be, each has more digits. */
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** The stops that hold it back now, or held it back as it was recorded; none where it is there, or is none of the job's. */
  readonly stops: readonly string[];
  /** Of a figure that a stop holds back on one side, the rules behind the stop. */
  readonly because: readonly {
    readonly rule: string;
    readonly before: RuleValue | undefined;
    readonly after: RuleValue | undefined;
  }[];
  /** False where an older copy recorded it without the rules it rests on, so that others than those named may have changed too. */
  readonly rulesRecorded: boolean;
}

/** What working a record again found. */
export interface Rechecked {
  readonly from: string;
  readonly to: string;
  readonly figures: number;
  /** Those that a stop holds back, or held back, come last. */
  readonly differing: readonly DifferingFigure[];
  /** Rules that changed since, whether or not a figure rests on them. */
  readonly changed: readonly string[];
  /** The stops that hold some of them back, and the cautions that stand with the others that differ. */
  readonly cautions: readonly CautionId[];
}

/** A value as two rulebooks are held against each other: how a derived one is worked out is told where rules are kept, and not in a browser. */
const compared = (value: RuleValue | undefined): string =>
  JSON.stringify(
    Object.entries(value ?? {})
      .filter(([key]) => key !== 'formula')
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

/** Amounts this near are the same: floating arithmetic may be ordered otherwise from one version to the next. All else is a difference, and is told with the digits that show it. */
const SAME = 1e-9;

/** The name of what tells which stops hold a plan. */
const HELD = 'plan.held';

/**
 * What comes out of a recorded job today, and which rule's change is behind each difference? Figures are held against each other by their
 * amounts, words by their letters. A figure whose rules were recorded, and that differs with no changed one behind it, comes from a change of the
 * program.
 */
export function recheck(
  record: JobRecord,
  rules: Rulebook,
  known: Readonly<Record<string, RuleForCalculation>>,
): Read<Rechecked> {
  const job: Read<JobValues> = readFields(jobFields, record.job);
  const plan = job.ok ? workJob(job.value, rules) : job;
  if (!plan.ok) return plan;
  const all = figuresOfJob(plan.value, { version: rules.version, rules: known });
  const holding = heldBy(plan.value).map(({ id }) => id);
  const held = { before: heldAsRecorded(record.figures), after: holding };
  const now = shownWhile(all, held.after);
  const changed = Object.entries(record.rules)
    .filter(([id, value]) => compared(known[id]?.value) !== compared(value))
    .map(([id]) => id);
  const changedOf = (behind: readonly string[]) => changed.filter((id) => behind.includes(id));
  const stopsOf = heldBack(all, held);
  const unordered = [...new Set([...Object.keys(record.figures), ...Object.keys(now)])].flatMap(
    (name): DifferingFigure[] => {
      const [before, after] = [record.figures[name], now[name]];
      if (before && after && alike(before, after)) return [];
      const stops = before && after ? [] : stopsOf(name);
      const ofStops = stops.some(isOfCeiling) ? [record.figures[HELD], now[HELD]] : [];
      const restsOn = stops.length > 0 ? ofStops : [before, after];
      const own = changedOf(restsOn.flatMap((each) => each?.rules ?? []));
      const ownTells = own.length > 0 || stops.length > 0 || (before && after);
      const because = ownTells ? own : changedOf(behindItsPart(name, record, all));
      const told = before && after ? toldApart(before, after) : [before?.text, after?.text];
      return [
        {
          name,
          label: (after ?? before)?.label ?? name,
          before: told[0],
          after: told[1],
          stops,
          because: because.map((rule) => ({
            rule,
            before: record.rules[rule],
            after: known[rule]?.value,
          })),
          rulesRecorded: restsOn.every((each) => !each || each.rules !== undefined),
        },
      ];
    },
  );
  // One stop holds most of a job's figures back: they would bury those that changed by themselves.
  const differing = [
    ...unordered.filter(({ stops }) => stops.length === 0),
    ...unordered.filter(({ stops }) => stops.length > 0),
  ];
  const stopped = new Set(differing.flatMap(({ stops }) => stops));
  return {
    ok: true,
    value: {
      from: record.rulebook,
      to: rules.version,
      figures: Object.keys(record.figures).length,
      differing,
      changed,
      cautions: [
        ...new Set([
          ...holding.filter((id) => stopped.has(id)),
          // Of what a stop holds back nothing is said but the stop.
          ...cautionsWith(
            all,
            differing.map(({ name }) => name).filter((name) => name in now),
          ),
        ]),
      ],
    },
  };
}

/** What the whole part of a figure rests on, then and now: another opening, or a smaller one, may be all the cause that a figure is there. */
function behindItsPart(name: string, { figures }: JobRecord, all: readonly JobFigure[]): readonly string[] {
  const part = name.slice(0, name.lastIndexOf('.') + 1);
  return [
    ...Object.entries(figures).flatMap(([each, { rules = [] }]) => (each.startsWith(part) ? rules : [])),
    ...all.flatMap(({ name: each, ofPart }) => (each.startsWith(part) ? ofPart : [])),
  ];
}

/** Which stops hold a figure of the job back that is there only now, or was there only then? None for one that no stop holds. */
function heldBack(
  all: readonly JobFigure[],
  held: { readonly before: readonly string[]; readonly after: readonly string[] },
): (name: string) => readonly string[] {
  const names = new Set(all.map(({ name }) => name));
  const [then, now] = [shownWhile(all, held.before), shownWhile(all, held.after)];
  return (name) => {
    if (!names.has(name)) return [];
    if (!(name in now)) return held.after;
    return name in then ? [] : held.before;
  };
}

function alike(a: RecordedFigure, b: RecordedFigure): boolean {
  if (a.amount === undefined || b.amount === undefined) return a.text === b.text;
  const before = amountAs(a, b.unit ?? '');
  return before !== undefined && Math.abs(before - b.amount) <= SAME * Math.max(1, Math.abs(b.amount));
}

/** What is told of a figure on a side where it is not there. @example sideText(undefined, []) // => 'not there' */
export const sideText = (text: string | undefined, stops: readonly string[]): string =>
  text ?? (stops.length > 0 ? 'held back' : 'not there');

/**
 * What is told of a figure that differs and no rule or stop is named for.
 * @example noRuleNamed({ rulesRecorded: true }) // => 'no rule behind it changed'
 */
export const noRuleNamed = ({ rulesRecorded }: Pick<DifferingFigure, 'rulesRecorded'>): string =>
  rulesRecorded ? 'no rule behind it changed' : 'its rules were not recorded';
