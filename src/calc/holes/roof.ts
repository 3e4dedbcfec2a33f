import { format } from '../../quantity/format.ts';
import { compare, inches, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { ringOfFlue } from '../before/flue-rings.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { isHot } from './hot-flues.ts';
import { TIE } from './marks.ts';
import { type AlongValues, seamPlaces, seamsTold, trussesTold, trussPlaces } from './members.ts';
import type { LayoutProblem } from './problem.ts';

/** The smallest mark a crew reads off the tape when it marks a hole, in inches. */
const TAPE_MARK = 1 / 8;

type Obstacle = NonNullable<AlongValues['obstacles']>[number];

/**
 * The stretch along the roof that an obstacle closes to the middle of a hole: its own half, and half the widest layer of the patch.
 * A hot flue takes the clearance of its kind or listing too, since the membrane can burn. Nothing is closed where it stands far enough
 * from the row: down the slope, or on the other side of the peak, which it may reach over. A round one counts as the square about it.
 */
function blockedBy(
  obstacle: Obstacle,
  row: RowOfHoles,
  rules: Rulebook,
): LayoutProblem['obstacles'][number] | undefined {
  const { what, along, side, from_peak, across, kind, listed } = obstacle;
  const clear = isHot(obstacle) ? inches(ringOfFlue(kind, listed, rules).ring) : 0;
  const reach = inches(across) / 2 + row.widestLayer / 2 + clear;
  const down = side === row.side ? inches(from_peak) : -inches(from_peak);
  if (Math.abs(down - row.belowPeak) >= reach - TIE) return undefined;
  return { name: what, from: inches(along) - reach, to: inches(along) + reach };
}

/**
 * All that the places of a row of holes rest on, for their working: the roof, what stands on it, and the rules of the layout. What is
 * measured one by one is named one by one.
 */
export function layoutRestsOn(length: Quantity<'length'>, values: AlongValues, rules: Rulebook): Quantity[] {
  const [first, spacing] = [rules.range('access.roof-holes.first'), rules.range('access.roof-holes.spacing')];
  const obstacles = values.obstacles ?? [];
  return [
    length,
    ...trussesTold(values),
    ...seamsTold(values),
    ...obstacles.flatMap(({ along, from_peak, across, listed }) => [along, from_peak, across, listed]),
    ...[first.low, first.high, spacing.low, spacing.high],
    rules.value('access.roof-holes.below-peak'),
    rules.value('access.roof-holes.diameter'),
    rules.value('framing.truss.member-width'),
    rules.value('patch.layers.metal-side'),
    rules.value('patch.layers.membrane-side'),
    ...obstacles.filter(isHot).map(({ kind, listed }) => ringOfFlue(kind, listed, rules).ring),
  ].filter((each) => each !== undefined);
}

interface RowOfHoles {
  readonly side: 'back' | 'front';
  readonly belowPeak: number;
  readonly widestLayer: number;
}

/**
 * The layout problem of one row of holes, as the search takes it.
 * @throws EntriesClash for a spacing that no roof has, and for something that stands beyond the end of the roof.
 */
export function layoutProblem(
  length: Quantity<'length'>,
  values: AlongValues,
  side: 'back' | 'front',
  rules: Rulebook,
): LayoutProblem {
  const beyond = (values.obstacles ?? []).find(({ along }) => compare(along, length) > 0);
  if (beyond) {
    throw new EntriesClash({
      field: 'obstacles',
      label: 'Vents, flues and skylights',
      found: `a ${beyond.what} at ${format(beyond.along, { tape: 8 })}`,
      expected: `a place on the roof, which is ${format(length, { tape: 8 })} long`,
    });
  }
  const diameter = rules.value('access.roof-holes.diameter');
  if (compare(length, diameter) < 0) {
    throw new EntriesClash({
      field: 'length',
      label: 'Length of the roof',
      found: format(length),
      expected: `more than a hole of ${format(diameter)}`,
    });
  }
  const range = (id: 'access.roof-holes.first' | 'access.roof-holes.spacing') => {
    const { low, high } = rules.range(id);
    return { low: inches(low), high: inches(high) };
  };
  const row: RowOfHoles = {
    side,
    belowPeak: inches(rules.value('access.roof-holes.below-peak')),
    widestLayer: inches(rules.value('patch.layers.membrane-side')),
  };
  return {
    // A roof as long as a hole, told in another unit, is not a hair shorter.
    length: Math.max(inches(length), inches(diameter)),
    grid: TAPE_MARK,
    first: range('access.roof-holes.first'),
    last: range('access.roof-holes.first'),
    spacing: range('access.roof-holes.spacing'),
    holeDiameter: inches(diameter),
    patchSide: inches(rules.value('patch.layers.metal-side')),
    memberWidth: inches(rules.value('framing.truss.member-width')),
    trusses: trussPlaces(values, length),
    seams: seamPlaces(values, length),
    obstacles: (values.obstacles ?? []).flatMap((obstacle) => blockedBy(obstacle, row, rules) ?? []),
  };
}
