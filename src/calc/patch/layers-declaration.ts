import { format } from '../../quantity/format.ts';
import { compare } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type AnswerTable, calculation } from '../declare/calculation.ts';
import { printed, type Remark, said } from '../declare/remark.ts';
import { patchCautions } from './cautions.ts';
import { holeField } from './fields.ts';
import { type PatchLayers, patchLayers } from './layers.ts';

/** Small things are told in inches, as they are cut; what is run off a tape in feet and inches. */
const cut = { figures: 5 } as const;
const tape = { tape: 16 } as const;

export const patchLayersCalculation = calculation({
  name: 'patch-layers',
  title: 'Patch',
  question: 'Which layers close this hole, and in which order are the screws driven?',
  fields: { diameter: holeField },
  example: { diameter: '6 in' },
  work: ({ diameter }, rules) => {
    const layers = patchLayers(diameter, rules);
    const { beads } = layers;
    const usualCap = rules.value('patch.layers.cap-diameter');
    return {
      figures: {
        metal_side: { label: 'Square of metal', value: layers.metal, format: cut },
        membrane_side: { label: 'Square of membrane', value: layers.membrane, format: cut },
        cap: { label: 'Cap', value: layers.cap, format: cut },
        screws: { label: 'Screws', value: layers.screws },
        screw_spacing: { label: 'Spacing of the screws', value: layers.spacing, format: tape },
        screw_inset: {
          label: 'From the edge of the metal to the screws',
          value: layers.inset,
          format: tape,
        },
        bead: { label: 'Bead of sealant in all', value: beads.all, format: tape },
        bead_under_metal: { label: 'Of it under the metal', value: beads.underMetal, format: tape },
        bead_round_cap: { label: 'Of it round the cap', value: beads.roundCap, format: tape },
        bead_round_membrane: { label: 'Of it round the membrane', value: beads.roundMembrane, format: tape },
        metal_area: { label: 'Area of the metal', value: layers.metalArea },
        membrane_area: { label: 'Area of the membrane', value: layers.membraneArea },
      },
      tables: { layers: layersTable(layers), driving: drivingTable(layers) },
      cautions: [...patchCautions, 'caution.patch.vent-is-no-patch'],
      remarks: [
        beadPlace(rules),
        ...(compare(layers.cap, usualCap) === 0
          ? []
          : [
              said`The usual cap is ${printed(usualCap, cut)} across: see that one of ${printed(layers.cap, cut)} is to be had before you cut.`,
            ]),
      ],
    };
  },
});

function beadPlace(rules: Rulebook): Remark {
  const { low, high } = rules.range('patch.sealant.under-metal');
  return said`The bead under the metal lies between ${printed(low, tape)} and ${printed(high, tape)} from the edge of the metal, and the screws go through its middle.`;
}

function layersTable({ cap, metal, membrane, overlap, beads }: PatchLayers): AnswerTable {
  return {
    title: 'The layers, from the roof up',
    columns: { layer: 'Layer', size: 'Size', reaches: 'Reaches beyond', bead: 'Bead' },
    rows: [
      { layer: 'cap, its lip on the roof', size: cap, reaches: '', bead: beads.roundCap },
      { layer: 'square of metal, screwed', size: metal, reaches: overlap, bead: beads.underMetal },
      { layer: 'square of membrane', size: membrane, reaches: overlap, bead: beads.roundMembrane },
    ],
    format: { size: cut, reaches: cut, bead: tape },
  };
}

/** The driving order in words, for those who don't see the drawing. */
function drivingTable({ map, spacing }: PatchLayers): AnswerTable {
  const middles = map.screws.filter(({ fromMiddle }) => fromMiddle === 0);
  return {
    title: 'The screws in driving order; top is the side towards the peak',
    columns: { screws: 'Screws', where: 'Where' },
    rows: [
      {
        screws: `1 to ${middles.length}`,
        where: `the middle of each side: ${middles.map(({ on }) => on).join(', ')}`,
      },
      ...map.runs.map(({ corner, sides, first, last, endsInCorner }) => ({
        screws: first === last ? String(first) : `${first} to ${last}`,
        where:
          first === last && endsInCorner
            ? `the ${corner} corner`
            : `from the middles to the ${corner} corner, its ${sides.join(' and ')} in turn, ${format(spacing, tape)} further each time${endsInCorner ? '; the last in the corner itself' : ''}`,
      })),
    ],
  };
}
