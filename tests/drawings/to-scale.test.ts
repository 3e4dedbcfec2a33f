import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { resistanceAcross } from '../../src/job/resistance-across.ts';
import { format } from '../../src/quantity/format.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { builtJob } from '../job/any-job.ts';
import { exampleEntries, planOf, rules, workEntries } from '../job/entries.ts';
import {
  between,
  cornersOf,
  dimensionsOf,
  holesIn,
  inchesSaid,
  isThick,
  numberAt,
  type Point,
  scaleBarOf,
  shapesOf,
} from './measure.ts';
import { jobs, resistanceSheet, roofSheet, type Size, sectionOf, sizes } from './sheets.ts';
import { type Element, wordsOf } from './xml.ts';

/** Two places are each written to a hundredth of a drawing unit. */
const WRITTEN = 0.011;
/** What is said is rounded to the mark of the tape, or to four figures. */
const saidWithin = (inches: number): number => 1 / 16 + inches * 0.0005;

const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');
const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });

/** Dimensions that say another length than they measure at this scale. */
const misdrawn = (root: Element, perInch: number): string[] =>
  dimensionsOf(root).flatMap(({ words, drawn }) => {
    const said = inchesSaid(words);
    const off = Math.abs(drawn - said * perInch);
    return off <= 2 * WRITTEN + saidWithin(said) * perInch
      ? []
      : [`"${words}" measures ${drawn / perInch} in`];
  });

/** Is the scale bar as long as it says? */
function barHolds(root: Element, perInch: number): boolean {
  const bar = scaleBarOf(root);
  return bar !== undefined && Math.abs(bar.drawn - bar.said * perInch) <= 4 * WRITTEN;
}

/** From the back edge to the ridge: a half of a double-section home, all of a single slope, to the deepest place that was measured, else half. */
function ridgeFromBack({ job, section, rows }: WorkedJob): number {
  const width = inches(section.width);
  if (rows.length > 1 || job.cavity.shape === 'one-slope') return width;
  const measured = job.cavity.shape === 'measured' ? inches(section.deepestAt) : 0;
  // A hole has no room between a ridge at the very edge and the eave.
  return measured < inches(rules.value('access.roof-holes.below-peak')) ? width / 2 : measured;
}

/** The roof's outline, and the scale and places that follow from it. */
function roofOf(root: Element, plan: WorkedJob, size: Size) {
  const outline = shapesOf(root).find((each) => each.name === 'path' && isThick(each));
  const [start, end, , front] = (outline ? cornersOf(outline) : []) as unknown as [
    Point,
    Point,
    Point,
    Point,
  ];
  const length = inches(plan.job.home.length);
  const perInch = between(start, end) / length;
  const [along, across] = size === 'wide' ? ([0, 1] as const) : ([1, 0] as const);
  // The upright sheet is the other turned by a quarter, never its mirror image: a crew would start at the wrong end.
  const turned = size === 'wide' ? 1 : -1;
  const ridge = ridgeFromBack(plan);
  return {
    perInch,
    acrossInches: between(start, front) / perInch,
    alongOf: (point: Point): number => (point[along] - start[along]) / perInch,
    /** From the ridge; on the back it is less than nothing. */
    acrossOf: (point: Point): number => (turned * (point[across] - start[across])) / perInch - ridge,
  };
}

const sideOf = ({ side }: { readonly side: string }): number => (side === 'back' ? -1 : 1);

/** Everything about the roof from above that is not as the plan has it. */
function roofWrong(plan: WorkedJob, size: Size): string[] {
  const root = roofSheet(plan, rules, size);
  const { perInch, acrossInches, alongOf, acrossOf } = roofOf(root, plan, size);
  const near = (found: number, expected: number): boolean =>
    Math.abs(found - expected) <= (2 * WRITTEN) / perInch;
  const wrong: string[] = [];
  const hold = (what: string, found: number, expected: number): void => {
    if (!near(found, expected)) wrong.push(`${what}: ${found} in drawn, ${expected} in planned`);
  };
  const halves = plan.job.home.sections === 'double' ? 2 : 1;
  hold('the width', acrossInches, halves * inches(plan.section.width));
  if (!barHolds(root, perInch)) wrong.push('the scale bar');

  const planned = plan.rows.flatMap((row) => row.holes.map((hole) => ({ hole, row })));
  const drawn = holesIn(root);
  if (drawn.length !== planned.length) wrong.push(`${drawn.length} holes drawn, ${planned.length} planned`);
  for (const [place, { hole, row }] of planned.entries()) {
    const found = drawn[place];
    if (!found) continue;
    const name = `${row.side} hole ${hole.number}`;
    // A double-section home has a hole of each number on both sides.
    const number = plan.rows.length > 1 ? `${hole.number} ${row.side}` : String(hole.number);
    if (found.number !== number) wrong.push(`${name} is numbered ${found.number}`);
    hold(`${name} along`, alongOf(found.at), inches(hole.along));
    hold(
      `${name} from the peak`,
      acrossOf(found.at) * sideOf(row),
      inches(rules.value('access.roof-holes.below-peak')),
    );
    hold(`${name} across`, (2 * found.radius) / perInch, inches(rules.value('access.roof-holes.diameter')));
    const [membrane = 0, metal = 0] = found.squares;
    hold(`${name}, membrane`, membrane / perInch, inches(rules.value('patch.layers.membrane-side')));
    hold(`${name}, metal`, metal / perInch, inches(rules.value('patch.layers.metal-side')));
  }

  const lines = shapesOf(root).filter((each) => each.name === 'line');
  const acrossAt = (dashes: string | undefined): number[] =>
    lines
      .filter(({ attributes }) => attributes['stroke-dasharray'] === dashes)
      .map((line) => alongOf([numberAt(line, 'x1'), numberAt(line, 'y1')]));
  for (const [what, found, expected] of [
    ['a truss', acrossAt('5 3'), plan.trusses],
    [
      'the end of a stretch',
      acrossAt('14 3 2 3 2 3'),
      plan.rows.flatMap((row) => row.holes.slice(0, -1).map((hole) => inches(hole.to))),
    ],
    ['a seam', acrossAt(undefined).slice(0, plan.seams.length), plan.seams],
  ] as const) {
    if (found.length !== expected.length) wrong.push(`${what}: ${found.length} of ${expected.length}`);
    for (const [place, each] of expected.entries()) hold(what, found[place] ?? Number.NaN, each);
  }
  return [...wrong, ...misdrawn(root, perInch)];
}

/** Everything about the section that is not as the plan has it. */
function sectionWrong(plan: WorkedJob, size: Size): string[] {
  const root = sectionOf(plan, size);
  const outlines = shapesOf(root).filter((each) => each.name === 'path' && isThick(each));
  const [roof = [], ceiling = []] = outlines.map(cornersOf);
  const [left, right] = ceiling as unknown as [Point, Point];
  const { profile } = plan.section;
  const half = size === 'narrow' && (plan.section.shape === 'two-slope' || plan.section.shape === 'bowed');
  const perInch = between(left, right) / (half ? profile.width / 2 : profile.width);
  const wrong = roof.slice(1, -1).flatMap(([x, y]) => {
    const [across, height] = [(x - left[0]) / perInch, (left[1] - y) / perInch];
    // A place is written to a hundredth of a unit, so a steep roof may be a little off there.
    const off = Math.abs(height - profile.depthAt(Math.min(profile.width, Math.max(0, across))));
    return off <= (20 * WRITTEN) / perInch ? [] : [`the roof is ${height} in high at ${across} in`];
  });
  if (!barHolds(root, perInch)) wrong.push('the scale bar');
  return [...wrong, ...misdrawn(root, perInch)];
}

const cases: readonly [what: string, size: Size, entries: JobEntries][] = jobs.flatMap(([what, entries]) =>
  sizes.map((size): [string, Size, JobEntries] => [what, size, entries]),
);

describe('the roof from above is to scale, and every dimension says what it measures', () => {
  test.each(cases)('%s, %s', (_, size, entries) => {
    expect(roofWrong(planOf(entries), size)).toEqual([]);
  });
  test('homes as they are built', () => {
    fc.assert(
      fc.property(builtJob, fc.constantFrom(...sizes), (entries, size) => {
        const read = workEntries(entries);
        expect(read.ok ? roofWrong(read.value, size) : []).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the section is to scale, and every dimension says what it measures', () => {
  test.each(cases)('%s, %s', (_, size, entries) => {
    expect(sectionWrong(planOf(entries), size)).toEqual([]);
  });
  test('homes as they are built', () => {
    fc.assert(
      fc.property(builtJob, fc.constantFrom(...sizes), (entries, size) => {
        const read = workEntries(entries);
        expect(read.ok ? sectionWrong(read.value, size) : []).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the example job, measured on the sheet', () => {
  const plan = planOf(exampleEntries);
  const said = (root: Element): string[] => dimensionsOf(root).map(({ words }) => words);
  const texts = (root: Element): string[] =>
    shapesOf(root)
      .filter(({ name }) => name === 'text')
      .map(wordsOf);

  /** 66 ft by 13 ft 10 in, as the job's file says: 792 in by 166 in. */
  test('the roof is 792 to 166', () => {
    for (const size of sizes) {
      const { acrossInches } = roofOf(roofSheet(plan, rules, size), plan, size);
      expect(Math.abs(acrossInches - 166)).toBeLessThan(0.05);
    }
  });

  test('the chain runs from end to end through the five holes in the figures of the plan', () => {
    const [row] = plan.rows;
    const holes = row?.holes ?? [];
    const last = holes.at(-1);
    const rest = 792 - (last ? inches(last.along) : 0);
    for (const size of sizes) {
      const words = said(roofSheet(plan, rules, size));
      const chain = [holes[0]?.along, ...(row?.gaps ?? [])].flatMap((q) => (q ? [tape(q)] : []));
      expect(words.slice(0, 5)).toEqual(chain);
      expect(
        words
          .slice(0, 6)
          .map(inchesSaid)
          .reduce((a, b) => a + b),
      ).toBe(792);
      expect(inchesSaid(words[5] ?? '')).toBe(rest);
      expect(words[6]).toBe('66 ft');
    }
  });

  test('each stretch bears the bags of its hole, and the description tells them all', () => {
    for (const size of sizes) {
      const root = roofSheet(plan, rules, size);
      const bags = plan.rows.flatMap((row) => row.holes.map((hole) => format(hole.bags, { figures: 3 })));
      expect(texts(root)).toEqual(expect.arrayContaining(bags));
      const [, description] = shapesOf(root);
      for (const hole of plan.rows.flatMap((row) => row.holes)) {
        expect(description && wordsOf(description)).toContain(
          `hole ${hole.number} at ${tape(hole.along)} takes ${format(hole.bags, { figures: 3 })}`,
        );
      }
    }
  });

  test('the section says its width, its eaves, its deepest place, what lies there and what is to come; half of it, its half', () => {
    expect(said(sectionOf(plan, 'wide'))).toEqual([
      '13 ft 10 in',
      '1 1/2 in',
      '3 in',
      '3 in',
      '13 1/2 in',
      '15 in',
    ]);
    expect(said(sectionOf(plan, 'narrow'))).toEqual(['6 ft 11 in to the ridge', '1 1/2 in', '3 in', '15 in']);
  });

  /** By hand: 249 in2 of old insulation, and 1831.5353 in2 in all; the arc is drawn in sixty straight strokes. */
  test('the hatched areas are those worked by hand', () => {
    const root = sectionOf(plan, 'wide');
    const perInch = 728 / 166;
    const area = (hatch: string): number => {
      const found = shapesOf(root).find(
        ({ attributes }) => attributes.fill === `url(#section-wide-${hatch})`,
      );
      const points = found ? cornersOf(found) : [];
      const twice = points.reduce((sum, [x, y], place) => {
        const [nextX, nextY] = points[(place + 1) % points.length] ?? [0, 0];
        return sum + x * nextY - nextX * y;
      }, 0);
      return Math.abs(twice) / 2 / perInch ** 2;
    };
    expect(Math.abs(area('old-insulation') - 249)).toBeLessThan(0.5);
    expect(Math.abs(area('new-fill') - (1831.5353 - 249))).toBeLessThan(2);
  });
});

describe('R along the width is to the scale of its own axis', () => {
  test.each(cases)('%s, %s', (_, size, entries) => {
    const plan = planOf(entries);
    const root = resistanceSheet(plan, rules, size);
    if (!root) return expect(plan.resistance).toBeUndefined();
    const ticks = shapesOf(root).flatMap((each, place, all) => {
      const words = all[place + 1];
      return each.name === 'line' && words?.attributes['text-anchor'] === 'end'
        ? [{ r: Number(wordsOf(words)), y: numberAt(each, 'y1') }]
        : [];
    });
    const [zero, top] = [ticks[0], ticks.at(-1)];
    if (!zero || !top) throw new Error('found no axis');
    const rOf = (y: number): number => ((zero.y - y) / (zero.y - top.y)) * top.r;
    const curve = shapesOf(root).find((each) => each.name === 'path' && isThick(each));
    const drawn = (curve ? cornersOf(curve) : []).map(([, y]) => rOf(y));
    const { width } = plan.section.profile;
    const places = Array.from({ length: 1001 }, (_, step) => (step / 1000) * width);
    const worked = resistanceAcross(plan, rules, places).map(({ value }) => value);
    expect(ticks.map(({ r }) => r)).toEqual(ticks.map((_, place) => (place * top.r) / (ticks.length - 1)));
    expect(Math.abs(Math.max(...drawn) - Math.max(...worked))).toBeLessThan(0.002 * top.r);
    expect(Math.abs((drawn[0] ?? Number.NaN) - (worked[0] ?? Number.NaN))).toBeLessThan(0.0005 * top.r);
    expect(wordsOf(root)).toContain(`R-${Number(Math.max(...worked).toPrecision(2))}`);
  });
});
