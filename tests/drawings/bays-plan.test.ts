import { describe, expect, test } from 'vitest';
import { bays } from '../../src/calc/ways/bays-declaration.ts';
import { drawing } from '../../src/islands/parts/bays-drawing.ts';
import type { Entries } from '../calc/told.ts';
import { offTheSheet, overlapping } from './crowding.ts';
import { dotsOf, drawnOf, linesOf, type Size, sizes } from './from-above.ts';
import { shapesOf } from './measure.ts';
import { type Element, wordsOf } from './xml.ts';

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
const drawn = (entries: Entries, size: Size): Element => drawnOf(bays, drawing, entries, size);

describe.each(sizes)('bays drawn %s', (size) => {
  test.each(cases)('%s: nothing lies off the sheet, and no words on others', (_, entries) => {
    const root = drawn(entries, size);
    expect(offTheSheet(root)).toEqual([]);
    expect(overlapping(root)).toEqual([]);
  });

  const dots = (entries: Entries): string[] => dotsOf(drawn(entries, size), size, [20, 12]);
  const middles = Array.from({ length: 10 }, (_, bay) => 2 * bay + 1);

  test('under one edge the tube goes to the far eave', () => {
    expect(dots(level)).toEqual(middles.map((along) => `${along}.0 along, 12.0 across`));
  });

  test('under both edges the two meet half way', () => {
    expect(dots({ ...level, edges: 'both edges' })).toEqual(
      middles.flatMap((along) => [`${along}.0 along, 6.0 across`, `${along}.0 along, 6.0 across`]),
    );
  });

  test('before a ring it stops by its half and that of the tube', () => {
    // Half of 6 in with 2 in about it, and of the tube of 2 in, are 6 in before 6 ft.
    const found = dots({ ...level, flues: [flue] });
    expect(found[3]).toBe('7.0 along, 5.5 across');
    expect(found[2]).toBe('5.0 along, 12.0 across');
  });

  test('a tube that is too short is dashed on from its end', () => {
    const dashes = (root: Element) =>
      linesOf(root, ({ attributes }) => attributes['stroke-dasharray'] === '5 3').length;
    const short = drawn({ ...level, reach: '5 ft' }, size);
    expect(dots({ ...level, reach: '5 ft' })).toEqual(middles.map((along) => `${along}.0 along, 5.0 across`));
    // Nine trusses between ten bays.
    expect(dashes(drawn(level, size))).toBe(9);
    expect(dashes(short)).toBe(9 + 10);
  });

  test('bays narrower than the tube are crossed, and a cavity too low for it says so', () => {
    // Trusses 13 in apart leave 11.5 in between members of 1.5 in.
    const narrow = drawn({ ...level, length: '65 in', truss_spacing: '13 in', tube: '12 in' }, size);
    const slanted = linesOf(narrow, ({ attributes: { x1, x2, y1, y2 } }) => x1 !== x2 && y1 !== y2);
    expect(slanted).toHaveLength(2 * 5);
    const low = shapesOf(drawn({ ...level, eave: '1 in' }, size));
    expect(low.map(wordsOf)).toContain('the tube does not go in');
    expect(low.filter(({ name }) => name === 'circle')).toEqual([]);
  });
});
