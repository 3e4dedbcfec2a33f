import { describe, expect, test } from 'vitest';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import { hoseMarkFields, hoseMarkings, marksFrom } from '../../src/calc/marks/declaration.ts';
import { type HoseMarks, hoseMarks } from '../../src/calc/marks/marks.ts';
import { hoseCard } from '../../src/drawings/hose-card.ts';
import { hosePlan } from '../../src/drawings/hose-plan.ts';
import { drawnStretch } from '../../src/drawings/past-stretch.ts';
import { toSvg } from '../../src/drawings/svg.ts';
import { format } from '../../src/quantity/format.ts';
import { amountIn, quantity } from '../../src/quantity/quantity.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import {
  boxOf,
  cornersOf,
  dimensionsOf,
  inchesSaid,
  isThick,
  numberAt,
  overlap,
  type Point,
  scaleBarOf,
  shapesOf,
} from './measure.ts';
import { type Element, readXml, wordsOf } from './xml.ts';

const rules = openRulebook(theProject().data);
type Entries = Readonly<Record<string, unknown>>;
const sizes = ['wide', 'narrow'] as const;
type Size = (typeof sizes)[number];

function marked(entries: Entries): HoseMarks {
  const read = readFields(hoseMarkFields, entries);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return marksFrom(read.value, rules);
}
const card = (found: HoseMarks, size: Size): Element =>
  readXml(toSvg(hoseCard(found, rules, size, { ridge: quantity(83, 'in') }), `hose-${size}`));

const square: Entries = {
  along: '10 ft',
  from: '6 ft',
  to: '14 ft',
  width: '8 ft',
  across: '4 ft',
  stream_reach: '3 ft',
};
const cases: readonly [what: string, entries: Entries][] = [
  ['the example', hoseMarkings.example],
  ['a square stretch', square],
  ['the starting end on the left hand', { ...hoseMarkings.example, starting_end: 'left hand' }],
  ['an opening in the corner', { ...square, along: '6 ft', across: '0 in' }],
  ['a flue close by', { ...square, flues: [{ along: '10 ft', at: '6 ft 6 in', across: '6 in' }] }],
  [
    'two flues',
    {
      ...square,
      flues: [
        { along: '12 ft', at: '6 ft', across: '8 in' },
        { along: '8 ft', at: '2 ft', across: '6 in' },
      ],
    },
  ],
  [
    'pushes that may not reach',
    { along: '30 ft', from: '0 ft', to: '60 ft', width: '13 ft', across: '5 ft', stream_reach: '5 ft 4 in' },
  ],
  ['a stretch as long as the roof, with a flue', { ...hoseMarkings.example, from: '1 ft', to: '66 ft' }],
  ['a flue outside the stretch', { ...hoseMarkings.example, from: '20 ft', to: '23 ft' }],
  [
    'a flue that almost touches the opening',
    { ...square, flues: [{ along: '11 ft 3 in', at: '3 ft 10 in', across: '12 in' }] },
  ],
  ['the most directions', { ...square, stream_reach: '3 in' }],
  [
    'a stretch far longer than wide',
    { along: '100 ft', from: '0 ft', to: '200 ft', width: '4 ft', across: '1 ft', stream_reach: '2 ft' },
  ],
  [
    'a stretch far wider than long',
    { along: '1 ft', from: '0 ft', to: '2 ft', width: '40 ft', across: '20 ft', stream_reach: '2 ft' },
  ],
  [
    'odd lengths',
    {
      along: '21 ft 6 1/8 in',
      from: '14 ft 6 3/8 in',
      to: '28 ft 1/4 in',
      width: '4.2 m',
      across: '1.7 m',
      stream_reach: '60 cm',
    },
  ],
];
const each = cases.flatMap(([what, entries]) => sizes.map((size) => ({ what, entries, size })));

/** Lines from the opening: a push each; then a dot at its end. */
function raysOf(root: Element): { readonly from: readonly [number, number]; readonly length: number }[] {
  const shapes = shapesOf(root);
  return shapes.flatMap((line, place) => {
    const dot = shapes[place + 1];
    if (line.name !== 'line' || dot?.name !== 'circle' || dot.attributes.r !== '2.4') return [];
    const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((name) => numberAt(line, name)) as [
      number,
      number,
      number,
      number,
    ];
    expect([numberAt(dot, 'cx'), numberAt(dot, 'cy')]).toEqual([x2, y2]);
    return [{ from: [x1, y1] as const, length: Math.hypot(x2 - x1, y2 - y1) }];
  });
}

type Line = readonly [from: Point, to: Point];

/** The leaders of the numbers: a line each, after the dot at the end of a push and before its number. */
function leadersOf(root: Element): { readonly number: string; readonly line: Line }[] {
  const shapes = shapesOf(root);
  return shapes.flatMap((line, place) => {
    const [dot, words] = [shapes[place - 1], shapes[place + 1]];
    if (line.name !== 'line' || dot?.attributes.r !== '2.4' || words?.name !== 'text') return [];
    const at = (x: string, y: string): Point => [numberAt(line, x), numberAt(line, y)];
    return [{ number: wordsOf(words), line: [at('x1', 'y1'), at('x2', 'y2')] }];
  });
}

/** On which side of a line does a place lie? */
const sideOf = ([[ax, ay], [bx, by]]: Line, [x, y]: Point): number =>
  Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
/** Two lines cross where the ends of each lie on two sides of the other. */
const cross = (one: Line, other: Line): boolean =>
  [
    [one, other],
    [other, one],
  ].every(([a, b]) => a && b && sideOf(a, b[0]) * sideOf(a, b[1]) < 0);

/** Stretches of every length that a roof has, the opening in the middle and towards an end, with a flue beside it and without. */
const stretches = [4, 8, 14, 20, 30, 44, 66].flatMap((feet) =>
  [0.5, 0.3, 0.1].flatMap((share) =>
    (
      [
        ['8 ft', '4 ft'],
        ['15 ft 6 in', '6 ft 5 in'],
      ] as const
    ).flatMap(([width, across]) =>
      ['2 ft', '5 ft 4 in'].flatMap((reach) =>
        [true, false].map((flue) => {
          const along = Math.round(feet * 12 * share);
          const flues = [{ along: `${along + 30} in`, at: '6 ft 8 in', across: '6 in' }];
          return {
            what: `${feet} ft by ${width}, opening at ${along} in, stream of ${reach}${flue ? ', a flue' : ''}`,
            entries: {
              along: `${along} in`,
              from: '0 ft',
              to: `${feet} ft`,
              width,
              across,
              stream_reach: reach,
              ...(flue ? { flues } : {}),
            },
          };
        }),
      ),
    ),
  ),
);

/** The scale, from the two eaves: drawn thick, as far apart as the cavity is wide. */
function perInchOf(root: Element, found: HoseMarks): number {
  const eaves = shapesOf(root).filter((shape) => shape.name === 'line' && isThick(shape));
  const ys = eaves.map((eave) => numberAt(eave, 'y1'));
  return (Math.max(...ys) - Math.min(...ys)) / amountIn(found.opening.width, 'in');
}

describe('the card of an opening', () => {
  test.each(each)('$what, $size: sound, and on the sheet', ({ entries, size }) => {
    const root = card(marked(entries), size);
    expect(JSON.stringify(root)).not.toMatch(/NaN|Infinity|undefined/);
    const [right, bottom] = [numberAt(root, 'width'), numberAt(root, 'height')];
    const off = shapesOf(root).filter((shape) => {
      const box = boxOf(shape);
      return box && !(box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom);
    });
    expect(off.map((shape) => wordsOf(shape) || shape.name)).toEqual([]);
  });

  test.each(each)('$what, $size: no words stand on others', ({ entries, size }) => {
    const texts = shapesOf(card(marked(entries), size)).filter(({ name }) => name === 'text');
    const clashes = texts.flatMap((one, place) =>
      texts.slice(place + 1).flatMap((other) => {
        const [a, b] = [boxOf(one), boxOf(other)];
        return a && b && overlap(a, b) ? [`${wordsOf(one)} on ${wordsOf(other)}`] : [];
      }),
    );
    expect(clashes).toEqual([]);
  });

  test.each(each)(
    '$what, $size: a line a push from the opening, as long as the tape says at the scale',
    ({ entries, size }) => {
      const found = marked(entries);
      const root = card(found, size);
      const [rays, perInch] = [raysOf(root), perInchOf(root, found)];
      expect(rays).toHaveLength(found.marks.length);
      for (const [place, { mark }] of found.marks.entries()) {
        const ray = rays[place];
        // Ends are drawn to a hundredth of a drawing unit, and so is the scale, over the width of the cavity.
        const off = 0.03 + amountIn(mark, 'in') * (0.02 / amountIn(found.opening.width, 'in'));
        expect(Math.abs((ray?.length ?? 0) - amountIn(mark, 'in') * perInch)).toBeLessThan(off);
        expect(ray?.from).toEqual(rays[0]?.from);
      }
    },
  );

  test.each(each)('$what, $size: dimensions and the scale bar measure what they say', ({ entries, size }) => {
    const found = marked(entries);
    const root = card(found, size);
    const perInch = perInchOf(root, found);
    const share = 0.03 / amountIn(found.opening.width, 'in') / perInch;
    const dimensions = dimensionsOf(root);
    expect(dimensions.length).toBeGreaterThanOrEqual(2);
    for (const { words, drawn } of dimensions) {
      const said = inchesSaid(words);
      // Read to the eighth, drawn to the hundredth.
      expect(Math.abs(drawn / perInch - said)).toBeLessThan(1 / 15 + 0.03 / perInch + said * share);
    }
    const bar = scaleBarOf(root);
    if (bar) expect(Math.abs(bar.drawn / perInch - bar.said)).toBeLessThan(0.05 / perInch + bar.said * share);
  });

  test.each(each)(
    '$what, $size: the list has every push once, in order, where the tape goes',
    ({ entries, size }) => {
      const found = marked(entries);
      const words = shapesOf(card(found, size))
        .filter(({ name }) => name === 'text')
        .map(wordsOf);
      const listed = found.marks.map(({ order, clock, mark, word, stopsAtRing }) => [
        `${order}${word === 'reaches' ? '' : '*'}${stopsAtRing ? '+' : ''}`,
        clock,
        format(mark, { tape: 8, round: 'down' }),
      ]);
      const first = words.findIndex((_, place) => words.slice(place, place + 3).join() === listed[0]?.join());
      expect(words.slice(first, first + 3 * listed.length)).toEqual(listed.flat());
      expect(words.some((each) => each.startsWith('* the hose may not'))).toBe(
        found.marks.some(({ word }) => word !== 'reaches'),
      );
      expect(words.some((each) => each.startsWith('+ stops before'))).toBe(
        found.marks.some(({ stopsAtRing }) => stopsAtRing),
      );
    },
  );

  test.each(each)('$what, $size: each push has its number on the plan, once', ({ entries, size }) => {
    const found = marked(entries);
    const root = card(found, size);
    const onPlan = shapesOf(root).filter(
      ({ name, attributes }) =>
        name === 'text' && attributes['font-weight'] !== undefined && attributes['text-anchor'] === 'middle',
    );
    expect(
      onPlan
        .map(wordsOf)
        .map(Number)
        .sort((a, b) => a - b),
    ).toEqual(found.marks.map(({ order }) => order));
  });

  test.each(sizes)('%s: the leader of no number crosses that of another', (size) => {
    const all = stretches.flatMap(({ what, entries }) => {
      const leaders = leadersOf(card(marked(entries), size));
      return leaders.map(({ number, line }, place) => ({
        what: `${what}: ${number}`,
        crossed: leaders.slice(place + 1).filter((other) => cross(line, other.line)),
      }));
    });
    // Where all numbers stood beside their pushes, this would hold of nothing.
    expect(all.length).toBeGreaterThan(stretches.length);
    expect(
      all.flatMap(({ what, crossed }) => crossed.map(({ number }) => `${what} crosses ${number}`)),
    ).toEqual([]);
  });

  test('two lines cross where each parts the ends of the other', () => {
    const level: Line = [
      [0, 0],
      [4, 0],
    ];
    const upright = (x: number): Line => [
      [x, -1],
      [x, 1],
    ];
    expect([upright(2), upright(5)].map((other) => cross(level, other))).toEqual([true, false]);
  });

  test.each(sizes)(
    '%s: the number of a push that stops at once stands on no ring and not on the opening',
    (size) => {
      const found = marked({
        ...square,
        flues: [{ along: '11 ft 3 in', at: '3 ft 10 in', across: '12 in' }],
      });
      const shapes = shapesOf(card(found, size));
      const stopped = found.marks.filter(({ stopsAtRing }) => stopsAtRing).map(({ order }) => String(order));
      const rings = shapes.filter(
        ({ name, attributes }) => name === 'circle' && attributes.stroke !== undefined,
      );
      const numbers = shapes.filter(
        (shape) => shape.attributes['text-anchor'] === 'middle' && stopped.includes(wordsOf(shape)),
      );
      expect(stopped.length).toBeGreaterThan(0);
      for (const number of numbers)
        for (const ring of rings) {
          const [a, b] = [boxOf(number), boxOf(ring)];
          expect(a && b && overlap(a, b)).toBe(false);
        }
    },
  );

  test.each(sizes)('%s: a flue is thick and what is kept open about it dashed, as on the roof', (size) => {
    const circles = shapesOf(card(marked(hoseMarkings.example), size)).filter(
      ({ name }) => name === 'circle',
    );
    const [kept] = circles.filter(({ attributes }) => attributes['stroke-dasharray'] === '5 3');
    const [flue] = circles.filter(isThick);
    // A flue of 6 in, and the least published distance of a vent on both sides of it.
    const clear = amountIn(rules.value('clearance.flue.to-combustibles'), 'in');
    expect(kept && flue && numberAt(kept, 'r') / numberAt(flue, 'r')).toBeCloseTo((3 + clear) / 3, 1);
  });

  test('a flue outside the stretch is left out', () => {
    const drawn = shapesOf(card(marked({ ...hoseMarkings.example, from: '20 ft', to: '23 ft' }), 'wide'));
    expect(drawn.filter(({ attributes }) => attributes['stroke-dasharray'] === '5 3')).toEqual([]);
  });

  const past = marked({
    ...square,
    flues: [{ along: '19 ft', at: '5 ft', across: '8 in' }],
  });
  const beside: HoseMarks = hoseMarks(
    { ...past.opening, rings: past.opening.rings?.map((each) => ({ ...each, blownBehind: true })) },
    rules,
  );

  test.each(sizes)(
    '%s: a flue that is blown behind is drawn past the stretch, with its push before it',
    (size) => {
      const root = readXml(
        toSvg(hoseCard(beside, rules, size, { drawn: drawnStretch(beside) }), `hose-${size}`),
      );
      const [right, bottom] = [numberAt(root, 'width'), numberAt(root, 'height')];
      for (const shape of shapesOf(root)) {
        const box = boxOf(shape);
        expect(box === undefined || (box.left >= 0 && box.right <= right && box.bottom <= bottom)).toBe(true);
      }
      const perInch = perInchOf(root, beside);
      const ray = raysOf(root)[0];
      const mark = beside.marks[0]?.mark;
      expect(ray && mark && ray.length / perInch - amountIn(mark, 'in')).toBeCloseTo(0, 1);
      const [ring] = shapesOf(root).filter(({ attributes }) => attributes['stroke-dasharray'] === '5 3');
      // By hand: 9 ft along and 1 ft up, from an opening 4 ft from its eave.
      const [cx, cy] = [ring && numberAt(ring, 'cx'), ring && numberAt(ring, 'cy')];
      expect(
        Math.hypot((cx ?? 0) - (ray?.from[0] ?? 0), (cy ?? 0) - (ray?.from[1] ?? 0)) / perInch,
      ).toBeCloseTo(Math.hypot(108, 12), 0);
      expect(shapesOf(root).map(wordsOf)).toEqual(expect.arrayContaining(['1+›', '› goes past the stretch']));
      // The stretch keeps its dimensions: 8 ft along, whatever the card draws.
      expect(dimensionsOf(root).map(({ words }) => words)).toContain('8 ft');
    },
  );

  describe('the plan alone, which the calculator shows above its table', () => {
    test.each(each)(
      '$what, $size: all of it on its sheet, with every push, its number and no list',
      ({ entries, size }) => {
        const found = marked(entries);
        const root = readXml(toSvg(hosePlan(found, rules, size), `plan-${size}`));
        const [right, bottom] = [numberAt(root, 'width'), numberAt(root, 'height')];
        for (const shape of shapesOf(root)) {
          const box = boxOf(shape);
          expect(
            box === undefined ||
              (box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom),
            wordsOf(shape),
          ).toBe(true);
        }
        expect(raysOf(root)).toHaveLength(found.marks.length);
        const words = shapesOf(root).map(wordsOf);
        for (const { order } of found.marks) expect(words).toContain(String(order));
        expect(words).not.toContain('tape at');
      },
    );
  });

  test('a tape is never put farther than the push, though it is read to the eighth', () => {
    // 50.329398 in is 4 ft 2 5/16 in: to the eighth below, 4 ft 2 1/4 in.
    expect(shapesOf(card(marked(square), 'wide')).map(wordsOf)).toContain('4 ft 2 1/4 in');
  });

  test('says in words what it shows', () => {
    const { title, description } = hoseCard(marked(square), rules, 'wide');
    expect(title).toBe('Hose marks. Opening at 10 ft');
    expect(description).toMatch(
      /^The stretch of an opening, 8 ft along the home and 8 ft across\. \d+ pushes, the farthest at 4:50\./,
    );
  });

  test('the starting end is told on the hand it lies', () => {
    const words = (entries: Entries) => shapesOf(card(marked(entries), 'narrow')).map(wordsOf);
    expect(words(square)).toContain('starting end →');
    expect(words({ ...square, starting_end: 'left hand' })).toContain('← starting end');
  });
});

describe('skylights on the card of an opening', () => {
  // The opening stands at 10 ft, 4 ft from its eave, in a stretch from 6 to 14 ft of a cavity 8 ft wide.
  const skylight = { along: quantity(8, 'ft'), at: quantity(2, 'ft'), across: quantity(18, 'in') };
  const drawn = (entries: Entries, each: typeof skylight, size: Size) => {
    const found = marked(entries);
    const bare = hosePlan(found, rules, size);
    const { shapes, description } = hosePlan(found, rules, size, { skylights: [each] });
    const root = readXml(toSvg({ ...bare, shapes }, 'plan'));
    const [outline] = shapesOf(root).filter(
      ({ name, attributes }) =>
        name === 'path' && attributes.d?.endsWith('Z') && attributes['stroke-width'] === '1.8',
    );
    const corners = outline ? cornersOf(outline) : [];
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const [hole] = shapesOf(root).filter((each) => each.name === 'circle' && isThick(each));
    if (!hole) throw new Error('found no opening in the drawing');
    const perInch = perInchOf(root, found);
    // Right and up of the opening, in inches.
    return {
      description,
      right: xs.map((x) => (x - numberAt(hole, 'cx')) / perInch),
      up: ys.map((y) => (numberAt(hole, 'cy') - y) / perInch),
    };
  };
  /** To the inch: finer than that a card of this size is not read. */
  const ends = (some: readonly number[]) => [Math.min(...some), Math.max(...some)].map(Math.round);

  test.each(sizes)('stand where they are, to scale, %s', (size) => {
    // The starting end lies on the right hand: 2 ft nearer to it is 24 in to the right; 2 ft nearer the eave is 24 in down.
    const { right, up, description } = drawn(square, skylight, size);
    expect([ends(right), ends(up)]).toEqual([
      [24 - 9, 24 + 9],
      [-24 - 9, -24 + 9],
    ]);
    expect(description).toContain('A skylight at 8 ft along the roof, 2 ft from the eave.');
  });

  test('on the other hand where the starting end lies on the left', () => {
    const { right } = drawn({ ...square, starting_end: 'left hand' }, skylight, 'wide');
    expect(ends(right)).toEqual([-33, -15]);
  });

  test('no farther than the stretch', () => {
    // Its middle on the end of the stretch at 6 ft, 48 in to the right: one half of it is drawn.
    const { right } = drawn(square, { ...skylight, along: quantity(6, 'ft') }, 'wide');
    expect(ends(right)).toEqual([39, 48]);
  });
});
