import { choiceField, optional, quantityField } from '../declare/field.ts';
import { materials } from './material.ts';

/** What describes the new fill; the job file and the fill calculation both ask it so. */
export const materialFields = {
  material: choiceField('Material', 'What is blown in.', materials),
  density: quantityField({
    dimension: 'density',
    beside: 'lb/ft3',
    symbol: 'ρ',
    label: 'Density wanted',
    hint: 'Weight of a cubic foot of the fill in place.',
    example: '1.5 lb/ft³',
    zero: 'refused',
    most: '8 lb/ft3',
  }),
  bag_weight: quantityField({
    dimension: 'weight of a piece',
    beside: 'lb/bag',
    symbol: 'wb',
    label: 'Net weight of a bag',
    hint: 'From the bag label.',
    example: '30 lb/bag',
    zero: 'refused',
    most: '200 lb/bag',
  }),
  label_r_per_inch: optional(
    quantityField({
      dimension: 'resistance per length',
      beside: 'h ft2 F/(Btu in)',
      symbol: 'ri',
      label: 'R per inch by the maker',
      hint: 'From the label or test data at this density; left empty, our estimate stands in.',
      example: '3.7 R per in',
      zero: 'refused',
      most: '10 R per in',
    }),
  ),
} as const;
