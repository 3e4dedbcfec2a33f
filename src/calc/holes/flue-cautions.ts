import type { CautionId } from '../../generated/rule-types.ts';
import { isHotConnector, untold } from './hot-flues.ts';
import type { AlongValues } from './members.ts';

/** Which cautions do the flues on a roof call for before a hole is cut? @example flueCautions([]) // => [] */
export function flueCautions(obstacles: NonNullable<AlongValues['obstacles']>): CautionId[] {
  const cautions: CautionId[] = [];
  if (obstacles.some(untold)) cautions.push('caution.flue.kind-unknown');
  if (obstacles.some(isHotConnector)) cautions.push('caution.flue.connector');
  return cautions;
}
