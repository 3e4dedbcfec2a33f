import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Entries, listAt } from '../../calc/declare/entries.ts';
import { inQuarters } from '../../calc/log/opening.ts';
import { fillLog, type LoggedOpening } from '../../job/fill-log.ts';
import { openingOf } from '../../job/openings.ts';
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
    log.openings.find((each) => each.opening.name === touched && each.state !== 'full') ??
    log.openings.find(({ state }) => state !== 'full') ??
    log.openings[0];
  const change = ({ opening: { way, side, number, name } }: LoggedOpening, bags: number, state: string) => {
    setTouched(name);
    // An entry without a way is of the usual one.
    const taken = way === USUAL_WAY ? {} : { way };
    const entry = { ...taken, side, opening: number, bags: `${bags} bags`, state };
    const known = kept.findIndex((each) => isOf(each, { way, side, number }));
    set(LOG, known < 0 ? [...kept, entry] : kept.map((each, place) => (place === known ? entry : each)));
  };
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
      </dl>
      {log.left.amount < 0 ? (
        <p>More bags are logged than were on the truck: count the truck, or mend an entry.</p>
      ) : log.enough ? null : (
        <p>The truck runs short before the plan is filled.</p>
      )}
      {log.beyondReach ? (
        <p>
          The plan has {format(log.beyondReach, three)} more, for what lies beyond the reach of the hose. The
          openings below leave them out: reach the rest another way, and force nothing in.
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
            .map(
              ({ way = USUAL_WAY, side, opening, bags }) =>
                `${openingOf[way].toLowerCase()} ${opening} of the ${way}, ${side} side, ${inQuartersText(bags)}`,
            )
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
                    !log.strays.some(({ way = USUAL_WAY, side, opening }) =>
                      isOf(each, { way, side, number: opening }),
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
      {log.openings.map((opening) => (
        <Opening
          key={opening.opening.name}
          of={opening}
          change={(bags, state) => change(opening, bags, state)}
        />
      ))}
      {atHand ? <AtHand of={atHand} change={(bags, state) => change(atHand, bags, state)} /> : null}
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
  [0.25, '1/4 bag'],
  [0.5, '1/2 bag'],
  [1, '1 bag'],
] as const;

interface OpeningProps {
  readonly of: LoggedOpening;
  readonly change: (bags: number, state: LoggedOpening['state']) => void;
}

/** The hole being filled, at the foot of a phone where the thumb is: the one touched last, or the first that is not full. */
const AtHand = ({ of, change }: OpeningProps): JSX.Element => (
  <section class="at-hand" aria-label={`At hand: ${of.opening.name.toLowerCase()}`}>
    <p>
      <strong>{of.opening.name}</strong>: {inQuartersText(of.bags)} of {format(of.planned, three)}
    </p>
    <p class="counter">
      {steps.map(([step, words]) => (
        <button key={words} type="button" onClick={() => change(of.bags.amount + step, of.state)}>
          + {words}
        </button>
      ))}
    </p>
  </section>
);

function Opening({ of, change }: OpeningProps): JSX.Element {
  const { name, at, what } = of.opening;
  const bags = of.bags.amount;
  return (
    <section class="opening" aria-label={name}>
      <h2>
        {name}, {from[what]} {format(at, tape)}
      </h2>
      <p class="count">
        <output>
          {inQuartersText(of.bags)} of {format(of.planned, three)}
        </output>
        <span>{of.verdict}</span>
      </p>
      <Cautions ids={of.cautions} />
      <p class="counter">
        {steps.map(([step, words]) => (
          <button key={words} type="button" onClick={() => change(bags + step, of.state)}>
            + {words}
          </button>
        ))}
        <button
          type="button"
          class="plain"
          disabled={bags === 0}
          onClick={() => change(Math.max(0, bags - 0.25), of.state)}
        >
          − 1/4 bag
        </button>
        <button
          type="button"
          class="plain"
          aria-pressed={of.state === 'full'}
          onClick={() => change(bags, of.state === 'full' ? 'filling' : 'full')}
        >
          {of.state === 'full' ? 'Full: open it again' : 'It is full'}
        </button>
      </p>
      <dl class="figures">
        <Row label="Density once spread through its stretch" of={of.density} />
        <Row label="Bags the plan still asks for" of={of.left} />
      </dl>
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
