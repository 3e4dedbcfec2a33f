import { quantityField } from '../declare/field.ts';

/** A weight read off the scales. */
export const weightField = (symbol: string, label: string, hint: string, example: string, most: string) =>
  quantityField({
    dimension: 'weight',
    beside: 'lb',
    symbol,
    label,
    hint,
    example,
    zero: 'refused',
    most,
  });
