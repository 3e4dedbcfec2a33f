import { calculation, type Figure } from '../../declare/calculation.ts';
import { choiceField, countField, lengthField, optional } from '../../declare/field.ts';
import { fallProtection, roofingWork } from './protection.ts';

const MOST_ON_ONE_ANCHOR = 10;

export const fall = calculation({
  name: 'fall-protection',
  title: 'Fall protection',
  question: 'Is fall protection due on this roof, and which kinds do the federal rules admit?',
  fields: {
    height: lengthField('h', 'Height of the edge', 'Above the ground or the next lower level.', '9 ft', {
      zero: 'allowed',
      most: '100 ft',
    }),
    rise: lengthField('r', 'Rise of the roof in a foot of run', 'With a level and a tape.', '3 in', {
      zero: 'allowed',
      most: '6 ft',
    }),
    width: lengthField(
      'w',
      'Width of the roof',
      'The lesser of its two main sizes, seen from above.',
      '13 ft 10 in',
    ),
    roofing_work: choiceField(
      'Is it roofing work under the fall rules?',
      'Putting on and taking off roofing, with the insulation that belongs to it; if in doubt, say not sure.',
      roofingWork,
    ),
    people: optional(
      countField('People on one anchor', 'How many tie to the same anchor; left empty, one.', '1', {
        least: 1,
        most: MOST_ON_ONE_ANCHOR,
      }),
    ),
  },
  example: { height: '9 ft', rise: '3 in', width: '13 ft 10 in', roofing_work: 'no or not sure' },
  work: ({ height, rise, width, roofing_work, people = 1 }, rules) => {
    const found = fallProtection({ height, rise, width, roofingWork: roofing_work, people }, rules);
    const figures: Record<string, Figure> = {
      verdict: { label: 'Fall protection is', value: found.due ? 'required' : 'not required by the height' },
      slope: { label: 'The roof is', value: found.slope },
    };
    if (!found.due)
      return {
        figures,
        cautions: found.cautions,
        remarks: [
          'A lower fall can still cripple: protect the edge anyway where you can. Holes, ladders and dangerous things below have rules of their own.',
        ],
      };
    const rail = rules.range('safety.fall.guardrail-height');
    return {
      figures: {
        ...figures,
        systems: { label: 'What serves', value: found.systems.join('; ') },
        anchor: { label: 'What one anchor carries, or more', value: found.anchor },
        free_fall: { label: 'Free fall at most', value: rules.value('safety.fall.free-fall') },
        rail_lowest: { label: 'Top of a guardrail at the lowest', value: rail.low },
        rail_highest: { label: 'Top of a guardrail at the highest', value: rail.high },
        rail_load: {
          label: 'Push that a guardrail withstands',
          value: rules.value('safety.fall.guardrail-load'),
        },
      },
      cautions: found.cautions,
      remarks: [],
    };
  },
});
