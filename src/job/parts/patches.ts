import { layoutRestsOn } from '../../calc/holes/roof.ts';
import { patchKitCalculation } from '../../calc/patch/kit-declaration.ts';
import { patchLayersCalculation } from '../../calc/patch/layers-declaration.ts';
import { ofCover } from '../other-cover.ts';
import type { WorkedJob } from '../planned.ts';
import { USUAL_WAY, wayTaken } from '../way-taken.ts';
import { type AnyPart, part } from './part.ts';

/** Why is nothing patched on this home? Undefined where there is something. */
function noPatch({ job, rows }: WorkedJob): string | undefined {
  const way = wayTaken(job);
  if (way !== USUAL_WAY) return `The way taken is the ${way}: no hole is cut, so there is nothing to patch.`;
  const [otherCover] = ofCover(job);
  if (otherCover) return otherCover;
  return rows.every(({ holes }) => holes.length === 0)
    ? 'The plan has no holes, so there is nothing to patch.'
    : undefined;
}

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
  runs: (plan, rules) => {
    const none = noPatch(plan);
    if (none) return none;
    const { job, rows } = plan;
    const { patches } = job;
    const holes = rows.reduce((count, row) => count + row.holes.length, 0);
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
  runs: (plan) => noPatch(plan) ?? [{ values: { diameter: undefined } }],
});

/** What the patches take, and how one is laid. */
export const patchParts: readonly AnyPart[] = [kitPart, layersPart];
