import type { KeptOpen } from '../calc/cavity/volume.ts';
import { hotKinds } from '../calc/holes/fields.ts';
import { amountIn, byMethod, named, number, plus, type Quantity, times } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';

type Obstacle = NonNullable<JobValues['roof']['obstacles']>[number];

/** Is this one of the things that get hot, so that the fill must stay clear of it? */
export const isHot = ({ what }: Obstacle): boolean => hotKinds.includes(what);

/** A flue with the ring about it that the fill keeps clear of. */
export interface FlueSpace extends KeptOpen {
  readonly along: Quantity<'length'>;
  readonly what: string;
  readonly side: 'back' | 'front';
}

/**
 * Which round spaces are kept open about hot flues? The width on the roof, flashing included, stands in for the flue's own,
 * which is no smaller on the safe side; the ring is the published least distance, and the listing may ask for more.
 */
export function flueSpaces(job: JobValues, rules: Rulebook): FlueSpace[] {
  const ring = rules.value('clearance.flue.to-combustibles');
  return (job.roof.obstacles ?? []).filter(isHot).map((flue) => ({
    what: flue.what,
    side: flue.side,
    along: flue.along,
    across: named(plus(flue.across, times(ring, number(2))), 'D', `Open space about the ${flue.what}`),
    at: fromEave(flue, job),
  }));
}

/** A place down the slope, as a place across the cavity from its eave; the slope of these roofs is slight enough to count as level. */
function fromEave({ from_peak, side }: Obstacle, job: JobValues): Quantity<'length'> {
  const width = amountIn(job.cavity.width, 'in');
  const down = amountIn(from_peak, 'in');
  // Half of a double home, and a single slope, rise from the eave to the far end.
  const oneSided = job.home.sections === 'double' || job.cavity.shape === 'one-slope';
  const ridgeAt = oneSided ? width : width / 2;
  const across = side === 'back' || oneSided ? ridgeAt - down : ridgeAt + down;
  return byMethod(
    'place across, from the eave',
    [job.cavity.width, from_peak],
    Math.min(width, Math.max(0, across)),
    'in',
  );
}
