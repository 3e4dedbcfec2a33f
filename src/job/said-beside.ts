import { ofEngineer, ofOldDensity } from '../calc/ceiling/load.ts';
import type { Remark } from '../calc/declare/remark.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { ofDensityBlown } from './density-blown.ts';
import { ofDucts } from './ducts-overhead.ts';
import { ofCover } from './other-cover.ts';
import type { WorkedJob } from './planned.ts';
import { USUAL_WAY, wayTaken } from './way-taken.ts';
import { ofWells } from './wells.ts';

/** Are holes cut in the roof? Those of a way that is not taken are shown to nobody who could cut them. */
export const holesAreCut = ({ job }: Pick<WorkedJob, 'job'>): boolean => wayTaken(job) === USUAL_WAY;

/** What is said beside the ceiling's figures: whose limit it is, and which weights are counted. */
export const saidOfCeiling = ({ job, load }: WorkedJob, rules: Rulebook): Remark[] => [
  ...ofEngineer(job.ceiling, load.limit),
  ...ofDensityBlown(job, rules),
  ...ofOldDensity({ depth: job.old.depth, density: job.old.density }, rules),
];

/** What is said beside the holes: of the cover they are cut in, or of the way that is taken in their stead. */
export const saidOfHoles = (plan: WorkedJob): readonly Remark[] =>
  holesAreCut(plan) ? ofCover(plan.job) : plan.ofWay;

/** What is said beside the fill: what no figure counts, and how the fill is meant. */
export const saidOfFill = ({ job, remarks }: WorkedJob): Remark[] => [
  ...ofWells(job),
  ...ofDucts(job),
  ...remarks,
];
