import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { WorkedJob } from '../planned.ts';
import { airParts } from './air.ts';
import { beforeParts } from './before.ts';
import { crewParts } from './crew.ts';
import { heatParts } from './heat.ts';
import { machineParts } from './machine.ts';
import { marksPart } from './marks.ts';
import { type AnyPart, isHeld, type PartOutcome, workPart } from './part.ts';
import { patchParts } from './patches.ts';
import { receiptPart } from './receipt.ts';
import { wayParts } from './ways.ts';

/** Every part of a job, in the order of the work. */
export const jobParts: readonly AnyPart[] = [
  ...beforeParts,
  ...wayParts,
  marksPart,
  ...machineParts,
  ...patchParts,
  ...heatParts,
  ...airParts,
  ...crewParts,
  receiptPart,
];

/** All parts of a job, worked; while a stop holds the plan, those that wait behind it only where `behindStops` asks for them. */
export const workParts = (plan: WorkedJob, rules: Rulebook, behindStops = false): readonly PartOutcome[] =>
  jobParts.flatMap((each): readonly PartOutcome[] => {
    const { name, title } = each.calculation;
    return !behindStops && isHeld(each, plan)
      ? [{ name, title, state: 'held' }]
      : workPart(each, plan, rules);
  });
