import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { Section } from '../calc/cavity/section.ts';
import { EntriesClash } from '../calc/declare/calculation.ts';
import { format } from '../quantity/format.ts';
import { amountIn, type Quantity, quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';

/** A section of a double-section home, and a single slope, rise from the eave to the far end. */
export const rises = (job: JobValues): boolean =>
  job.home.sections === 'double' || job.cavity.shape === 'one-slope';

/**
 * Where across is the ridge of this home? A half of two sections ends at it, whatever its shape.
 * By hand: half of the 13 ft 10 in of the example.
 * @example amountIn(ridgeOf(plan.job, plan.section), 'in') // => 83
 */
export const ridgeOf = (job: JobValues, section: Section): Quantity<'length'> =>
  rises(job) ? section.width : ridgeAcross(section);

/**
 * Do the flues, vents and lights that were entered lie on this roof? Taken to lie at its edge, one typed wrong would be given its
 * room where nothing stands, and none where it does.
 * @throws EntriesClash for one beyond the eave or the end of the roof.
 */
export function checkOnTheRoof(job: JobValues, section: Section): void {
  const width = amountIn(section.width, 'in');
  const rise = amountIn(section.deepest, 'in');
  const beyondTheEnd = (way: string, along: Quantity<'length'>): void =>
    refuseBeyond(along, amountIn(job.home.length, 'in'), {
      field: `${way}.along`,
      label: 'Place along the roof',
      expected: 'a place on the roof, at most',
    });
  for (const [place, { along, from_peak }] of (job.roof.obstacles ?? []).entries()) {
    beyondTheEnd(`roof.obstacles.${place}`, along);
    // No slope, straight or bowed, is longer than its run and the whole rise together.
    refuseBeyond(from_peak, longestRun(job, section) + rise, {
      field: `roof.obstacles.${place}.from_peak`,
      label: 'Distance from the peak',
      expected: 'a place on its slope, at most',
    });
  }
  for (const [place, { along, from_eave }] of (job.ceiling.lights ?? []).entries()) {
    beyondTheEnd(`ceiling.lights.${place}`, along);
    refuseBeyond(from_eave, width, {
      field: `ceiling.lights.${place}.from_eave`,
      label: 'Distance from the eave',
      expected: 'a place in the ceiling, at most',
    });
  }
}

/** How far is it at the most from a peak to an eave, across? Of depths that were measured the peak may be level for a while; any other stands over the middle. */
function longestRun(job: JobValues, section: Section): number {
  const width = amountIn(section.width, 'in');
  if (rises(job)) return width;
  const ridge = amountIn(ridgeAcross(section), 'in');
  return Math.max(ridge, width - ridge);
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
