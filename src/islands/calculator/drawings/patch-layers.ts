import { patchLayers } from '../../../calc/patch/layers.ts';
import { patchLayersCalculation } from '../../../calc/patch/layers-declaration.ts';
import { patchLayersDrawing } from '../../../drawings/patch-layers.ts';
import { screwOrderDrawing } from '../../../drawings/screw-order.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(patchLayersCalculation, ({ diameter }, rules) => {
  const layers = patchLayers(diameter, rules);
  return [
    {
      caption: 'Dashed: what lies under the membrane. The lip of the cap is as wide as its maker has it.',
      wide: patchLayersDrawing(layers, 'wide', 'patch-layers-wide'),
      narrow: patchLayersDrawing(layers, 'narrow', 'patch-layers-narrow'),
    },
    {
      caption:
        'Drive the four large ones first. Then each run from the middles to its corner, its two sides in turn, so that the metal does not wrinkle.',
      wide: screwOrderDrawing(layers, 'wide'),
      narrow: screwOrderDrawing(layers, 'narrow'),
    },
  ];
});
