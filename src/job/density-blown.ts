import { type Remark, said } from '../calc/declare/remark.ts';
import { boxVolume, testBox } from '../calc/machine/test-box/box.ts';
import { compare, larger, named, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';

/** The mean density of the fills of the test box; undefined while none was weighed, or a weight can't be true. */
function weighedDensity(
  { machine, fill }: Pick<JobValues, 'machine' | 'fill'>,
  rules: Rulebook,
): Quantity<'density'> | undefined {
  const { box_length, box_width, box_height, fills = [] } = machine;
  if (!box_length || !box_width || !box_height || fills.length === 0) return undefined;
  // The sheet of the machine tells of a tare that is no tare.
  if (fills.some(({ gross, tare }) => compare(gross, tare) <= 0)) return undefined;
  const volume = boxVolume(box_length, box_width, box_height);
  return testBox(volume, fills, fill.density, undefined, rules).mean;
}

/**
 * By which density is the ceiling held against its limit? By the one that is wanted, or by the one that the machine was weighed to blow where
 * that is heavier: what lies on the ceiling is what comes out of the hose.
 * By hand: 6 lb in a box of 2 × 2 × 1 ft are 1.5 lb/ft3.
 * @example densityBlown({ machine: { box_length: quantity(2, 'ft'), box_width: quantity(2, 'ft'), box_height: quantity(1, 'ft'), fills: [{ gross: quantity(16, 'lb'), tare: quantity(10, 'lb') }] }, fill: { density: quantity(1.25, 'lb/ft3') } }, rules).amount // => 1.5
 */
export function densityBlown(job: Pick<JobValues, 'machine' | 'fill'>, rules: Rulebook): Quantity<'density'> {
  const weighed = weighedDensity(job, rules);
  return weighed
    ? named(larger(job.fill.density, weighed), 'ρl', 'Density that the load counts')
    : job.fill.density;
}

/** That the ceiling is held against its limit by another density than the one wanted, where it is. */
export function ofDensityBlown(job: Pick<JobValues, 'machine' | 'fill'>, rules: Rulebook): Remark[] {
  const blown = densityBlown(job, rules);
  return compare(blown, job.fill.density) > 0
    ? [
        said`The load on the ceiling counts ${blown}, as the machine was weighed to blow, and not the ${job.fill.density} that is wanted.`,
      ]
    : [];
}
