import { ringsAbout } from '../../calc/ways/flue-ring.ts';
import { lanes, lanesFrom } from '../../calc/ways/lanes-declaration.ts';
import { lanesPlan } from '../../drawings/lanes-plan.ts';
import { drawn } from '../calculator/drawn.ts';

export const drawing = drawn(lanes, (values, rules) => {
  const found = lanesFrom(values, rules);
  const on = {
    length: values.length,
    width: values.width,
    ends: values.ends,
    rings: ringsAbout(values.flues, values, rules),
  };
  return [
    {
      caption:
        'From above. Thick: where the hose comes for sure, with where its tape goes; dashed: where it may not come. Beside each lane, where its hose runs and the bags within its reach.',
      wide: lanesPlan(found, on, 'wide'),
      narrow: lanesPlan(found, on, 'narrow'),
    },
  ];
});
