import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Material, ResistancePerInch } from './resistance.ts';

/** What has to be said beside a fill: cautions and sentences. */
export function fillWords(
  material: Material,
  density: Quantity<'density'>,
  resistance: ResistancePerInch | undefined,
  rules: Rulebook,
): { readonly cautions: CautionId[]; readonly remarks: string[] } {
  const cautions: CautionId[] = ['caution.fill.maker-governs'];
  const remarks: string[] = [];
  if (resistance && resistance.from !== 'the label') cautions.push('caution.fill.estimate');
  if (!resistance) {
    remarks.push(
      `No R per inch is published for ${material} at ${format(density)}, so none is given: take it from the label or test data.`,
    );
  }
  if (resistance?.from === 'our estimate between the published ends') {
    const row = rules.find('thermal.loose-fill.conductance', { material, density }, 'r-per-inch');
    remarks.push(
      row
        ? `At this density ${format(row.low)} to ${format(row.high)} is published for ${material}.`
        : `At this density nothing is published for ${material}: the estimate runs between the densities that are.`,
    );
  }
  const usual = rules.range('fill.density.usual');
  if (material === 'glass fibre' && (compare(density, usual.low) < 0 || compare(density, usual.high) > 0)) {
    remarks.push(`${format(density)} lies outside the usual ${format(usual.low)} to ${format(usual.high)}.`);
  }
  return { cautions, remarks };
}
