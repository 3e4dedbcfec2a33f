import {
  amountIn,
  byMethod,
  inUnit,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Material } from './material.ts';

/** R per inch with how sure it is, and where it comes from. */
export interface ResistancePerInch {
  readonly value: Quantity<'resistance per length'>;
  readonly low: Quantity<'resistance per length'>;
  readonly high: Quantity<'resistance per length'>;
  readonly from: 'the label' | 'our estimate between the published ends' | 'the published table';
}

/** 0.4 lb/ft3 typed in kg/m3 may read a hair less. */
const NOISE = 1e-9;

/**
 * What R does an inch of the fill give? The maker's label comes first; then, for glass fibre, our estimate between the
 * published densities; for the others the published row that holds the density. Undefined where nothing published answers,
 * or the density is not known.
 * By hand: the middle of the published 3.43 and 3.7.
 * @example resistancePerInch('mineral wool', quantity(4, 'lb/ft3'), undefined, rules).value.amount.toFixed(3) // => '3.565'
 */
export function resistancePerInch(
  material: Material,
  density: Quantity<'density'> | undefined,
  label: Quantity<'resistance per length'> | undefined,
  rules: Rulebook,
): ResistancePerInch | undefined {
  if (label) return { value: label, low: label, high: label, from: 'the label' };
  if (!density) return undefined;
  return material === 'glass fibre' ? estimated(density, rules) : published(material, density, rules);
}

const perInch = (q: Quantity<'resistance per length'>, symbol: string, label: string) =>
  named(inUnit(q, 'h ft2 F/(Btu in)'), symbol, label);

/** k = a − b·d + c/d, through the published ends; see the rule's own working. */
function estimated(density: Quantity<'density'>, rules: Rulebook): ResistancePerInch | undefined {
  const d = amountIn(density, 'lb/ft3');
  const { low, high } = rules.range('thermal.loose-fill.fit-range');
  if (d < amountIn(low, 'lb/ft3') - NOISE || d > amountIn(high, 'lb/ft3') + NOISE) return undefined;
  const [a, b, c] = [
    rules.value('thermal.loose-fill.fit-constant'),
    rules.value('thermal.loose-fill.fit-density'),
    rules.value('thermal.loose-fill.fit-inverse'),
  ];
  const conductivity = named(
    byMethod('a − b·ρ + c/ρ', [a, b, c, density], a.amount - b.amount * d + c.amount / d, 'Btu in/(h ft2 F)'),
    'k',
    'Conductivity at this density',
  );
  const value = perInch(over(number(1), conductivity), 'ri', 'R per inch');
  const unsure = rules.value('thermal.loose-fill.fit-uncertainty');
  return {
    value,
    low: perInch(minus(value, times(value, unsure)), 'ri least', 'R per inch, at the least'),
    high: perInch(plus(value, times(value, unsure)), 'ri most', 'R per inch, at the most'),
    from: 'our estimate between the published ends',
  };
}

function published(
  material: Material,
  density: Quantity<'density'>,
  rules: Rulebook,
): ResistancePerInch | undefined {
  const row = rules.find('thermal.loose-fill.conductance', { material, density }, 'r-per-inch');
  if (!row) return undefined;
  return {
    value: perInch(over(plus(row.low, row.high), number(2)), 'ri', 'R per inch'),
    low: perInch(row.low, 'ri least', 'R per inch, at the least'),
    high: perInch(row.high, 'ri most', 'R per inch, at the most'),
    from: 'the published table',
  };
}
