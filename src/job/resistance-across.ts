import { type InsulationLayer, noLayer, oldInsulation } from '../calc/heat/old-insulation.ts';
import { amountIn, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { WorkedJob } from './planned.ts';

/** R of the insulation at one place across, in h ft2 F/Btu, with the ends of what is uncertain. */
export interface ResistanceAt {
  readonly across: number;
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** The old insulation as the heat through the roof is worked with it, at this R per inch unless the job gives one. */
function oldLayer(
  { old, heat }: WorkedJob['job'],
  published: Quantity<'resistance per length'> | undefined,
  rules: Rulebook,
): InsulationLayer {
  const given = {
    depth: old.depth,
    perInch: heat.old_r_per_inch ?? published,
    condition: heat.old_condition,
    pressedDepth: heat.pressed_depth,
  };
  return oldInsulation(given, rules)?.after ?? noLayer;
}

/** At the least, in the middle and at the most. */
function oldLayers(job: WorkedJob['job'], rules: Rulebook): readonly InsulationLayer[] {
  if (!job.old.depth || job.old.depth.amount === 0) return [noLayer, noLayer, noLayer];
  const { low, high } = rules.range('thermal.batt.light-r');
  return [low, undefined, high].map((perInch) => oldLayer(job, perInch, rules));
}

/**
 * What R does the insulation give across the home, old and new together, the old loose or pressed as the job says? Films, ceiling and
 * framing are left out: it is the insulation at each place, not the roof's effective R. Empty where the fill has no R per inch. Places are inches from the eave; plain numbers, for drawing.
 */
export function resistanceAcross(
  plan: WorkedJob,
  rules: Rulebook,
  places: readonly number[],
): ResistanceAt[] {
  const { resistance, section } = plan;
  const [least, middle, most] = oldLayers(plan.job, rules);
  if (!resistance || !least || !middle || !most) return [];
  const perInch = (q: Quantity<'resistance per length'>) => amountIn(q, 'h ft2 F/(Btu in)');
  const at = (depth: number, fresh: Quantity<'resistance per length'>, old: InsulationLayer): number => {
    const below = Math.min(amountIn(old.depth, 'in'), depth);
    return (depth - below) * perInch(fresh) + below * perInch(old.perInch);
  };
  return places.map((across) => {
    const depth = section.profile.depthAt(across);
    return {
      across,
      low: at(depth, resistance.low, least),
      value: at(depth, resistance.value, middle),
      high: at(depth, resistance.high, most),
    };
  });
}
