import { calculation, type Figure } from '../declare/calculation.ts';
import { quantityField } from '../declare/field.ts';
import { bagsFor, bagsToLoad } from './bags.ts';
import { fillWords, unusualBag } from './cautions.ts';
import { highEnd, lowEnd } from './ends.ts';
import { materialFields } from './fields.ts';
import { resistancePerInch } from './resistance.ts';

export const fill = calculation({
  name: 'fill',
  title: 'Fill',
  question: 'How many bags does this space take, and what R does an inch of it give?',
  fields: {
    volume: quantityField({
      dimension: 'volume',
      symbol: 'V',
      label: 'Volume to fill',
      hint: 'Old insulation, framing and the spaces kept open already taken off.',
      example: '130 ft³',
      zero: 'allowed',
      most: '20000 ft3',
    }),
    ...materialFields,
  },
  example: { volume: '130 ft³', material: 'glass fibre', density: '1.5 lb/ft³', bag_weight: '30 lb/bag' },
  common: {
    density: ['1 lb/ft³', '1.25 lb/ft³', '1.5 lb/ft³', '1.75 lb/ft³', '2 lb/ft³'],
    volume: ['65 ft³', '100 ft³', '130 ft³', '160 ft³'],
  },
  work: ({ volume, material, density, bag_weight, label_r_per_inch }, rules) => {
    const { weight, bags } = bagsFor(volume, density, bag_weight);
    const resistance = resistancePerInch(material, density, label_r_per_inch, rules);
    const figures: Record<string, Figure> = {
      bags: { label: 'Bags', value: bags, format: { figures: 3 } },
      weight: { label: 'Weight of the new fill', value: weight },
      bags_to_load: { label: 'Bags to load, with the usual spread', value: bagsToLoad(bags, rules) },
    };
    if (resistance) {
      figures.resistance_per_inch = {
        label: `R per inch, from ${resistance.from}`,
        value: resistance.value,
        format: { figures: 3 },
      };
      figures.resistance_low = {
        label: 'R per inch, at the least',
        value: resistance.low,
        format: lowEnd,
      };
      figures.resistance_high = {
        label: 'R per inch, at the most',
        value: resistance.high,
        format: highEnd,
      };
    }
    const { cautions, remarks } = fillWords(material, density, resistance, rules);
    return { figures, cautions, remarks: [...remarks, ...unusualBag(material, bag_weight, rules)] };
  },
});
