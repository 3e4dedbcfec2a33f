import { named, over, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export const known = ['yes', 'no', 'not known'] as const;
export type Known = (typeof known)[number];

const ventVerdicts = ['asked for', 'not asked for', 'not known'] as const;
export type VentVerdict = (typeof ventVerdicts)[number];

/** What decides whether the federal code asks for ventilation of the roof cavity. */
export interface RoofAsBuilt {
  readonly sections: 'single' | 'double';
  /** A metal roof with neither sheathing nor underlayment. */
  readonly bareMetal: Known;
  /** The ways for air from the living space into the cavity are sealed. */
  readonly sealed: Known;
}

/**
 * Does 24 CFR 3280.504(d) ask for ventilation of the roof cavity? Not of a single section with a bare metal roof whose
 * ceiling is sealed; of every other it does. Where what is not known could decide it, neither is said.
 * @example ventilationAsked({ sections: 'single', bareMetal: 'yes', sealed: 'yes' }) // => 'not asked for'
 */
export function ventilationAsked({ sections, bareMetal, sealed }: RoofAsBuilt): VentVerdict {
  if (sections === 'double' || bareMetal === 'no' || sealed === 'no') return 'asked for';
  return bareMetal === 'yes' && sealed === 'yes' ? 'not asked for' : 'not known';
}

/** What the federal code asks of a vented cavity. */
export interface CavityVents {
  readonly free: Quantity<'area'>;
  readonly high: Quantity<'area'>;
  readonly low: Quantity<'area'>;
  readonly clearAbove: Quantity<'length'>;
  /** The air a fan moves instead. */
  readonly mechanical: Quantity<'air flow'>;
}

/**
 * How much free area do the vents of a roof cavity have, by 24 CFR 3280.504(d)(1)? Areas in the unit of the floor, the fan's
 * air in cfm; a floor of nothing asks for nothing.
 * @example cavityVents(quantity(300, 'ft2'), rules).free.amount // => 1
 */
export function cavityVents(floor: Quantity<'area'>, rules: Rulebook): CavityVents {
  const free = named(
    over(floor, rules.value('ventilation.cavity.floor-per-opening')),
    'Af',
    'Free area of the vents',
  );
  return {
    free,
    high: named(times(free, rules.value('ventilation.cavity.high-share')), 'Ah', 'Of it, high up'),
    low: named(times(free, rules.value('ventilation.cavity.low-share')), 'Al', 'Of it, low down'),
    clearAbove: rules.value('ventilation.cavity.clear-above'),
    mechanical: named(
      times(rules.value('ventilation.cavity.mechanical'), floor),
      'Q',
      'Air by a fan instead',
    ),
  };
}
