import type { Section } from '../calc/cavity/section.ts';
import { amountIn, byMethod, type Quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';
import { ridgeOf, rises } from './off-the-roof.ts';

type Obstacle = NonNullable<JobValues['roof']['obstacles']>[number];

/**
 * Where across the cavity, from the eave that its section is measured from, stands what comes through the roof so far down the slope? The
 * slope of these roofs is slight enough to count as level. The peak is the one that roof holes are measured from: of a measured cavity, its
 * deepest place.
 * By hand: the ridge of the example is 83 in from the eave on the back side; 30 in down that side is 53 in from it, down the other 113 in.
 * @example ['back', 'front'].map((side) => amountIn(acrossFromEave({ side, from_peak: quantity(30, 'in') }, plan.job, plan.section), 'in')) // => [53, 113]
 */
export function acrossFromEave(
  { from_peak, side }: Pick<Obstacle, 'from_peak' | 'side'>,
  job: JobValues,
  section: Section,
): Quantity<'length'> {
  const width = amountIn(section.width, 'in');
  const down = amountIn(from_peak, 'in');
  const ridgeAt = amountIn(ridgeOf(job, section), 'in');
  const across = side === 'back' || rises(job) ? ridgeAt - down : ridgeAt + down;
  return byMethod(
    'place across, from the eave',
    [...section.told, from_peak],
    Math.min(width, Math.max(0, across)),
    'in',
  );
}
