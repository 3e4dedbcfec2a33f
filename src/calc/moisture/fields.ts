import { choiceField, listField, optional, quantityField, wordsField } from '../declare/field.ts';

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
  what: optional(wordsField('What it is', 'Its name, for the table.', 'ceiling board')),
  resistance: quantityField({
    dimension: 'thermal resistance',
    beside: 'h ft2 F/Btu',
    symbol: 'R',
    label: 'R of the layer',
    hint: 'Its R per inch times its thickness; 0 for sheet metal, film or paint.',
    example: '0.45 h ft² F/Btu',
    zero: 'allowed',
    most: '500 h ft2 F/Btu',
  }),
  material: optional(
    choiceField('Vapour passes it as', 'By the rulebook, at the more open end of a range.', materials),
  ),
  permeance: optional(
    quantityField({
      dimension: 'permeance',
      beside: 'perm',
      symbol: 'M',
      label: 'Permeance',
      hint: 'In place of that, by the maker; 0 lets none through. Both empty: vapour passes freely, as through air and, nearly, loose fill.',
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
  layers: listField(
    'Layers',
    'From the room outwards, air films included.',
    'a layer',
    moistureLayerFields,
    20,
  ),
} as const;
