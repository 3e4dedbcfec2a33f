import type { PlannedRow } from '../job/planned.ts';
import { format } from '../quantity/format.ts';
import { inches, quantity } from '../quantity/quantity.ts';
import { dimension, TEXT_ABOVE } from './dimension.ts';
import { text, widthOf } from './lines.ts';
import type { RoofView } from './roof-view.ts';
import type { Shape } from './svg.ts';

/** From the roof's edge to the chain. */
const CHAIN = 26;
/** Between words side by side. */
const GAP = 6;
const SIZE = 13;
/** The size down to which a dimension sets its words to keep them on its own line, and from one line of words to the next. */
const SMALLEST = 11;
const LINE = 15;

/**
 * How many lines farther out do words stand that have no room on their own part of a chain? 0 where they have; else the first line on which
 * they meet no others. Places are the middles of the parts.
 * @example tiers([{ middle: 10, long: 8, fits: true }, { middle: 20, long: 30, fits: false }, { middle: 30, long: 30, fits: false }]) // => [0, 1, 2]
 */
export function tiers(
  words: readonly { readonly middle: number; readonly long: number; readonly fits: boolean }[],
): number[] {
  const ends: number[] = [];
  return words.map(({ middle, long, fits }) => {
    if (fits) return 0;
    let tier = 1;
    while (middle - long / 2 < (ends[tier] ?? Number.NEGATIVE_INFINITY) + GAP) tier += 1;
    ends[tier] = middle + long / 2;
    return tier;
  });
}

/** The chain of dimensions from end to end through the holes of a row, with the end that it is measured from. */
export function roofChain(
  row: PlannedRow,
  { at, back, front, length, out, perInch, upright }: RoofView,
): Shape[] {
  const last = row.holes[row.holes.length - 1];
  if (!last) return [];
  const side = row.side === 'back' ? -1 : 1;
  const edge = row.side === 'back' ? -back : front;
  const stops = [0, ...row.holes.map((hole) => inches(hole.along)), length];
  const parts = [
    ...[row.holes[0]?.along, ...row.gaps].flatMap((q) => (q ? [q] : [])),
    quantity(length - inches(last.along), 'in'),
  ].map((q, place) => {
    const [from = 0, to = 0] = [stops[place], stops[place + 1]];
    const words = format(q, { tape: 8 });
    const long = widthOf(words, SIZE);
    // Words at an end of the chain must not reach beyond the sheet, nor over the name of the starting end.
    const middle = Math.min(
      Math.max(((from + to) / 2) * perInch, long / 2 - (upright || side > 0 ? 0 : CHAIN)),
      length * perInch + CHAIN - long / 2,
    );
    return { from, to, words, long, middle, fits: widthOf(words, SMALLEST) <= (to - from) * perInch - 4 };
  });
  const raised = tiers(parts);
  const [x, y] = at(0, edge);
  const level = out * side * CHAIN;
  const [here, end] = ['starting', 'end'];
  return [
    ...parts.flatMap(({ from, to, words, middle }, place) => {
      const lines = raised[place] ?? 0;
      const ends = [at(from, edge), at(to, edge), level] as const;
      if (lines === 0) return dimension(...ends, words);
      // Words stand above their line, so those that move down or to the right have one line less to go.
      const off = level + (level > 0 ? lines * LINE : -lines * LINE - TEXT_ABOVE);
      const [wordsX, wordsY] = at(middle / perInch, edge);
      return [
        ...dimension(...ends, '').slice(0, -1),
        upright
          ? text([wordsX + off, wordsY], words, { turn: -90, size: SIZE })
          : text([wordsX, wordsY + off], words, { size: SIZE }),
      ];
    }),
    ...(upright
      ? [text([x + level, y - 22], here, { size: 12 }), text([x + level, y - 8], end, { size: 12 })]
      : [
          text([x - 8, y + level - 2], here, { anchor: 'end', size: 12 }),
          text([x - 8, y + level + 12], end, { anchor: 'end', size: 12 }),
        ]),
  ];
}
