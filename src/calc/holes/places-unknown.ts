import type { CautionId } from '../../generated/rule-types.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { lacksTrusses } from './lacks-trusses.ts';
import type { AlongValues } from './members.ts';

/** Is a spacing told, and not where it begins? It is then taken to begin at the starting end, which is a guess. */
const withoutFirst = (
  spacing: Quantity<'length'> | undefined,
  first: Quantity<'length'> | undefined,
  measured: readonly unknown[] | undefined,
): boolean => spacing !== undefined && first === undefined && !measured?.length;

/** Of which members of a roof is it not known where they lie, so that a hole may be laid out over one? `seamed` is whether it has seams for certain. */
export function placesUnknown(
  along: AlongValues,
  length: Quantity<'length'>,
  seamed: boolean,
  rules: Rulebook,
): CautionId[] {
  const { truss_spacing, first_truss, trusses_measured, seam_spacing, first_seam, seams_measured } = along;
  const cautions: CautionId[] = [];
  if (lacksTrusses(along, length, rules) || withoutFirst(truss_spacing, first_truss, trusses_measured))
    cautions.push('caution.layout.trusses-unknown');
  const noSeam = seam_spacing === undefined && !seams_measured?.length;
  if ((seamed && noSeam) || withoutFirst(seam_spacing, first_seam, seams_measured))
    cautions.push('caution.layout.seams-unknown');
  return cautions;
}
