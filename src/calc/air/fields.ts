import {
  choiceField,
  countField,
  ifAny,
  listField,
  optional,
  quantityField,
  wordsField,
} from '../declare/field.ts';

export const roomKinds = ['bath', 'kitchen'] as const;
export type RoomKind = (typeof roomKinds)[number];

export const runningWays = ['on demand', 'all the time'] as const;
export type RunningWay = (typeof runningWays)[number];

export const windows = ['opens', 'none that opens'] as const;

/** The floor and the people, which set the whole-house rate. */
export const homeFields = {
  floor: quantityField({
    dimension: 'area',
    beside: 'ft2',
    symbol: 'Af',
    label: 'Floor area',
    hint: 'Inside, of all that is lived in.',
    example: '924 ft²',
    zero: 'refused',
    most: '10000 ft2',
  }),
  bedrooms: countField(
    'Bedrooms',
    'Counted as they are used; 0 for a home of one room, which counts as one.',
    '3',
    { most: 20 },
  ),
} as const;

const flowField = (symbol: string, label: string, hint: string, example: string) =>
  quantityField({
    dimension: 'air flow',
    beside: 'cfm',
    symbol,
    label,
    hint,
    example,
    zero: 'allowed',
    most: '2000 cfm',
  });

/** The rooms with wet or greasy air, and the fan that is there. */
export const roomsField = listField(
  'Baths and kitchens',
  'Each with the fan it has now; leave the list empty to size the whole-house fan alone.',
  'a bath or kitchen',
  {
    name: ifAny(wordsField('Name', 'As the household calls it.', 'hall bath')),
    room: choiceField('Room', 'What it is.', roomKinds),
    flow: optional(
      flowField(
        'qm',
        'Measured exhaust',
        'At the grille, to the outdoors; nothing counts as none.',
        '35 cfm',
      ),
    ),
    runs: optional(choiceField('Fan runs', 'Left empty: on demand.', runningWays)),
    window: optional(choiceField('Window', 'Left empty: none that opens.', windows)),
  },
  20,
);

export const existingField = ifAny(
  flowField(
    'qe',
    'Whole-house fan that is there',
    'Its measured flow when it runs all the time, if there is one.',
    '30 cfm',
  ),
);
