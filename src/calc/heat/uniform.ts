import { format } from '../../quantity/format.ts';
import { inUnit, named, plus, type Quantity, quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { boards } from '../ceiling/fields.ts';
import { EntriesClash } from '../declare/calculation.ts';
import type { Remark } from '../declare/remark.ts';
import { layerResistance } from '../layers/layers.ts';

export type Board = (typeof boards)[number];

/** What is the same all over the roof: the two air films and the ceiling board. */
export interface Uniform {
  readonly indoor: Quantity<'thermal resistance'>;
  readonly board: Quantity<'thermal resistance'>;
  readonly outdoor: Quantity<'thermal resistance'>;
  readonly total: Quantity<'thermal resistance'>;
  readonly remarks: readonly Remark[];
}

/**
 * What R do films and ceiling board give together? Gypsum by its thickness and conductivity, wood-fibre panel by its R per inch
 * and the thickness given; a board that is not known, or not measured, gets none, on the safe side.
 * By hand: films of 0.61 and 0.17, and no R for the board.
 * @throws EntriesClash for a thickness beside a board whose name has it, or whose material is not known.
 * @example uniformResistance('other or not known', undefined, rules).total.amount.toFixed(2) // => '0.78'
 */
export function uniformResistance(
  board: Board,
  thickness: Quantity<'length'> | undefined,
  rules: Rulebook,
): Uniform {
  const indoor = rules.value('thermal.film.indoor-up');
  const outdoor = rules.value('thermal.film.outdoor-winter');
  const { resistance, remarks } = boardResistance(board, thickness, rules);
  const shown = named(inUnit(resistance, 'h ft2 F/Btu'), 'Rb', 'R of the ceiling board');
  return {
    indoor,
    board: shown,
    outdoor,
    total: named(plus(plus(indoor, shown), outdoor), 'Rc', 'R of films and ceiling'),
    remarks,
  };
}

function boardResistance(
  board: Board,
  thickness: Quantity<'length'> | undefined,
  rules: Rulebook,
): { readonly resistance: Quantity<'thermal resistance'>; readonly remarks: readonly Remark[] } {
  const nothing = (why: string) => ({
    resistance: quantity(0, 'h ft2 F/Btu'),
    remarks: [`The ceiling board gets no R, on the safe side: ${why}.`],
  });
  if (thickness && board !== 'wood-fibre panel') {
    throw new EntriesClash({
      field: 'board_thickness',
      label: 'Thickness of the board',
      found: `${format(thickness, { tape: 16 })} beside the board "${board}"`,
      expected: 'a thickness for wood-fibre panel only',
    });
  }
  if (board === 'wood-fibre panel') {
    return thickness
      ? { resistance: times(rules.value('thermal.board.wood-fibre-r'), thickness), remarks: [] }
      : nothing('the thickness of the wood-fibre panel is not given');
  }
  const own = rules.find('thermal.board.gypsum-thickness', { board }, 'thickness')?.low;
  if (!own) return nothing('what it is made of is not known');
  return {
    resistance: layerResistance(
      named(own, 'tb', 'Thickness of the board'),
      rules.value('thermal.board.gypsum-conductivity'),
    ),
    remarks: [],
  };
}
