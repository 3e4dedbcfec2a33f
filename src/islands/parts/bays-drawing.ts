import { bays, baysFrom } from '../../calc/ways/bays-declaration.ts';
import { ringsAbout } from '../../calc/ways/flue-ring.ts';
import { baysPlan } from '../../drawings/bays-plan.ts';
import { drawn } from '../calculator/drawn.ts';

export const drawing = drawn(bays, (values, rules) => {
  const found = baysFrom(values, rules);
  const on = { length: values.length, width: values.width, rings: ringsAbout(values.flues, values, rules) };
  return [
    {
      caption:
        'From above. Dashed across: trusses. Thick: the tube, as far as it goes; dashed on from it: where it is wanted and does not come. Crossed: a bay that it does not go into.',
      wide: baysPlan(found, on, 'wide'),
      narrow: baysPlan(found, on, 'narrow'),
    },
  ];
});
