import { sectionFields } from '../cavity/fields.ts';
import { choiceField, lengthField, optional } from '../declare/field.ts';
import { materialFields } from '../fill/fields.ts';
import { trussesMeasured } from '../holes/measured-field.ts';
import { fluesField } from './flue-ring.ts';
import { inCavityFields, tubeField } from './in-cavity-fields.ts';

const liftedEdges = ['one edge', 'both edges'] as const;
export type LiftedEdges = (typeof liftedEdges)[number];

export const edgeBayFields = {
  length: lengthField('L', 'Length of the roof', 'Along the ridge, from end to end.', '66 ft'),
  truss_spacing: optional(lengthField('s', 'Truss spacing', 'Centre to centre.', '24 in', { most: '8 ft' })),
  first_truss: optional(
    lengthField(
      'x1',
      'First truss',
      'From the end of the roof to the middle of the first one. Left empty, one stands at the end.',
      '0 in',
      { zero: 'allowed', most: '20 ft' },
    ),
  ),
  trusses_measured: trussesMeasured,
  edges: choiceField('Edges that are lifted', 'One long side of the roof, or both.', liftedEdges),
  ...sectionFields,
  tube: tubeField,
  ...inCavityFields,
  density: materialFields.density,
  bag_weight: materialFields.bag_weight,
  flues: optional(fluesField()),
} as const;
