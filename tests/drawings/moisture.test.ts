import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import { moisture, screenFrom } from '../../src/calc/moisture/declaration.ts';
import type { MoistureScreen } from '../../src/calc/moisture/screen.ts';
import { moistureDrawing, spread } from '../../src/drawings/moisture.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { boxOf, cornersOf, isThick, numberAt, overlap, shapesOf } from './measure.ts';
import { type Element, readXml, wordsOf } from './xml.ts';

const rules = openRulebook(theProject().data);
type Entries = Readonly<Record<string, unknown>>;
const sizes = ['wide', 'narrow'] as const;

function screened(entries: Entries): MoistureScreen {
  const read = readFields(moisture.fields, entries);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return screenFrom(read.value, rules);
}
const sheet = (screen: MoistureScreen, size: (typeof sizes)[number]): Element =>
  readXml(toSvg(moistureDrawing(screen, size), `moisture-${size}`));

const many = Array.from({ length: 20 }, (_, place) => ({
  what: `a layer with a name that is far longer than a phone is wide, number ${place + 1}, <&">`,
  resistance: place % 3 === 0 ? '0.01 R' : '3 R',
  permeance: `${1 + place} perm`,
}));

const cases: readonly [what: string, entries: Entries][] = [
  ['the example', moisture.example],
  ['a roof that stays dry', { ...moisture.example, indoor_humidity: '10 %' }],
  ['deep cold', { ...moisture.example, outdoors: '-60 F', indoor_humidity: '90 %' }],
  [
    'air too dry to have a dew point outdoors',
    { ...moisture.example, outdoors: '-140 F', outdoor_humidity: '1 %' },
  ],
  ['the same on both sides', { ...moisture.example, outdoors: '70 F', outdoor_humidity: '40 %' }],
  ['twenty layers with long names', { ...moisture.example, layers: many }],
  [
    'two thin layers',
    { ...moisture.example, layers: [{ resistance: '0.1 R', permeance: '1 perm' }, { resistance: '0.02 R' }] },
  ],
  [
    'very thick layers',
    {
      ...moisture.example,
      layers: [
        { resistance: '500 R', permeance: '1 perm' },
        { resistance: '500 R', permeance: '9 perm' },
      ],
    },
  ],
];
const each = cases.flatMap(([what, entries]) => sizes.map((size) => ({ what, entries, size })));

describe('temperature against dew point', () => {
  test.each(each)('$what, $size: sound, on the sheet, no words on others', ({ entries, size }) => {
    const root = sheet(screened(entries), size);
    expect(JSON.stringify(root)).not.toMatch(/NaN|Infinity|undefined/);
    const [right, bottom] = [numberAt(root, 'width'), numberAt(root, 'height')];
    for (const shape of shapesOf(root)) {
      const box = boxOf(shape);
      if (box)
        expect([
          wordsOf(shape) || shape.name,
          box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom,
        ]).toEqual([wordsOf(shape) || shape.name, true]);
    }
    const texts = shapesOf(root).filter(({ name }) => name === 'text');
    for (const [place, one] of texts.entries())
      for (const other of texts.slice(place + 1)) {
        const [a, b] = [boxOf(one), boxOf(other)];
        expect([wordsOf(one), wordsOf(other), a && b && overlap(a, b)]).toEqual([
          wordsOf(one),
          wordsOf(other),
          false,
        ]);
      }
  });

  test.each(each)(
    '$what, $size: every layer is numbered once, and no two leaders meet',
    ({ entries, size }) => {
      const screen = screened(entries);
      const shapes = shapesOf(sheet(screen, size));
      const numbers = shapes.flatMap((words, place) => {
        const [leader] = shapes.slice(place + 1);
        const isNumber = words.name === 'text' && /^\d+(–\d+)?$/.test(wordsOf(words));
        return isNumber && words.attributes['font-weight'] && leader?.name === 'line'
          ? [{ words: wordsOf(words), from: numberAt(leader, 'x1'), to: numberAt(leader, 'x2') }]
          : [];
      });
      const told = numbers.flatMap(({ words }) => {
        const [first = 0, last = first] = words.split('–').map(Number);
        return Array.from({ length: last - first + 1 }, (_, more) => first + more);
      });
      expect(told).toEqual(screen.layers.map((_, layer) => layer + 1));
      for (const [place, { from, to }] of numbers.slice(1).entries()) {
        // A line is 0.7 wide: so far apart two are seen as two.
        expect(from - (numbers[place]?.from ?? 0)).toBeGreaterThan(3);
        expect(to - (numbers[place]?.to ?? 0)).toBeGreaterThan(3);
      }
    },
  );

  test('numbers stand as far apart as they are wide', () => {
    // By hand: half of 4 and half of 10 are 7; half of 10 and half of 2 are 6.
    expect(spread([5, 5, 5], [4, 10, 2], [0, 100])).toEqual([5, 12, 18]);
  });

  test.each(sizes)('%s: faces stand as far apart as the R between them', (size) => {
    const screen = screened(moisture.example);
    const faces = shapesOf(sheet(screen, size)).filter(
      (shape) => shape.attributes['stroke-dasharray'] === '14 3 2 3 2 3',
    );
    const at = faces.map((face) => numberAt(face, 'x1'));
    // 0.45, 6, 26, 0 and 0.17 from the room, by the entries; the roof has no R of its own.
    const sums = [0.61, 1.06, 7.06, 33.06, 33.23];
    expect(at).toHaveLength(sums.length);
    const perR = ((at[4] ?? 0) - (at[0] ?? 0)) / (33.23 - 0.61);
    // Drawn to a hundredth of a drawing unit.
    for (const [place, sum] of sums.entries())
      expect(Math.abs((at[place] ?? 0) - (at[0] ?? 0) - (sum - 0.61) * perR)).toBeLessThan(0.02);
  });

  test.each(sizes)(
    '%s: the circle stands on the line of the temperature, at the face where water gathers',
    (size) => {
      const screen = screened(moisture.example);
      const shapes = shapesOf(sheet(screen, size));
      const line = shapes.find((shape) => shape.name === 'path' && isThick(shape));
      const circle = shapes.filter(({ name }) => name === 'circle').at(-1);
      if (!line || !circle) throw new Error('found no line or no circle');
      const [from, to] = cornersOf(line);
      if (!from || !to) throw new Error('found no ends of the line');
      const share = 33.06 / 33.23;
      expect(numberAt(circle, 'cx')).toBeCloseTo(from[0] + share * (to[0] - from[0]), 1);
      expect(numberAt(circle, 'cy')).toBeCloseTo(from[1] + share * (to[1] - from[1]), 1);
      expect(amountIn(screen.coldest.temperature, 'F')).toBeCloseTo(70 - 55 * share, 9);
    },
  );

  test('says in words whether water gathers, and where', () => {
    const [wet, dry] = [moisture.example, { ...moisture.example, indoor_humidity: '10 %' }].map((entries) =>
      moistureDrawing(screened(entries), 'wide'),
    );
    expect(wet?.description).toContain('They meet between new fill and metal roof');
    expect(dry?.description).toContain('nothing gathers');
    expect(dry?.shapes.some(({ tag }) => tag === 'circle')).toBe(false);
  });

  test('numbers move apart, stay in order, and stay between the ends', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 21 }), (any) => {
        const wanted = any.sort((a, b) => a - b);
        const moved = spread(
          wanted,
          wanted.map(() => 15),
          [0, 300],
        );
        expect(moved).toHaveLength(wanted.length);
        for (const [place, here] of moved.entries()) {
          expect(here).toBeGreaterThanOrEqual(-1e-9);
          expect(here).toBeLessThanOrEqual(300 + 1e-9);
          if (place > 0) expect(here - (moved[place - 1] ?? 0)).toBeGreaterThanOrEqual(15 - 1e-6);
        }
      }),
    );
  });
});
