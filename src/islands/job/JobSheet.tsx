import { type ComponentType, Fragment, type JSX } from 'preact';
import { useCallback, useMemo } from 'preact/hooks';
import type { Entries } from '../../calc/declare/entries.ts';
import type { Fields } from '../../calc/declare/field.ts';
import { fieldsReader } from '../../calc/declare/fields-reader.ts';
import type { Read } from '../../calc/declare/read-fields.ts';
import { whichOfList } from '../../calc/declare/which-of-list.ts';
import { layOut } from '../../calc/holes/lay-out.ts';
import { workAside } from '../../job/aside.ts';
import { heldBy } from '../../job/cautions.ts';
import { jobFields } from '../../job/job-fields.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { remembering } from '../../job/remembering.ts';
import { ofThisHome } from '../../job/still-examples.ts';
import { workJob } from '../../job/work.ts';
import { WithBook } from '../book.ts';
import { GroupForms } from '../form/GroupForms.tsx';
import { problemsInShort } from '../form/in-short.ts';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { type Elsewhere, type FindElsewhere, WayTo, wayBy } from '../form/WayTo.tsx';
import { JobLine } from '../jobs/JobLine.tsx';
import { useJob } from '../jobs/use-job.ts';
import { nameOf } from '../jobs/words.ts';
import { aloud, Said } from '../results/Said.tsx';
import { ShortAnswer } from '../results/ShortAnswer.tsx';
import { book, rules } from '../rules.ts';
import { BehindStops, heldInALine } from './BehindStops.tsx';
import { JobFileButtons } from './JobFileButtons.tsx';
import { JobNav, sheetPage } from './JobNav.tsx';
import { Onward } from './Onward.tsx';
import { asks, type JobSheetPath, jobSheet, sheetOf } from './sheets.ts';

/** What a sheet is given to show: the worked job, its entries, and a way to change them. */
export interface SheetViewProps {
  readonly plan: WorkedJob;
  readonly entries: Entries;
  readonly set: (way: readonly string[], value: unknown) => void;
  /** Where an entry is asked for, if not on this sheet. */
  readonly elsewhere: FindElsewhere;
}

export interface JobSheetProps {
  readonly path: JobSheetPath;
  readonly example: Entries;
  readonly View: ComponentType<SheetViewProps>;
  /** The answer in a line, for the bar at the foot of a phone. */
  readonly short?: (plan: WorkedJob) => string;
  /** What is told while the plan can't be worked, and that in a line: what is dangerous must not wait for the tape. */
  readonly early?: {
    readonly View: ComponentType<Pick<SheetViewProps, 'entries' | 'elsewhere'>>;
    readonly short: (entries: Entries) => string | undefined;
  };
}

/** Most keys move no hole. Two sides, and what they were one key before. */
const findLayout = remembering(layOut, 4);

/** Most keys change one group. */
const readJob = fieldsReader(jobFields);

function worked(entries: Entries): Read<WorkedJob> {
  const job = readJob(entries);
  const plan = job.ok ? workJob(job.value, rules, findLayout) : job;
  return plan.ok ? plan : { ok: false, problems: plan.problems.map((each) => whichOfList(jobFields, each)) };
}

/** The fields that a sheet's form asks for. */
function fieldsOf(path: JobSheetPath): Fields {
  const { groups, without = [] } = jobSheet(path);
  return Object.fromEntries(
    groups.map((group): [string, Fields[string]] => {
      const field: Fields[string] = jobFields[group];
      if (field.kind !== 'group') return [group, field];
      const of = Object.entries(field.of).filter(([name]) => !without.includes(`${group}.${name}`));
      return [group, { ...field, of: Object.fromEntries(of) }];
    }),
  );
}

/** One sheet of the job: its entries, and what follows from the whole job at every change. */
export function JobSheet({ path, example, View, short, early }: JobSheetProps): JSX.Element {
  const work = useCallback((typed: Entries) => worked(ofThisHome(typed, example)), [example]);
  const state = useJob<WorkedJob>(example, work);
  const entries = useMemo(() => ofThisHome(state.job.entries, example), [state.job.entries, example]);
  const { answersFirst, behindStops } = jobSheet(path);
  const fields = useMemo(() => fieldsOf(path), [path]);
  // The same at every key.
  const nav = useMemo(() => <JobNav here={path} />, [path]);
  const findElsewhere = useCallback((way: string) => elsewhere(way, path), [path]);
  // What is no entry of the plan holds nothing but its own part.
  const plan = state.result ?? workAside(entries, state.problems, worked);
  const notRead = plan?.unread ?? [];
  const inShort =
    plan && short
      ? heldBy(plan).length > 0 && behindStops
        ? heldInALine(plan)
        : short(plan)
      : early?.short(entries);
  const waits = plan ? undefined : problemsInShort(state.problems);
  return (
    <WithBook value={book}>
      <JobLine {...state} />
      {nav}
      <div class={answersFirst ? 'bench answers-first' : 'bench'}>
        <section class="entries" aria-label="The job" data-job={nameOf(entries)}>
          <GroupForms
            fields={fields}
            entries={entries}
            set={state.set}
            leave={state.leave}
            problems={state.wrong}
          />
          <JobFileButtons
            job={state.job}
            counted={entries}
            plan={state.problems.length > 0 || state.waitingFor ? undefined : state.result}
            open={state.open}
            reset={state.reset}
          />
        </section>
        {inShort === undefined ? null : <ShortAnswer to="plan" old={state.waitingFor} words={inShort} />}
        <Said words={aloud(state, inShort, waits)} />
        <section class="answers" id="plan" tabIndex={-1} aria-label="The plan">
          {notRead.length > 0 ? (
            <p class="waiting">
              Not read:{' '}
              {notRead.map(({ field, label }, place) => (
                <Fragment key={field}>
                  {place > 0 ? '; ' : ''}
                  <WayTo field={field} label={label} elsewhere={findElsewhere} />
                </Fragment>
              ))}
              . What asks for it waits, and nothing else.
            </p>
          ) : null}
          {early && !plan ? <early.View entries={entries} elsewhere={findElsewhere} /> : null}
          {state.problems.length > 0 && !plan ? (
            <ProblemSummary problems={state.problems} way={wayBy(findElsewhere)} />
          ) : null}
          {state.waitingFor ? (
            <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
          ) : null}
          {plan ? (
            <BehindStops plan={plan} holds={behindStops === true} elsewhere={findElsewhere}>
              <View plan={plan} entries={entries} set={state.set} elsewhere={findElsewhere} />
            </BehindStops>
          ) : null}
        </section>
      </div>
      <Onward path={path} entries={entries} />
    </WithBook>
  );
}

/** Where an entry is asked for, if not on this sheet. */
function elsewhere(way: string, here: JobSheetPath): Elsewhere | undefined {
  if (way === '' || asks(jobSheet(here), way)) return undefined;
  const { path, title } = sheetOf(way);
  return { title, href: sheetPage(path) };
}
