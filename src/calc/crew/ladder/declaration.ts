import { calculation, EntriesClash } from '../../declare/calculation.ts';
import { lengthField, optional } from '../../declare/field.ts';
import { ladderStand } from './stand.ts';

export const ladder = calculation({
  name: 'ladder',
  title: 'Ladder',
  question: 'How far out does the foot of the ladder stand, and how long a ladder do I need?',
  fields: {
    height: optional(
      lengthField(
        'h',
        'Height of the edge',
        'From the ground at the foot to where the ladder leans.',
        '9 ft',
        {
          most: '60 ft',
        },
      ),
    ),
    working: optional(
      lengthField(
        'W',
        'Working length',
        'Along the ladder, foot to top support; in place of the height.',
        '10 ft',
        { most: '60 ft' },
      ),
    ),
  },
  example: { height: '9 ft' },
  work: ({ height, working }, rules) => {
    const lean = height && !working ? { height } : working && !height ? { working } : undefined;
    if (!lean)
      throw new EntriesClash({
        field: 'height',
        label: 'Height of the edge',
        found: height ? 'a height beside a working length' : 'neither a height nor a working length',
        expected: 'one of the two',
      });
    const stand = ladderStand(lean, rules);
    return {
      figures: {
        foot: { label: 'Foot of the ladder out', value: stand.foot, format: { tape: 8 } },
        needed: { label: 'Ladder needed, in whole feet', value: stand.needed, format: { tape: 8 } },
        in_use: { label: 'Foot to top of the rails', value: stand.inUse, format: { tape: 8 } },
        working: { label: 'Working length', value: stand.working, format: { tape: 8 } },
        height: { label: 'Height of the edge', value: stand.height, format: { tape: 8 } },
        angle: { label: 'Angle with the ground', value: stand.angle, format: { figures: 3 } },
      },
      cautions: ['caution.ladder.set', 'caution.roof.falls', 'caution.roof.electric'],
      remarks: [
        'The sections of an extension ladder overlap: what counts is its length drawn out, as its label gives it.',
      ],
    };
  },
});
