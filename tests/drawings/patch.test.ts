import { describe, expect, test } from 'vitest';
import { patchLayers } from '../../src/calc/patch/layers.ts';
import { patchLayersDrawing } from '../../src/drawings/patch-layers.ts';
import { PX_PER_INCH, patchTemplate } from '../../src/drawings/patch-template.ts';
import { screwOrderDrawing } from '../../src/drawings/screw-order.ts';
import { type Drawing, type Shape, toSvg } from '../../src/drawings/svg.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const rules = openRulebook(theProject().data);
const layersOf = (diameter: number) => patchLayers(quantity(diameter, 'in'), rules);
const sizes = ['wide', 'narrow'] as const;
const diameters = [1, 3, 6, 8.75, 12, 14, 20, 30] as const;
const each = sizes.flatMap((size) => diameters.map((diameter) => [size, diameter] as const));

const ofTag = ({ shapes }: Drawing, tag: string): Shape[] => shapes.filter((one) => one.tag === tag);
const number = (one: Shape, name: string): number => Number(one.attributes[name]);
/** A text with the box it takes, at a little over half its height a letter. */
const boxes = (drawing: Drawing) =>
  ofTag(drawing, 'text')
    .filter(({ attributes }) => attributes.transform === undefined)
    .map((one) => {
      const words = String(one.children[0]);
      const size = Number(one.attributes['font-size'] ?? 13);
      const wide = words.length * size * 0.56;
      const x = number(one, 'x');
      const anchor = one.attributes['text-anchor'];
      const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
      return {
        words,
        left,
        right: left + wide,
        top: number(one, 'y') - size * 0.75,
        bottom: number(one, 'y'),
      };
    });

const drawn = (size: (typeof sizes)[number], diameter: number): [string, Drawing][] => [
  ['layers', patchLayersDrawing(layersOf(diameter), size, 'drawing')],
  ['screws', screwOrderDrawing(layersOf(diameter), size)],
];

describe('every drawing of a patch', () => {
  test.each(each)(
    '%s, over a hole of %d in: no word runs over another or off the sheet',
    (size, diameter) => {
      for (const [name, drawing] of drawn(size, diameter)) {
        const all = boxes(drawing);
        for (const [place, one] of all.entries()) {
          expect([
            name,
            one.words,
            one.left >= 0 && one.right <= drawing.width && one.bottom <= drawing.height,
          ]).toEqual([name, one.words, true]);
          const over = all
            .slice(place + 1)
            .filter(
              (two) =>
                one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom,
            )
            .map(({ words }) => `${one.words} / ${words}`);
          expect([name, over]).toEqual([name, []]);
        }
      }
    },
  );

  test.each(each)('%s, over a hole of %d in: every number is finite', (size, diameter) => {
    for (const [, drawing] of drawn(size, diameter))
      expect(toSvg(drawing, 'a')).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('the layers are to one scale: 14 in, 10 in and 6 in', () => {
    for (const size of sizes) {
      const drawing = patchLayersDrawing(layersOf(6), size, 'a');
      const [membrane, metal] = ofTag(drawing, 'rect').map((one) => number(one, 'width'));
      const [hole] = ofTag(drawing, 'circle').map((one) => 2 * number(one, 'r'));
      expect((metal ?? 0) / (membrane ?? 1)).toBeCloseTo(10 / 14, 12);
      expect((hole ?? 0) / (membrane ?? 1)).toBeCloseTo(6 / 14, 12);
    }
  });
});

describe('the words of a hole', () => {
  test.each(sizes)('%s: stand over a small one, and do not hide it', (size) => {
    const drawing = patchLayersDrawing(layersOf(0.5), size, 'a');
    const [hole] = ofTag(drawing, 'circle');
    const words = boxes(drawing).find((one) => one.words === 'hole 1/2 in');
    expect(words?.bottom).toBeLessThan(hole ? number(hole, 'cy') - number(hole, 'r') : Number.NaN);
  });
});

describe('the screws in driving order', () => {
  test.each(each)(
    '%s, over a hole of %d in: each screw is drawn once, the four middles are numbered',
    (size, diameter) => {
      const layers = layersOf(diameter);
      const drawing = screwOrderDrawing(layers, size);
      expect(
        ofTag(drawing, 'circle').filter(({ attributes }) => attributes.fill === 'currentColor'),
      ).toHaveLength(layers.map.screws.length);
      const words = boxes(drawing).map((one) => one.words);
      expect(words).toEqual(expect.arrayContaining(['1', '2', '3', '4']));
    },
  );

  test.each(each)('%s, over a hole of %d in: no words stand on its circle', (size, diameter) => {
    const drawing = screwOrderDrawing(layersOf(diameter), size);
    const hole = ofTag(drawing, 'circle').find(({ attributes }) => attributes['stroke-dasharray']);
    if (!hole) throw new Error('found no dashed circle');
    const [cx, cy, r] = [number(hole, 'cx'), number(hole, 'cy'), number(hole, 'r')];
    const on = boxes(drawing).filter(({ left, right, top, bottom }) => {
      const [nearest, farthest] = (
        [
          [Math.max(left - cx, cx - right, 0), Math.max(top - cy, cy - bottom, 0)],
          [Math.max(right - cx, cx - left), Math.max(bottom - cy, cy - top)],
        ] as const
      ).map(([x, y]) => Math.hypot(x, y));
      return (nearest ?? 0) < r && r < (farthest ?? 0);
    });
    expect(on.map(({ words }) => words)).toEqual([]);
  });

  test('of the rulebook’s patch bear every number, on a phone too', () => {
    const words = boxes(screwOrderDrawing(layersOf(6), 'narrow')).map((one) => one.words);
    expect(
      words
        .filter((one) => /^\d+$/.test(one))
        .map(Number)
        .sort((a, b) => a - b),
    ).toEqual(Array.from({ length: 36 }, (_, place) => place + 1));
  });
});

describe('the marking template', () => {
  const template = patchTemplate(layersOf(6));
  if (!template) throw new Error('found no template for a hole of 6 in, expected one');

  test('is drawn at 96 to the inch: bars of 1 in both ways, metal 10 in wide and 5 in high', () => {
    const bars = ofTag(template, 'rect').filter(({ attributes }) => attributes['data-bar'] !== undefined);
    expect(bars.map((one) => Math.max(number(one, 'width'), number(one, 'height')))).toEqual([96, 96]);
    expect(PX_PER_INCH).toBe(96);
    const outline = String(ofTag(template, 'path')[0]?.attributes.d);
    const points = [...outline.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    const [xs, ys] = [points.map(([x = 0]) => x), points.map(([, y = 0]) => y)];
    expect((Math.max(...xs) - Math.min(...xs)) / 96).toBeCloseTo(10, 9);
    expect((Math.max(...ys) - Math.min(...ys)) / 96).toBeCloseTo(5, 9);
  });

  test('fits Letter and A4 on their side, 10 mm from every edge', () => {
    const margin = 2 * (10 / 25.4);
    expect(template.width / 96).toBeLessThanOrEqual(Math.min(11, 297 / 25.4) - margin);
    expect(template.height / 96).toBeLessThanOrEqual(Math.min(8.5, 210 / 25.4) - margin);
  });

  test('names every screw: those of its half, and where each comes to lie when it is turned', () => {
    const pairs = boxes(template).flatMap(({ words }) =>
      /^\d+\/\d+$/.test(words) ? [words.split('/').map(Number)] : [],
    );
    expect([...new Set(pairs.flat())].sort((a, b) => (a ?? 0) - (b ?? 0))).toEqual(
      Array.from({ length: 36 }, (_, place) => place + 1),
    );
    const screws = layersOf(6).map.screws;
    for (const [a = 0, b = 0] of pairs) {
      expect(screws[a - 1]?.x).toBeCloseTo(-(screws[b - 1]?.x ?? 99), 9);
      expect(screws[a - 1]?.y).toBeCloseTo(-(screws[b - 1]?.y ?? 99), 9);
    }
  });

  test('no word runs over another or off the sheet', () => {
    const all = boxes(template);
    for (const [place, one] of all.entries()) {
      expect([
        one.words,
        one.left >= 0 && one.right <= template.width && one.bottom <= template.height,
      ]).toEqual([one.words, true]);
      for (const two of all.slice(place + 1)) {
        const apart =
          one.right <= two.left || two.right <= one.left || one.bottom <= two.top || two.bottom <= one.top;
        expect([one.words, two.words, apart]).toEqual([one.words, two.words, true]);
      }
    }
  });

  test('is not made where half a square does not fit on a sheet', () => {
    expect(patchTemplate(layersOf(6.25))).toBeUndefined();
    expect(patchTemplate(layersOf(20))).toBeUndefined();
    expect(patchTemplate(layersOf(4))).toBeDefined();
  });
});
