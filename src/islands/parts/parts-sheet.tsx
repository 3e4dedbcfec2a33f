import type { AnyPart } from '../../job/parts/part.ts';
import { workPart } from '../../job/parts/part.ts';
import type { WorkedJob } from '../../job/planned.ts';
import type { JobSheetProps } from '../job/JobSheet.tsx';
import type { JobSheetPath } from '../job/sheets.ts';
import { inALine } from '../results/AnswerView.tsx';
import { rules } from '../rules.ts';
import { PartsView } from './PartsView.tsx';

/** A sheet that shows some parts of the job one below the other; the first answers in the bar at the foot of a phone. */
export const partsSheet = (
  path: JobSheetPath,
  parts: readonly AnyPart[],
): Omit<JobSheetProps, 'example'> => ({
  path,
  View: ({ plan, elsewhere }) => <PartsView parts={parts} plan={plan} elsewhere={elsewhere} />,
  short: (plan) => firstInALine(parts, plan),
});

function firstInALine([first]: readonly AnyPart[], plan: WorkedJob): string {
  const [outcome] = first ? workPart(first, plan, rules) : [];
  if (outcome?.state !== 'answered') return `${outcome?.title ?? ''}: to be entered`;
  return inALine(outcome.answer) || outcome.title;
}
