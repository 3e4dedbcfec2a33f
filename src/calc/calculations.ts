import { exhaustDuctCalculation, freshAirCalculation } from './air/declaration.ts';
import { cavityVentilation } from './before/cavity-ventilation-declaration.ts';
import { clearSpaces } from './before/clear-spaces-declaration.ts';
import { readinessCheck } from './before/readiness-declaration.ts';
import { cavity } from './cavity/declaration.ts';
import { ceiling } from './ceiling/declaration.ts';
import { dust } from './crew/dust/declaration.ts';
import { fall } from './crew/fall/declaration.ts';
import { heat as heatBand } from './crew/heat/declaration.ts';
import { ladder } from './crew/ladder/declaration.ts';
import { line } from './crew/line/declaration.ts';
import { noise } from './crew/noise/declaration.ts';
import type { AnyCalculation } from './declare/calculation.ts';
import { fill } from './fill/declaration.ts';
import { heat as roofHeat } from './heat/declaration.ts';
import { layout } from './holes/declaration.ts';
import { layers } from './layers/declaration.ts';
import { openingLog } from './log/declaration.ts';
import { trappedAirLoad } from './machine/pressure/declaration.ts';
import { blowingRate } from './machine/rate/declaration.ts';
import { testBoxCheck } from './machine/test-box/declaration.ts';
import { hoseMarkings } from './marks/declaration.ts';
import { moisture } from './moisture/declaration.ts';
import { dewPoint } from './moisture/dew-point-declaration.ts';
import { patchKitCalculation } from './patch/kit-declaration.ts';
import { patchLayersCalculation } from './patch/layers-declaration.ts';
import { sealantCalculation } from './patch/sealant-declaration.ts';
import { sheetWeightCalculation } from './patch/sheet-weight-declaration.ts';
import { receipt } from './receipt/declaration.ts';
import { fuelCost, presentWorth, savings } from './savings/declaration.ts';
import { restrictedEdge, taper } from './taper/declaration.ts';
import { bays } from './ways/bays-declaration.ts';
import { compareWays } from './ways/declaration.ts';
import { lanes } from './ways/lanes-declaration.ts';

/** Every calculation, in the order of the work. A new one is a declaration and a line here. */
export const calculations: readonly AnyCalculation[] = [
  cavity,
  layout,
  fill,
  ceiling,
  taper,
  restrictedEdge,
  openingLog,
  layers,
  roofHeat,
  savings,
  presentWorth,
  fuelCost,
  patchLayersCalculation,
  patchKitCalculation,
  sealantCalculation,
  sheetWeightCalculation,
  testBoxCheck,
  blowingRate,
  trappedAirLoad,
  ladder,
  fall,
  line,
  noise,
  heatBand,
  dust,
  readinessCheck,
  clearSpaces,
  cavityVentilation,
  receipt,
  compareWays,
  lanes,
  bays,
  hoseMarkings,
  freshAirCalculation,
  exhaustDuctCalculation,
  moisture,
  dewPoint,
];

/**
 * The calculation by a name; undefined if there is none.
 * @example calculationNamed('attic') // => undefined
 */
export const calculationNamed = (name: string): AnyCalculation | undefined =>
  calculations.find((each) => each.name === name);
