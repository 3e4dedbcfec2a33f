import { figuresApart } from '../../quantity/apart.ts';
import { format } from '../../quantity/format.ts';
import {
  compare,
  inUnit,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import { everyRow } from '../../rulebook/every-row.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { printed, type Remark, said } from '../declare/remark.ts';
import type { PartValues } from './fields.ts';

/** What the bags say of one part of the house. */
export interface PartChecked {
  /** The bags' weight on its area; undefined where bags, bag weight or area are not told. */
  readonly weight: Quantity<'load'> | undefined;
  /** Is that less than the label asks for at the R stated? Undefined where it can't be said. */
  readonly underWeight: boolean | undefined;
  /** Weight over area and initial thickness; a check on the density told, never the figure of the certificate. */
  readonly density: Quantity<'density'> | undefined;
  readonly remarks: readonly Remark[];
}

/**
 * How is the bags' weight printed beside the label's? To three figures, downwards, and to more where the two would read alike.
 * @example asWeight(quantity(1.26623, 'lb/ft2'), quantity(1.2663, 'lb/ft2')) // => { figures: 5, round: 'down' }
 */
export const asWeight = (
  weight: Quantity<'load'>,
  label: Quantity<'load'> | undefined,
): { readonly figures: number; readonly round: 'down' } => ({
  figures: figuresApart(weight, label ? [label] : [], 3),
  round: 'down',
});

/**
 * Do the entries of one part agree with one another? Weight in lb/ft2, density in lb/ft3. No R is computed here, from
 * anything. The source of the weight to reach is the bag label, 16 CFR 460.12(b)(2).
 * By hand: 10 bags of 30 lb on 200 ft2.
 * @throws EntriesClash where settled fill would be thicker than fresh, or an R has no paper it is copied from.
 * @example checkPart({ part: 'roof cavity', insulation: 'glass fibre', bags: quantity(10, 'bag'), bag_weight: quantity(30, 'lb/bag'), area: quantity(200, 'ft2') }, 0, rules).weight.amount.toFixed(6) // => '1.500000'
 */
export function checkPart(part: PartValues, place: number, rules: Rulebook): PartChecked {
  refuseClash(part, place);
  const { bags, bag_weight, area, label_weight, initial_thickness, installed_density } = part;
  const blown = bags && bag_weight && named(times(bags, bag_weight), 'w', `Weight of the bags, ${part.part}`);
  const weight =
    blown && area && named(inUnit(over(blown, area), 'lb/ft2'), 'q', `Weight on the area, ${part.part}`);
  const underWeight = weight && label_weight && compare(weight, label_weight) < 0;
  const density =
    weight &&
    initial_thickness &&
    named(inUnit(over(weight, initial_thickness), 'lb/ft3'), 'ρn', `Density by the bags, ${part.part}`);
  const remarks: Remark[] = [];
  if (underWeight && weight && label_weight)
    remarks.push(
      `${part.part}: the bags weigh ${format(weight, asWeight(weight, label_weight))} on this area, less than the ${format(label_weight)} of the label for the R stated.`,
    );
  if (density && installed_density && !near(density, installed_density, rules))
    remarks.push(
      `${part.part}: the bags, the area and the thickness make ${format(density, { figures: 3 })}, not the ${format(installed_density)} stated; measure again. A tapered cavity has no one thickness, so there the two may differ.`,
    );
  const most = beyondAnyFill(part, rules);
  if (most)
    remarks.push(
      said`${part.part}: the R and the thickness stated make more an inch than any ${part.insulation} of the rulebook, which is ${printed(most, { figures: 3, round: 'down' })} at the most. Read the maker’s paper again.`,
    );
  return { weight, underWeight, density, remarks };
}

/**
 * The most R per inch that is published for the insulation, where the R stated over its thickness is more than that by more than our own
 * estimates may be off: a slip of a key, or another row of the paper. It never becomes a figure of the receipt.
 */
function beyondAnyFill(
  { insulation, r_value, settled_thickness, initial_thickness }: PartValues,
  rules: Rulebook,
): Quantity<'resistance per length'> | undefined {
  const thickness = settled_thickness ?? initial_thickness;
  if (!r_value || !thickness) return undefined;
  const most = mostPerInch(insulation, rules);
  const unsure = plus(number(1), rules.value('thermal.loose-fill.fit-uncertainty'));
  return compare(over(r_value, thickness), times(most, unsure)) > 0 ? most : undefined;
}

/** The highest R per inch of the published table, whatever the density. */
function mostPerInch(material: string, rules: Rulebook): Quantity<'resistance per length'> {
  const found = everyRow(rules, 'thermal.loose-fill.conductance', [material], 'r-per-inch').map(
    ({ high }) => high,
  );
  const [first, ...rest] = found;
  if (!first) throw new Error(`found no R per inch of ${material}, expected a row of the table`);
  return rest.reduce((most, each) => (compare(each, most) > 0 ? each : most), first);
}

/** Are two densities within the share that counts as near enough? */
function near(found: Quantity<'density'>, told: Quantity<'density'>, rules: Rulebook): boolean {
  const share = rules.value('fill.bag.near-enough');
  return (
    compare(found, times(told, minus(number(1), share))) >= 0 &&
    compare(found, times(told, plus(number(1), share))) <= 0
  );
}

function refuseClash(part: PartValues, place: number): void {
  const { initial_thickness, settled_thickness, r_value, r_from, r_paper } = part;
  if (initial_thickness && settled_thickness && compare(settled_thickness, initial_thickness) > 0) {
    throw new EntriesClash({
      field: `parts.${place}.settled_thickness`,
      label: 'Minimum settled thickness',
      found: `${format(settled_thickness)}, more than the ${format(initial_thickness)} installed`,
      expected:
        'no more than the initial thickness, since fill settles; where the paper asks for more, its R is not there',
    });
  }
  if (r_value && !(r_from && r_paper)) {
    throw new EntriesClash({
      field: `parts.${place}.${r_from ? 'r_paper' : 'r_from'}`,
      label: r_from ? 'Which one' : 'R copied from',
      found: 'an R-value without the maker’s paper it is copied from',
      expected: 'the paper, and which one it is, or no R-value',
    });
  }
}
