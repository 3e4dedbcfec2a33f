import { type Quantity, times } from '../../quantity/quantity.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { lengthField, optional, quantityField, type Values, wordsField } from '../declare/field.ts';
import { layerResistance } from './layers.ts';

/** What describes a layer to whatever asks for its R. */
export const layerFields = {
  what: optional(wordsField('What it is', 'Its name, for the table.', 'ceiling board')),
  resistance: optional(
    quantityField({
      dimension: 'thermal resistance',
      beside: 'h ft2 F/Btu',
      symbol: 'R',
      label: 'R of the layer',
      hint: 'Of an air film, an air space, or a layer whose R is known.',
      example: '0.45 h ft2 F/Btu',
      zero: 'allowed',
      most: '500 h ft2 F/Btu',
    }),
  ),
  thickness: optional(
    lengthField('t', 'Thickness', 'With a conductivity or an R per inch, in place of an R.', '1/2 in', {
      zero: 'allowed',
      most: '6 ft',
    }),
  ),
  conductivity: optional(
    quantityField({
      dimension: 'thermal conductivity',
      symbol: 'k',
      label: 'Conductivity',
      hint: 'Of the material.',
      example: '0.16 W/(m K)',
      zero: 'refused',
      most: '500 W/(m K)',
    }),
  ),
  per_inch: optional(
    quantityField({
      dimension: 'resistance per length',
      beside: 'h ft2 F/(Btu in)',
      symbol: 'r',
      label: 'R per inch',
      hint: 'In place of a conductivity.',
      example: '3.5 R per in',
      zero: 'allowed',
      most: '20 R per in',
    }),
  ),
} as const;

export type LayerValues = Values<typeof layerFields>;

/** The R of one layer as it was entered. @throws EntriesClash unless it is given in exactly one way. */
export function resistanceGiven(layer: LayerValues, way: string): Quantity<'thermal resistance'> {
  const { resistance, thickness, conductivity, per_inch } = layer;
  if (resistance && !thickness && !conductivity && !per_inch) return resistance;
  if (thickness && conductivity && !resistance && !per_inch) return layerResistance(thickness, conductivity);
  if (thickness && per_inch && !resistance && !conductivity) return times(thickness, per_inch);
  const found = Object.entries({
    'an R': resistance,
    'a thickness': thickness,
    'a conductivity': conductivity,
    'an R per inch': per_inch,
  }).flatMap(([name, value]) => (value ? [name] : []));
  throw new EntriesClash({
    field: `${way}.resistance`,
    label: 'R of the layer',
    found: found.length === 0 ? 'nothing' : found.join(' and '),
    expected: 'an R alone, or a thickness with a conductivity or with an R per inch',
  });
}
