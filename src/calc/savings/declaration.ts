import type { CautionId } from '../../generated/rule-types.ts';
import { named, type Quantity, times } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { optional, quantityField } from '../declare/field.ts';
import { transmittanceOf } from '../layers/layers.ts';
import { fuelFields, heatPrice, pricedFuel } from './fuel.ts';
import { investment, lifetimeWorth, yearlySaving } from './saving.ts';
import { presentWorthFactor, singlePresentWorthFactor } from './worth.ts';
import { assumed, worthFields, worthOf } from './worth-fields.ts';

const three = { figures: 3 } as const;
/** What falls short of the test is never told as no less than it. */
const least = { figures: 3, round: 'down' } as const;

/** Wherever a saving shows, the federal statement on savings shows with it. */
const withSavings: readonly CautionId[] = ['caution.savings.vary', 'caution.savings.not-a-bill'];

const transmittanceField = (symbol: string, label: string, example: string) =>
  quantityField({
    dimension: 'thermal transmittance',
    beside: 'Btu/(h ft2 F)',
    symbol,
    label,
    hint: 'Of the whole roof, films and framing included.',
    example,
    zero: 'refused',
    most: '10 Btu/(h ft2 F)',
  });

const resistanceField = (symbol: string, label: string, example: string) =>
  quantityField({
    dimension: 'thermal resistance',
    beside: 'h ft2 F/Btu',
    symbol,
    label,
    hint: 'The effective R of the whole roof, in place of a U.',
    example,
    zero: 'refused',
    most: '500 h ft2 F/Btu',
  });

export const savings = calculation({
  name: 'savings',
  title: 'Savings',
  question: 'What will the insulation save, and does it pay?',
  fields: {
    area: quantityField({
      dimension: 'area',
      beside: 'ft2',
      symbol: 'A',
      label: 'Area of the ceiling',
      hint: 'Over heated rooms.',
      example: '924 ft²',
      zero: 'refused',
      most: '100000 ft2',
    }),
    u_before: optional(transmittanceField('U1', 'U before', '0.145 Btu/(h·ft²·°F)')),
    u_after: optional(transmittanceField('U2', 'U after', '0.029 Btu/(h·ft²·°F)')),
    r_before: optional(resistanceField('R1', 'R before instead', '6.9 h·ft²·°F/Btu')),
    r_after: optional(resistanceField('R2', 'R after instead', '34 h·ft²·°F/Btu')),
    degree_days: quantityField({
      dimension: 'degree-days',
      beside: 'F day',
      symbol: 'HDD',
      label: 'Heating degree-days',
      hint: 'Of a usual year where the home stands, on a base that suits the home.',
      example: '6000 F days',
      zero: 'allowed',
      most: '25000 F days',
    }),
    ...fuelFields,
    cost: optional(
      quantityField({
        dimension: 'money',
        beside: '$',
        symbol: 'I',
        label: 'Cost of the work',
        hint: 'Material, labour and supervision on site. Of a whole package also the repairs that go with it, such as ceiling and roof, and what else the programme counts.',
        example: '1800 $',
        zero: 'refused',
        most: '1000000 $',
      }),
    ),
    ...worthFields,
  },
  example: {
    area: '924 ft²',
    r_before: '6.9 h·ft²·°F/Btu',
    r_after: '34 h·ft²·°F/Btu',
    degree_days: '6000 F days',
    fuel: 'propane',
    efficiency: '80 %',
    price_per_volume: '2.50 $/gal',
    cost: '1800 $',
  },
  common: {
    degree_days: ['3000 F days', '4500 F days', '6000 F days', '7500 F days'],
    efficiency: ['65 %', '80 %', '90 %', '95 %'],
  },
  work: (values, rules) => {
    const fuel = pricedFuel(values, rules);
    const yearly = yearlySaving({
      area: values.area,
      before: eitherWay(values.u_before, values.r_before, 'before'),
      after: eitherWay(values.u_after, values.r_after, 'after'),
      degreeDays: values.degree_days,
      efficiency: values.efficiency,
      fuel,
    });
    const worth = worthOf(values, rules);
    const { factor, presentWorth } = lifetimeWorth(yearly.sum, worth);
    const figures: Record<string, Figure> = {
      saving: { label: 'Saving a year', value: yearly.money },
    };
    if (values.cost) {
      const { payback, net, ratio, verdict } = investment(values.cost, yearly.money, presentWorth, rules);
      figures.cost_test = { label: 'The federal cost test', value: verdict };
      figures.ratio = { label: 'Savings to investment, over its life', value: ratio, format: least };
      figures.payback = { label: 'Simple payback', value: payback ?? 'never', format: three };
      figures.net = { label: 'Present worth of the savings less the cost', value: net };
    }
    figures.present_worth = { label: 'Present worth of all its savings', value: presentWorth };
    figures.present_worth_factor = { label: 'The same, in years of saving', value: factor };
    figures.heat = { label: 'Heat kept in the home in a year', value: yearly.heat, format: three };
    figures.fuel_heat = { label: 'Heat in the fuel saved in a year', value: yearly.fuelHeat, format: three };
    if (yearly.fuelVolume)
      figures.fuel_volume = { label: 'Fuel saved in a year', value: yearly.fuelVolume, format: three };
    if (yearly.carbon)
      figures.carbon = {
        label: 'Carbon dioxide not given off in a year',
        value: yearly.carbon,
        format: three,
      };
    return {
      figures,
      cautions: withSavings,
      remarks: [...assumed(values, worth), ...withoutCarbon(yearly.carbon)],
    };
  },
});

/** U as it was entered, or as 1 over the R entered. @throws EntriesClash unless exactly one of the two is given. */
function eitherWay(
  transmittance: Quantity<'thermal transmittance'> | undefined,
  resistance: Quantity<'thermal resistance'> | undefined,
  when: 'before' | 'after',
): Quantity<'thermal transmittance'> {
  if (transmittance && !resistance) return transmittance;
  if (resistance && !transmittance)
    return named(transmittanceOf(resistance), when === 'before' ? 'U1' : 'U2', `U ${when}`);
  throw new EntriesClash({
    field: `u_${when}`,
    label: `U or R ${when}`,
    found: transmittance ? 'both a U and an R' : 'neither a U nor an R',
    expected: 'one of the two',
  });
}

const withoutCarbon = (carbon: Quantity | undefined): string[] =>
  carbon
    ? []
    : [
        'No carbon dioxide is given for electricity: how much a kWh gives off depends on how and when it is made.',
      ];

export const presentWorth = calculation({
  name: 'present-worth',
  title: 'Present worth',
  question: 'What are the savings of years to come worth today?',
  fields: {
    yearly: optional(
      quantityField({
        dimension: 'money',
        beside: '$',
        symbol: 'M',
        label: 'Saving in a year',
        hint: 'At the prices of today.',
        example: '150 $',
        zero: 'allowed',
        most: '1000000 $',
      }),
    ),
    ...worthFields,
  },
  example: { yearly: '150 $', life: '20 years', discount_rate: '3 %' },
  work: (values, rules) => {
    const worth = worthOf(values, rules);
    const factor = presentWorthFactor(worth);
    const figures: Record<string, Figure> = {};
    if (values.yearly)
      figures.present_worth = {
        label: 'Present worth',
        value: named(times(factor, values.yearly), 'PW', 'Present worth'),
      };
    figures.present_worth_factor = { label: 'Present worth of a dollar in each year', value: factor };
    figures.single_present_worth_factor = {
      label: 'Present worth of a dollar at the end',
      value: singlePresentWorthFactor(worth),
    };
    return {
      figures,
      cautions: values.yearly ? withSavings : [],
      remarks: assumed(values, worth),
    };
  },
});

export const fuelCost = calculation({
  name: 'fuel-cost',
  title: 'Cost of heat',
  question: 'What does a million Btu of heat in the rooms cost with this fuel?',
  fields: fuelFields,
  example: { fuel: 'propane', efficiency: '80 %', price_per_volume: '2.50 $/gal' },
  common: {
    price_per_volume: ['1.50 $/gal', '2.00 $/gal', '2.50 $/gal', '3.00 $/gal', '3.50 $/gal'],
    efficiency: ['65 %', '80 %', '90 %', '95 %'],
  },
  work: (values, rules) => {
    const { price, carbon, heatContent } = pricedFuel(values, rules);
    const figures: Record<string, Figure> = {
      heat_price: { label: 'Price of the heat in the rooms', value: heatPrice(price, values.efficiency) },
      fuel_price: { label: 'Price of the heat in the fuel', value: price },
    };
    if (heatContent) figures.heat_content = { label: 'Heat content of the fuel', value: heatContent };
    if (carbon) figures.carbon = { label: 'Carbon dioxide of the fuel, for its heat', value: carbon };
    return { figures, cautions: [], remarks: withoutCarbon(carbon) };
  },
});
