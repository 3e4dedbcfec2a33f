import { describe, expect, test } from 'vitest';
import { tiers } from '../../src/drawings/roof-chain.ts';
import { roofPlan } from '../../src/drawings/roof-plan.ts';
import type { JobEntries } from '../../src/job/job-file.ts';
import { largestJob } from '../bench/largest-job.ts';
import { exampleEntries, exampleFlue, exampleWith, planOf, rules } from '../job/entries.ts';
import { type Box, boxOf, dimensionsOf, holesIn, isThick, numberAt, overlap, shapesOf } from './measure.ts';
import { jobs, roofSheet, sizes } from './sheets.ts';
import { type Element, wordsOf } from './xml.ts';

const ventAt = (along: string) => [
  { what: 'plumbing vent', along, side: 'back', from_peak: '2 ft', across: '4 in' },
  exampleFlue,
];

const roofs: readonly [what: string, entries: JobEntries][] = [
  ...jobs,
  ['76 ft by 15 ft 6 in', exampleWith({ 'home.length': '76 ft', 'cavity.width': '15 ft 6 in' })],
  ['76 ft by 11 ft 6 in', exampleWith({ 'home.length': '76 ft', 'cavity.width': '11 ft 6 in' })],
  ['150 ft by 8 ft', exampleWith({ 'home.length': '150 ft', 'cavity.width': '8 ft' })],
  ['a vent beside the first hole', exampleWith({ 'roof.obstacles': ventAt('6 ft 5 in') })],
  [
    'three things close together, a skylight across the ridge from them',
    exampleWith({
      'roof.obstacles': [
        { ...exampleFlue, along: '24 ft' },
        { what: 'plumbing vent', along: '20 ft', side: 'back', from_peak: '2 ft', across: '4 in' },
        { what: 'fan outlet', along: '26 ft', side: 'back', from_peak: '3 ft', across: '8 in' },
        { what: 'skylight', along: '26 ft', side: 'front', from_peak: '2 ft', across: '24 in' },
      ],
    }),
  ],
  [
    'a double-section home of 76 ft',
    exampleWith({ 'home.sections': 'double', 'cavity.shape': 'one-slope', 'home.length': '76 ft' }),
  ],
  ['the largest job', largestJob()],
];
const each = roofs.flatMap(([what, entries]) => sizes.map((size) => ({ what, entries, size })));

const boxed = (shape: Element): Box => {
  const box = boxOf(shape);
  if (!box) throw new Error(`found no box about a ${shape.name}`);
  return box;
};
const textsOf = (root: Element): Element[] => shapesOf(root).filter(({ name }) => name === 'text');
/** What words would make unreadable, or be made so by: holes with their patches, vents, flues, skylights, kept rings. */
const thingsOf = (root: Element): Element[] =>
  shapesOf(root).filter(
    ({ name, attributes }) => name === 'circle' || (name === 'rect' && attributes.height !== '5'),
  );
const outlineOf = (root: Element): Box => {
  const outline = shapesOf(root).find((shape) => shape.name === 'path' && isThick(shape));
  if (!outline) throw new Error('found no outline');
  return boxed(outline);
};
/** Does a box lie across an edge of another? */
const crosses = (box: Box, edges: Box): boolean =>
  overlap(box, edges) &&
  !(box.left >= edges.left && box.right <= edges.right && box.top >= edges.top && box.bottom <= edges.bottom);

describe('on a roof no words stand where they hide something or are hidden', () => {
  test.each(each)('$what, $size: on others', ({ entries, size }) => {
    const texts = textsOf(roofSheet(planOf(entries), rules, size));
    const over = texts.flatMap((one, place) =>
      texts
        .slice(place + 1)
        .filter((other) => overlap(boxed(one), boxed(other)))
        .map((other) => `${wordsOf(one)} on ${wordsOf(other)}`),
    );
    expect(over).toEqual([]);
  });

  test.each(each)('$what, $size: on a hole, a vent, a flue or a skylight', ({ entries, size }) => {
    const root = roofSheet(planOf(entries), rules, size);
    const things = thingsOf(root).map(boxed);
    const on = textsOf(root).filter((words) => things.some((thing) => overlap(boxed(words), thing)));
    expect(on.map(wordsOf)).toEqual([]);
  });

  test.each(each)('$what, $size: on the edge of the roof', ({ entries, size }) => {
    const root = roofSheet(planOf(entries), rules, size);
    const edges = outlineOf(root);
    expect(
      textsOf(root)
        .filter((words) => crosses(boxed(words), edges))
        .map(wordsOf),
    ).toEqual([]);
  });

  test.each(each)(
    '$what, $size: the leader of a name runs through no other, no number and no bags',
    ({ entries, size }) => {
      const plan = planOf(entries);
      const names = (plan.job.roof.obstacles ?? []).map(({ what }) => String(what));
      const shapes = shapesOf(roofSheet(plan, rules, size));
      const texts = shapes.filter(
        (words) =>
          words.name === 'text' && (words.attributes['font-weight'] || names.includes(wordsOf(words))),
      );
      const through = shapes.flatMap((words, place) => {
        const leader = shapes[place - 1];
        if (words.name !== 'text' || !names.includes(wordsOf(words)) || leader?.name !== 'line') return [];
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = ['x1', 'y1', 'x2', 'y2'].map((at) => numberAt(leader, at));
        const steps = Array.from({ length: 101 }, (_, step) => step / 100);
        return texts
          .filter((other) => other !== words)
          .filter((other) => {
            const { left, right, top, bottom } = boxed(other);
            return steps.some((share) => {
              const [x, y] = [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share];
              return x > left && x < right && y > top && y < bottom;
            });
          })
          .map((other) => `that of ${wordsOf(words)} through ${wordsOf(other)}`);
      });
      expect(through).toEqual([]);
    },
  );

  test.each(each)('$what, $size: the scale bar stands on no line', ({ entries, size }) => {
    const shapes = shapesOf(roofSheet(planOf(entries), rules, size));
    const bars = shapes.filter(({ name, attributes }) => name === 'rect' && attributes.height === '5');
    // The line at its beginning is its own.
    const lines = shapes.filter((shape) => shape.name === 'line').map(boxed);
    const under = bars.filter((bar) =>
      lines.some(
        (line) => line.right - line.left > 0 && overlap({ ...line, bottom: line.top + 1 }, boxed(bar)),
      ),
    );
    expect(under).toEqual([]);
  });
});

describe('what a roof says', () => {
  const double = planOf(exampleWith({ 'home.sections': 'double', 'cavity.shape': 'one-slope' }));
  const oneSlope = planOf(exampleWith({ 'cavity.shape': 'one-slope' }));

  test.each(sizes)('%s: each hole of a double-section home has a name of its own, with its side', (size) => {
    expect(holesIn(roofSheet(double, rules, size)).map(({ number }) => number)).toEqual(
      ['back', 'front'].flatMap((side) => [1, 2, 3, 4, 5].map((number) => `${number} ${side}`)),
    );
  });

  test.each(sizes)('%s: the ridge of a single slope is its high edge, and it has no front', (size) => {
    const root = roofSheet(oneSlope, rules, size);
    const edges = outlineOf(root);
    const ridge = shapesOf(root).find(({ attributes }) => attributes['stroke-dasharray'] === '14 3 2 3');
    const { left, top } = ridge ? boxed(ridge) : { left: Number.NaN, top: Number.NaN };
    // The front of the wide sheet lies at its foot, of the upright one at its left.
    expect(size === 'wide' ? top : left).toBe(size === 'wide' ? edges.bottom : edges.left);
    expect(textsOf(root).map(wordsOf)).not.toContain('front');
  });

  test.each(sizes)('%s: the end that all is measured from is named at the beginning of the chain', (size) => {
    const root = roofSheet(planOf(exampleEntries), rules, size);
    const edges = outlineOf(root);
    const [starting] = textsOf(root).filter((words) => wordsOf(words) === 'starting');
    const { right, bottom } = starting ? boxed(starting) : { right: Number.NaN, bottom: Number.NaN };
    expect(size === 'wide' ? right : bottom).toBeLessThan(size === 'wide' ? edges.left : edges.top);
  });

  test.each(sizes)('%s: how far a hole lies from the ridge is dimensioned', (size) => {
    expect(dimensionsOf(roofSheet(planOf(exampleEntries), rules, size)).map(({ words }) => words)).toContain(
      '16 in',
    );
  });

  test('who can’t see it is told what the roof stands on and what comes through it', () => {
    // The entries of the example: a flue of 12 in with 2 in kept on either side.
    const { description } = roofPlan(planOf(exampleEntries), rules, 'across the sheet');
    expect(description).toContain('Holes lie 16 in from the ridge.');
    expect(description).toContain('34 trusses, 24 in apart; 17 seams, 4 ft apart.');
    expect(description).toContain(
      'A plumbing vent, 8 in across, at 20 ft 2 in, back side, 2 ft from the ridge.',
    );
    expect(description).toMatch(/A furnace flue, 1 ft across, at 46 ft 6 in, .* kept open about it\./);
  });
});

describe('words of a chain that have no room on their own part stand on a line farther out', () => {
  test.each([
    { title: 'all have room', fits: [true, true], lines: [0, 0] },
    { title: 'one has none', fits: [true, false], lines: [0, 1] },
    { title: 'two side by side have none and would meet', fits: [false, false], lines: [1, 2] },
  ])('$title', ({ fits, lines }) => {
    // Words 30 long whose middles are 20 apart meet.
    expect(tiers(fits.map((each, place) => ({ middle: 20 * place, long: 30, fits: each })))).toEqual(lines);
  });
});
