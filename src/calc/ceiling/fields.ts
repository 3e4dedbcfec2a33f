import { choiceField, lengthField } from '../declare/field.ts';

export const boards = [
  'gypsum 1/2 in',
  'gypsum 5/8 in',
  'gypsum 3/8 in',
  'gypsum 5/16 in',
  'wood-fibre panel',
  'other or not known',
] as const;

/** What describes the ceiling; the job file and the ceiling calculation both ask it so. */
export const ceilingFields = {
  board: choiceField('Ceiling board', 'Look at an edge, at a fan or light opening, and measure it.', boards),
  framing: lengthField(
    'sc',
    'Framing of the ceiling',
    'Centre to centre of what the board hangs from.',
    '16 in',
    { most: '8 ft' },
  ),
} as const;
