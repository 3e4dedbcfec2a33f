import { asLimit, besideLimit } from '../calc/ceiling/load.ts';
import type { Figure } from '../calc/declare/calculation.ts';
import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { readFields } from '../calc/declare/read-fields.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { format } from '../quantity/format.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { rulesBehind } from '../quantity/working.ts';
import type { CautionWords, Rulebook, RuleForCalculation } from '../rulebook/rulebook.ts';
import type { RuleValue } from '../rulebook/schema.ts';
import { cautionSentence } from './caution-sentence.ts';
import { heldBy } from './cautions.ts';
import { type JobValues, jobFields } from './job-fields.ts';
import { type JobEntries, jobFile, openJob, parsed } from './job-file.ts';
import { type MigrationStep, migrate } from './migrate.ts';
import { workParts } from './parts/parts.ts';
import type { WorkedJob } from './planned.ts';
import { isSet } from './shape.ts';
import { amountAs, toldApart } from './told-apart.ts';
import { workJob } from './work.ts';

/** What every record says it is. */
const RECORD_FORMAT = 'heel-to-ridge record';
const RECORD_VERSION = 2;

/** Records are for ever: each version leads on to the next. */
const steps: Readonly<Record<number, MigrationStep>> = {
  // Version 1 held bare entries, as job files of version 2 have them; since then a record holds a job file, which says its own version.
  1: (file) => ({
    ...file,
    version: 2,
    ...(isSet(file.job) ? { job: { format: 'heel-to-ridge job', version: 2, ...file.job } } : {}),
  }),
};

/** What a record is called where something is wrong with it. */
const LABEL = 'Record';

/** The largest record that is read, in characters; far above the largest real one. */
const LARGEST = 4_000_000;

/** One figure as it was worked out. */
export interface RecordedFigure {
  readonly label: string;
  readonly text: string;
  /** Absent for a figure in words. */
  readonly amount?: number;
  readonly unit?: string;
  /** The rules it rests on. */
  readonly rules: readonly string[];
}

/** A job as it was worked on a day: its entries, its figures, and the rules they rest on as they stood then. */
export interface JobRecord {
  readonly rulebook: string;
  readonly job: JobEntries;
  readonly figures: Readonly<Record<string, RecordedFigure>>;
  readonly rules: Readonly<Record<string, RuleValue>>;
}

type Rules = Readonly<Record<string, RuleForCalculation>>;

/** What a record is written from, and worked again under: the rules that calculations ask, the words of the cautions. */
export interface KnownRules {
  readonly rules: Rules;
  readonly cautions: Readonly<Record<string, CautionWords>>;
}

const three = { figures: 3 } as const;
const tape = { tape: 8 } as const;

const recorded = ({ label, value, format: options }: Figure): RecordedFigure =>
  typeof value === 'string'
    ? { label, text: value, rules: [] }
    : {
        label,
        text: format(value, options),
        amount: value.amount,
        unit: value.unit,
        rules: rulesBehind(value),
      };

/**
 * Every figure of a worked job under a name that stays the same from one working to the next. While a stop holds the plan, the figures behind
 * it are none of a record.
 */
function figuresOfJob(plan: WorkedJob, rules: Rulebook): Readonly<Record<string, RecordedFigure>> {
  const figure = (label: string, value: Quantity | string | undefined, options?: Figure['format']) =>
    value === undefined ? undefined : recorded({ label, value, ...(options ? { format: options } : {}) });
  const holes = plan.rows.flatMap(({ side, holes }) =>
    holes.flatMap((hole): [string, RecordedFigure | undefined][] => [
      [`holes.${side}.${hole.number}.along`, figure(`Hole ${hole.number}, ${side} side`, hole.along, tape)],
      [
        `holes.${side}.${hole.number}.bags`,
        figure(`Bags, hole ${hole.number}, ${side} side`, hole.bags, three),
      ],
    ]),
  );
  const parts = workParts(plan, rules).flatMap((outcome): [string, RecordedFigure | undefined][] =>
    outcome.state === 'answered'
      ? Object.entries(outcome.answer.figures).map(([name, each]) => [
          `${outcome.name}.${outcome.title}.${name}`,
          recorded({ ...each, label: `${outcome.title}: ${each.label}` }),
        ])
      : [],
  );
  const held = heldBy(plan);
  const all: [string, RecordedFigure | undefined][] = [
    ['plan.held', figure('Stops that hold the plan', held.map(({ id }) => id).join(', ') || 'none')],
    ['plan.ceiling', figure('The ceiling', plan.load.verdict)],
    [
      'plan.load',
      figure(
        'Weight on the ceiling at the deepest place',
        plan.load.total,
        besideLimit(plan.load.total, plan.load.limit),
      ),
    ],
    ['plan.limit', figure('What the ceiling may carry', plan.load.limit, asLimit)],
    ...parts,
  ];
  const behindStops: [string, RecordedFigure | undefined][] = [
    ['plan.volume', figure('Volume to fill', plan.volume)],
    ['plan.weight', figure('Weight of the fill', plan.weight)],
    ['plan.bags', figure('Bags', plan.bags, three)],
    ['plan.bags_to_load', figure('Bags to load', plan.bagsToLoad)],
    ['plan.resistance', figure('R per inch', plan.resistance?.value, three)],
    ...holes,
  ];
  const shown = held.length > 0 ? all : [...all, ...behindStops];
  return Object.fromEntries(shown.flatMap(([name, each]) => (each ? [[name, each]] : [])));
}

/** The cautions that stand with an answered part, if one of its figures is among those named. */
const cautionsWith = (names: readonly string[], plan: WorkedJob, rules: Rulebook): CautionId[] => [
  ...new Set(
    workParts(plan, rules).flatMap((outcome) =>
      outcome.state === 'answered' &&
      names.some((name) => name.startsWith(`${outcome.name}.${outcome.title}.`))
        ? outcome.answer.cautions
        : [],
    ),
  ),
];

/** The record of a job as the text of a file: its figures, the rules behind them, and the cautions that stand with them. */
export function writeRecord(
  job: JobEntries,
  plan: WorkedJob,
  rules: Rulebook,
  { rules: known, cautions }: KnownRules,
): string {
  const figures = figuresOfJob(plan, rules);
  const behind = [...new Set(Object.values(figures).flatMap((each) => each.rules))].sort();
  const said = new Set([
    ...plan.cautions.map(({ id }) => id),
    ...cautionsWith(Object.keys(figures), plan, rules),
  ]);
  return `${JSON.stringify(
    {
      format: RECORD_FORMAT,
      version: RECORD_VERSION,
      rulebook: plan.rulebook,
      job: jobFile(job),
      figures,
      cautions: Object.fromEntries([...said].map((id) => [id, cautionSentence(cautions[id], rules)])),
      rules: Object.fromEntries(behind.map((id) => [id, known[id]?.value])),
    },
    null,
    1,
  )}\n`;
}

const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
  ok: false,
  problems: [{ field: '', label: LABEL, found, expected }],
});

/**
 * Reads the text of a record of this version or an older one. The job in it is a job file, and is opened like any other.
 * @example readRecord('{}').ok // => false
 */
export function readRecord(text: string): Read<JobRecord> {
  const file = parsed(text, LARGEST, LABEL);
  if (!file.ok) return file;
  if (file.value.format !== RECORD_FORMAT)
    return refused('a file of another kind', `a record whose format is "${RECORD_FORMAT}"`);
  const now = migrate(file.value, { now: RECORD_VERSION, steps, label: LABEL });
  if (!now.ok) return now;
  const { rulebook, job, figures, rules } = now.value;
  if (typeof rulebook !== 'string' || !isSet(job) || !isSet(figures) || !isSet(rules))
    return refused('a record with a part missing', 'rulebook, job, figures and rules');
  for (const [name, figure] of Object.entries(figures)) {
    const sound =
      isSet(figure) &&
      typeof figure.label === 'string' &&
      typeof figure.text === 'string' &&
      Array.isArray(figure.rules) &&
      figure.rules.every((id) => typeof id === 'string') &&
      (figure.amount === undefined || (typeof figure.amount === 'number' && typeof figure.unit === 'string'));
    if (!sound)
      return refused(
        `the figure "${name.slice(0, 60)}"`,
        'a label, a text, its rules, and an amount with its unit',
      );
  }
  const opened = openJob(job);
  if (!opened.ok) return opened;
  return {
    ok: true,
    value: {
      rulebook,
      job: opened.value.entries,
      figures: figures as JobRecord['figures'],
      rules: rules as JobRecord['rules'],
    },
  };
}

/** A figure that comes out another way than it was recorded, with the rules behind it that changed. */
export interface DifferingFigure {
  readonly name: string;
  readonly label: string;
  /** Undefined where there was, or is, no such figure. The two are never the same text: where they would be, each has more digits. */
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly because: readonly {
    readonly rule: string;
    readonly before: RuleValue | undefined;
    readonly after: RuleValue | undefined;
  }[];
}

/** What working a record again found. */
export interface Rechecked {
  readonly from: string;
  readonly to: string;
  readonly figures: number;
  readonly differing: readonly DifferingFigure[];
  /** Rules that changed since, whether or not a figure rests on them. */
  readonly changed: readonly string[];
  /** The cautions that stand with the figures that differ. */
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

/**
 * What comes out of a recorded job today, and which rule's change is behind each difference? Figures are held against each other by their
 * amounts, words by their letters. A figure that differs with no changed rule behind it comes from a change of the program.
 */
export function recheck(record: JobRecord, rules: Rulebook, known: Rules): Read<Rechecked> {
  const job: Read<JobValues> = readFields(jobFields, record.job);
  const plan = job.ok ? workJob(job.value, rules) : job;
  if (!plan.ok) return plan;
  const now = figuresOfJob(plan.value, rules);
  const changed = Object.entries(record.rules)
    .filter(([id, value]) => compared(known[id]?.value) !== compared(value))
    .map(([id]) => id);
  const names = [...new Set([...Object.keys(record.figures), ...Object.keys(now)])];
  const differing = names.flatMap((name): DifferingFigure[] => {
    const [before, after] = [record.figures[name], now[name]];
    if (before && after && alike(before, after)) return [];
    const behind = new Set([...(before?.rules ?? []), ...(after?.rules ?? [])]);
    const told = before && after ? toldApart(before, after) : [before?.text, after?.text];
    return [
      {
        name,
        label: (after ?? before)?.label ?? name,
        before: told[0],
        after: told[1],
        because: changed
          .filter((id) => behind.has(id))
          .map((rule) => ({ rule, before: record.rules[rule], after: known[rule]?.value })),
      },
    ];
  });
  return {
    ok: true,
    value: {
      from: record.rulebook,
      to: rules.version,
      figures: Object.keys(record.figures).length,
      differing,
      changed,
      cautions: cautionsWith(
        differing.map(({ name }) => name),
        plan.value,
        rules,
      ),
    },
  };
}

function alike(a: RecordedFigure, b: RecordedFigure): boolean {
  if (a.amount === undefined || b.amount === undefined) return a.text === b.text;
  const before = amountAs(a, b.unit ?? '');
  return before !== undefined && Math.abs(before - b.amount) <= SAME * Math.max(1, Math.abs(b.amount));
}
