import { ruleChoices } from '../../generated/rule-choices.ts';
import { choiceField, ifAny, lengthField, optional, quantityField, wordsField } from '../declare/field.ts';

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
  engineer_load: ifAny(
    quantityField({
      dimension: 'load',
      beside: 'lb/ft2',
      symbol: 'qe',
      label: 'Load an engineer gave in writing',
      hint: 'What this ceiling may carry in all, for a board without a published limit. A published one is never raised by it.',
      example: '1.6 lb/ft²',
      zero: 'refused',
      most: '100 lb/ft2',
    }),
  ),
  engineer: optional(
    wordsField(
      'Who gave it',
      'Name, and the day of the paper; without them it does not count.',
      'R. Alder, engineer, 2026-11-02',
    ),
  ),
} as const;
