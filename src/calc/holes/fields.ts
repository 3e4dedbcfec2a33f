import { flueKinds, listedField } from '../before/flue-kinds.ts';
import { choiceField, type Fields, lengthField, listField, optional } from '../declare/field.ts';
import { placeField, trussesMeasured } from './measured-field.ts';

const along = (label: string, hint: string, example: string) =>
  lengthField('x', label, hint, example, { zero: 'allowed', most: '200 ft' });

/** What stands through the roof; the job file and the layout calculation both ask it so. */
export const obstacleKinds = [
  'plumbing vent',
  'furnace flue',
  'other hot flue',
  'fan outlet',
  'skylight',
  'other',
] as const;

/** The ones that get hot: fill and patches stay clear of them. */
export const hotKinds: readonly (typeof obstacleKinds)[number][] = ['furnace flue', 'other hot flue'];

const obstacleFields = {
  what: choiceField('What it is', 'As seen from the roof.', obstacleKinds),
  along: along('Place along the roof', 'From the starting end to its middle.', '21 ft 6 in'),
  side: choiceField('Side', 'Back: the side where the holes go. Front: the other.', ['back', 'front']),
  from_peak: along('Distance from the peak', 'Down the slope, to its middle.', '3 ft'),
  across: lengthField('D', 'Width with its flashing', 'The widest across.', '10 in', { most: '10 ft' }),
  kind: optional(choiceField('Kind of flue', 'Of a hot flue alone, from its label.', flueKinds)),
  listed: listedField('Of a hot flue alone, from its label or instructions; it governs.'),
} as const;

/** Where members, seams and obstacles lie along the roof. */
export const alongFields = {
  truss_spacing: optional(lengthField('s', 'Truss spacing', 'Centre to centre.', '24 in', { most: '8 ft' })),
  first_truss: optional(
    along('First truss', 'From the end of the roof to the middle of the first one.', '0 in'),
  ),
  trusses_measured: trussesMeasured,
  seam_spacing: optional(
    lengthField('ss', 'Seam spacing', 'From one roof seam to the next.', '4 ft', { most: '60 ft' }),
  ),
  first_seam: optional(along('First seam', 'From the end of the roof.', '4 ft')),
  seams_measured: optional(
    listField(
      'Seams you measured',
      'Where they are not evenly spaced; in place of the spacing.',
      'a seam',
      placeField,
      200,
    ),
  ),
  obstacles: optional(
    listField(
      'Vents, flues and skylights',
      'Everything that comes through the roof.',
      'a vent, flue or skylight',
      obstacleFields,
    ),
  ),
} as const satisfies Fields;
