import { choiceField, lengthField, optional, type Values } from '../declare/field.ts';
import { flueKinds, listedField } from './flue-kinds.ts';

export const lightKinds = [
  'light, not rated for contact',
  'light, rated for contact and airtight',
  'light, rated for contact, leakage not known',
] as const;

export const hotThings = [...flueKinds, ...lightKinds] as const;
export type HotThingKind = (typeof hotThings)[number];

/** What is asked of one flue or light. */
export const hotThingFields = {
  kind: choiceField('What it is', 'From its label; a flue by the appliance it serves.', hotThings),
  across: lengthField('D', 'Outside diameter or width', 'Of the flue, chimney or light itself.', '5 in', {
    most: '10 ft',
  }),
  other_side: optional(
    lengthField('Do', 'Its other side', 'Only where it is rectangular; left empty, it is round.', '16 in', {
      most: '10 ft',
    }),
  ),
  depth: lengthField('d', 'Depth of the fill there', 'As it will lie, old and new together.', '10 in', {
    zero: 'allowed',
    most: '6 ft',
  }),
  old_depth: optional(
    lengthField('do', 'Of it, old insulation', 'What lies there now and stays.', '2 in', {
      zero: 'or none',
      most: '6 ft',
    }),
  ),
  cavity: optional(
    lengthField('dc', 'Height of the cavity there', 'From the ceiling to the roof.', '12 in', {
      most: '6 ft',
    }),
  ),
  listed: listedField(),
} as const;

export type HotThing = Values<typeof hotThingFields>;
