import type { CautionId } from '../../generated/rule-types.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type Remark, said } from '../declare/remark.ts';
import type { Material } from './material.ts';
import type { ResistancePerInch } from './resistance.ts';

/**
 * Is a bag so light or so heavy that its weight was perhaps typed wrong? Of other materials no usual weight is known.
 * @example unusualBag('glass fibre', quantity(30, 'lb/bag'), rules).length // => 0
 */
export function unusualBag(
  material: Material,
  weight: Quantity<'weight of a piece'>,
  rules: Rulebook,
): readonly Remark[] {
  const usual = rules.range('fill.bag.weight');
  return material === 'glass fibre' && (compare(weight, usual.low) < 0 || compare(weight, usual.high) > 0)
    ? [said`${weight} lies outside the usual ${usual.low} to ${usual.high}: look at the bag again.`]
    : [];
}

/** What has to be said beside a fill: cautions and sentences. */
export function fillWords(
  material: Material,
  density: Quantity<'density'>,
  resistance: ResistancePerInch | undefined,
  rules: Rulebook,
): { readonly cautions: CautionId[]; readonly remarks: Remark[] } {
  const cautions: CautionId[] = ['caution.fill.maker-governs'];
  if (material === 'cellulose') cautions.push('caution.fill.cellulose');
  const remarks: Remark[] = [];
  if (resistance && resistance.from !== 'the label') cautions.push('caution.fill.estimate');
  if (!resistance) {
    remarks.push(
      said`The handbook has no R per inch for ${material} at ${density}, so none is given: take it from the label or test data.`,
    );
  }
  if (resistance?.from === 'our estimate between the published ends') {
    const row = rules.find('thermal.loose-fill.conductance', { material, density }, 'r-per-inch');
    remarks.push(
      row
        ? said`At this density ${row.low} to ${row.high} is published for ${material}.`
        : `At this density the handbook has nothing for ${material}: the estimate runs between the densities that it has.`,
    );
  }
  const sheet =
    resistance?.from !== 'the label' &&
    rules.find('thermal.loose-fill.fact-sheet', { material, density }, 'r-per-inch');
  if (sheet) {
    remarks.push(
      said`For an open attic a federal fact sheet gives ${sheet.low} to ${sheet.high} at this density. The bag label decides.`,
    );
  }
  const usual = rules.range('fill.density.usual');
  if (material === 'glass fibre' && (compare(density, usual.low) < 0 || compare(density, usual.high) > 0)) {
    remarks.push(said`${density} lies outside the usual ${usual.low} to ${usual.high}.`);
  }
  return { cautions, remarks };
}
