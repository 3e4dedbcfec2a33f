import type { CeilingLoad } from '../calc/ceiling/load.ts';
import type { CautionId } from '../generated/rule-types.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';
import type { PlacedCaution, PlannedRow } from './planned.ts';

/** Which cautions does this plan call for, and where does each stand? */
export function cautionsFor(
  job: JobValues,
  rows: readonly PlannedRow[],
  load: CeilingLoad,
  fill: readonly CautionId[],
  flues: boolean,
  rules: Rulebook,
): PlacedCaution[] {
  const at = (place: PlacedCaution['at'], ids: readonly CautionId[]): PlacedCaution[] =>
    ids.map((id) => ({ id, at: place }));
  const holes = rows.flatMap((row) => row.holes);
  const layout: CautionId[] = ['caution.layout.framing'];
  if (rows.some((row) => row.outcome !== 'meets every rule')) layout.push('caution.layout.departs');
  if (holes.some((hole) => hole.overSeam)) layout.push('caution.layout.over-seam');
  if (holes.some((hole) => hole.movedFar)) layout.push('caution.layout.moved-far');
  if (flues) layout.push('caution.flue.keep-clear');
  return [
    ...at('ceiling', load.cautions),
    ...at('before', [
      'caution.before.seal-first',
      'caution.roof.carries-crew',
      'caution.roof.falls',
      'caution.before.wear',
      ...(job.home.built < rules.value('safety.built.lead-before').amount
        ? (['caution.before.old-paint'] as const)
        : []),
    ]),
    ...at('layout', layout),
    ...at('fill', ['caution.fill.too-full', ...fill]),
  ];
}

/** Cautions that hold the plan's figures back until they are settled. */
export const heldBy = (cautions: readonly PlacedCaution[]): PlacedCaution[] =>
  cautions.filter(({ id }) => id === 'caution.ceiling.unrated' || id === 'caution.ceiling.overloaded');
