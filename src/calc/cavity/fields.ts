import { choiceField, lengthField, listField, optional } from '../declare/field.ts';

export const shapes = ['two-slope', 'bowed', 'one-slope', 'level', 'measured'] as const;
export type Shape = (typeof shapes)[number];

/** What describes the cavity's section; the job file and the cavity calculation both ask it so. */
export const sectionFields = {
  shape: choiceField(
    'Shape of the roof',
    'Two-slope: two straight slopes. Bowed: one arc from eave to eave. One-slope: one section of a double-section home. Level: one depth. Measured: depths you took.',
    shapes,
  ),
  width: lengthField(
    'W',
    'Width across the cavity',
    'Inside, from eave to eave, or from eave to marriage line.',
    '13 ft 10 in',
    {
      most: '40 ft',
    },
  ),
  eave: optional(
    lengthField('de', 'Depth at the eave', 'From ceiling to roof, at the outer wall.', '3 in', {
      zero: 'allowed',
      most: '6 ft',
    }),
  ),
  ridge: optional(
    lengthField(
      'dr',
      'Depth at the ridge',
      'From ceiling to roof, at the highest place. Not needed for a level or a measured cavity.',
      '15 in',
      {
        zero: 'allowed',
        most: '6 ft',
      },
    ),
  ),
  points: optional(
    listField(
      'Depths you measured',
      'For a measured cavity: from one eave to the other, both ends included.',
      'a depth',
      {
        from_eave: lengthField(
          'x',
          'Distance from the eave',
          'Across the home, from the eave on the back side.',
          '4 ft',
          {
            zero: 'allowed',
            most: '40 ft',
          },
        ),
        depth: lengthField('d', 'Depth there', 'From ceiling to roof.', '10 in', {
          zero: 'allowed',
          most: '6 ft',
        }),
      },
    ),
  ),
} as const;
