import type { Entries } from '../../calc/declare/entries.ts';
import { type AnyPart, isHeld, type PartOutcome, workPart } from '../../job/parts/part.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { BehindStops, heldInALine } from '../job/BehindStops.tsx';
import type { JobSheetProps } from '../job/JobSheet.tsx';
import { type JobSheetPath, jobSheet } from '../job/sheets.ts';
import { inALine } from '../results/AnswerView.tsx';
import { rules } from '../rules.ts';
import { unansweredInALine } from './in-a-line.ts';
import { PartsView, PartView } from './PartsView.tsx';

/** A sheet that shows some parts of the job one below the other; the first answers in the bar at the foot of a phone. */
export const partsSheet = (
  path: JobSheetPath,
  parts: readonly AnyPart[],
): Omit<JobSheetProps, 'example'> => ({
  path,
  View: ({ plan, elsewhere }) => {
    const shown = (some: readonly AnyPart[]) => <PartsView parts={some} plan={plan} elsewhere={elsewhere} />;
    const held = jobSheet(path).behindStops ? [] : parts.filter((each) => isHeld(each, plan));
    if (held.length === 0) return shown(parts);
    return (
      <>
        {shown(parts.filter((each) => !held.includes(each)))}
        <BehindStops plan={plan} holds elsewhere={elsewhere}>
          {shown(held)}
        </BehindStops>
      </>
    );
  },
  short: (plan) => firstInALine(parts, plan),
});

/** A part that is shown before the plan can be worked. */
export const early = (
  work: (entries: Entries) => PartOutcome | undefined,
): NonNullable<JobSheetProps['early']> => ({
  View: ({ entries, elsewhere }) => {
    const outcome = work(entries);
    return outcome ? <PartView outcome={outcome} elsewhere={elsewhere} /> : null;
  },
  short: (entries) => {
    const outcome = work(entries);
    return outcome?.state === 'answered' ? inALine(outcome.answer) : undefined;
  },
});

function firstInALine([first]: readonly AnyPart[], plan: WorkedJob): string {
  if (first && isHeld(first, plan)) return heldInALine(plan);
  const [outcome] = first ? workPart(first, plan, rules) : [];
  if (outcome?.state !== 'answered') return outcome ? unansweredInALine(outcome) : '';
  return inALine(outcome.answer) || outcome.title;
}
