import { ruleChoices } from '../../generated/rule-choices.ts';
import { choiceField, lengthField } from '../declare/field.ts';

/** The kinds of board that the rulebook tells apart. */
export const boards = ruleChoices['ceiling.board.kinds'];

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
