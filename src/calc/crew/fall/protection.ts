import type { CautionId } from '../../../generated/rule-types.ts';
import { compare, input, named, type Quantity, times } from '../../../quantity/quantity.ts';
import type { Rulebook } from '../../../rulebook/rulebook.ts';

export const roofingWork = ['yes', 'no or not sure'] as const;
export type RoofingWork = (typeof roofingWork)[number];

/** The roof and the work on it. */
export interface FallHazard {
  /** The edge above the lower level. */
  readonly height: Quantity<'length'>;
  /** Rise of the roof in a foot of run. */
  readonly rise: Quantity<'length'>;
  /** The lesser of its two main sizes, seen from above. */
  readonly width: Quantity<'length'>;
  /** Does the work count as roofing work under the fall rules? */
  readonly roofingWork: RoofingWork;
  /** How many people tie to one anchor. */
  readonly people: number;
}

export interface FallProtection {
  readonly due: boolean;
  readonly slope: 'low slope' | 'steep';
  /** What the fall rules admit here; none where nothing is due by the height. */
  readonly systems: readonly string[];
  /** What one anchor carries for all who tie to it. */
  readonly anchor: Quantity<'weight'>;
  readonly cautions: readonly CautionId[];
}

/**
 * Is fall protection due at this edge, and which kinds do the fall rules admit on this slope for this work?
 * Work that is not surely roofing work gets only what serves at any edge.
 * By hand: 5000 lb for each of two people.
 * @example fallProtection({ height: quantity(9, 'ft'), rise: quantity(3, 'in'), width: quantity(14, 'ft'), roofingWork: 'yes', people: 2 }, rules).anchor.amount // => 10000
 */
export function fallProtection(hazard: FallHazard, rules: Rulebook): FallProtection {
  const from = rules.value('safety.roof.fall-height');
  const due = compare(from, hazard.height) <= 0;
  const low = compare(hazard.rise, rules.value('safety.fall.low-slope')) <= 0;
  const narrow = compare(hazard.width, rules.value('safety.fall.monitor-width')) <= 0;
  const onLowSlope = rules.choices('safety.fall.low-slope-systems');
  const onNarrow = rules.choices('safety.fall.narrow-systems');
  const [atAnyEdge, onSteep] = [
    rules.choices('safety.fall.systems'),
    rules.choices('safety.fall.steep-systems'),
  ];
  const more = low && hazard.roofingWork === 'yes' ? [...onLowSlope, ...(narrow ? onNarrow : [])] : [];
  const cautions: CautionId[] = ['caution.roof.carries-crew', 'caution.roof.falls'];
  if (due) cautions.push('caution.fall.arrest', 'caution.fall.guardrail');
  if (due && more.length > 0) cautions.push('caution.fall.monitor');
  if (due) cautions.push('caution.fall.decides');
  return {
    due,
    slope: low ? 'low slope' : 'steep',
    systems: due ? [...(low ? atAnyEdge : onSteep), ...more] : [],
    anchor: named(
      times(
        rules.value('safety.fall.anchor'),
        input(hazard.people, '1', 'people', { label: 'People on one anchor' }),
      ),
      'A',
      'What one anchor carries',
    ),
    cautions,
  };
}
