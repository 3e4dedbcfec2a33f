import { notLookedAt } from '../../calc/before/readiness-fields.ts';
import { printed, type Remark, said } from '../../calc/declare/remark.ts';
import { spacingOf } from '../../calc/holes/members.ts';
import { bays } from '../../calc/ways/bays-declaration.ts';
import { compareWays } from '../../calc/ways/declaration.ts';
import { lanes } from '../../calc/ways/lanes-declaration.ts';
import { format } from '../../quantity/format.ts';
import { compare } from '../../quantity/quantity.ts';
import type { JobValues } from '../job-fields.ts';
import { keptOpen } from '../kept-open.ts';
import type { WorkedJob } from '../planned.ts';
import { flueRings, type Half, hotInTheWay } from './flue-rings.ts';
import { halves, ofHalf } from './home.ts';
import { type AnyPart, part } from './part.ts';

const asked = {
  length: 'home.length',
  shape: 'cavity.shape',
  width: 'cavity.width',
  eave: 'cavity.eave',
  ridge: 'cavity.ridge',
  points: 'cavity.points',
  old_depth: 'old.depth',
  reach: 'hose.reach',
  truss_spacing: 'roof.truss_spacing',
  first_truss: 'roof.first_truss',
  flues: 'roof.obstacles',
  density: 'fill.density',
  bag_weight: 'fill.bag_weight',
} as const;

/** What the plan knows of the cavity, for each way in. */
const known = ({ job: { home, cavity, hose, roof, fill }, oldOnceFilled }: WorkedJob) => ({
  length: home.length,
  ...cavity,
  old_depth: oldOnceFilled,
  reach: hose.reach,
  truss_spacing: spacingOf(roof),
  density: fill.density,
  bag_weight: fill.bag_weight,
});

/** That the room for hose and tube is counted above pressed old insulation, where it lies higher now. */
const ofRoomOverOld = ({ job: { old }, oldOnceFilled }: WorkedJob): Remark[] =>
  old.depth && oldOnceFilled && compare(old.depth, oldOnceFilled) > 0
    ? [
        said`Room for hose and tube is counted above ${printed(oldOnceFilled, { tape: 8 })} of old insulation, pressed down as the hose presses it. Where it keeps its ${printed(old.depth, { tape: 8 })}, there is less: try it before you count on it.`,
      ]
    : [];

/** What the survey says of the roof under the crew. */
const carriesCrew = ({ roof_carries }: JobValues['survey']) =>
  roof_carries === 'carries the crew' ? 'yes' : roof_carries === 'nobody goes on it' ? 'no' : 'not known';

/** Does anything hot stand in the cavity of a half? What is placed there does; where nothing is, what the survey says of flues and of lights. */
function hotInCavity(plan: WorkedJob, half: Half): 'yes' | 'no' | 'not known' {
  if (hotInTheWay(plan, half).length > 0) return 'yes';
  const { flues = notLookedAt, lights = notLookedAt } = plan.job.survey;
  return flues === notLookedAt || lights === notLookedAt ? 'not known' : 'no';
}

const comparison = part({
  calculation: compareWays,
  whileHeld: 'caution.roof.carries-crew',
  asked: {
    ...asked,
    hot_in_cavity: 'survey.flues',
    carries_crew: 'survey.roof_carries',
    gables: 'ways.gables',
    edges: 'ways.edges',
    tube: 'hose.tube',
  },
  runs: (plan) => {
    const { job } = plan;
    const { gables = 'not known', edges = 'not known' } = job.ways;
    return halves(job).map((half) => ({
      ...ofHalf(compareWays.title, half),
      remarks: ofRoomOverOld(plan),
      values: {
        ...known(plan),
        ...job.roof,
        // The rows of holes are worked as on the back side, so what stands on this half's side stands there.
        obstacles: half
          ? job.roof.obstacles
              ?.filter(({ side }) => side === half)
              .map((each) => ({ ...each, side: 'back' as const }))
          : job.roof.obstacles,
        carries_crew: carriesCrew(job.survey),
        sections: job.home.sections,
        gables,
        edges,
        tube: job.hose.tube,
        hot_in_cavity: hotInCavity(plan, half),
      },
    }));
  },
});

export const gableLanesPart = part({
  calculation: lanes,
  asked: { ...asked, ends: 'ways.gables', spread: 'hose.spread' },
  runs: (plan) => {
    const { job } = plan;
    const { gables } = job.ways;
    if (gables === 'neither') return 'No gable end of this home can be opened.';
    return halves(job).map((half) => ({
      ...ofHalf(lanes.title, half),
      remarks: ofRoomOverOld(plan),
      values: {
        ...known(plan),
        ends: gables === 'not known' ? undefined : gables,
        spread: job.hose.spread,
        flues: flueRings(plan, half),
      },
    }));
  },
});

/** Where the trusses stand, each as it was told. */
const trusses = ({ roof: { truss_spacing, first_truss, trusses_measured } }: JobValues) => ({
  truss_spacing,
  first_truss,
  trusses_measured,
});

/** Which rings count where nobody entered whose edge is lifted; nothing where none stands on either section. */
function ofEitherSection({ hot }: WorkedJob): string[] {
  const places = keptOpen(hot).map(
    ({ what, along, side }) => `${what} at ${format(along, { tape: 8 })}, ${side} section`,
  );
  if (places.length === 0) return [];
  return [
    `Which section’s edge is lifted is not entered, so every bay is worked as if what stands on either section stood in its way, and the room kept open about it is taken off: ${places.join('; ')}.`,
  ];
}

export const liftedEdgePart = part({
  calculation: bays,
  asked: { ...asked, trusses_measured: 'roof.trusses_measured', edges: 'ways.edges', tube: 'hose.tube' },
  runs: (plan) => {
    const { job } = plan;
    const { edges } = job.ways;
    if (edges === 'neither') return 'No edge of this roof can be lifted.';
    // Each half of a double-section home has one eave to lift.
    const double = job.home.sections === 'double';
    if (double && edges === 'one edge')
      return [
        {
          title: `${bays.title}, the section whose edge is lifted`,
          values: {
            ...known(plan),
            ...trusses(job),
            edges: 'one edge',
            tube: job.hose.tube,
            // The lifted edge may be that of either section: no tube may be sent at a flue unseen.
            flues: flueRings(plan, undefined),
          },
          remarks: [...ofRoomOverOld(plan), ...ofEitherSection(plan)],
        },
      ];
    return halves(job).map((half) => ({
      ...ofHalf(bays.title, half),
      remarks: ofRoomOverOld(plan),
      values: {
        ...known(plan),
        ...trusses(job),
        edges: edges === 'not known' || edges === undefined ? undefined : double ? 'one edge' : edges,
        tube: job.hose.tube,
        flues: flueRings(plan, half),
      },
    }));
  },
});

/** The three ways in, side by side, and the two that are not roof holes in full. */
export const wayParts: readonly AnyPart[] = [comparison, gableLanesPart, liftedEdgePart];
