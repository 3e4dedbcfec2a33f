import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import { dimension, reachBeyond } from './dimension.ts';
import { text } from './lines.ts';
import type { RoofHole } from './roof-holes.ts';
import type { RoofView } from './roof-view.ts';
import { type Box, best, boxOf, costOf, type Taken } from './room.ts';
import type { Shape } from './svg.ts';

const SIZE = 12;
/** From the middle of a hole to its dimension, where its patch does not reach so far. */
const BESIDE = [24, 44] as const;
/** Room for words above a dimension's line. */
const WORDS = SIZE + 6;

interface Told {
  readonly shapes: Shape[];
  /** What it covers. */
  readonly boxes: readonly Box[];
}

/**
 * How far the holes lie from the ridge: dimensioned beside the first hole of the first row where nothing else stands; in words at the foot
 * of a roof too small for it.
 */
export function belowPeakTold(
  holes: readonly RoofHole[],
  belowPeak: Quantity<'length'>,
  view: RoofView,
  membrane: number,
  taken: readonly Taken[],
  room: Box,
): Told {
  const { at, back, perInch, upright, foot, sheet } = view;
  const row = holes.filter((each) => each.row === holes[0]?.row);
  const words = format(belowPeak);
  const deep = inches(belowPeak);
  const reach = deep + reachBeyond(deep * perInch, words, SIZE) / perInch;
  const spots = row.flatMap(({ hole }) =>
    BESIDE.flatMap((off) =>
      [-1, 1].map((way) => ({ along: inches(hole.along), off: way * Math.max(membrane, off), way })),
    ),
  );
  const [first, ...more] = spots;
  if (!first) return { shapes: [], boxes: [] };
  if (reach > back)
    return {
      shapes: [
        text([foot[0], sheet.height - (upright ? 38 : 34)], `holes ${words} from the ridge`, {
          anchor: 'start',
          size: SIZE,
          of: belowPeak,
        }),
      ],
      boxes: [],
    };
  /** The dimension with its words, and the lines that lead to it from the patch and the ridge. */
  const boxesAt = ({ along, off, way }: typeof first): readonly Box[] => {
    const beside = along + off / perInch;
    const own = boxOf(at(beside, -reach), at(beside, 0));
    return [
      upright ? { ...own, top: own.top - WORDS } : { ...own, left: own.left - WORDS },
      boxOf(at(beside, -deep), at(along + (way * (membrane / 2 + 3)) / perInch, 0)),
    ];
  };
  const spot = best([first, ...more], (each) =>
    boxesAt(each).reduce((sum, box) => sum + costOf(box, taken, room), 0),
  );
  return {
    shapes: dimension(at(spot.along, 0), at(spot.along, -deep), spot.off, words, SIZE, belowPeak),
    boxes: boxesAt(spot),
  };
}
