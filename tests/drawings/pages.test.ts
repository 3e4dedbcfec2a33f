import { describe, expect, test } from 'vitest';
import { cavitySection } from '../../src/calc/cavity/section.ts';
import { hoseMarks } from '../../src/calc/marks/marks.ts';
import { ringAbout } from '../../src/calc/ways/flue-ring.ts';
import { gableLanes } from '../../src/calc/ways/lanes.ts';
import { examplePlan, pageDrawings } from '../../src/components/drawings.ts';
import { flueDamDrawing } from '../../src/drawings/flue-dam.ts';
import { gableOpeningDrawing } from '../../src/drawings/gable-opening.ts';
import { hosePathDrawing } from '../../src/drawings/hose-path.ts';
import { type Drawing, toSvg } from '../../src/drawings/svg.ts';
import { type Quantity, quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { data } from '../job/entries.ts';
import {
  type Box,
  boxOf,
  cornersOf,
  dimensionsOf,
  inchesSaid,
  isThick,
  numberAt,
  overlap,
  type Point,
  shapesOf,
} from './measure.ts';
import { type Element, everyElement, readXml, wordsOf } from './xml.ts';

const sizes = ['wide', 'narrow'] as const;
const made = new Map(Object.entries(pageDrawings).map(([name, make]) => [name, make()]));
const drawn = (name: string, size: (typeof sizes)[number]): Element => {
  const found = made.get(name);
  if (!found) throw new Error(`found no drawing ${name}`);
  return readXml(toSvg(found[size], `${name}-${size}`));
};
/** Those drawn for pages alone; the others are looked at where their job or their calculation is. */
const forPages = ['cavity', 'truss-kinds', 'hose-path', 'edge-lifting', 'gable-opening', 'flue-dam'];
const patch = ['patch-layers', 'screw-order'];
const each = sizes.flatMap((size) => [...forPages, ...patch].map((name) => [name, size] as const));
const eachForPages = each.filter(([name]) => forPages.includes(name));

/** Letters in the widest of the usual faces are a little over half their size wide, more so bold ones. */
const textBox = (shape: Element): Box => {
  const box = boxOf(shape);
  if (!box) throw new Error('found no box about a text');
  const more = (shape.attributes['font-weight'] === undefined ? 1.1 : 1.18) - 1;
  const upright = shape.attributes.transform === undefined;
  const long = upright ? box.right - box.left : box.bottom - box.top;
  const anchor = shape.attributes['text-anchor'];
  const [before, after] = anchor === 'start' ? [0, 1] : anchor === 'end' ? [1, 0] : [0.5, 0.5];
  return upright
    ? { ...box, left: box.left - long * more * before, right: box.right + long * more * after }
    : { ...box, top: box.top - long * more * after, bottom: box.bottom + long * more * before };
};

/** Where a line from left to right stands over a place. */
const heightOver = (corners: readonly Point[], at: number): number => {
  const place = corners.findIndex(([x]) => x >= at);
  const [[ax, ay] = [Number.NaN, Number.NaN], [bx, by] = [Number.NaN, Number.NaN]] = [
    corners[place - 1],
    corners[place],
  ];
  return ay + ((by - ay) * (at - ax)) / (bx - ax);
};

const textsOf = (root: Element): Element[] => shapesOf(root).filter(({ name }) => name === 'text');

/** Every straight stroke with a pen. */
const strokesOf = (root: Element): (readonly [Point, Point])[] =>
  shapesOf(root).flatMap((shape) => {
    if (shape.attributes.stroke === undefined) return [];
    if (shape.name === 'line')
      return [
        [
          [numberAt(shape, 'x1'), numberAt(shape, 'y1')],
          [numberAt(shape, 'x2'), numberAt(shape, 'y2')],
        ] as const,
      ];
    if (shape.name !== 'path') return [];
    const corners = cornersOf(shape);
    const [first] = corners;
    const all = shape.attributes.d?.endsWith('Z') && first ? [...corners, first] : corners;
    return all.slice(1).map((to, place): readonly [Point, Point] => [all[place] ?? to, to]);
  });

/** Does a stroke run through a box? Looked at in steps finer than a letter is high. */
const runsThrough = ([[ax, ay], [bx, by]]: readonly [Point, Point], box: Box): boolean => {
  const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay)));
  return Array.from({ length: steps + 1 }, (_, step) => step / steps).some((share) => {
    const [x, y] = [ax + share * (bx - ax), ay + share * (by - ay)];
    return x > box.left && x < box.right && y > box.top && y < box.bottom;
  });
};

describe('every drawing that pages may show', () => {
  test.each(each)(
    '%s, %s: is sound XML with a title, a description that tells a figure, and ids of its own',
    (name, size) => {
      const root = drawn(name, size);
      const all = everyElement(root);
      const ids = all.flatMap(({ attributes }) => attributes.id ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      const named = all.flatMap(({ attributes }) =>
        Object.values(attributes).flatMap((value) =>
          [...value.matchAll(/url\(#([^)]*)\)/g)].map(([, id]) => id),
        ),
      );
      expect(ids).toEqual(expect.arrayContaining(named));
      const [title, description] = shapesOf(root);
      expect([title?.name, description?.name]).toEqual(['title', 'desc']);
      expect(title && wordsOf(title)).toMatch(/\S/);
      expect(description && wordsOf(description)).toMatch(/\d.*\bin\b/);
      expect(JSON.stringify(root)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
    },
  );

  test.each(each)('%s, %s: nothing lies beyond the edge of its sheet', (name, size) => {
    const root = drawn(name, size);
    const [right, bottom] = [Number(root.attributes.width), Number(root.attributes.height)];
    const off = shapesOf(root).flatMap((shape) => {
      const box = shape.name === 'text' ? textBox(shape) : boxOf(shape);
      const on = !box || (box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom);
      return on ? [] : [`${shape.name} ${wordsOf(shape)} ${JSON.stringify(box)}`];
    });
    expect(off).toEqual([]);
  });

  test.each(each)('%s, %s: no words stand on others', (name, size) => {
    const texts = textsOf(drawn(name, size));
    const over = texts.flatMap((one, place) =>
      texts
        .slice(place + 1)
        .filter((other) => overlap(textBox(one), textBox(other)))
        .map((other) => `${wordsOf(one)} on ${wordsOf(other)}`),
    );
    expect(over).toEqual([]);
  });

  test.each(eachForPages)('%s, %s: no line runs through words', (name, size) => {
    const root = drawn(name, size);
    const strokes = strokesOf(root);
    // The numbers of the pushes stand where the hose's own card has them, beside their line.
    const words = textsOf(root).filter((shape) => !(name === 'hose-path' && /^\d+$/.test(wordsOf(shape))));
    const through = words.filter((shape) => strokes.some((stroke) => runsThrough(stroke, textBox(shape))));
    expect(through.map(wordsOf)).toEqual([]);
  });

  test.each(each)(
    '%s, %s: its words are legible on a phone, and on a page where it is made smaller',
    (name, size) => {
      const root = drawn(name, size);
      expect(Number(root.attributes.width)).toBeLessThanOrEqual(size === 'narrow' ? 340 : 850);
      for (const shape of textsOf(root))
        expect(Number(shape.attributes['font-size'] ?? 13)).toBeGreaterThanOrEqual(11);
    },
  );
});

/** Drawing units to an inch, of every scale bar in a drawing. */
const scalesOf = (root: Element): number[] => {
  const shapes = shapesOf(root);
  const isPart = (shape: Element | undefined): boolean =>
    shape?.name === 'rect' && shape.attributes.height === '5';
  return shapes.flatMap((shape, place) => {
    if (!isPart(shape) || isPart(shapes[place - 1])) return [];
    const end = shapes[place + 6];
    const long = shapes.slice(place, place + 4).reduce((sum, part) => sum + numberAt(part, 'width'), 0);
    return end ? [long / inchesSaid(wordsOf(end))] : [];
  });
};

/** The inches that a dimension says, whatever word stands before them. */
const said = (words: string): number => inchesSaid(words.replace(/^\D+/, ''));

/** What each drawing's dimensions say: the example job (166 in wide, 3 in at the eave, 15 in at the ridge, 66 ft long), the calculators' examples, the rules. */
const expected: Readonly<Record<string, Readonly<Record<(typeof sizes)[number], readonly string[]>>>> = {
  cavity: {
    wide: ['heel 3 in', '15 in', '6 ft 11 in'],
    narrow: ['heel 3 in', '15 in', '6 ft 11 in'],
  },
  'truss-kinds': {
    wide: ['3 in', '15 in', '3 in', '15 in', '3 in', '15 in', '13 ft 10 in'],
    narrow: ['3 in', '15 in', '3 in', '15 in', '3 in', '15 in', '13 ft 10 in'],
  },
  // Hole 5 ft 7 in from its eave, so 8 ft 3 in to the other; 6 in short of it the mark is at 7 ft 9 in.
  'hose-path': {
    wide: ['16 in', '6 in', '7 ft 9 in', '13 ft 10 in', '14 ft'],
    narrow: ['16 in', '6 in', '7 ft 9 in', '13 ft 10 in', '14 ft'],
  },
  'edge-lifting': { wide: ['2 in', '4 1/2 in'], narrow: ['2 in', '4 1/2 in'] },
  // 166 in by four lanes is 41.5 in; 66 ft less twice the 25 ft of the reach is 16 ft.
  'gable-opening': {
    wide: [...Array(4).fill('3 ft 5 1/2 in'), '25 ft', '16 ft', '25 ft', '66 ft'],
    narrow: [...Array(2).fill('3 ft 5 1/2 in'), '25 ft', '16 ft', '25 ft', '66 ft'],
  },
  // A flue of 12 in with 2 in on both sides is 16 in.
  'flue-dam': { wide: ['12 in', '2 in', '2 in', '16 in'], narrow: ['12 in', '2 in', '2 in', '16 in'] },
  'patch-layers': {
    wide: ['14 in', '10 in', '6 in', '2 in', '2 in'],
    narrow: ['14 in', '10 in', '6 in', '2 in', '2 in'],
  },
  'screw-order': { wide: ['10 in', '1 in'], narrow: ['10 in', '1 in'] },
};

describe('the dimensions of the drawings on pages', () => {
  test.each(each)('%s, %s: say what the rules and the examples say', (name, size) => {
    expect(dimensionsOf(drawn(name, size)).map(({ words }) => words)).toEqual(expected[name]?.[size]);
  });

  test.each(each)(
    '%s, %s: are to the scale of a bar on their sheet, to a hundredth of a drawing unit',
    (name, size) => {
      const root = drawn(name, size);
      const all = dimensionsOf(root);
      const bars = scalesOf(root);
      // The screws have no bar: their square is the measure of the rest.
      const scales = bars.length > 0 ? bars : all.slice(0, 1).map(({ words, drawn }) => drawn / said(words));
      const wrong = all.filter(({ words, drawn }) =>
        scales.every((perInch) => Math.abs(drawn - said(words) * perInch) > 0.03 + 0.001 * drawn),
      );
      expect(wrong).toEqual([]);
    },
  );
});

describe('a push that is told on a drawing stops short of what it runs at, though it is read to the eighth', () => {
  const rules = openRulebook(data);
  const level = (width: Quantity<'length'>) =>
    cavitySection({ shape: 'level', width, eave: quantity(10, 'in'), ridge: undefined, points: undefined });
  const wordsOn = (made: Drawing): string[] =>
    dimensionsOf(readXml(toSvg(made, 'made'))).map(({ words }) => words);

  /** A flue 120.24 in along, its ring 10 in across, the hose 2 in wide: 120.24 - 6 = 114.24 in, 9 ft 6 1/8 in to the eighth below. */
  test.each(sizes)('at the ring about a flue, %s', (size) => {
    const rings = [
      ringAbout(
        { along: quantity(10.02, 'ft'), at: quantity(6, 'ft'), across: quantity(6, 'in'), ring: undefined },
        rules,
      ),
    ];
    const cavity = {
      section: level(quantity(12, 'ft')),
      oldDepth: quantity(2, 'in'),
      length: quantity(40, 'ft'),
      rings,
    };
    const found = gableLanes(
      {
        ...cavity,
        ends: 'both ends',
        spread: quantity(6, 'ft'),
        trussSpacing: undefined,
        density: quantity(1.5, 'lb/ft3'),
        bagWeight: quantity(30, 'lb/bag'),
      },
      rules,
    );
    const made = gableOpeningDrawing(found, cavity, rules, size, 'made');
    expect(wordsOn(made)).toContain('9 ft 6 1/8 in');
    expect(made.description).toMatch('From each end a push covers 9 ft 6 1/8 in of 40 ft');
  });

  /** From 67 in, where the hole is, 6 in short of 166.224 in: 93.224 in, 7 ft 9 1/8 in to the eighth below. */
  test.each(sizes)('at the tape mark, %s', (size) => {
    const width = quantity(13.852, 'ft');
    const found = hoseMarks(
      {
        along: quantity(7, 'ft'),
        from: quantity(0, 'ft'),
        to: quantity(14, 'ft'),
        width,
        across: quantity(67, 'in'),
        streamReach: quantity(2, 'ft'),
        standOff: quantity(6, 'in'),
        startingEnd: 'right hand',
      },
      rules,
    );
    const cavity = { section: level(width), oldDepth: quantity(2, 'in') };
    const made = hosePathDrawing(found, cavity, rules, size, 'made');
    expect(wordsOn(made)).toContain('7 ft 9 1/8 in');
    expect(made.description).toMatch('in to its tape mark at 7 ft 9 1/8 in.');
  });
});

describe('the shapes of the drawings on pages', () => {
  /** By hand: (3 + 15) / 2 · 166 = 1494 in2 for both straight ones; 1831.5353 in2 under the arc. In square feet 10.375 and 12.72. */
  test.each(sizes)('the kinds of truss tell the areas worked by hand, %s', (size) => {
    const words = textsOf(drawn('truss-kinds', size)).map(wordsOf);
    expect(words.filter((each) => each.startsWith('area'))).toEqual([
      'area 10.4 ft²',
      'area 12.7 ft²',
      'area 10.4 ft²',
    ]);
  });

  /** A quarter across, by hand: straight 9 in; on the arc of radius 293.04 in 12.05 in; on one slope 6 in. */
  test.each(sizes)('the kinds of truss are as high a quarter across as worked by hand, %s', (size) => {
    const root = drawn('truss-kinds', size);
    const [perInch = Number.NaN] = scalesOf(root);
    const outlines = shapesOf(root).filter(
      (shape) => shape.name === 'path' && isThick(shape) && shape.attributes.d?.endsWith('Z'),
    );
    const heights = outlines.map((outline) => {
      // Along the ceiling's end, up over the top: the last corner is the other end of the ceiling.
      const [[left, ceiling] = [Number.NaN, Number.NaN], ...top] = cornersOf(outline).slice(0, -1);
      // Drawing units are written to a hundredth, so the bar's own inch is off by a little.
      return (ceiling - heightOver(top, left + 41.5 * perInch)) / perInch;
    });
    expect(heights).toHaveLength(3);
    for (const [place, height] of [9, 12.047, 6].entries())
      expect(Math.abs((heights[place] ?? Number.NaN) - height)).toBeLessThan(0.02);
  });

  test.each(sizes)('the hose goes in at its width through a hole at its width, %s', (size) => {
    const words = textsOf(drawn('hose-path', size)).map(wordsOf);
    expect(words).toEqual(expect.arrayContaining(['hose, 2 in', 'hole, 6 in', 'tape mark, at the roof']));
  });

  test.each(sizes)('the ring about the flue is to scale from above, and follows the rule, %s', (size) => {
    const clearance = data.rules['clearance.flue.to-combustibles'];
    if (clearance?.value.kind !== 'at-least') throw new Error('found no least clearance');
    const wider = openRulebook({
      ...data,
      rules: {
        ...data.rules,
        'clearance.flue.to-combustibles': { ...clearance, value: { ...clearance.value, number: 3 } },
      },
    });
    for (const [rules, inches] of [
      [openRulebook(data), 2],
      [wider, 3],
    ] as const) {
      const root = readXml(toSvg(flueDamDrawing(examplePlan, rules, size, 'flue'), 'flue'));
      const [perInch = Number.NaN] = scalesOf(root);
      const radii = shapesOf(root).flatMap((shape) =>
        shape.name === 'circle' && isThick(shape) ? [numberAt(shape, 'r') / perInch] : [],
      );
      expect(radii.map((radius) => Math.round(radius * 100) / 100)).toEqual([6 + inches, 6]);
      expect(dimensionsOf(root).map(({ words }) => words)).toContain(`${12 + 2 * inches} in`);
    }
  });
});
