import { EntriesClash } from '../calc/declare/calculation.ts';
import { type Remark, said } from '../calc/declare/remark.ts';
import { boxVolume, testBox } from '../calc/machine/test-box/box.ts';
import { testBoxCheck } from '../calc/machine/test-box/declaration.ts';
import { format } from '../quantity/format.ts';
import { compare, larger, named, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { JobValues } from './job-fields.ts';

/**
 * The mean density of the fills of the test box; undefined while none was weighed. A weight that can't be true is no reason to count the
 * ceiling as less loaded, so it holds the plan, and so do fills of a box that nobody measured.
 */
function weighedDensity(
  { machine, fill }: Pick<JobValues, 'machine' | 'fill'>,
  rules: Rulebook,
): Quantity<'density'> | undefined {
  const { box_length, box_width, box_height, fills = [] } = machine;
  if (fills.length === 0) return undefined;
  for (const [at, { gross, tare }] of fills.entries()) {
    if (compare(gross, tare) > 0) continue;
    throw new EntriesClash({
      field: `machine.fills.${at}.tare`,
      label: 'Tare weight',
      found: `${format(tare)} beside a gross weight of ${format(gross)}`,
      expected: 'a tare below the gross weight',
    });
  }
  if (!box_length || !box_width || !box_height) {
    const missing = box_length ? (box_width ? 'height' : 'width') : 'length';
    throw new EntriesClash({
      field: `machine.box_${missing}`,
      label: testBoxCheck.fields[missing].label,
      found: 'nothing, and fills that were weighed',
      expected: 'the inside of the box, or no fills: the ceiling is held against what was weighed',
    });
  }
  const volume = boxVolume(box_length, box_width, box_height);
  return testBox(volume, fills, fill.density, undefined, rules).mean;
}

/**
 * By which density is the ceiling held against its limit? By the one that is wanted, or by the one that the machine was weighed to blow where
 * that is heavier: what lies on the ceiling is what comes out of the hose.
 * @throws EntriesClash for a tare that is no tare, and for fills of a box without its sizes.
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
