import { wideSection } from '../calc/cavity/wide-section.ts';
import { placesUnknown } from '../calc/holes/places-unknown.ts';
import type { CautionId } from '../generated/rule-types.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { ductsLieInFill } from './ducts-overhead.ts';
import type { PlacedCaution, WorkedJob } from './planned.ts';
import { pressedByAir } from './pressed-by-air.ts';
import { USUAL_WAY, wayTaken } from './way-taken.ts';

/** Which cautions does this plan call for, and where does each stand? */
export function cautionsFor(
  plan: Pick<WorkedJob, 'job' | 'rows' | 'load' | 'readiness' | 'hot'>,
  fill: readonly CautionId[],
  rules: Rulebook,
): PlacedCaution[] {
  const { job, rows, load, hot } = plan;
  const at = (place: PlacedCaution['at'], ids: readonly CautionId[]): PlacedCaution[] =>
    [...new Set(ids)].map((id) => ({ id, at: place }));
  // Of another way in no hole is cut, and nothing is to be said of where it lies.
  const cut = wayTaken(job) === USUAL_WAY ? rows : [];
  const holes = cut.flatMap((row) => row.holes);
  const layout: CautionId[] = ['caution.layout.framing'];
  if (wayTaken(job) === USUAL_WAY)
    layout.push(...placesUnknown(job.roof, job.home.length, job.roof.cover === 'metal', rules));
  if (cut.some((row) => row.outcome !== 'meets every rule')) layout.push('caution.layout.departs');
  if (holes.some((hole) => hole.overSeam)) layout.push('caution.layout.over-seam');
  if (holes.some((hole) => hole.movedFar)) layout.push('caution.layout.moved-far');
  return [
    ...at('ceiling', [
      ...(pressedByAir(plan, rules) ? (['caution.machine.pressed'] as const) : []),
      ...load.cautions,
    ]),
    ...at('before', [
      ...surveyStops(plan.readiness),
      ...plan.readiness.cautions.filter((id) => id === 'caution.before.not-looked'),
      'caution.before.seal-first',
      'caution.roof.carries-crew',
      'caution.roof.falls',
      ...(job.roof.obstacles?.some(({ what }) => what === 'skylight')
        ? (['caution.roof.skylight'] as const)
        : []),
      'caution.before.wear',
      ...(job.home.built < rules.value('safety.built.lead-before').amount
        ? (['caution.before.old-paint'] as const)
        : []),
    ]),
    ...at('layout', [...layout, ...hot.flatMap(({ space }) => space.cautions)]),
    ...at('fill', [
      ...wideSection(job.cavity.width, rules),
      'caution.fill.too-full',
      ...(ductsLieInFill(job) ? (['caution.ducts.pressed'] as const) : []),
      ...fill,
    ]),
  ];
}

const surveyStops = ({ openStops }: WorkedJob['readiness']): CautionId[] =>
  openStops.flatMap(({ caution }) => caution ?? []);

const OF_THE_CEILING: readonly CautionId[] = [
  'caution.ceiling.unrated',
  'caution.ceiling.overloaded',
  'caution.machine.pressed',
];

/**
 * Does a stop rest on what the ceiling may carry? The others rest on what was found at the home, and on no rule.
 * @example isOfCeiling('caution.before.wet') // => false
 */
export const isOfCeiling = (id: string): boolean => OF_THE_CEILING.some((each) => each === id);

/**
 * Cautions that keep the plan's figures behind them until they are settled: an open stop of the survey, a ceiling that can't carry the fill, or
 * the air that blows it, holes in a roof that nobody goes on.
 */
export const heldBy = ({
  cautions,
  readiness,
}: Pick<WorkedJob, 'cautions' | 'readiness'>): PlacedCaution[] => {
  const stops = surveyStops(readiness);
  return cautions.filter(
    ({ id, at }) =>
      (at === 'ceiling' && OF_THE_CEILING.includes(id)) || (at === 'before' && stops.includes(id)),
  );
};

/**
 * How many open stops hold a plan, counted as the sheet of the survey counts them: by what was found, since two of these may share a caution;
 * and the ceiling once, whatever it gives way to.
 */
export const openStopsOf = (plan: Pick<WorkedJob, 'cautions' | 'readiness'>): number =>
  plan.readiness.openStops.length + (heldBy(plan).some(({ at }) => at === 'ceiling') ? 1 : 0);
