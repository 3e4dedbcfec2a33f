import { lengthField, optional } from '../declare/field.ts';

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
      'How far it goes in, at the most. Left empty, the usual reach of a hose.',
      '30 ft',
    ),
  ),
} as const;

/** A stiff tube fed in under a lifted edge. */
export const tubeField = optional(
  lengthField(
    'dt',
    'Width of the tube',
    'Under a lifted edge alone, outside. Left empty, the width of the hose.',
    '2 in',
    {
      most: '1 ft',
    },
  ),
);
