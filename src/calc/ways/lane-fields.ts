import { sectionFields } from '../cavity/fields.ts';
import { choiceField, lengthField, optional } from '../declare/field.ts';
import { materialFields } from '../fill/fields.ts';
import { fluesField } from './flue-ring.ts';
import { inCavityFields } from './in-cavity-fields.ts';

const gableEnds = ['both ends', 'one end'] as const;
export type GableEnds = (typeof gableEnds)[number];

export const gableLaneFields = {
  length: lengthField('L', 'Length of the roof', 'Along the ridge, from end to end.', '66 ft'),
  ends: choiceField('Ends that are opened', 'Gable ends a hose can go in through.', gableEnds),
  ...sectionFields,
  spread: lengthField(
    'sd',
    'Spread to each side',
    'How far the fill spreads to each side of the hose; try it with the machine, hose and fill at hand.',
    '2 ft',
    { most: '20 ft' },
  ),
  ...inCavityFields,
  truss_spacing: optional(
    lengthField('s', 'Truss spacing', 'Centre to centre; the hose has to pass between the chords.', '24 in', {
      most: '8 ft',
    }),
  ),
  density: materialFields.density,
  bag_weight: materialFields.bag_weight,
  flues: optional(fluesField()),
} as const;
