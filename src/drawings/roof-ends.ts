import { text, widthOf } from './lines.ts';
import type { RoofView } from './roof-view.ts';
import type { Shape } from './svg.ts';

const SIDE = 14;
const RIDGE = 13;
/** Between two words side by side. */
const GAP = 8;

/** The names of the roof's sides and of its ridge, at the starting end. */
export function roofEnds({ at, back, front, upright, perInch }: RoofView): Shape[] {
  const least = (words: string): number => widthOf(words, SIDE) / 2 + GAP / 2;
  const sides = [
    ...(back > 0 ? [{ words: 'back', middle: -Math.max((back * perInch) / 2, least('back')) }] : []),
    ...(front > 0 ? [{ words: 'front', middle: Math.max((front * perInch) / 2, least('front')) }] : []),
  ];
  return [
    ...sides.map(({ words, middle }) => {
      const [x, y] = at(0, middle / perInch);
      return upright ? text([x, 20], words, { size: SIDE }) : text([18, y], words, { turn: -90, size: SIDE });
    }),
    upright
      ? text([at(0, 0)[0], at(0, 0)[1] - 14], 'ridge', { size: RIDGE })
      : text([40, at(0, 0)[1]], 'ridge', { turn: -90, size: RIDGE }),
  ];
}
