import { parseQuantity } from '../../src/quantity/parse.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { type Element, wordsOf } from './xml.ts';

export type Point = readonly [x: number, y: number];

export const numberAt = ({ attributes }: Element, name: string): number => Number(attributes[name]);

/** What stands in a drawing, one after the other; groups and definitions are not looked into. */
export const shapesOf = (root: Element): Element[] =>
  root.children.filter((each) => typeof each !== 'string');

/** The corners of a path of straight lines. */
export const cornersOf = ({ attributes }: Element): Point[] =>
  [...(attributes.d ?? '').matchAll(/[ML](\S+?) ([^\sMLZ]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

export const isThick = ({ attributes }: Element): boolean => attributes['stroke-width'] === '1.8';

export const between = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);

/** A dimension as a reader sees it: what it says, and how far its arrows stand apart. */
export interface Dimension {
  readonly words: string;
  readonly drawn: number;
}

const isArrow = ({ name, attributes }: Element): boolean =>
  name === 'path' && attributes.fill === 'currentColor';

/** Every dimension of a drawing: two filled arrows, and the words after them. */
export function dimensionsOf(root: Element): Dimension[] {
  const shapes = shapesOf(root);
  return shapes.flatMap((first, place) => {
    const [second, words] = [shapes[place + 1], shapes[place + 2]];
    if (!isArrow(first) || !second || !isArrow(second) || words?.name !== 'text') return [];
    const [[a], [b]] = [cornersOf(first), cornersOf(second)];
    return a && b ? [{ words: wordsOf(words), drawn: between(a, b) }] : [];
  });
}

/** The inches that a dimension says. */
export const inchesSaid = (words: string): number =>
  amountIn(parseQuantity(words.replace(/ to the ridge$/, ''), { dimension: 'length' }), 'in');

/** The length of the four parts of the scale bar, in drawing units. */
export function scaleBarOf(root: Element): number {
  const shapes = shapesOf(root);
  const first = shapes.findIndex((_, place) => shapes.slice(place, place + 4).filter(isPart).length === 4);
  return shapes.slice(first, first + 4).reduce((all, part) => all + numberAt(part, 'width'), 0);
}

const isPart = (each: Element): boolean => each.name === 'rect' && each.attributes.height === '5';
