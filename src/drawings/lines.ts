import type { Quantity } from '../quantity/quantity.ts';
import { fewerPoints } from './fewer-points.ts';
import { type Shape, shape } from './svg.ts';

/** A point of a drawing, in drawing units. */
export type Point = readonly [x: number, y: number];

/**
 * Line types by ISO 128: thick continuous for visible outlines, thin continuous for dimensions and hatching, thin dashed for what is
 * hidden, thin dash-dot for centre lines, thin dash-dot-dot for boundaries of a stretch.
 */
const lineTypes = {
  outline: { 'stroke-width': 1.8 },
  thin: { 'stroke-width': 0.7 },
  hidden: { 'stroke-width': 0.7, 'stroke-dasharray': '5 3' },
  centre: { 'stroke-width': 0.7, 'stroke-dasharray': '14 3 2 3' },
  boundary: { 'stroke-width': 0.7, 'stroke-dasharray': '14 3 2 3 2 3' },
} as const;

export type LineType = keyof typeof lineTypes;

const pen = (type: LineType) => ({ stroke: 'currentColor', ...lineTypes[type] });

export const line = (type: LineType, [x1, y1]: Point, [x2, y2]: Point): Shape =>
  shape('line', { x1, y1, x2, y2, ...pen(type) });

export const path = (type: LineType, points: readonly Point[], closed = false): Shape =>
  shape('path', { d: pathText(points, closed), ...pen(type), 'stroke-linejoin': 'round' });

export const circle = (type: LineType, [cx, cy]: Point, r: number): Shape =>
  shape('circle', { cx, cy, r, ...pen(type) });

/** A square about a point. */
export const square = (type: LineType, [x, y]: Point, side: number): Shape =>
  shape('rect', { x: x - side / 2, y: y - side / 2, width: side, height: side, ...pen(type) });

/** An area filled with a pattern of this drawing. */
export const hatched = (points: readonly Point[], pattern: string): Shape =>
  shape('path', { d: pathText(points, true), fill: `url(#${pattern})` });

/** A seventh of a thin line's width: what is left out of a curve can't be seen. */
const NOT_SEEN = 0.1;

export const pathText = (points: readonly Point[], closed: boolean): string =>
  fewerPoints(points, NOT_SEEN)
    .map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`)
    .join('') + (closed ? 'Z' : '');

const round = (value: number): number => Math.round(value * 100) / 100;

/**
 * Digits, spaces and short units: half their height wide, on the average of the usual faces.
 * By hand: four letters of half of 12.
 * @example widthOf('4 ft', 12) // => 24
 */
export const widthOf = (words: string, size: number): number => words.length * size * 0.5;

export interface TextOptions {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly bold?: boolean;
  /** Degrees, turned about the point. */
  readonly turn?: number;
  /** The quantity that the words tell: where it is a rule's own value, the words lead to the rule. */
  readonly of?: Quantity;
}

export const text = ([x, y]: Point, words: string, options: TextOptions = {}): Shape =>
  shape(
    'text',
    {
      x,
      y,
      fill: 'currentColor',
      'text-anchor': options.anchor ?? 'middle',
      ...(options.size === undefined ? {} : { 'font-size': options.size }),
      ...(options.bold ? { 'font-weight': 700 } : {}),
      ...(options.of?.origin.from === 'rule' ? { 'data-rule': options.of.origin.rule } : {}),
      ...(options.turn ? { transform: `rotate(${options.turn} ${round(x)} ${round(y)})` } : {}),
    },
    words,
  );
