import { describe, expect, test } from 'vitest';
import { pageDrawings } from '../../src/components/drawings.ts';
import { type Drawing, type Shape, toSvg, viewOf } from '../../src/drawings/svg.ts';

/** The words of a drawing, with the line they stand on. */
const words = (shapes: readonly (Shape | string)[]): { y: number; size: number }[] =>
  shapes.flatMap((each) => {
    if (typeof each === 'string') return [];
    const inside = words(each.children);
    return each.tag === 'text'
      ? [{ y: Number(each.attributes.y), size: Number(each.attributes['font-size'] ?? 13) }, ...inside]
      : inside;
  });

const two: Drawing = { width: 9, height: 10, title: 'A', description: 'B', shapes: [], secondFrom: 6 };

test('a view stands alone: the first down to where the second begins, the second from there', () => {
  expect(toSvg(viewOf(two, 'first'), 'a')).toContain('viewBox="0 0 9 6"');
  expect(toSvg(viewOf(two, 'second'), 'a')).toContain('viewBox="0 6 9 4"');
});

test('a drawing of one view stays whole', () => {
  const { secondFrom: _, ...one } = two;
  expect(viewOf(one, 'second')).toEqual(one);
});

describe('a drawing of which a card shows one view', () => {
  const onCards = Object.entries(pageDrawings).flatMap(([name, make]) => {
    const { onCard, narrow } = make();
    return onCard ? [{ name, narrow }] : [];
  });

  test('there are some', () => {
    expect(onCards.length).toBeGreaterThan(0);
  });

  test.each(onCards)('$name parts between two lines of words, and cuts none', ({ narrow }) => {
    const { secondFrom = 0, height } = narrow;
    expect(secondFrom).toBeGreaterThan(0);
    expect(secondFrom).toBeLessThan(height);
    const all = words(narrow.shapes);
    const [above, below] = [all.filter(({ y }) => y < secondFrom), all.filter(({ y }) => y >= secondFrom)];
    expect(above.length).toBeGreaterThan(0);
    expect(below.length).toBeGreaterThan(0);
    // Letters hang a quarter of their size below their line, and stand on it.
    expect(Math.max(...above.map(({ y, size }) => y + size / 4))).toBeLessThanOrEqual(secondFrom);
    expect(Math.min(...below.map(({ y, size }) => y - size))).toBeGreaterThanOrEqual(secondFrom);
  });
});
