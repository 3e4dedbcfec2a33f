import type { Remark } from '../calc/declare/remark.ts';
import { depthOnceFilled } from '../calc/heat/old-insulation.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { JobValues } from './job-fields.ts';

/**
 * How deep does the old insulation of this job lie under the new fill? By it goes all that the fill takes: its volume, its load on the
 * ceiling and its R. Undefined where there is none, whatever is told of its pressing: the sheet of the heat asks about that.
 * @throws EntriesClash if it is pressed and its pressed depth is missing or more than the full one, or is given of what lies loose.
 * @example oldOnceFilled(job)?.amount // => 1.5
 */
export function oldOnceFilled({
  old,
  heat,
}: Pick<JobValues, 'old' | 'heat'>): Quantity<'length'> | undefined {
  const { depth } = old;
  if (!depth || depth.amount === 0) return undefined;
  return depthOnceFilled({ depth, condition: heat.old_condition, pressedDepth: heat.pressed_depth });
}

/** That old insulation is taken to lie loose, where nobody said how it lies: pressed, it leaves room for more fill and more load. */
export const ofUntoldPressing = ({ old, heat }: Pick<JobValues, 'old' | 'heat'>): Remark[] =>
  old.depth && old.depth.amount > 0 && heat.old_condition === undefined
    ? [
        'The old insulation is counted as lying loose under the new fill. If the fill presses it, say so on the sheet Heat and savings: more goes in then, and it weighs more on the ceiling.',
      ]
    : [];
