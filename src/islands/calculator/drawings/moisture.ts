import { moisture, screenFrom } from '../../../calc/moisture/declaration.ts';
import { moistureDrawing } from '../../../drawings/moisture.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(moisture, (values, rules) => {
  const screen = screenFrom(values, rules);
  return [
    {
      caption:
        'Across, to scale: the R of the layers, so that the temperature falls in one straight line. Where the dew point meets it, water gathers. A screen: it knows nothing of leaks.',
      wide: moistureDrawing(screen, 'wide'),
      narrow: moistureDrawing(screen, 'narrow'),
    },
  ];
});
