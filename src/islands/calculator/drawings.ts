import type { Calculation } from '../../calc/declare/calculation.ts';
import type { Fields, Values } from '../../calc/declare/field.ts';
import { hoseMarkings, marksFrom } from '../../calc/marks/declaration.ts';
import { moisture, screenFrom } from '../../calc/moisture/declaration.ts';
import { patchLayers } from '../../calc/patch/layers.ts';
import { patchLayersCalculation } from '../../calc/patch/layers-declaration.ts';
import { hoseCard } from '../../drawings/hose-card.ts';
import { moistureDrawing } from '../../drawings/moisture.ts';
import { patchLayersDrawing } from '../../drawings/patch-layers.ts';
import { screwOrderDrawing } from '../../drawings/screw-order.ts';
import type { Drawing } from '../../drawings/svg.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

/** A drawing beside an answer, in both layouts, with the words under it. */
export interface DrawnAnswer {
  readonly caption: string;
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

/** How a calculation's entries, once they are read and worked out, are drawn. */
export interface Drawn {
  readonly name: string;
  // biome-ignore lint/suspicious/noExplicitAny: a list over calculations with different fields has no narrower type
  readonly draw: (values: any, rules: Rulebook) => readonly DrawnAnswer[];
}

/** Joins a calculation to its drawings: the values are those of its own fields. A pattern's id must be its own on the page. */
export const drawn = <F extends Fields>(
  of: Calculation<F>,
  draw: (values: Values<F>, rules: Rulebook) => readonly DrawnAnswer[],
): Drawn => ({ name: of.name, draw });

/** Every calculation that is drawn. One more is a line here; calculations themselves know nothing of drawings. */
const all: readonly Drawn[] = [
  drawn(hoseMarkings, (values, rules) => {
    const found = marksFrom(values, rules);
    return [
      {
        caption:
          'The card of this opening, from above: the pushes numbered in the order of the work, the farthest first.',
        wide: hoseCard(found, rules, 'wide'),
        narrow: hoseCard(found, rules, 'narrow'),
      },
    ];
  }),
  drawn(moisture, (values, rules) => {
    const screen = screenFrom(values, rules);
    return [
      {
        caption:
          'Across, to scale: the R of the layers, so that the temperature falls in one straight line. Where the dew point meets it, water gathers. A screen: it knows nothing of leaks.',
        wide: moistureDrawing(screen, 'wide'),
        narrow: moistureDrawing(screen, 'narrow'),
      },
    ];
  }),
  drawn(patchLayersCalculation, ({ diameter }, rules) => {
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
  }),
];

/** Which drawings stand beside a calculation's answer? None for most; the values must be such that it could be worked out. */
export const drawingsFor = (name: string, values: unknown, rules: Rulebook): readonly DrawnAnswer[] =>
  all.find((each) => each.name === name)?.draw(values, rules) ?? [];
