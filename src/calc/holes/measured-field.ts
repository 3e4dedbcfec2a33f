import { lengthField, listField, optional } from '../declare/field.ts';

/** A place measured along the roof. */
export const placeField = {
  at: lengthField('x', 'Place', 'From the starting end of the roof.', '8 ft 2 in', {
    zero: 'allowed',
    most: '200 ft',
  }),
} as const;

/** The trusses one by one; every calculation that asks where they stand takes them so. */
export const trussesMeasured = optional(
  listField(
    'Trusses you measured',
    'Where they are not evenly spaced; in place of the spacing.',
    'a truss',
    placeField,
    200,
  ),
);
