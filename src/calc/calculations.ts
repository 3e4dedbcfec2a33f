import { cavity } from './cavity/declaration.ts';
import { ceiling } from './ceiling/declaration.ts';
import { dust } from './crew/dust/declaration.ts';
import { fall } from './crew/fall/declaration.ts';
import { heat } from './crew/heat/declaration.ts';
import { ladder } from './crew/ladder/declaration.ts';
import { line } from './crew/line/declaration.ts';
import { noise } from './crew/noise/declaration.ts';
import type { AnyCalculation } from './declare/calculation.ts';
import { fill } from './fill/declaration.ts';
import { layout } from './holes/declaration.ts';
import { trappedAirLoad } from './machine/pressure/declaration.ts';
import { blowingRate } from './machine/rate/declaration.ts';
import { testBoxCheck } from './machine/test-box/declaration.ts';
import { restrictedEdge, taper } from './taper/declaration.ts';

/** Every calculation, in the order of the work. A new one is a declaration and a line here. */
export const calculations: readonly AnyCalculation[] = [
  cavity,
  layout,
  fill,
  ceiling,
  taper,
  restrictedEdge,
  testBoxCheck,
  blowingRate,
  trappedAirLoad,
  ladder,
  fall,
  line,
  noise,
  heat,
  dust,
];

/** The calculation by a name; undefined if there is none. */
export const calculationNamed = (name: string): AnyCalculation | undefined =>
  calculations.find((each) => each.name === name);
