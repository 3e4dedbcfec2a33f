import { exhaustDuctCalculation, freshAirCalculation } from './air/declaration.ts';
import { cavity } from './cavity/declaration.ts';
import { ceiling } from './ceiling/declaration.ts';
import type { AnyCalculation } from './declare/calculation.ts';
import { fill } from './fill/declaration.ts';
import { layout } from './holes/declaration.ts';
import { restrictedEdge, taper } from './taper/declaration.ts';

/** Every calculation, in the order of the work. A new one is a declaration and a line here. */
export const calculations: readonly AnyCalculation[] = [
  cavity,
  layout,
  fill,
  ceiling,
  taper,
  restrictedEdge,
  freshAirCalculation,
  exhaustDuctCalculation,
];

/** The calculation by a name; undefined if there is none. */
export const calculationNamed = (name: string): AnyCalculation | undefined =>
  calculations.find((each) => each.name === name);
