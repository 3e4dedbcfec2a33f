import { listedField } from '../calc/before/flue-kinds.ts';
import { lightKinds } from '../calc/before/hot-things.ts';
import { sectionFields } from '../calc/cavity/fields.ts';
import { ceilingFields } from '../calc/ceiling/fields.ts';
import {
  choiceField,
  countField,
  groupField,
  ifAny,
  lengthField,
  listField,
  optional,
  quantityField,
  type Values,
  wordsField,
  yearField,
} from '../calc/declare/field.ts';
import { materialFields } from '../calc/fill/fields.ts';
import { alongFields } from '../calc/holes/fields.ts';
import { bagsBlown, openingState } from '../calc/log/declaration.ts';
import { ways } from '../calc/ways/compare.ts';
import { mostBays } from './most-bays.ts';
import { partFieldGroups } from './part-fields.ts';

/** A recessed light and where it stands. */
const lightFields = {
  kind: choiceField('What it is', 'From the label inside the can.', lightKinds),
  along: lengthField('x', 'Place along the roof', 'From the starting end to its middle.', '12 ft', {
    zero: 'allowed',
  }),
  side: choiceField('Side', 'Back: the side where the holes go. Front: the other.', ['back', 'front']),
  from_eave: lengthField('yl', 'Distance from the eave', 'Of that side, to its middle.', '4 ft', {
    zero: 'allowed',
    most: '40 ft',
  }),
  across: lengthField('D', 'Width', 'The widest across.', '7 in', { most: '10 ft' }),
  listed: listedField(),
} as const;

const cameWith = optional(wordsField('Entries', 'Their names, with spaces between.', 'none'));

/** What tells of one home alone, group by group. */
const OF_EXAMPLE = {
  survey: cameWith,
  machine: cameWith,
  line: cameWith,
  weather: cameWith,
  log: cameWith,
  receipt: cameWith,
} as const;

const LONGEST_ROOF = '200 ft';
/** Of all ways in the lifted edge makes the most openings: a bay between two trusses. */
const MOST_BAYS = mostBays(LONGEST_ROOF);
/** Back and front. */
const SIDES = 2;

/** Everything a job file holds, declared once: the planner's form, the file's reader and its JSON Schema are made from it. */
export const jobFields = {
  name: wordsField('Job', 'What you call it: a street, a number.', '14 Larkspur Lane'),
  agency: ifAny(wordsField('Agency', 'Whose job it is.', 'Harrow Valley Home Repair')),
  crew: ifAny(wordsField('Crew', 'Who does it.', 'Blue crew')),
  home: groupField('The home', 'From the data plate and the tape.', {
    built: yearField('Year built', 'From the data plate near the electrical panel.', '1979'),
    sections: choiceField(
      'Sections',
      'A double-section home is worked one section at a time, with a row of holes on each.',
      ['single', 'double'],
    ),
    length: lengthField('L', 'Length of the roof', 'Along the ridge, from end to end.', '66 ft', {
      most: LONGEST_ROOF,
    }),
  }),
  cavity: groupField('The cavity', 'Measured through a fan, a light or the gable.', sectionFields),
  roof: groupField(
    'The roof, from above',
    'Measured along the ridge from the starting end: the one on your right as you face the ridge from the back side.',
    {
      cover: choiceField('Roof cover', 'What the rain falls on.', ['metal', 'shingles', 'membrane', 'other']),
      ...alongFields,
    },
  ),
  ceiling: groupField('The ceiling', 'What has to carry the fill.', {
    ...ceilingFields,
    lights: optional(
      listField('Recessed lights', 'Each that stands in the cavity.', 'a recessed light', lightFields),
    ),
  }),
  old: groupField('Old insulation', 'What lies in the cavity now.', {
    depth: ifAny(
      lengthField('do', 'Depth', 'As it lies on the ceiling; nothing where there is none.', '2 in', {
        zero: 'or none',
        most: '6 ft',
      }),
    ),
    density: optional(
      quantityField({
        dimension: 'density',
        beside: 'lb/ft3',
        symbol: 'ρo',
        label: 'Density',
        hint: 'Left empty, the heavier of the lightest published batts.',
        example: '0.5 lb/ft³',
        zero: 'refused',
        most: '8 lb/ft3',
      }),
    ),
  }),
  fill: groupField('The new fill', 'From the bag label.', materialFields),
  log: groupField('Fill log', 'Kept while the bags go in.', {
    on_truck: optional(
      quantityField({
        dimension: 'pieces',
        beside: 'bag',
        symbol: 'n load',
        label: 'Bags on the truck at the start',
        hint: 'Left empty, as many as the plan loads.',
        example: '40 bags',
        zero: 'allowed',
        most: '2000 bags',
      }),
    ),
    openings: listField(
      'Bags blown',
      'Opening by opening, in quarters of a bag.',
      'an opening',
      {
        way: optional(choiceField('Way in', 'The way that was taken then. Left empty, roof holes.', ways)),
        side: choiceField('Side', 'The row, section or edge that the opening is in.', ['back', 'front']),
        opening: countField('Opening', 'Its number in the plan.', '1', {
          least: 1,
          most: MOST_BAYS,
        }),
        bags: bagsBlown,
        state: openingState,
        not_filled: ifAny(
          choiceField('Not filled', 'Why nothing more goes in here.', [
            'neither hose nor tube goes in',
            'filled from another opening',
            'left empty on purpose',
          ]),
        ),
      },
      SIDES * MOST_BAYS,
    ),
  }),
  ...partFieldGroups,
  of_example: groupField(
    'Of the example’s home',
    'Which entries came with the example job and were not entered since; none, where it was begun with nothing filled in.',
    OF_EXAMPLE,
  ),
} as const;

/** A group of a job's entries, or one of its words. */
export type JobFieldGroup = keyof typeof jobFields;

export type JobValues = Values<typeof jobFields>;
