import { amountIn } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { WorkedJob } from './planned.ts';

/** R of the insulation at one place across, in h ft2 F/Btu, with the ends of what is uncertain. */
export interface ResistanceAt {
  readonly across: number;
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/**
 * What R does the insulation give across the home, old and new together? Films, ceiling and framing are left out: it is the
 * insulation at each place, not the roof's effective R. Empty where the fill has no R per inch.
 * Places are inches from the eave; plain numbers, for drawing.
 */
export function resistanceAcross(
  plan: WorkedJob,
  rules: Rulebook,
  places: readonly number[],
): ResistanceAt[] {
  const { resistance, section } = plan;
  if (!resistance) return [];
  const batt = rules.range('thermal.batt.light-r');
  const perInch = (q: (typeof resistance)['value']) => amountIn(q, 'h ft2 F/(Btu in)');
  const oldDepth = plan.job.old.depth ? amountIn(plan.job.old.depth, 'in') : 0;
  const [oldLow, oldHigh] = [perInch(batt.low), perInch(batt.high)];
  return places.map((across) => {
    const depth = section.profile.depthAt(across);
    const old = Math.min(oldDepth, depth);
    const fresh = depth - old;
    return {
      across,
      low: fresh * perInch(resistance.low) + old * oldLow,
      value: fresh * perInch(resistance.value) + (old * (oldLow + oldHigh)) / 2,
      high: fresh * perInch(resistance.high) + old * oldHigh,
    };
  });
}
