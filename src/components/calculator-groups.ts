import type { AnyCalculation } from '../calc/declare/calculation.ts';

/** The calculators by what they answer, in the order of the sheets of a job. */
const groups = [
  ['Cavity, holes and bags', 'cavity-section', 'hole-layout', 'fill', 'ceiling-load'],
  ['Before the fill', 'readiness', 'clear-spaces', 'cavity-ventilation'],
  ['Ways in', 'ways-in', 'gable-lanes', 'edge-bays', 'hose-marks'],
  ['Machine and log', 'test-box', 'blowing-rate', 'trapped-air', 'opening-log'],
  ['Patches', 'patch-layers', 'patch-kit', 'sealant', 'sheet-weight'],
  [
    'Heat and savings',
    'roof-heat',
    'tapered-transmittance',
    'restricted-edge',
    'layers',
    'savings',
    'fuel-cost',
    'present-worth',
  ],
  ['Air and moisture', 'fresh-air', 'exhaust-duct', 'moisture', 'dew-point'],
  ['Crew', 'ladder', 'fall-protection', 'line-clearance', 'noise-dose', 'heat-index-band', 'dust'],
  ['Receipt', 'receipt'],
] as const;

/**
 * Each group with its calculations. One that no group names is refused: it would be found nowhere.
 * @throws Error that names it, or the name that is no calculation's.
 */
export function grouped(all: readonly AnyCalculation[]): { title: string; of: readonly AnyCalculation[] }[] {
  const left = new Map(all.map((each) => [each.name, each]));
  const found = groups.map(([title, ...names]) => ({
    title,
    of: names.map((name) => {
      const one = left.get(name);
      if (!one) throw new Error(`found no calculation "${name}" for the group "${title}"`);
      left.delete(name);
      return one;
    }),
  }));
  if (left.size > 0) throw new Error(`found ${[...left.keys()].join(', ')} in no group of calculators`);
  return found;
}
