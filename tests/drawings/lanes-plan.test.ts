import { describe, expect, test } from 'vitest';
import { lanes } from '../../src/calc/ways/lanes-declaration.ts';
import { drawing } from '../../src/islands/parts/lanes-drawing.ts';
import type { Entries } from '../calc/told.ts';
import { offTheSheet, overlapping } from './crowding.ts';
import { dotsOf, drawnOf, type Size, sizes } from './from-above.ts';
import { shapesOf } from './measure.ts';
import { type Element, wordsOf } from './xml.ts';

/** A level cavity, 60 ft long and 12 ft wide: three lanes of 4 ft, with the hose 2 ft, 6 ft and 10 ft from the eave. */
const level: Entries = {
  length: '60 ft',
  ends: 'both ends',
  shape: 'level',
  width: '12 ft',
  eave: '12 in',
  spread: '2 ft',
  reach: '40 ft',
  density: '1.5 lb/ft³',
  bag_weight: '30 lb/bag',
};
const cases: readonly [what: string, entries: Entries][] = [
  ['from both ends, nothing in the way', level],
  ['from one end', { ...level, ends: 'one end' }],
  ['with a flue in the second lane', { ...level, flues: [{ along: '20 ft', at: '6 ft', across: '6 in' }] }],
  ['with a hose that may not get there', { ...level, reach: '10 ft' }],
  ['too low for the hose', { ...level, eave: '1 in' }],
  ['in as many lanes as there may be', { ...level, spread: '2 in' }],
  ['in one lane', { ...level, spread: '6 ft' }],
  ['of the shortest home', { ...level, length: '4 ft' }],
  ['the example', lanes.example as Entries],
];

const drawn = (entries: Entries, size: Size): Element => drawnOf(lanes, drawing, entries, size);

describe.each(sizes)('lanes drawn %s', (size) => {
  test.each(cases)('%s: nothing lies off the sheet, and no words on others', (_, entries) => {
    const root = drawn(entries, size);
    expect(offTheSheet(root)).toEqual([]);
    expect(overlapping(root)).toEqual([]);
  });

  const dots = (entries: Entries): string[] => dotsOf(drawn(entries, size), size, [60, 12]);

  test('from both ends the pushes of a lane meet in the middle of the home', () => {
    expect(new Set(dots(level))).toEqual(
      new Set(['30.0 along, 2.0 across', '30.0 along, 6.0 across', '30.0 along, 10.0 across']),
    );
  });

  test('from one end they go to the other', () => {
    expect(dots({ ...level, ends: 'one end' })).toEqual([
      '60.0 along, 2.0 across',
      '60.0 along, 6.0 across',
      '60.0 along, 10.0 across',
    ]);
  });

  test('before a ring each stops by its half and that of the hose, and the one from the far end goes on to it', () => {
    // Half of 6 in with 2 in about it, and of the hose of 2 in, are 6 in: 19.5 ft and 20.5 ft.
    const found = dots({ ...level, flues: [{ along: '20 ft', at: '6 ft', across: '6 in', ring: '2 in' }] });
    expect(found.filter((dot) => dot.endsWith(' 6.0 across'))).toEqual([
      '19.5 along, 6.0 across',
      '20.5 along, 6.0 across',
    ]);
  });

  test('what the hose may not reach is dashed from its reach on, and its tape has a sign that is told', () => {
    const root = drawn({ ...level, reach: '10 ft', ends: 'one end' }, size);
    const words = shapesOf(root)
      .filter(({ name }) => name === 'text')
      .map(wordsOf);
    expect(words.filter((each) => each === '60 ft*')).toHaveLength(3);
    expect(words).toContain('* the hose may not get there');
    expect(words).toContain('far end, shut');
    // 10 of 60 ft along a lane of 4 ft by 1 ft deep: 40 ft3 at 1.5 lb/ft3 in bags of 30 lb.
    expect(words.filter((each) => each === '2 bags')).toHaveLength(3);
    const dashed = shapesOf(root).filter(({ attributes }) => attributes['stroke-dasharray'] === '5 3');
    expect(dashed.length).toBeGreaterThanOrEqual(3);
  });

  test('each push before a ring bears where its tape goes, a short one too', () => {
    // 50 ft less 6 in, and 10 ft less 6 in; of 40 ft the hose is not sure to make the first.
    const flues = [{ along: '50 ft', at: '6 ft', across: '6 in', ring: '2 in' }];
    const words = shapesOf(drawn({ ...level, flues }, size)).map(wordsOf);
    expect(words).toContain('49 ft 6 in*');
    expect(words).toContain('9 ft 6 in');
  });

  test('a lane too low for the hose says so', () => {
    const words = shapesOf(drawn({ ...level, eave: '1 in' }, size)).map(wordsOf);
    expect(words.filter((each) => each === 'the hose does not fit')).toHaveLength(3);
  });
});
