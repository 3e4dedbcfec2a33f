import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import type { CautionWords, Rulebook, RuleForCalculation } from '../rulebook/rulebook.ts';
import type { RuleValue } from '../rulebook/schema.ts';
import { cautionSentence } from './caution-sentence.ts';
import { heldBy } from './cautions.ts';
import { type JobEntries, jobFile, openJob, parsed } from './job-file.ts';
import { type MigrationStep, migrate } from './migrate.ts';
import type { WorkedJob } from './planned.ts';
import { cautionsWith, figuresOfJob, type RecordedFigure, shownWhile } from './record-figures.ts';
import { isSet } from './shape.ts';

/** What every record says it is. */
const RECORD_FORMAT = 'heel-to-ridge record';
const RECORD_VERSION = 3;

/** Records are for ever: each version leads on to the next. */
const steps: Readonly<Record<number, MigrationStep>> = {
  // Version 1 held bare entries, as job files of version 2 have them; since then a record holds a job file, which says its own version.
  1: (file) => ({
    ...file,
    version: 2,
    ...(isSet(file.job) ? { job: { format: 'heel-to-ridge job', version: 2, ...file.job } } : {}),
  }),
  // Up to version 2 words were recorded as if no rule were behind them; which ones were is not known.
  2: (file) => ({
    ...file,
    version: 3,
    ...(isSet(file.figures) ? { figures: withoutRulesOfWords(file.figures) } : {}),
  }),
};

/** The figures of a record, words without the empty list of rules that was written for each. */
function withoutRulesOfWords(figures: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(figures).map(([name, figure]) => {
      if (!isSet(figure) || figure.amount !== undefined) return [name, figure];
      const { rules: _none, ...words } = figure;
      return [name, words];
    }),
  );
}

/** What a record is called where something is wrong with it. */
const LABEL = 'Record';

/** The largest record that is read, in characters; far above the largest real one. */
const LARGEST = 4_000_000;

/** A job as it was worked on a day: its entries, its figures, and the rules they rest on as they stood then. */
export interface JobRecord {
  readonly rulebook: string;
  readonly job: JobEntries;
  readonly figures: Readonly<Record<string, RecordedFigure>>;
  readonly rules: Readonly<Record<string, RuleValue>>;
}

/** What a record is written from, and worked again under: the rules that calculations ask, the words of the cautions. */
export interface KnownRules {
  readonly rules: Readonly<Record<string, RuleForCalculation>>;
  readonly cautions: Readonly<Record<string, CautionWords>>;
}

/** The record of a job as the text of a file: its figures, the rules behind them, and the cautions that stand with them. */
export function writeRecord(
  job: JobEntries,
  plan: WorkedJob,
  rules: Rulebook,
  { rules: known, cautions }: KnownRules,
): string {
  const all = figuresOfJob(plan, { version: rules.version, rules: known });
  const figures = shownWhile(
    all,
    heldBy(plan).map(({ id }) => id),
  );
  const behind = [...new Set(Object.values(figures).flatMap((each) => each.rules))].sort();
  const said = new Set([...plan.cautions.map(({ id }) => id), ...cautionsWith(all, Object.keys(figures))]);
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

const areIds = (rules: unknown): boolean =>
  Array.isArray(rules) && rules.every((id) => typeof id === 'string');

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
      (figure.amount === undefined
        ? figure.rules === undefined || areIds(figure.rules)
        : areIds(figure.rules) && typeof figure.amount === 'number' && typeof figure.unit === 'string');
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
