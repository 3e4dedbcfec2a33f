import type { Section } from '../calc/cavity/section.ts';
import { EntriesClash } from '../calc/declare/calculation.ts';
import { ridgeAcross } from '../calc/marks/opening.ts';
import { format } from '../quantity/format.ts';
import { amountIn, type Quantity, quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';

/** Half of a double home, and a single slope, rise from the eave to the far end. */
export const rises = (job: JobValues): boolean =>
  job.home.sections === 'double' || job.cavity.shape === 'one-slope';

/**
 * Do the flues, vents and lights that were entered lie on this roof? Taken to lie at its edge, one typed wrong would be given its room where
 * nothing stands, and none where it does.
 * @throws EntriesClash for one beyond the eave.
 */
export function checkOnTheRoof(job: JobValues, section: Section): void {
  const width = amountIn(section.width, 'in');
  const ridge = amountIn(rises(job) ? section.width : ridgeAcross(section), 'in');
  const rise = amountIn(section.deepest, 'in');
  for (const [place, { side, from_peak }] of (job.roof.obstacles ?? []).entries()) {
    const run = side === 'back' || rises(job) ? ridge : width - ridge;
    // No slope is longer than its run and the whole rise, corner to corner.
    refuseBeyond(from_peak, Math.hypot(run, rise), {
      field: `roof.obstacles.${place}.from_peak`,
      label: 'Distance from the peak',
      expected: 'a place on its slope, at most',
    });
  }
  for (const [place, { from_eave }] of (job.ceiling.lights ?? []).entries())
    refuseBeyond(from_eave, width, {
      field: `ceiling.lights.${place}.from_eave`,
      label: 'Distance from the eave',
      expected: 'a place in the ceiling, at most',
    });
}

const NOISE = 1e-6;

function refuseBeyond(
  distance: Quantity<'length'>,
  most: number,
  { field, label, expected }: { readonly field: string; readonly label: string; readonly expected: string },
): void {
  if (amountIn(distance, 'in') <= most + NOISE) return;
  throw new EntriesClash({
    field,
    label,
    found: format(distance, { tape: 8 }),
    expected: `${expected} ${format(quantity(most, 'in'), { tape: 8 })} from there`,
  });
}
