import { describe, expect, test } from 'vitest';
import { readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { bays } from '../../src/calc/ways/bays-declaration.ts';
import type { Drawing } from '../../src/drawings/svg.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { drawing } from '../../src/islands/parts/bays-drawing.ts';
import { type Entries, rules } from '../calc/told.ts';
import { offTheSheet, overlapping } from './crowding.ts';
import { shapesOf } from './measure.ts';
import { type Element, readXml, wordsOf } from './xml.ts';

/** A level cavity, 20 ft long and 12 ft wide, with a truss every 2 ft: ten bays, whose middles lie at 1 ft, 3 ft and so on. */
const level: Entries = {
  length: '20 ft',
  edges: 'one edge',
  shape: 'level',
  width: '12 ft',
  eave: '12 in',
  reach: '30 ft',
  truss_spacing: '24 in',
  first_truss: '0 in',
  density: '1.5 lb/ft³',
  bag_weight: '30 lb/bag',
};
const flue = { along: '7 ft', at: '6 ft', across: '6 in', ring: '2 in' };
const cases: readonly [what: string, entries: Entries][] = [
  ['under one edge', level],
  ['under both edges', { ...level, edges: 'both edges' }],
  ['with a flue in the fourth bay', { ...level, flues: [flue] }],
  ['with a tube that is too short', { ...level, reach: '5 ft' }],
  ['too low for the tube', { ...level, eave: '1 in' }],
  ['of the longest home', { ...level, length: '80 ft', edges: 'both edges' }],
  ['of the shortest home', { ...level, length: '4 ft', edges: 'both edges' }],
  ['the example', bays.example as Entries],
];
const sizes = ['wide', 'narrow'] as const;

function drawnOf(entries: Entries, size: (typeof sizes)[number]): Element {
  const read = readFields(bays.fields, entries);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  const [found] = drawing.draw(read.value, rules) as readonly Record<'wide' | 'narrow', Drawing>[];
  if (!found) throw new Error('found no drawing, expected one');
  return readXml(toSvg(found[size], `bays-${size}`));
}

describe.each(sizes)('bays drawn %s', (size) => {
  test.each(cases)('%s: nothing lies off the sheet, and no words on others', (_, entries) => {
    const root = drawnOf(entries, size);
    expect(offTheSheet(root)).toEqual([]);
    expect(overlapping(root)).toEqual([]);
  });

  const linesOf = (root: Element, is: (attributes: Element['attributes']) => boolean): Element[] =>
    shapesOf(root).filter(({ name, attributes }) => name === 'line' && is(attributes));
  const isThick = (attributes: Element['attributes']) => attributes['stroke-width'] === '1.8';

  /** Where the tube of a bay ends, in feet along the home and in from the back edge, by its dots; the cavity is 20 ft by 12 ft. */
  const dotsOf = (root: Element): string[] => {
    const places = (of: string) => linesOf(root, isThick).map(({ attributes }) => Number(attributes[of]));
    const [left, right] = [Math.min(...places('x1')), Math.max(...places('x2'))];
    const [top, foot] = [Math.min(...places('y1')), Math.max(...places('y2'))];
    const feet = (right - left) / (size === 'wide' ? 20 : 12);
    expect((foot - top) / (size === 'wide' ? 12 : 20)).toBeCloseTo(feet, 2);
    return shapesOf(root)
      .filter(({ name, attributes: { r } }) => name === 'circle' && r === '2.2')
      .map(({ attributes: { cx, cy } }) => {
        const [x, y] = [(Number(cx) - left) / feet, (Number(cy) - top) / feet];
        const [along, across] = size === 'wide' ? [x, y] : [y, 12 - x];
        return `${along.toFixed(1)} along, ${across.toFixed(1)} in`;
      });
  };
  const middles = Array.from({ length: 10 }, (_, bay) => 2 * bay + 1);

  test('under one edge the tube goes to the far eave', () => {
    expect(dotsOf(drawnOf(level, size))).toEqual(middles.map((along) => `${along}.0 along, 12.0 in`));
  });

  test('under both edges the two meet half way', () => {
    expect(dotsOf(drawnOf({ ...level, edges: 'both edges' }, size))).toEqual(
      middles.flatMap((along) => [`${along}.0 along, 6.0 in`, `${along}.0 along, 6.0 in`]),
    );
  });

  test('before a ring it stops by its half and that of the tube', () => {
    // Half of 6 in with 2 in about it, and of the tube of 2 in, are 6 in before 6 ft.
    const dots = dotsOf(drawnOf({ ...level, flues: [flue] }, size));
    expect(dots[3]).toBe('7.0 along, 5.5 in');
    expect(dots[2]).toBe('5.0 along, 12.0 in');
  });

  test('a tube that is too short is dashed on from its end', () => {
    const dashes = (root: Element) =>
      linesOf(root, (attributes) => attributes['stroke-dasharray'] === '5 3').length;
    const short = drawnOf({ ...level, reach: '5 ft' }, size);
    expect(dotsOf(short)).toEqual(middles.map((along) => `${along}.0 along, 5.0 in`));
    // Nine trusses between ten bays.
    expect(dashes(drawnOf(level, size))).toBe(9);
    expect(dashes(short)).toBe(9 + 10);
  });

  test('bays narrower than the tube are crossed, and a cavity too low for it says so', () => {
    // Trusses 13 in apart leave 11.5 in between members of 1.5 in.
    const narrow = drawnOf({ ...level, length: '65 in', truss_spacing: '13 in', tube: '12 in' }, size);
    const slanted = linesOf(narrow, ({ x1, x2, y1, y2 }) => x1 !== x2 && y1 !== y2);
    expect(slanted).toHaveLength(2 * 5);
    const low = shapesOf(drawnOf({ ...level, eave: '1 in' }, size));
    expect(low.map(wordsOf)).toContain('the tube does not go in');
    expect(low.filter(({ attributes: { r } }) => r === '2.2')).toEqual([]);
  });
});
