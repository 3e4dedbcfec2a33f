import { describe, expect, test } from 'vitest';
import { cavity } from '../../src/calc/cavity/declaration.ts';
import { cavitySection } from '../../src/calc/cavity/section.ts';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import { sectionDrawing } from '../../src/drawings/section.ts';
import { sectionSheet } from '../../src/drawings/section-sheet.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { type Element, readXml, wordsOf } from './xml.ts';

/** The words of a drawing of this cavity. */
function textsDrawn(entries: Readonly<Record<string, unknown>>, size: 'wide' | 'narrow'): Element[] {
  const read = readFields(cavity.fields, entries);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const drawn = {
    section: cavitySection(read.value),
    oldOnceFilled: read.value.old_depth,
    askedAt: read.value.at,
  };
  const texts = (each: Element): Element[] => [
    ...(each.name === 'text' ? [each] : []),
    ...each.children.flatMap((child) => (typeof child === 'string' ? [] : texts(child))),
  ];
  return texts(readXml(toSvg(sectionDrawing(drawn, sectionSheet(drawn, size), 'section'), 'section')));
}

const wordsDrawn = (...given: Parameters<typeof textsDrawn>): string[] => textsDrawn(...given).map(wordsOf);

const slopes = { shape: 'two-slope', width: '160 in', eave: '4 in', ridge: '12 in' };

/** By hand: each slope rises 8 in over 80 in, a tenth, so that 40 in from the eave it is 4 + 4 in deep, and 20 in from it 4 + 2. */
const told: readonly [title: string, at: string, size: 'wide' | 'narrow', expected: string][] = [
  ['on the near slope', '40 in', 'wide', '8 in'],
  ['on the far slope, 20 in from its eave', '140 in', 'wide', '6 in'],
  ['on the far slope of which the near one is drawn on a phone', '120 in', 'narrow', '8 in'],
];

describe('the depth at the place asked for stands in the section', () => {
  test.each(told)('%s', (_, at, size, expected) => {
    const before = wordsDrawn(slopes, size);
    expect(before).not.toContain(expected);
    expect(wordsDrawn({ ...slopes, at }, size)).toEqual(expect.arrayContaining([expected]));
  });

  // By hand: one slope rises 8 in over the whole 160 in, a twentieth, so that 40 in from the eave it is 4 + 2 in deep.
  test('on one slope on a phone, a quarter of the way up', () => {
    expect(wordsDrawn({ ...slopes, shape: 'one-slope', at: '40 in' }, 'narrow')).toContain('6 in');
  });

  // On a phone half of the section is drawn, 2.6 to the inch, and the old layer is told 20 to the right of the middle of that: 47 1/2 in from the eave it is 8 3/4 in deep.
  test('on a line of its own, where the old insulation else is told', () => {
    const told = textsDrawn({ ...slopes, old_depth: '3 in', at: '47 1/2 in' }, 'narrow');
    const [old = 0, asked = 0] = ['3 in', '8 3/4 in'].map((words) =>
      Number(told.find((each) => wordsOf(each) === words)?.attributes.x),
    );
    expect(Math.abs(old - asked)).toBeGreaterThan(20);
  });

  test.each([
    ['at the eave', '0 in', 'wide'],
    ['5 in from the ridge', '75 in', 'wide'],
    ['5 in from the ridge, on a phone', '85 in', 'narrow'],
  ] as const)('not beside another height that tells much the same: %s', (_, at, size) => {
    expect(wordsDrawn({ ...slopes, at }, size)).toEqual(wordsDrawn(slopes, size));
  });
});
