import {
  amountIn,
  byMethod,
  inUnit,
  minus,
  named,
  number,
  plus,
  type Quantity,
  times,
  total,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type ScrewMap, screwMap } from './screw-map.ts';

/** A patch over one round hole, layer by layer from the roof up. */
export interface PatchLayers {
  readonly diameter: Quantity<'length'>;
  /** The cap has the size of the hole; its lip rests on the roof. */
  readonly cap: Quantity<'length'>;
  readonly overlap: Quantity<'length'>;
  /** Side of the square of metal, and of the square of membrane over it. */
  readonly metal: Quantity<'length'>;
  readonly membrane: Quantity<'length'>;
  readonly metalArea: Quantity<'area'>;
  readonly membraneArea: Quantity<'area'>;
  /** From the edge of the metal to the line of the screws, in the middle of the bead. */
  readonly inset: Quantity<'length'>;
  readonly spacing: Quantity<'length'>;
  readonly screws: Quantity<'pieces'>;
  readonly map: ScrewMap;
  readonly beads: {
    readonly underMetal: Quantity<'length'>;
    readonly roundCap: Quantity<'length'>;
    readonly roundMembrane: Quantity<'length'>;
    readonly all: Quantity<'length'>;
  };
}

const area = (side: Quantity<'length'>, symbol: string, label: string): Quantity<'area'> =>
  named(inUnit(times(side, side), 'in2'), symbol, label);

/** How long is a bead all round a square? */
const round = (side: Quantity<'length'>): Quantity<'length'> => times(number(4), side);

/**
 * Which layers close a round hole, how large is each, how many screws and how much bead does it take? In inches.
 * Each layer reaches the rulebook's overlap beyond what lies below. Without a diameter the rulebook's own hole is taken.
 * @example patchLayers(quantity(6, 'in'), rules).metal.amount // => 10
 */
export function patchLayers(typed: Quantity<'length'> | undefined, rules: Rulebook): PatchLayers {
  const diameter = inUnit(typed ?? rules.value('access.roof-holes.diameter'), 'in');
  const cap = typed ? diameter : rules.value('patch.layers.cap-diameter');
  const overlap = rules.value('patch.layers.overlap');
  const beyond = (size: Quantity<'length'>): Quantity<'length'> => plus(size, times(number(2), overlap));
  const metal = named(beyond(diameter), 'sm', 'Side of the metal');
  const membrane = named(beyond(metal), 'sb', 'Side of the membrane');
  const inset = rules.value('patch.screws.inset');
  const spacing = rules.value('patch.screws.spacing');
  const map = screwMap(metal, rules);
  const underMetal = named(
    round(minus(metal, times(number(2), inset))),
    'bm',
    'Bead under the metal, in the line of the screws',
  );
  const roundCap = named(
    byMethod(`π·${cap.symbol ?? 'd'}`, [cap], Math.PI * amountIn(cap, 'in'), 'in'),
    'bc',
    'Bead round the cap',
  );
  const roundMembrane = named(round(membrane), 'bb', 'Bead round the membrane');
  return {
    diameter,
    cap,
    overlap,
    metal,
    membrane,
    metalArea: area(metal, 'Am', 'Area of the metal'),
    membraneArea: area(membrane, 'Ab', 'Area of the membrane'),
    inset,
    spacing,
    screws: named(
      byMethod(
        'the four middles, then one every gs along each half of a side; in a corner where a whole gs is left',
        [metal, inset, spacing],
        map.screws.length,
        'screw',
      ),
      'ns',
      'Screws through the metal',
    ),
    map,
    beads: {
      underMetal,
      roundCap,
      roundMembrane,
      all: named(total([underMetal, roundCap, roundMembrane]), 'bp', 'Bead of one patch'),
    },
  };
}
