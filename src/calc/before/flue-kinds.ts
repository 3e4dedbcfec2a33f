import { lengthField, optional } from '../declare/field.ts';

export const flueKinds = [
  'listed double-wall vent or chimney',
  'connector, listed gas with draft hood',
  'connector, unlisted gas with draft hood',
  'connector, gas without draft hood',
  'connector, oil',
  'connector, solid fuel',
  'masonry chimney',
] as const;
export type FlueKind = (typeof flueKinds)[number];

/** The clearance that a flue or light is listed with. */
export const listedField = (hint = 'From its label or instructions; it governs a flue.') =>
  optional(lengthField('cl', 'Clearance of its listing', hint, '1 in', { zero: 'allowed', most: '6 ft' }));
