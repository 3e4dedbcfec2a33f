import { engineersLoad } from '../calc/ceiling/load.ts';
import { trappedAir } from '../calc/machine/pressure/trapped-air.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { WorkedJob } from './planned.ts';

/**
 * Is the pressure that the gauge showed under the roof, with the weight of the insulation, more than the ceiling may carry? Of a ceiling that
 * the insulation alone is too heavy for, or that nothing is published for, a stop of its own tells.
 * By hand: 0.2 in of water is 1.04 lb/ft2, which no ceiling of 2.2 lb/ft2 carries with 1.6 lb/ft2 on it.
 */
export function pressedByAir(
  { job: { ceiling, machine }, load }: Pick<WorkedJob, 'job' | 'load'>,
  rules: Rulebook,
): boolean {
  if (!machine.pressure) return false;
  const { cautions } = trappedAir(
    ceiling.board,
    ceiling.framing,
    machine.pressure,
    load.total,
    rules,
    engineersLoad(ceiling),
  );
  return cautions.includes('caution.machine.pressed');
}
