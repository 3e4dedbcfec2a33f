import { amountIn, number, type Quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';

export type PatchSide = 'top' | 'bottom' | 'right' | 'left';
export type PatchCorner = 'top right' | 'bottom left' | 'bottom right' | 'top left';

/** One screw of a patch, in inches from the middle of the square: x to the right, y up the slope. */
export interface Screw {
  /** Its place in the driving order, from 1. */
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** The side it stands on, or the corner. */
  readonly on: PatchSide | PatchCorner;
  /** How far it stands from the middle of its side; half the line's length in a corner. */
  readonly fromMiddle: number;
}

/** The screws driven towards one corner, one after the other. */
export interface CornerRun {
  readonly corner: PatchCorner;
  readonly sides: readonly [PatchSide, PatchSide];
  readonly first: number;
  readonly last: number;
  /** The last of them stands in the corner itself. */
  readonly endsInCorner: boolean;
}

export interface ScrewMap {
  readonly screws: readonly Screw[];
  readonly runs: readonly CornerRun[];
}

/** Each corner is followed by the one across from it, so that the metal is drawn flat evenly. */
const corners: readonly { readonly corner: PatchCorner; readonly sides: readonly [PatchSide, PatchSide] }[] =
  [
    { corner: 'top right', sides: ['top', 'right'] },
    { corner: 'bottom left', sides: ['bottom', 'left'] },
    { corner: 'bottom right', sides: ['bottom', 'right'] },
    { corner: 'top left', sides: ['top', 'left'] },
  ];

/** 4.5 spacings are 4.5 spacings, though floating arithmetic makes them a trillionth less. */
const NOISE = 1e-9;

/**
 * Where do the screws of a square patch go, and in which order? In inches.
 *
 * They stand on a square line, `inset` in from the edge. The middle of each side comes first, in the order given. Then each corner in turn:
 * from the middle screws towards it, `spacing` further each time, its two sides alternating. No screw stands nearer to a corner than half a
 * spacing, so that the two on either side of it are never closer than a spacing along the line. Where a whole spacing or more is left,
 * the corner has a screw of its own. So every gap along the line is a spacing or more, and less than two.
 *
 * Odd cases: an inset of half the side or more leaves no line, and no screw. On a line too short for its spacing the four middles still stand.
 * @throws RangeError for a side, spacing or inset that is no finite number, a spacing that is not above 0, or an inset below 0.
 * @example screwsInOrder(10, 1, 0.375, ['top', 'bottom', 'right', 'left']).screws.length // => 36
 */
export function screwsInOrder(
  side: number,
  spacing: number,
  inset: number,
  middles: readonly PatchSide[],
): ScrewMap {
  if (![side, spacing, inset].every(Number.isFinite) || spacing <= 0 || inset < 0) {
    throw new RangeError(
      `found a side of ${side} in, a spacing of ${spacing} in and an inset of ${inset} in, expected finite lengths, the spacing above 0, the inset not below it`,
    );
  }
  const half = side / 2 - inset;
  if (half <= 0) return { screws: [], runs: [] };
  const aSide = Math.max(0, Math.floor(half / spacing - 1 / 2 + NOISE));
  const endsInCorner = half - aSide * spacing >= spacing * (1 - NOISE);
  const screws: Screw[] = [];
  const drive = (on: Screw['on'], fromMiddle: number, [x, y]: readonly [number, number]) =>
    screws.push({ number: screws.length + 1, x, y, on, fromMiddle });

  for (const middle of middles) drive(middle, 0, onSide(middle, 0, half, 'top right'));
  const runs = corners.map(({ corner, sides }): CornerRun => {
    const first = screws.length + 1;
    for (let step = 1; step <= aSide; step += 1) {
      for (const each of sides) drive(each, step * spacing, onSide(each, step * spacing, half, corner));
    }
    if (endsInCorner) drive(corner, half, onSide(sides[0], half, half, corner));
    return { corner, sides, first, last: screws.length, endsInCorner };
  });
  return { screws, runs: runs.filter(({ first, last }) => last >= first) };
}

/** The point on a side of the line, so far from its middle towards a corner. */
function onSide(side: PatchSide, along: number, half: number, corner: PatchCorner): [number, number] {
  const right = corner.endsWith('right') ? 1 : -1;
  const up = corner.startsWith('top') ? 1 : -1;
  switch (side) {
    case 'top':
      return [right * along, half];
    case 'bottom':
      return [right * along, -half];
    case 'right':
      return [half, up * along];
    case 'left':
      return [-half, up * along];
  }
}

/** Which sides have the first four screws, in the order of the rulebook? */
const firstFour = (rules: Rulebook): PatchSide[] =>
  [1, 2, 3, 4].flatMap((driven) => {
    const side = rules.find('patch.screws.first-four', { driven: number(driven) }, 'side');
    return side === undefined ? [] : [side as PatchSide];
  });

/**
 * Where do the screws of a square of metal go, in driving order, by the rulebook's spacing, inset and first four?
 * @example screwMap(quantity(10, 'in'), rules).screws[0]?.on // => 'top'
 */
export const screwMap = (side: Quantity<'length'>, rules: Rulebook): ScrewMap =>
  screwsInOrder(
    amountIn(side, 'in'),
    amountIn(rules.value('patch.screws.spacing'), 'in'),
    amountIn(rules.value('patch.screws.inset'), 'in'),
    firstFour(rules),
  );
