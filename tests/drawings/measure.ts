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

export interface DrawnHole {
  readonly at: Point;
  readonly radius: number;
  readonly squares: readonly number[];
  readonly number: string;
}

/** Holes as they are drawn: two squares about one middle, a thick circle in them, a number beside them. */
export const holesIn = (root: Element): DrawnHole[] =>
  shapesOf(root).flatMap((circle, place, shapes) => {
    const [outer, inner, words] = [shapes[place - 2], shapes[place - 1], shapes[place + 1]];
    if (circle.name !== 'circle' || !isThick(circle) || outer?.name !== 'rect' || inner?.name !== 'rect')
      return [];
    return [
      {
        at: [numberAt(circle, 'cx'), numberAt(circle, 'cy')] as const,
        radius: numberAt(circle, 'r'),
        squares: [outer, inner].map((square) => numberAt(square, 'width')),
        number: words ? wordsOf(words) : '',
      },
    ];
  });

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

/** The scale bar: how long its four parts are in drawing units, and how many inches its end says; undefined where there is none. */
export function scaleBarOf(root: Element): { readonly drawn: number; readonly said: number } | undefined {
  const shapes = shapesOf(root);
  const first = shapes.findIndex((_, place) => shapes.slice(place, place + 4).filter(isPart).length === 4);
  if (first < 0) return undefined;
  const [, , end] = shapes.slice(first + 4);
  return {
    drawn: shapes.slice(first, first + 4).reduce((all, part) => all + numberAt(part, 'width'), 0),
    said: end ? inchesSaid(wordsOf(end)) : Number.NaN,
  };
}

const isPart = (each: Element): boolean => each.name === 'rect' && each.attributes.height === '5';

/** The least upright box about something. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const boxAbout = (points: readonly Point[]): Box => ({
  left: Math.min(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  right: Math.max(...points.map(([x]) => x)),
  bottom: Math.max(...points.map(([, y]) => y)),
});

/** Digits stand so high, as a share of their size. */
const DIGIT = 0.75;

/** Where an element of a drawing lies; words are taken as wide as digits and short units mostly are. */
export function boxOf(shape: Element): Box | undefined {
  const at = (name: string) => numberAt(shape, name);
  switch (shape.name) {
    case 'line':
      return boxAbout([
        [at('x1'), at('y1')],
        [at('x2'), at('y2')],
      ]);
    case 'circle':
      return boxAbout([
        [at('cx') - at('r'), at('cy') - at('r')],
        [at('cx') + at('r'), at('cy') + at('r')],
      ]);
    case 'rect':
      return boxAbout([
        [at('x'), at('y')],
        [at('x') + at('width'), at('y') + at('height')],
      ]);
    case 'path':
      return boxAbout(cornersOf(shape));
    case 'text':
      return boxOfWords(shape);
    default:
      return undefined;
  }
}

function boxOfWords(shape: Element): Box {
  const [x, y] = [numberAt(shape, 'x'), numberAt(shape, 'y')];
  const size = Number(shape.attributes['font-size'] ?? 13);
  const long = wordsOf(shape).length * size * 0.5;
  const anchor = shape.attributes['text-anchor'];
  const before = anchor === 'start' ? 0 : anchor === 'end' ? long : long / 2;
  return shape.attributes.transform === undefined
    ? { left: x - before, right: x - before + long, top: y - DIGIT * size, bottom: y }
    : { left: x - DIGIT * size, right: x, top: y - long + before, bottom: y + before };
}

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
