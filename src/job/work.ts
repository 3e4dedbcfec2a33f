import { readiness } from '../calc/before/readiness.ts';
import { keptWithin } from '../calc/cavity/open-within.ts';
import { cavitySection, freeSection } from '../calc/cavity/section.ts';
import { fillVolume } from '../calc/cavity/volume.ts';
import { ceilingLoad, engineersLoad, oldOnCeiling } from '../calc/ceiling/load.ts';
import { EntriesClash } from '../calc/declare/calculation.ts';
import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import type { Remark } from '../calc/declare/remark.ts';
import { bagsFor, bagsToLoad } from '../calc/fill/bags.ts';
import { fillWords, unusualBag } from '../calc/fill/cautions.ts';
import { resistancePerInch } from '../calc/fill/resistance.ts';
import { layOut } from '../calc/holes/lay-out.ts';
import { seamPlaces, spacingOf, trussPlaces } from '../calc/holes/members.ts';
import { inUnit, minus, named, number, type Quantity, quantity, times } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { cautionsFor } from './cautions.ts';
import { densityBlown } from './density-blown.ts';
import { checkOnce } from './entered-twice.ts';
import { ofUntoldFlues } from './hot-flues.ts';
import type { JobValues } from './job-fields.ts';
import { hotPlaces, keptOpen } from './kept-open.ts';
import { checkLog } from './log-entries.ts';
import { checkOnTheRoof } from './off-the-roof.ts';
import { ofUntoldPressing, oldOnceFilled } from './old-once-filled.ts';
import { ofMarriageLine } from './over-the-line.ts';
import type { WorkedJob } from './planned.ts';
import { type FindLayout, planRow } from './rows.ts';
import { checkSurveyAgrees, surveyOf } from './survey-agrees.ts';
import { USUAL_WAY, wayTaken } from './way-taken.ts';

/**
 * Works a whole job: where each hole goes, how many bags each takes, what the ceiling carries, which cautions apply.
 * Pure: the same job and rulebook give the same plan. Entries that can't be true together come back as problems.
 * @example workJob(job, rules).ok // => true
 */
export function workJob(job: JobValues, rules: Rulebook, findLayout: FindLayout = layOut): Read<WorkedJob> {
  try {
    return { ok: true, value: worked(job, rules, findLayout) };
  } catch (error) {
    if (error instanceof EntriesClash) return { ok: false, problems: [inJob(error.problem)] };
    throw error;
  }
}

/** The calculations name a field by its own name; the job file has it inside a group. */
const wayInJob: Readonly<Record<string, string>> = {
  eave: 'cavity.eave',
  ridge: 'cavity.ridge',
  points: 'cavity.points',
  shape: 'cavity.shape',
  length: 'home.length',
  old_depth: 'old.depth',
  pressed_depth: 'heat.pressed_depth',
  kept_open: 'roof.obstacles',
  obstacles: 'roof.obstacles',
  first_truss: 'roof.first_truss',
  truss_spacing: 'roof.truss_spacing',
  first_seam: 'roof.first_seam',
  seam_spacing: 'roof.seam_spacing',
  trusses_measured: 'roof.trusses_measured',
  seams_measured: 'roof.seams_measured',
};

/** What is told of an entry of a list is told of the same entry in the job. */
function inJob(problem: FieldProblem): FieldProblem {
  const [name = '', ...rest] = problem.field.split('.');
  return { ...problem, field: [wayInJob[name] ?? name, ...rest].join('.') };
}

function worked(job: JobValues, rules: Rulebook, findLayout: FindLayout): WorkedJob {
  const double = job.home.sections === 'double';
  if (double && (job.cavity.shape === 'two-slope' || job.cavity.shape === 'bowed')) {
    throw new EntriesClash({
      field: 'shape',
      label: 'Shape of the roof',
      found: `${job.cavity.shape} for a double-section home`,
      expected: 'one section of it: one-slope, level or measured, from eave to marriage line',
    });
  }
  checkLog(job.log);
  const section = cavitySection(job.cavity);
  const old = oldOnceFilled(job);
  const free = freeSection(section, old, spacingOf(job.roof), rules);
  checkOnTheRoof(job, section);
  checkSurveyAgrees(job);
  const hot = hotPlaces(job, { section, old }, rules);
  checkOnce(hot, job.home.sections);
  const kept = keptOpen(hot);
  const sides = double ? (['back', 'front'] as const) : (['back'] as const);
  const onSide = (side: 'back' | 'front') => (double ? kept.filter((space) => space.side === side) : kept);
  const rows = sides.map((side) =>
    planRow(job, side, { section, free, old }, onSide(side), rules, findLayout),
  );

  const whole = [quantity(0, 'in'), job.home.length] as const;
  const open = sides.flatMap((side) => keptWithin(section, onSide(side), whole, old));
  const length = named(
    double ? times(job.home.length, number(2)) : job.home.length,
    'L',
    double ? 'Length, both sections' : 'Length of the roof',
  );
  const { net } = fillVolume(free, inUnit(length, 'ft'), open);
  const { weight, bags } = bagsFor(net, job.fill.density, job.fill.bag_weight);
  const resistance = resistancePerInch(job.fill.material, job.fill.density, job.fill.label_r_per_inch, rules);
  const words = fillWords(job.fill.material, job.fill.density, resistance, rules);
  const load = ceilingLoad(
    job.ceiling.board,
    job.ceiling.framing,
    { depth: deepestNewFill(section, old), density: densityBlown(job, rules) },
    // Pressed or loose, it weighs the same.
    oldOnCeiling(job.old, rules),
    rules,
    engineersLoad(job.ceiling),
  );

  const toLoad = bagsToLoad(bags, rules);
  const ready = readiness(surveyOf(job), job.home.built, rules);

  return {
    job,
    rulebook: rules.version,
    section,
    free,
    oldOnceFilled: old,
    rows,
    trusses: trussPlaces(job.roof, job.home.length),
    seams: seamPlaces(job.roof, job.home.length),
    volume: net,
    weight,
    bags,
    bagsToLoad: toLoad,
    resistance,
    load,
    readiness: ready,
    hot,
    cautions: cautionsFor({ job, rows, load, readiness: ready, hot }, words.cautions, rules),
    ofWay: wayRemarks(job),
    remarks: [
      ...words.remarks,
      ...unusualBag(job.fill.material, job.fill.bag_weight, rules),
      ...ofUntoldPressing(job),
      ...ofUntoldFlues(job),
      ...ofMarriageLine({ job, section, hot }),
    ],
  };
}

/** What the plan of holes is for, where another way in is taken. */
function wayRemarks(job: JobValues): Remark[] {
  const way = wayTaken(job);
  return way === USUAL_WAY
    ? []
    : [
        `The way taken is the ${way}: the holes of this plan are not cut, and the fill log counts its own openings.`,
      ];
}

/** The new fill at the deepest place: what is left above the old insulation there. */
function deepestNewFill(
  { deepest }: WorkedJob['section'],
  old: WorkedJob['oldOnceFilled'],
): Quantity<'length'> {
  return old ? named(minus(deepest, old), 'dn', 'New fill at the deepest place') : deepest;
}
