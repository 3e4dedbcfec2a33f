import { sectionFields } from '../cavity/fields.ts';
import { choiceField, lengthField, optional } from '../declare/field.ts';
import { materialFields } from '../fill/fields.ts';
import { trussesMeasured } from '../holes/measured-field.ts';
import { fluesField } from './flue-ring.ts';

const gableEnds = ['both ends', 'one end'] as const;
export type GableEnds = (typeof gableEnds)[number];

const liftedEdges = ['one edge', 'both edges'] as const;
export type LiftedEdges = (typeof liftedEdges)[number];

/** What lies in the cavity already, and how far the hose at hand goes; the ways in all ask it so. */
export const inCavityFields = {
  old_depth: optional(
    lengthField('do', 'Depth of the old insulation', 'As it lies now.', '2 in', {
      zero: 'or none',
      most: '6 ft',
    }),
  ),
  reach: optional(
    lengthField(
      'r',
      'Reach of the hose or tube',
      'How far the one at hand can be pushed, or how long a stiff tube is. Left empty, the usual reach of a flexible hose.',
      '30 ft',
    ),
  ),
} as const;

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
  tube: optional(
    lengthField('dt', 'Width of the tube', 'Outside. Left empty, the width of the hose.', '2 in', {
      most: '1 ft',
    }),
  ),
  ...inCavityFields,
  density: materialFields.density,
  bag_weight: materialFields.bag_weight,
  flues: optional(fluesField()),
} as const;
