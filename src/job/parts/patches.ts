import { layoutRestsOn } from '../../calc/holes/roof.ts';
import { patchKitCalculation } from '../../calc/patch/kit-declaration.ts';
import { patchLayersCalculation } from '../../calc/patch/layers-declaration.ts';
import { ofCover } from '../other-cover.ts';
import { USUAL_WAY, wayTaken } from '../way-taken.ts';
import { type AnyPart, part } from './part.ts';

const kitPart = part({
  calculation: patchKitCalculation,
  asked: {
    bead: 'patches.bead',
    bead_shape: 'patches.bead_shape',
    cartridge: 'patches.cartridge',
    cartridge_holds: 'patches.cartridge_holds',
    lost: 'patches.lost',
    coil_width: 'patches.coil_width',
    coil_length: 'patches.coil_length',
    membrane_width: 'patches.membrane_width',
    membrane_length: 'patches.membrane_length',
  },
  runs: ({ job, rows }, rules) => {
    const { patches } = job;
    const way = wayTaken(job);
    if (way !== USUAL_WAY)
      return `The way taken is the ${way}: no hole is cut, so there is nothing to patch.`;
    const [otherCover] = ofCover(job);
    if (otherCover) return otherCover;
    const holes = rows.reduce((count, row) => count + row.holes.length, 0);
    if (holes === 0) return 'The plan has no holes, so there is nothing to patch.';
    const operands = layoutRestsOn(job.home.length, job.roof, rules);
    return [
      {
        values: { ...patches, holes, diameter: undefined },
        found: { holes: { from: 'method', method: 'holes of the plan', operands } },
      },
    ];
  },
});

const layersPart = part({
  calculation: patchLayersCalculation,
  asked: {},
  runs: ({ job }) => {
    const [otherCover] = ofCover(job);
    return otherCover ?? [{ values: { diameter: undefined } }];
  },
});

/** What the patches take, and how one is laid. */
export const patchParts: readonly AnyPart[] = [kitPart, layersPart];
