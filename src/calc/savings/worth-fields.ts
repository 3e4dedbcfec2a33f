import { format } from '../../quantity/format.ts';
import { amountIn, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { optional, quantityField, type Values } from '../declare/field.ts';
import { joined, type Remark, said } from '../declare/remark.ts';
import type { Worth } from './worth.ts';

/** How many years savings are counted, and what later ones are worth. */
export const worthFields = {
  life: optional(
    quantityField({
      dimension: 'time',
      beside: 'year',
      symbol: 'n',
      label: 'Life',
      hint: 'Years for which savings are counted, whole ones; left empty, the rulebook’s.',
      example: '20 years',
      zero: 'refused',
      most: '100 years',
    }),
  ),
  discount_rate: optional(
    quantityField({
      dimension: 'number',
      beside: 'percent',
      symbol: 'd',
      label: 'Real discount rate',
      hint: 'A year, inflation left out; left empty, the rulebook’s.',
      example: '3 %',
      zero: 'allowed',
      most: '50 %',
    }),
  ),
  escalation: optional(
    quantityField({
      dimension: 'number',
      beside: 'percent',
      symbol: 'e',
      label: 'Escalation of the energy price',
      hint: 'By how much it rises a year beyond inflation; below 0 where it falls.',
      example: '1 %',
      zero: 'allowed',
      negative: 'allowed',
      most: '50 %',
    }),
  ),
} as const;

const WHOLE = 1e-6;

/**
 * The years and rates that were entered, or the rulebook's.
 * @throws EntriesClash for a part of a year, or a price that falls to nothing.
 * @example worthOf({ life: quantity(20, 'year'), discount_rate: quantity(3, 'percent') }, rules).years.amount // => 20
 */
export function worthOf(
  { life, discount_rate, escalation }: Values<typeof worthFields>,
  rules: Rulebook,
): Worth {
  const years = life ?? rules.value('energy.measure.life');
  const count = amountIn(years, 'year');
  if (count < 1 - WHOLE || Math.abs(count - Math.round(count)) > WHOLE) {
    throw new EntriesClash({
      field: 'life',
      label: 'Life',
      found: format(years),
      expected: 'whole years, one or more',
    });
  }
  if (escalation && amountIn(escalation, '1') <= -1) {
    throw new EntriesClash({
      field: 'escalation',
      label: 'Escalation of the energy price',
      found: format(escalation),
      expected: 'a fall of less than all of the price',
    });
  }
  return { years, rate: discount_rate ?? rules.value('energy.discount.real-rate'), escalation };
}

/**
 * Which of the two rates is the rulebook's own, in a sentence; empty where both were entered.
 * @example assumed({ life: quantity(20, 'year'), discount_rate: quantity(3, 'percent') }, { years: quantity(20, 'year'), rate: quantity(3, 'percent') }) // => []
 */
export function assumed(
  {
    life,
    discount_rate,
  }: { readonly life?: Quantity | undefined; readonly discount_rate?: Quantity | undefined },
  { years, rate }: Worth,
): Remark[] {
  const taken = [
    ...(life ? [] : [said`a life of ${years}`]),
    ...(discount_rate ? [] : [said`a real discount rate of ${rate}`]),
  ];
  return taken.length === 0
    ? []
    : [
        said`The rulebook’s own, since none was entered: ${joined(taken, ' and ')}. A programme’s own figures govern.`,
      ];
}
