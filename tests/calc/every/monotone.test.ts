import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculationNamed } from '../../../src/calc/calculations.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { parseQuantity } from '../../../src/quantity/parse.ts';
import { amountIn, type Quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { digits, type Entries, leavesIn, withAt } from './entries.ts';

const { files, data } = theProject();
const rules = openRulebook(data);

type Way = 'never less' | 'never more';

/** More of a field, all else as it was: which figures may not fall, and which may not rise? */
const claims: readonly [name: string, more: string, way: Way, of: readonly string[]][] = [
  ['cavity-section', 'ridge', 'never less', ['area', 'mean_depth', 'deepest', 'volume', 'free_area']],
  ['cavity-section', 'eave', 'never less', ['area', 'mean_depth', 'depth_at', 'volume']],
  ['cavity-section', 'length', 'never less', ['volume']],
  ['cavity-section', 'old_depth', 'never more', ['volume', 'free_area']],
  ['cavity-section', 'truss_spacing', 'never less', ['volume', 'free_area']],
  ['cavity-section', 'kept_open.0.across', 'never more', ['volume']],
  ['hole-layout', 'length', 'never less', ['holes']],
  ['fill', 'density', 'never less', ['bags', 'weight', 'bags_to_load']],
  ['fill', 'volume', 'never less', ['bags', 'weight', 'bags_to_load']],
  ['fill', 'bag_weight', 'never more', ['bags', 'bags_to_load']],
  ['fill', 'label_r_per_inch', 'never less', ['resistance_per_inch', 'resistance_low', 'resistance_high']],
  ['ceiling-load', 'depth', 'never less', ['total', 'new_weight']],
  ['ceiling-load', 'density', 'never less', ['total', 'new_weight']],
  ['ceiling-load', 'old_depth', 'never less', ['total', 'old_weight']],
  ['ceiling-load', 'old_depth', 'never more', ['greatest_depth', 'highest_density']],
  ['ceiling-load', 'framing', 'never more', ['limit', 'greatest_depth', 'highest_density']],
  ['tapered-transmittance', 'thin', 'never less', ['resistance']],
  ['tapered-transmittance', 'thick', 'never less', ['resistance', 'naive']],
  ['tapered-transmittance', 'constant', 'never more', ['transmittance']],
  ['restricted-edge', 'edge', 'never less', ['resistance', 'kept', 'ratio']],
  ['restricted-edge', 'nominal', 'never less', ['resistance']],
  ['opening-log', 'bags', 'never less', ['density', 'weight']],
  ['opening-log', 'bags', 'never more', ['left']],
  ['opening-log', 'density', 'never less', ['planned']],
  ['layers', 'layers.0.resistance', 'never less', ['resistance']],
  ['layers', 'second.1.resistance', 'never less', ['resistance', 'parallel']],
  ['layers', 'layers.1.thickness', 'never less', ['resistance']],
  ['roof-heat', 'ridge', 'never less', ['resistance_after', 'cavity_resistance', 'naive_after']],
  ['roof-heat', 'eave', 'never less', ['resistance_after', 'cavity_resistance', 'naive_after']],
  ['roof-heat', 'eave', 'never more', ['transmittance_after', 'transmittance_before', 'restricted_share']],
  ['roof-heat', 'label_r_per_inch', 'never less', ['resistance_after']],
  ['roof-heat', 'density', 'never less', ['resistance_after']],
  ['savings', 'r_after', 'never less', ['saving', 'ratio', 'net', 'carbon']],
  ['savings', 'r_after', 'never more', ['payback']],
  ['savings', 'r_before', 'never more', ['saving', 'heat']],
  ['savings', 'area', 'never less', ['saving', 'heat', 'fuel_heat']],
  ['savings', 'degree_days', 'never less', ['saving', 'heat']],
  ['savings', 'efficiency', 'never more', ['saving', 'fuel_heat', 'carbon']],
  ['savings', 'cost', 'never more', ['ratio', 'net']],
  ['present-worth', 'discount_rate', 'never more', ['present_worth', 'present_worth_factor']],
  ['present-worth', 'escalation', 'never less', ['present_worth', 'present_worth_factor']],
  ['present-worth', 'life', 'never less', ['present_worth']],
  ['fuel-cost', 'price_per_volume', 'never less', ['heat_price', 'fuel_price']],
  ['fuel-cost', 'efficiency', 'never more', ['heat_price']],
  ['patch-layers', 'diameter', 'never less', ['screws', 'bead', 'metal_area', 'membrane_area']],
  ['patch-kit', 'diameter', 'never less', ['screws', 'bead', 'sealant', 'cartridges']],
  ['patch-kit', 'bead', 'never less', ['sealant', 'cartridges']],
  ['sealant', 'length', 'never less', ['volume', 'with_lost', 'cartridges']],
  ['sealant', 'bead', 'never less', ['volume', 'cartridges', 'section']],
  ['sealant', 'bead', 'never more', ['yield']],
  ['sealant', 'lost', 'never less', ['with_lost', 'cartridges']],
  ['sheet-weight', 'thickness', 'never less', ['weight', 'weight_per_area']],
  ['sheet-weight', 'area', 'never less', ['weight']],
  ['test-box', 'fills.0.gross', 'never less', ['mean', 'highest', 'lowest', 'departure']],
  ['test-box', 'height', 'never more', ['mean', 'highest', 'lowest']],
  ['blowing-rate', 'density', 'never more', ['speed']],
  ['blowing-rate', 'density', 'never less', ['time_per_foot', 'per_length', 'opening_time']],
  ['blowing-rate', 'area', 'never more', ['speed']],
  ['trapped-air', 'pressure', 'never less', ['air', 'total']],
  ['trapped-air', 'insulation', 'never more', ['highest_pressure']],
  ['ladder', 'height', 'never less', ['foot', 'needed', 'in_use', 'working']],
  ['line-clearance', 'voltage', 'never less', ['keep', 'clearance']],
  ['noise-dose', 'periods.0.time', 'never less', ['dose']],
  ['noise-dose', 'periods.0.time', 'never more', ['left']],
  ['noise-dose', 'periods.0.level', 'never less', ['dose']],
  ['heat-index-band', 'index', 'never less', ['felt']],
  ['dust', 'total', 'never less', ['factor']],
  ['clear-spaces', 'things.0.across', 'never less', ['taken_off']],
  ['clear-spaces', 'things.0.depth', 'never less', ['taken_off', 'highest_shield']],
  ['cavity-ventilation', 'area', 'never less', ['free_area', 'high', 'low', 'mechanical']],
  ['gable-lanes', 'density', 'never less', ['bags']],
  ['gable-lanes', 'length', 'never less', ['volume', 'bags', 'push']],
  ['gable-lanes', 'reach', 'never more', ['left', 'left_volume']],
  ['gable-lanes', 'spread', 'never more', ['lanes']],
  ['edge-bays', 'density', 'never less', ['bags', 'bags_a_bay']],
  ['edge-bays', 'length', 'never less', ['volume', 'bays', 'bags']],
  ['edge-bays', 'reach', 'never more', ['left_volume']],
  ['hose-marks', 'reach', 'never more', ['beyond_reach']],
  ['fresh-air', 'floor', 'never less', ['factory', 'whole_house']],
  ['exhaust-duct', 'flow', 'never more', ['allowed', 'straight']],
  ['moisture', 'indoor_humidity', 'never less', ['flow_in', 'dew_point', 'gathered']],
  ['dew-point', 'humidity', 'never less', ['dew_point', 'pressure']],
];

const NOISE = 1e-9;

const figuresOf = (
  name: string,
  entries: Entries,
): Readonly<Record<string, Quantity | undefined>> | undefined => {
  const declared = calculationNamed(name);
  if (!declared) throw new Error(`found no calculation ${name}`);
  const read = answer(declared, entries, rules);
  if (!read.ok) return undefined;
  return Object.fromEntries(
    Object.entries(read.value.figures).map(([key, { value }]) => [
      key,
      typeof value === 'string' ? undefined : value,
    ]),
  );
};

describe('more of it, all else as it was', () => {
  test.each(claims)('%s: more %s, %s of %s', (name, more, way, of) => {
    const declared = calculationNamed(name);
    const bases = [
      declared?.example ?? {},
      ...files.checks.filter(({ entry }) => entry.calculation === name).map(({ entry }) => entry.given),
    ].flatMap((entries: Entries) => {
      const leaf = leavesIn(declared?.fields ?? {}, entries).find(({ way: at }) => at.join('.') === more);
      return leaf?.field.kind === 'quantity' ? [{ entries, leaf, field: leaf.field }] : [];
    });
    expect(bases.length).toBeGreaterThan(0);
    const held = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(...bases),
        // Whole factors as well, since some fields take whole years or quarters of a bag alone.
        fc.oneof(fc.double({ min: 0.05, max: 2, noNaN: true }), fc.constantFrom(1, 2)),
        fc.oneof(fc.double({ min: 1, max: 2, noNaN: true }), fc.constantFrom(1, 2)),
        ({ entries, leaf, field }, first, second) => {
          const read = parseQuantity(String(leaf.given), { dimension: field.dimension });
          const typed = (times: number) => `${digits(read.amount * times)} ${read.unit}`;
          const less = figuresOf(name, withAt(entries, leaf.way, typed(first)));
          const greater = figuresOf(name, withAt(entries, leaf.way, typed(first * second)));
          for (const key of of) {
            const [a, b] = [less?.[key], greater?.[key]];
            if (!a || !b) continue;
            held.add(key);
            const [before, after] = [a.amount, amountIn(b, a.unit as never)];
            const noise = NOISE * Math.max(1, Math.abs(before));
            if (way === 'never less') expect(after).toBeGreaterThanOrEqual(before - noise);
            else expect(after).toBeLessThanOrEqual(before + noise);
          }
        },
      ),
      { numRuns: 50 },
    );
    // Every figure of the claim was there to be held.
    expect([...held].sort()).toEqual([...of].sort());
  });
});
