import { hoseMarkings, marksFrom } from '../../../calc/marks/declaration.ts';
import { hosePlan } from '../../../drawings/hose-plan.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(hoseMarkings, (values, rules) => {
  const found = marksFrom(values, rules);
  return [
    {
      caption: 'From above, the pushes numbered from the farthest on; the table below has the mark of each.',
      wide: hosePlan(found, rules, 'wide'),
      narrow: hosePlan(found, rules, 'narrow'),
    },
  ];
});
