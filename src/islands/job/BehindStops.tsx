import { type ComponentChildren, Fragment, type JSX } from 'preact';
import { asLimit, besideLimit, mostThatPasses } from '../../calc/ceiling/load.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { heldBy, openStopsOf } from '../../job/cautions.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { settling } from '../../job/settling.ts';
import type { FormatOptions } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { type FindElsewhere, WayTo } from '../form/WayTo.tsx';
import { AnswerLine } from '../results/AnswerLine.tsx';
import { Cautions } from '../results/Caution.tsx';
import { FigureRow } from '../results/FigureRow.tsx';
import { rules } from '../rules.ts';

/** The open stops in a line, for the bar at the foot of a phone. */
export function heldInALine(plan: WorkedJob): string {
  const count = openStopsOf(plan);
  return count === 1 ? 'One open stop holds the plan' : `${count} open stops hold the plan`;
}

/** Cautions of a slip of the tape, which may be all that is wrong. */
const SLIPS: readonly CautionId[] = ['caution.fill.wide-section', 'caution.layout.trusses-unknown'];

/** What a ceiling that is too weak would carry, and the slips that may make it look so: they settle the stop, and stand before its fold. */
function Outside({ plan }: { readonly plan: WorkedJob }): JSX.Element {
  const { load, cautions } = plan;
  const { highestDensity, greatestDepth, limit } = load;
  const figures: readonly (readonly [string, Quantity | undefined, FormatOptions])[] = [
    ['Weight on the ceiling at the deepest place', load.total, besideLimit(load.total, limit)],
    ['What it may carry', limit, asLimit],
    ['Highest density that passes', highestDensity, mostThatPasses],
    ['Greatest depth of new fill that passes', greatestDepth, { tape: 8, ...mostThatPasses }],
  ];
  return (
    <>
      {load.verdict === 'does not carry it' ? (
        <>
          <dl class="figures">
            {figures.map(([label, of, options]) =>
              of ? <FigureRow key={label} label={label} of={of} options={options} /> : null,
            )}
          </dl>
          <p>
            A closed cavity fills up to the roof, so no lesser depth can be planned for it. What is left is a
            lighter fill, if the bag label allows it, or a support that an engineer designs. With that
            support, enter the board as other or not known, and the load that the engineer gave.
          </p>
        </>
      ) : null}
      <Cautions ids={SLIPS.filter((id) => cautions.some((each) => each.id === id))} />
    </>
  );
}

/**
 * What is shown while a stop holds the plan: the stops, and its figures behind them, to be talked over only. On paper the figures
 * are left out.
 */
export function BehindStops({
  plan,
  holds,
  elsewhere,
  children,
}: {
  readonly plan: WorkedJob;
  /** Does this sheet show figures that a stop holds back? */
  readonly holds: boolean;
  readonly elsewhere: FindElsewhere;
  readonly children: ComponentChildren;
}): JSX.Element {
  const held = holds ? heldBy(plan) : [];
  if (held.length === 0) return <>{children}</>;
  return (
    <>
      <Cautions ids={held.map(({ id }) => id)} />
      <AnswerLine of={plan.job.name} words={heldInALine(plan)} />
      <p>Nothing is blown before this is settled. What settles it:</p>
      <ul>
        {settling(plan, rules).map(({ id, entries }) => (
          <li key={id}>
            {entries.map(({ field, label }, place) => (
              <Fragment key={field}>
                {place > 0 ? '; ' : ''}
                <WayTo field={field} label={label} elsewhere={elsewhere} />
              </Fragment>
            ))}
          </li>
        ))}
      </ul>
      <Outside plan={plan} />
      <details class="behind-stops">
        <summary>Figures behind the stops, to be talked over only</summary>
        {children}
      </details>
    </>
  );
}
