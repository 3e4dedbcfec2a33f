import { figuresApart } from '../../quantity/apart.ts';
import { calculation } from '../declare/calculation.ts';
import { choiceField, ifAny, quantityField } from '../declare/field.ts';
import { materialFields } from '../fill/fields.ts';
import { openingSoFar, openingStates } from './opening.ts';

export const bagsBlown = quantityField({
  dimension: 'pieces',
  beside: 'bag',
  symbol: 'nb',
  label: 'Bags blown so far',
  hint: 'Through this opening, in quarters of a bag.',
  example: '3.25 bags',
  zero: 'allowed',
  most: '500 bags',
});

export const openingState = choiceField(
  'The opening',
  'Full when the fill stands at the opening in every direction and takes no more.',
  openingStates,
);

export const openingLog = calculation({
  name: 'opening-log',
  title: 'Opening, light or heavy',
  question: 'Is this opening light, heavy or as planned, after so many bags?',
  fields: {
    volume: quantityField({
      dimension: 'volume',
      symbol: 'V',
      label: 'Volume of the opening’s stretch',
      hint: 'As the plan gives it.',
      example: '140 ft³',
      zero: 'refused',
      most: '20000 ft3',
    }),
    density: materialFields.density,
    bag_weight: materialFields.bag_weight,
    bags: bagsBlown,
    state: openingState,
    highest_density: ifAny(
      quantityField({
        dimension: 'density',
        beside: 'lb/ft3',
        symbol: 'ρ most',
        label: 'Highest density the ceiling carries',
        hint: 'As the ceiling load gives it.',
        example: '1.94 lb/ft³',
        zero: 'refused',
        most: '8 lb/ft3',
      }),
    ),
  },
  example: {
    volume: '140 ft³',
    density: '1.5 lb/ft³',
    bag_weight: '30 lb/bag',
    bags: '5.75 bags',
    state: 'full',
  },
  work: ({ volume, density, bag_weight, bags, state, highest_density }, rules) => {
    const soFar = openingSoFar(
      { volume, density, bagWeight: bag_weight, highestDensity: highest_density },
      bags,
      state,
      rules,
    );
    return {
      figures: {
        verdict: { label: 'The opening', value: soFar.verdict },
        density: {
          label: 'Density reached',
          value: soFar.density,
          format: { figures: figuresApart(soFar.density, highest_density ? [highest_density] : [], 3) },
        },
        planned: { label: 'Bags planned', value: soFar.planned, format: { figures: 3 } },
        left: {
          label: state === 'full' ? 'Bags short of the plan' : 'Bags the plan still asks for',
          value: soFar.left,
          format: { figures: 3 },
        },
        weight: { label: 'Weight blown so far', value: soFar.weight },
      },
      cautions: soFar.cautions,
      remarks: [],
    };
  },
});
