import { choiceField, listField, optional, quantityField } from '../declare/field.ts';
import { layerFields } from '../layers/fields.ts';

/** The materials whose permeance the rulebook holds. */
export const materials = [
  'gypsum board primed and painted',
  'vapour-retarder paint',
  'vinyl wall paper',
  'polyethylene film',
  'kraft facing',
  'wood-fibre board',
  'metal roof',
] as const;
export type PermeanceMaterial = (typeof materials)[number];

/** A thermometer's reading; 0 and less are allowed. */
export const readingField = (symbol: string, label: string, hint: string, example: string, most: string) =>
  quantityField({
    dimension: 'temperature reading',
    beside: 'F',
    symbol,
    label,
    hint,
    example,
    zero: 'allowed',
    negative: 'allowed',
    most,
  });

export const humidityField = (symbol: string, label: string, hint: string, example: string) =>
  quantityField({
    dimension: 'number',
    beside: 'percent',
    symbol,
    label,
    hint,
    example,
    zero: 'refused',
    most: '100 %',
  });

const moistureLayerFields = {
  ...layerFields,
  material: optional(
    choiceField(
      'Vapour passes it as',
      'Its permeance by the rulebook; where that is a range, the more open end is taken.',
      materials,
    ),
  ),
  permeance: optional(
    quantityField({
      dimension: 'permeance',
      beside: 'perm',
      symbol: 'M',
      label: 'Permeance',
      hint: 'By the maker, in place of the material. 0 lets no vapour through. Both left empty: it lets vapour through freely, as air and loose fill nearly do.',
      example: '1 perm',
      zero: 'allowed',
      most: '10000 perm',
    }),
  ),
} as const;

export const moistureFields = {
  indoors: readingField('ti', 'Temperature indoors', 'Of the room below the ceiling.', '70 F', '120 F'),
  indoor_humidity: humidityField(
    'φi',
    'Relative humidity indoors',
    'Measured in the middle of the room, over some days.',
    '40 %',
  ),
  outdoors: readingField(
    'to',
    'Temperature outdoors',
    'The mean of the period, not the coldest night.',
    '15 F',
    '120 F',
  ),
  outdoor_humidity: humidityField('φo', 'Relative humidity outdoors', 'The mean of the period.', '70 %'),
  layers: listField(
    'Layers',
    'From the room outwards, air films included.',
    'a layer',
    moistureLayerFields,
    20,
  ),
  period: quantityField({
    dimension: 'time',
    beside: 'day',
    symbol: 'n',
    label: 'Period',
    hint: 'How long it stays so.',
    example: '30 days',
    zero: 'allowed',
    most: '366 days',
  }),
} as const;
