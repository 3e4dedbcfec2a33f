import type { ComponentChildren, JSX } from 'preact';
import { heldBy } from '../../job/cautions.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { Cautions } from '../results/Caution.tsx';
import { sheetPage, withJob } from './JobNav.tsx';

/** The open stops in a line, for the bar at the foot of a phone. */
export function heldInALine(plan: WorkedJob): string {
  const count = heldBy(plan).length;
  return count === 1 ? 'One open stop holds the plan' : `${count} open stops hold the plan`;
}

/**
 * What is shown while a stop holds the plan: the stops, and its figures behind them, to be talked over only. On paper the figures
 * are left out.
 */
export function BehindStops({
  plan,
  holds,
  children,
}: {
  readonly plan: WorkedJob;
  /** Does this sheet show figures that a stop holds back? */
  readonly holds: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  const held = holds ? heldBy(plan) : [];
  if (held.length === 0) return <>{children}</>;
  return (
    <>
      <Cautions ids={held.map(({ id }) => id)} />
      <p class="answer">
        <span class="label">{plan.job.name}</span> <output>{heldInALine(plan)}</output>
      </p>
      <p>
        Nothing is blown before this is settled. What the survey found stands on the sheet{' '}
        <a href={sheetPage('before')} onClick={withJob}>
          Before the fill
        </a>
        .
      </p>
      <details class="behind-stops">
        <summary>Figures behind the stops, to be talked over only</summary>
        {children}
      </details>
    </>
  );
}
