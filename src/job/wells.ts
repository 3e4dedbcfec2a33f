import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { compare, minus, number, over, plus, type Quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';

/** A stretch along the roof. */
interface Stretch {
  readonly from: Quantity<'length'>;
  readonly to: Quantity<'length'>;
}

/**
 * That the well of a skylight is not counted, for each skylight of the roof, or of a stretch of it: no entry tells whether one goes down to
 * the ceiling, nor how wide it is there.
 */
export const ofWells = ({ roof }: Pick<JobValues, 'roof'>, stretch?: Stretch): Remark[] =>
  (roof.obstacles ?? []).flatMap(({ what, along, across }) => {
    if (what !== 'skylight') return [];
    const half = over(across, number(2));
    if (
      stretch &&
      (compare(plus(along, half), stretch.from) <= 0 || compare(minus(along, half), stretch.to) >= 0)
    )
      return [];
    return [
      said`The well of the skylight at ${printed(along, { tape: 8 })} is not counted: where it goes down to the ceiling no fill goes in, so fewer bags do, and a hose runs into it. Look where it stands before you push, and fill on all sides of it.`,
    ];
  });
