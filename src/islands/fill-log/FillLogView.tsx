import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Entries, listAt } from '../../calc/declare/entries.ts';
import { inQuarters } from '../../calc/log/opening.ts';
import { countedOn } from '../../calc/log/together.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { blownBehind, fillLog, isOpen, type LoggedGroup, type LoggedOpening } from '../../job/fill-log.ts';
import { jobFields } from '../../job/job-fields.ts';
import { strayName, wayOf } from '../../job/log-entries.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { USUAL_WAY } from '../../job/way-taken.ts';
import { format } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import type { SheetViewProps } from '../job/JobSheet.tsx';
import { Cautions } from '../results/Caution.tsx';
import { Fold } from '../results/Fold.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { Working } from '../results/Working.tsx';
import { rules } from '../rules.ts';
import { AtHand } from './AtHand.tsx';
import { Counter, SoFar } from './Counter.tsx';
import { inQuartersText } from './quarters.ts';
import { Tally } from './Tally.tsx';

const tape = { tape: 8 } as const;
const three = { figures: 3 } as const;
const LOG = ['log', 'openings'] as const;
/** A slip is noticed within a few taps. */
const MOST_UNDONE = 20;
const whyNotFilled = jobFields.log.of.openings.of.not_filled.choices;

/** How the place of an opening is told. */
const from = { Hole: 'at', Lane: 'its hose from the eave', Bay: 'from' } as const;

/** Is an entry, as it was typed, of this opening? */
const isOf = (
  entry: Entries,
  { way, side, number }: { readonly way: string; readonly side: string; readonly number: number },
): boolean => (entry.way || USUAL_WAY) === way && entry.side === side && Number(entry.opening) === number;

/** What was not looked at stands before the first bag too: whoever counts may never have opened the survey. */
const notLookedFirst = ({ cautions }: WorkedJob): readonly CautionId[] =>
  cautions.flatMap(({ id }) => (id === 'caution.before.not-looked' ? [id] : []));

/** The log before and after a tap. */
interface Counting {
  readonly before: readonly Entries[];
  readonly after: readonly Entries[];
}

/** The log in a line. */
export function logInALine(plan: WorkedJob): string {
  const log = fillLog(plan, rules);
  // What is to go comes from the plan, and is counted in no quarters.
  const toGo = log.stillToGo ? `${format(log.stillToGo, three)} to go` : 'what is to go is not known';
  return `${inQuartersText(log.used)} in, ${toGo}`;
}

/** The bags as they go in: a counter for each opening, what it says so far, and what is left on the truck. */
export function FillLogView({ plan, entries, set }: SheetViewProps): JSX.Element {
  const log = fillLog(plan, rules);
  const kept = listAt(entries, LOG);
  const [done, setDone] = useState<readonly Counting[]>([]);
  const newest = kept[kept.length - 1];
  const atHand =
    // One that was closed as full takes no more.
    log.openings.find((each) => newest && isOf(newest, each.opening) && isOpen(each)) ??
    log.openings.find(isOpen) ??
    log.openings[0];
  const keep = (after: readonly Entries[]) => {
    setDone([...done.slice(1 - MOST_UNDONE), { before: kept, after }]);
    set(LOG, after);
  };
  /** What was counted last stands last, so that the bar at the foot finds its opening again, on another day too. */
  const changeAll = (changes: readonly Change[]) => {
    if (changes.length === 0) return;
    const others = kept.filter((each) => !changes.some(({ of }) => isOf(each, of.opening)));
    const changed = changes.map(({ of, bags, state, notFilled }) => {
      const { way, side, number } = of.opening;
      // An entry without a way is of the usual one.
      const taken = way === USUAL_WAY ? {} : { way };
      const why = notFilled ? { not_filled: notFilled } : {};
      return { ...taken, side, opening: number, bags: `${bags} bags`, state, ...why };
    });
    keep([...others, ...changed]);
  };
  const [last] = done.slice(-1);
  const undo = () => {
    if (!last) return;
    setDone(done.slice(0, -1));
    set(LOG, last.before);
  };
  const change = (
    of: LoggedOpening,
    bags: number,
    state: string,
    notFilled: string | undefined = of.notFilled,
  ) => changeAll([{ of, bags, state, notFilled }]);
  const view = (of: LoggedOpening, together = false) => (
    <Opening
      key={of.opening.name}
      of={of}
      together={together}
      change={(bags, state, notFilled) => change(of, bags, state, notFilled)}
    />
  );
  const groupAtHand = log.groups.find(({ openings }) =>
    openings.some(({ opening }) => opening.name === atHand?.opening.name),
  );
  const inGroup = new Set(log.groups.flatMap((each) => each.openings.map(({ opening }) => opening.name)));
  return (
    <>
      <p class="answer">
        <span class="label">{plan.job.name}</span>{' '}
        {/* At a tap what it did to its opening is said, and no more. */}
        <output aria-live="off">{unbroken(logInALine(plan))}</output>
      </p>
      <dl class="figures">
        <Counted label="Bags on the truck at the start" of={log.loaded} />
        <Counted label="Bags used" of={log.used} />
        <Counted label="Bags left on the truck" of={log.left} />
        {log.stillToGo ? <Row label="Bags still to go in by the plan" of={log.stillToGo} /> : null}
        {log.short.amount > 0 ? (
          <Row label="Bags short of the plan, where it is closed or not filled" of={log.short} />
        ) : null}
        {log.beyondPlan.amount > 0 ? <Row label="Bags beyond the plan" of={log.beyondPlan} /> : null}
      </dl>
      {log.left.amount < 0 ? (
        <p>More bags are logged than were on the truck: count the truck, or mend an entry.</p>
      ) : log.enough ? null : (
        <p>The truck runs short before the plan is filled.</p>
      )}
      <Cautions ids={notLookedFirst(plan)} />
      <Remarks of={blownBehind(log.openings, plan)} />
      {log.beyondReach ? (
        <p>
          The plan has {format(log.beyondReach, three)} more, for what none of the openings below reaches:
          beyond the hose or tube, or in a section whose edge is not lifted. The openings leave them out:
          reach the rest another way, and force nothing in.
        </p>
      ) : null}
      {log.shut > 0 ? (
        <p>
          Into {log.shut} of the {log.openings.length} openings neither hose nor tube goes: the sheet Ways in
          tells what would. Their bags are counted whole.
        </p>
      ) : null}
      {log.strays.length > 0 ? (
        <p>
          Logged, but no longer in the plan:{' '}
          {log.strays
            .map((entry) => `${strayName(entry).toLowerCase()}, ${inQuartersText(entry.bags)}`)
            .join('; ')}
          . They count as used.{' '}
          <button
            type="button"
            class="plain"
            onClick={() => {
              keep(
                kept.filter(
                  (each) =>
                    !log.strays.some((stray) =>
                      isOf(each, { way: wayOf(stray), side: stray.side, number: stray.opening }),
                    ),
                ),
              );
              // The button goes with what it took off.
              document.getElementById('plan')?.focus();
            }}
          >
            Take them off the log
          </button>
        </p>
      ) : null}
      {log.unknown ? <p class="waiting">{log.unknown}</p> : null}
      {log.groups.map((of) => (
        <Group key={of.part} of={of} change={changeAll} view={view} />
      ))}
      {log.openings.filter(({ opening }) => !inGroup.has(opening.name)).map((of) => view(of))}
      {atHand ? (
        <AtHand
          name={groupAtHand?.name ?? atHand.opening.name}
          of={groupAtHand ?? atHand}
          takes={!groupAtHand || isOpen(groupAtHand)}
          change={(more) =>
            groupAtHand
              ? changeAll(counted(groupAtHand, more))
              : change(atHand, atHand.bags.amount + more, atHand.state)
          }
          // Another job, or what another tab counted, is no work of these taps.
          undo={last?.after === kept ? undo : undefined}
        />
      ) : null}
    </>
  );
}

const Row = ({ label, of }: { readonly label: string; readonly of: Quantity }): JSX.Element => (
  <div>
    <dt>{label}</dt>
    <dd>{format(of, three)}</dd>
  </div>
);

/** Counted bags, in the quarters that they were counted in; bags of the plan are no such count. */
const Counted = ({ label, of }: { readonly label: string; readonly of: Quantity<'pieces'> }): JSX.Element => (
  <div>
    <dt>{label}</dt>
    <dd>{of.amount >= 0 && inQuarters(of) ? inQuartersText(of) : format(of)}</dd>
  </div>
);

/** What becomes of the entry of an opening. */
interface Change {
  readonly of: LoggedOpening;
  readonly bags: number;
  readonly state: string;
  readonly notFilled: string | undefined;
}

interface OpeningProps {
  readonly of: LoggedOpening;
  /** Is it counted together with others, which says it? */
  readonly together: boolean;
  readonly change: (bags: number, state: LoggedOpening['state'], notFilled?: string) => void;
}

/** What becomes of the openings of a group that takes so many bags more, or less, all together: of those that are open. */
const counted = ({ openings }: LoggedGroup, more: number): Change[] => {
  const after = countedOn(
    openings.map((each) => ({ bags: each.bags.amount, planned: each.planned.amount, open: isOpen(each) })),
    more,
  );
  return openings.flatMap((of, place) => {
    const bags = after[place] ?? of.bags.amount;
    return bags === of.bags.amount ? [] : [{ of, bags, state: of.state, notFilled: of.notFilled }];
  });
};

/** What becomes of the openings of a group that is closed, or opened again: each keeps its count. */
const turned = ({ openings }: LoggedGroup, state: LoggedGroup['state']): Change[] =>
  openings.map((of) => ({ of, bags: of.bags.amount, state, notFilled: of.notFilled }));

/** Openings that each take too little to be judged alone, counted together: what goes in is shared out among those that are open. */
function Group({
  of,
  change,
  view,
}: {
  readonly of: LoggedGroup;
  readonly change: (changes: readonly Change[]) => void;
  readonly view: (of: LoggedOpening, together: true) => JSX.Element;
}): JSX.Element {
  return (
    <section class="opening" aria-label={of.name}>
      <h2>{of.name}, counted together</h2>
      <SoFar name={of.name} of={of} />
      <Counter
        name={of.name}
        takes={isOpen(of)}
        gives={of.openings.some((each) => isOpen(each) && each.bags.amount > 0)}
        state={of.state}
        count={(more) => change(counted(of, more))}
        turn={(state) => change(turned(of, state))}
      />
      {isOpen(of) ? <Tally left={of.left} /> : null}
      <Cautions ids={of.cautions} />
      <dl class="figures">
        <Row label="Density once spread through them" of={of.density} />
        <Row
          label={of.state === 'full' ? 'Bags short of the plan' : 'Bags the plan still asks for'}
          of={of.left}
        />
      </dl>
      <Fold title="One by one">
        {() => (
          <>
            <p>
              Each takes too little for a count in quarters to tell light from heavy, so they are judged
              together. What is counted for all of them goes into those that are not full.
            </p>
            {of.openings.map((each) => view(each, true))}
          </>
        )}
      </Fold>
    </section>
  );
}

function Opening({ of, together, change }: OpeningProps): JSX.Element {
  const { name, at, what, side, number } = of.opening;
  const bags = of.bags.amount;
  return (
    <section class="opening" aria-label={name}>
      <h2>
        {name}, {from[what]} {format(at, tape)}
      </h2>
      <SoFar name={name} of={of} silent={together} />
      <Counter
        name={name}
        gives={bags > 0}
        state={of.state}
        count={(more) => change(Math.max(0, bags + more), of.state)}
        turn={(state) => change(bags, state)}
      />
      {isOpen(of) ? <Tally left={of.left} /> : null}
      <Cautions ids={of.cautions} />
      <dl class="figures">
        <Row label="Density once spread through its stretch" of={of.density} />
        <Row label={isOpen(of) ? 'Bags the plan still asks for' : 'Bags short of the plan'} of={of.left} />
      </dl>
      {of.state === 'full' ? null : (
        <div class="field">
          <label for={`not-filled-${side}-${number}`}>
            To be filled, or why not<span class="visually-hidden">: {name}</span>
          </label>
          <select
            id={`not-filled-${side}-${number}`}
            value={of.notFilled ?? ''}
            onChange={({ currentTarget }) => change(bags, of.state, currentTarget.value)}
          >
            <option value="">still to be filled</option>
            {whyNotFilled.map((why) => (
              <option key={why}>{why}</option>
            ))}
          </select>
        </div>
      )}
      <Fold title="How the density is worked out">
        {() => (
          <>
            <Working of={of.density} options={three} />
            <Working of={of.left} options={three} />
          </>
        )}
      </Fold>
    </section>
  );
}
