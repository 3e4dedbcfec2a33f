import type { CautionId } from '../../generated/rule-types.ts';

/** What stands beside every patch that is laid. */
export const patchCautions: readonly CautionId[] = [
  'caution.patch.weatherproof',
  'caution.patch.weather',
  'caution.patch.cold',
  'caution.patch.metals',
  'caution.patch.sharp',
];
