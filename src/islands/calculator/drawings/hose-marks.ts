import { hoseMarkings, marksFrom } from '../../../calc/marks/declaration.ts';
import { hoseCard } from '../../../drawings/hose-card.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(hoseMarkings, (values, rules) => {
  const found = marksFrom(values, rules);
  return [
    {
      caption: 'From above, the farthest push first.',
      wide: hoseCard(found, rules, 'wide'),
      narrow: hoseCard(found, rules, 'narrow'),
    },
  ];
});
