import { inUnit, larger, named, type Quantity, total } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { choiceField, listField } from '../declare/field.ts';
import { remarkText } from '../declare/remark.ts';
import { materials } from '../fill/material.ts';
import { clearSpace } from './clear-space.ts';
import { hotThingFields } from './hot-things.ts';

const largest = (all: readonly Quantity<'length'>[]): Quantity<'length'> | undefined =>
  all.length === 0 ? undefined : all.reduce((a, b) => larger(a, b));

/** A space that is kept open is never told as smaller than it is. */
const kept = { round: 'up' } as const;

export const clearSpaces = calculation({
  name: 'clear-spaces',
  title: 'Clear spaces',
  question: 'How much room stays open about each flue and light?',
  fields: {
    material: choiceField('Material', 'What is blown in.', materials),
    things: listField(
      'Flues and lights',
      'Everything hot that passes through the cavity or stands in the ceiling.',
      'a flue or light',
      hotThingFields,
    ),
  },
  example: {
    material: 'glass fibre',
    things: [
      { kind: 'listed double-wall vent or chimney', across: '6 in', depth: '12 in', cavity: '13 in' },
      { kind: 'light, not rated for contact', across: '7 in', depth: '9 in' },
    ],
  },
  work: ({ material, things }, rules) => {
    if (things.length === 0) {
      throw new EntriesClash({
        field: 'things',
        label: 'Flues and lights',
        found: 'an empty list',
        expected: 'one flue or light or more',
      });
    }
    const spaces = things.map((thing, place) => clearSpace(thing, material, rules, place));
    const figures: Record<string, Figure> = {
      taken_off: {
        label: 'Taken off the volume to fill',
        value: named(total(spaces.map(({ takenOff }) => takenOff)), 'V', 'Taken off the volume to fill'),
      },
      by_rings: {
        label: 'Of it, the rings alone',
        value: named(total(spaces.map(({ ringVolume }) => ringVolume)), 'Vr', 'The rings alone'),
      },
    };
    const ring = largest(spaces.map((space) => space.ring));
    if (ring) figures.widest_ring = { label: 'Widest ring', value: inUnit(ring, 'in'), format: kept };
    const shield = largest(spaces.flatMap((space) => (space.shield ? [space.shield] : [])));
    if (shield)
      figures.highest_shield = { label: 'Highest shield', value: inUnit(shield, 'in'), format: kept };
    return {
      figures,
      tables: {
        spaces: {
          title: 'Spaces kept open',
          columns: {
            thing: 'Flue or light',
            ring: 'Ring',
            from: 'Distance from',
            across: 'Open space, width',
            shield: 'Shield, height',
            above: 'Fill above it',
            taken_off: 'Taken off',
          },
          rows: spaces.map((space, place) => ({
            thing: `${place + 1}: ${things[place]?.kind}`,
            ring: space.ring,
            from: space.from,
            across: space.across ?? 'none',
            shield: space.toTheRoof ? 'to the roof' : (space.shield ?? 'none'),
            above: space.mayLieAbove ? 'may lie' : 'none',
            taken_off: space.takenOff,
          })),
          format: { ring: kept, across: kept, shield: kept, taken_off: { figures: 3 } },
        },
      },
      cautions: [...new Set(spaces.flatMap(({ cautions }) => cautions))],
      // What holds for several is said once.
      remarks: [
        ...new Map(
          spaces.flatMap(({ remarks }) => remarks).map((remark) => [remarkText(remark), remark]),
        ).values(),
      ],
    };
  },
});
