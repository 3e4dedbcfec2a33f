import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Entries, listAt } from '../../calc/declare/entries.ts';
import { inQuarters, QUARTER } from '../../calc/log/opening.ts';
import { countedOn } from '../../calc/log/together.ts';
import { fillLog, isOpen, type LoggedOpening, type LoggedStretch } from '../../job/fill-log.ts';
import { jobFields } from '../../job/job-fields.ts';
import { strayName, wayOf } from '../../job/log-entries.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { USUAL_WAY } from '../../job/way-taken.ts';
import { format } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { SheetViewProps } from '../job/JobSheet.tsx';
import { Cautions } from '../results/Caution.tsx';
import { Fold } from '../results/Fold.tsx';
import { Working } from '../results/Working.tsx';
import { rules } from '../rules.ts';
import { inQuartersText } from './quarters.ts';

const tape = { tape: 8 } as const;
const three = { figures: 3 } as const;
const LOG = ['log', 'openings'] as const;
const whyNotFilled = jobFields.log.of.openings.of.not_filled.choices;

/** How the place of an opening is told. */
const from = { Hole: 'at', Lane: 'its hose from the eave', Bay: 'from' } as const;

/** Is an entry, as it was typed, of this opening? */
const isOf = (
  entry: Entries,
  { way, side, number }: { readonly way: string; readonly side: string; readonly number: number },
): boolean =>
  (entry.way || USUAL_WAY) === way && entry.side === side && String(entry.opening) === String(number);

/** The log in a line. */
export function logInALine(plan: WorkedJob): string {
  const log = fillLog(plan, rules);
  const toGo = log.stillToGo ? `${format(log.stillToGo, three)} to go` : 'what is to go is not known';
  return `${inQuartersText(log.used)} in, ${toGo}`;
}

/** The bags as they go in: a counter for each opening, what it says so far, and what is left on the truck. */
export function FillLogView({ plan, entries, set }: SheetViewProps): JSX.Element {
  const log = fillLog(plan, rules);
  const kept = listAt(entries, LOG);
  const [touched, setTouched] = useState<string | undefined>();
  const atHand =
    // One that was closed as full takes no more.
    log.openings.find((each) => each.opening.name === touched && isOpen(each)) ??
    log.openings.find(isOpen) ??
    log.openings[0];
  const changeAll = (changes: readonly Change[]) => {
    if (changes.length === 0) return;
    setTouched(changes[0]?.of.opening.name);
    const after = [...kept];
    for (const { of, bags, state, notFilled } of changes) {
      const { way, side, number } = of.opening;
      // An entry without a way is of the usual one.
      const taken = way === USUAL_WAY ? {} : { way };
      const why = notFilled ? { not_filled: notFilled } : {};
      const entry = { ...taken, side, opening: number, bags: `${bags} bags`, state, ...why };
      const known = after.findIndex((each) => isOf(each, { way, side, number }));
      after[known < 0 ? after.length : known] = entry;
    }
    set(LOG, after);
  };
  const change = (
    of: LoggedOpening,
    bags: number,
    state: string,
    notFilled: string | undefined = of.notFilled,
  ) => changeAll([{ of, bags, state, notFilled }]);
  const view = (of: LoggedOpening) => (
    <Opening
      key={of.opening.name}
      of={of}
      change={(bags, state, notFilled) => change(of, bags, state, notFilled)}
    />
  );
  const stretchAtHand = log.stretches.find(({ openings }) =>
    openings.some(({ opening }) => opening.name === atHand?.opening.name),
  );
  const inStretch = new Set(
    log.stretches.flatMap((each) => each.openings.map(({ opening }) => opening.name)),
  );
  return (
    <>
      <p class="answer">
        <span class="label">{plan.job.name}</span> <output>{logInALine(plan)}</output>
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
            onClick={() =>
              set(
                LOG,
                kept.filter(
                  (each) =>
                    !log.strays.some((stray) =>
                      isOf(each, { way: wayOf(stray), side: stray.side, number: stray.opening }),
                    ),
                ),
              )
            }
          >
            Take them off the log
          </button>
        </p>
      ) : null}
      {log.unknown ? <p class="waiting">{log.unknown}</p> : null}
      {log.stretches.map((of) => (
        <Stretch key={of.part} of={of} change={changeAll} view={view} />
      ))}
      {log.openings.filter(({ opening }) => !inStretch.has(opening.name)).map(view)}
      {atHand ? (
        <AtHand
          name={stretchAtHand?.name ?? atHand.opening.name}
          of={stretchAtHand ?? atHand}
          takes={!stretchAtHand || isOpen(stretchAtHand)}
          change={(more) =>
            stretchAtHand
              ? changeAll(counted(stretchAtHand, more))
              : change(atHand, atHand.bags.amount + more, atHand.state)
          }
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

const steps = [
  [QUARTER, '1/4 bag'],
  [2 * QUARTER, '1/2 bag'],
  [4 * QUARTER, '1 bag'],
] as const;

/** What becomes of the entry of an opening. */
interface Change {
  readonly of: LoggedOpening;
  readonly bags: number;
  readonly state: string;
  readonly notFilled: string | undefined;
}

interface OpeningProps {
  readonly of: LoggedOpening;
  readonly change: (bags: number, state: LoggedOpening['state'], notFilled?: string) => void;
}

/** What becomes of the openings of a stretch that takes so many bags more, or less, all together: of those that are open. */
const counted = ({ openings }: LoggedStretch, more: number): Change[] => {
  const after = countedOn(
    openings.map((each) => ({ bags: each.bags.amount, planned: each.planned.amount, open: isOpen(each) })),
    more,
  );
  return openings.flatMap((of, place) => {
    const bags = after[place] ?? of.bags.amount;
    return bags === of.bags.amount ? [] : [{ of, bags, state: of.state, notFilled: of.notFilled }];
  });
};

/** What becomes of the openings of a stretch that is closed, or opened again: each keeps its count. */
const turned = ({ openings }: LoggedStretch, state: LoggedStretch['state']): Change[] =>
  openings.map((of) => ({ of, bags: of.bags.amount, state, notFilled: of.notFilled }));

/** Openings that each take too little to be judged alone, counted together: what goes in is shared out among those that are open. */
function Stretch({
  of,
  change,
  view,
}: {
  readonly of: LoggedStretch;
  readonly change: (changes: readonly Change[]) => void;
  readonly view: (of: LoggedOpening) => JSX.Element;
}): JSX.Element {
  return (
    <section class="opening" aria-label={of.name}>
      <h2>{of.name}, counted together</h2>
      <SoFar of={of} />
      <Counter
        takes={isOpen(of)}
        gives={of.openings.some((each) => isOpen(each) && each.bags.amount > 0)}
        state={of.state}
        count={(more) => change(counted(of, more))}
        turn={(state) => change(turned(of, state))}
      />
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
            {of.openings.map(view)}
          </>
        )}
      </Fold>
    </section>
  );
}

/** What went in of what is planned, and what that tells. */
const SoFar = ({
  of,
}: {
  readonly of: Pick<LoggedStretch | LoggedOpening, 'bags' | 'planned' | 'verdict' | 'cautions'>;
}): JSX.Element => (
  <>
    <p class="count">
      <output>
        {inQuartersText(of.bags)} of {format(of.planned, three)}
      </output>
      <span>{of.verdict}</span>
    </p>
    <Cautions ids={of.cautions} />
  </>
);

/** The taps of an opening, or of several that are counted together. */
const Counter = ({
  takes = true,
  gives,
  state,
  count,
  turn,
}: {
  /** Can more be counted, and less? */
  readonly takes?: boolean;
  readonly gives: boolean;
  readonly state: LoggedOpening['state'];
  readonly count: (more: number) => void;
  readonly turn: (state: LoggedOpening['state']) => void;
}): JSX.Element => (
  <p class="counter">
    {steps.map(([step, words]) => (
      <button key={words} type="button" disabled={!takes} onClick={() => count(step)}>
        + {words}
      </button>
    ))}
    <button type="button" class="plain" disabled={!gives} onClick={() => count(-QUARTER)}>
      − 1/4 bag
    </button>
    <button
      type="button"
      class="plain"
      aria-pressed={state === 'full'}
      onClick={() => turn(state === 'full' ? 'filling' : 'full')}
    >
      {state === 'full' ? 'Full: open it again' : 'It is full'}
    </button>
  </p>
);

/** The hole being filled, at the foot of a phone where the thumb is: the one touched last, or the first that is not full. */
const AtHand = ({
  name,
  of,
  takes,
  change,
}: {
  readonly name: string;
  readonly of: Pick<LoggedOpening, 'bags' | 'planned'>;
  /** Can more be counted? */
  readonly takes: boolean;
  readonly change: (more: number) => void;
}): JSX.Element => (
  <section class="at-hand" aria-label={`At hand: ${name.toLowerCase()}`}>
    <p>
      <strong>{name}</strong>: {inQuartersText(of.bags)} of {format(of.planned, three)}
    </p>
    <p class="counter">
      {steps.map(([step, words]) => (
        <button key={words} type="button" disabled={!takes} onClick={() => change(step)}>
          + {words}
        </button>
      ))}
    </p>
  </section>
);

function Opening({ of, change }: OpeningProps): JSX.Element {
  const { name, at, what, side, number } = of.opening;
  const bags = of.bags.amount;
  return (
    <section class="opening" aria-label={name}>
      <h2>
        {name}, {from[what]} {format(at, tape)}
      </h2>
      <SoFar of={of} />
      <Counter
        gives={bags > 0}
        state={of.state}
        count={(more) => change(Math.max(0, bags + more), of.state)}
        turn={(state) => change(bags, state)}
      />
      <dl class="figures">
        <Row label="Density once spread through its stretch" of={of.density} />
        <Row label={isOpen(of) ? 'Bags the plan still asks for' : 'Bags short of the plan'} of={of.left} />
      </dl>
      {of.state === 'full' ? null : (
        <div class="field">
          <label for={`not-filled-${side}-${number}`}>To be filled, or why not</label>
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
