import { hoseMarkings, marksFrom } from '../../../calc/marks/declaration.ts';
import { hoseCard } from '../../../drawings/hose-card.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(hoseMarkings, (values, rules) => {
  const found = marksFrom(values, rules);
  return [
    {
      caption:
        'The card of this opening, from above: the pushes numbered in the order of the work, the farthest first.',
      wide: hoseCard(found, rules, 'wide'),
      narrow: hoseCard(found, rules, 'narrow'),
    },
  ];
});
