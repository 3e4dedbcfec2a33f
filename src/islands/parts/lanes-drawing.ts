import { bagsFor } from '../../calc/fill/bags.ts';
import { ringsAbout } from '../../calc/ways/flue-ring.ts';
import { lanes, lanesFrom } from '../../calc/ways/lanes-declaration.ts';
import { lanesPlan } from '../../drawings/lanes-plan.ts';
import { minus } from '../../quantity/quantity.ts';
import { drawn } from '../calculator/drawn.ts';

export const drawing = drawn(lanes, (values, rules) => {
  const found = lanesFrom(values, rules);
  const on = {
    length: values.length,
    width: values.width,
    ends: values.ends,
    rings: ringsAbout(values.flues, values, rules),
    bags: found.lanes.map(
      ({ volume, leftVolume }) => bagsFor(minus(volume, leftVolume), values.density, values.bag_weight).bags,
    ),
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
