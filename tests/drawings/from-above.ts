import { expect } from 'vitest';
import type { AnyCalculation } from '../../src/calc/declare/calculation.ts';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { type Drawing, toSvg } from '../../src/drawings/svg.ts';
import type { Drawn } from '../../src/islands/calculator/drawn.ts';
import { type Entries, rules } from '../calc/told.ts';
import { isThick, numberAt, shapesOf } from './measure.ts';
import { type Element, readXml } from './xml.ts';

export const sizes = ['wide', 'narrow'] as const;
export type Size = (typeof sizes)[number];

/** What some entries of a calculation are drawn as. */
export function drawnOf(of: AnyCalculation, { draw }: Drawn, entries: Entries, size: Size): Element {
  const read = readFields(of.fields, entries);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  const [found] = draw(read.value, rules) as readonly Record<Size, Drawing>[];
  if (!found) throw new Error('found no drawing, expected one');
  return readXml(toSvg(found[size], `${of.name}-${size}`));
}

/** Straight lines of a drawing. */
export const linesOf = (root: Element, is: (each: Element) => boolean): Element[] =>
  shapesOf(root).filter((each) => each.name === 'line' && is(each));

/**
 * Where the pushes drawn in a cavity end, in feet along it from the starting end and across it from the eave, by their dots. The outline is as long
 * and as wide as the cavity, in feet.
 */
export function dotsOf(root: Element, size: Size, [long, wide]: readonly [number, number]): string[] {
  const places = (...of: string[]) =>
    linesOf(root, isThick).flatMap((each) => of.map((name) => numberAt(each, name)));
  const [xs, ys] = [places('x1', 'x2'), places('y1', 'y2')];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const foot = (Math.max(...xs) - left) / (size === 'wide' ? long : wide);
  expect((Math.max(...ys) - top) / (size === 'wide' ? wide : long)).toBeCloseTo(foot, 2);
  return shapesOf(root)
    .filter(({ name, attributes: { fill } }) => name === 'circle' && fill === 'currentColor')
    .map((dot) => {
      const [x, y] = [(numberAt(dot, 'cx') - left) / foot, (numberAt(dot, 'cy') - top) / foot];
      const [along, across] = size === 'wide' ? [x, y] : [y, wide - x];
      return `${along.toFixed(1)} along, ${across.toFixed(1)} across`;
    });
}
