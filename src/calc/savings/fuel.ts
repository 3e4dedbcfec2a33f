import { format } from '../../quantity/format.ts';
import { amountIn, inUnit, named, over, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { choiceField, optional, quantityField, type Values } from '../declare/field.ts';

export const fuels = ['electricity', 'natural gas', 'propane', 'heating oil'] as const;
export type Fuel = (typeof fuels)[number];

/** What heats the home, how well, and what it costs. */
export const fuelFields = {
  fuel: choiceField('Fuel', 'What heats the home.', fuels),
  efficiency: quantityField({
    dimension: 'number',
    beside: 'percent',
    symbol: 'η',
    label: 'Efficiency of the heating',
    hint: 'Over a season, ducts included where it is known; resistance heat 100 %, a heat pump more.',
    example: '80 %',
    zero: 'refused',
    most: '600 %',
  }),
  price_of_heat: optional(
    quantityField({
      dimension: 'price of heat',
      symbol: 'pf',
      label: 'Price by its heat',
      hint: 'Electricity in $/kWh, natural gas in $/therm, any fuel in $/million Btu.',
      example: '0.15 $/kWh',
      zero: 'refused',
      most: '1000 $/million Btu',
    }),
  ),
  price_per_volume: optional(
    quantityField({
      dimension: 'price per volume',
      symbol: 'pv',
      label: 'Price by its volume instead',
      hint: 'Propane and heating oil in $/gal, natural gas in $/ft³, $/ccf or $/Mcf.',
      example: '2.50 $/gal',
      zero: 'refused',
      most: '100 $/gal',
    }),
  ),
  heat_content: optional(
    quantityField({
      dimension: 'heat per volume',
      symbol: 'h',
      label: 'Heat content',
      hint: 'The supplier’s own figure, with a price by volume; left empty, the published average.',
      example: '91500 Btu/gal',
      zero: 'refused',
      most: '200000 Btu/gal',
    }),
  ),
} as const;

export type FuelValues = Values<typeof fuelFields>;

/** A fuel by what it costs and gives off. */
export interface PricedFuel {
  /** Price of the heat in the fuel, before the furnace. */
  readonly price: Quantity<'price of heat'>;
  /** Absent for electricity. */
  readonly heatContent: Quantity<'heat per volume'> | undefined;
  /** Carbon dioxide for the heat in the fuel; absent for electricity, which has no single published figure. */
  readonly carbon: Quantity<'weight per heat'> | undefined;
}

const clash = (field: keyof FuelValues, found: string, expected: string): never => {
  throw new EntriesClash({ field, label: fuelFields[field].label, found, expected });
};

/**
 * What does a million Btu in the fuel cost? A price by volume is divided by the heat content.
 * By hand: $2.50 for 100,000 Btu.
 * @throws EntriesClash unless there is one price, of a kind that the fuel is sold by, and an efficiency that it can have.
 * @example pricedFuel({ fuel: 'propane', efficiency: quantity(80, 'percent'), price_per_volume: quantity(2.5, '$/gal'), heat_content: quantity(100_000, 'Btu/gal') }, rules).price.amount.toFixed(6) // => '25.000000'
 */
export function pricedFuel(values: FuelValues, rules: Rulebook): PricedFuel {
  const { fuel, efficiency, price_of_heat, price_per_volume, heat_content } = values;
  if (fuel !== 'electricity' && amountIn(efficiency, '1') > 1)
    clash('efficiency', `${format(efficiency)} for ${fuel}`, '100 % at most for a fuel that is burnt');
  if (price_of_heat && price_per_volume)
    clash('price_per_volume', 'a price by volume beside a price by heat', 'one of the two');
  if (fuel === 'electricity' && (price_per_volume || heat_content))
    clash(
      price_per_volume ? 'price_per_volume' : 'heat_content',
      `${format(price_per_volume ?? (heat_content as Quantity))} for electricity`,
      'a price in $/kWh, and no heat content',
    );
  if (heat_content && !price_per_volume)
    clash('heat_content', `${format(heat_content)} without a price by volume`, 'a price by volume with it');
  const carbon = rules.find('energy.carbon.by-fuel', { fuel }, 'carbon-dioxide')?.low;
  const heatContent = heat_content ?? published(fuel, rules);
  if (price_of_heat)
    return {
      price: named(inUnit(price_of_heat, '$/million Btu'), 'pf', 'Price of the fuel by its heat'),
      heatContent,
      carbon,
    };
  if (!price_per_volume || !heatContent)
    return clash('price_of_heat', 'no price', `a price of ${fuel} such as ${examples[fuel]}`);
  const asGas = fuel === 'natural gas' || heatContent.unit === 'Btu/ft3';
  if (asGas === (price_per_volume.unit === '$/gal'))
    clash(
      'price_per_volume',
      `${format(price_per_volume)} for ${fuel}`,
      asGas
        ? 'a price by the cubic foot of gas, such as 1.20 $/ccf'
        : 'a price in $/gal; of metered gas, its heat content in Btu/ft³ beside it',
    );
  return {
    price: named(
      inUnit(over(price_per_volume, heatContent), '$/million Btu'),
      'pf',
      'Price of the fuel by its heat',
    ),
    heatContent,
    carbon,
  };
}

const examples: Readonly<Record<Fuel, string>> = {
  electricity: '0.15 $/kWh',
  'natural gas': '1.20 $/therm',
  propane: '2.50 $/gal, by its volume',
  'heating oil': '3.50 $/gal, by its volume',
};

function published(fuel: Fuel, rules: Rulebook): Quantity<'heat per volume'> | undefined {
  if (fuel === 'natural gas') return rules.value('energy.heat-content.natural-gas');
  if (fuel === 'propane') return rules.value('energy.heat-content.propane');
  return fuel === 'heating oil' ? rules.value('energy.heat-content.heating-oil') : undefined;
}

/**
 * What does a million Btu of heat in the rooms cost? The price of the fuel over the efficiency.
 * By hand: $20 over 0.8.
 * @example heatPrice(quantity(20, '$/million Btu'), quantity(80, 'percent')).amount // => 25
 */
export const heatPrice = (
  price: Quantity<'price of heat'>,
  efficiency: Quantity<'number'>,
): Quantity<'price of heat'> => named(over(price, efficiency), 'ph', 'Price of the heat in the rooms');
