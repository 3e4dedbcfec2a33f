import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PatchSide, type Screw, screwMap, screwsInOrder } from '../../../src/calc/patch/screw-map.ts';
import { quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const rules = openRulebook(theProject().data);
const middles: readonly PatchSide[] = ['top', 'bottom', 'right', 'left'];

/** Screws of any square whose line is at least a spacing from middle to corner. */
const squares = fc
  .record({
    sixteenths: fc.integer({ min: 16 * 3, max: 16 * 48 }),
    spacing: fc.constantFrom(0.5, 0.75, 1, 1.25, 1.5),
    inset: fc.constantFrom(0, 0.25, 0.3, 0.375, 0.5),
  })
  .map(({ sixteenths, ...rest }) => ({ side: sixteenths / 16, ...rest }))
  .filter(({ side, spacing, inset }) => side / 2 - inset >= spacing);
const NEAR = 1e-9;

/** How far along the line a screw stands, from the upper left corner round by the right. */
const alongLine = ({ x, y }: Screw, half: number): number => {
  if (Math.abs(y - half) < NEAR) return x + half;
  if (Math.abs(x - half) < NEAR) return 2 * half + (half - y);
  if (Math.abs(y + half) < NEAR) return 4 * half + (half - x);
  return 6 * half + (y + half);
};

describe('the screws of any square', () => {
  const holds = (what: string, judge: (all: readonly Screw[], half: number, spacing: number) => boolean) =>
    test(what, () => {
      fc.assert(
        fc.property(squares, ({ side, spacing, inset }) =>
          judge(screwsInOrder(side, spacing, inset, middles).screws, side / 2 - inset, spacing),
        ),
        { numRuns: 1000 },
      );
    });

  holds('all stand on the line, none off it', (all, half) =>
    all.every(({ x, y }) => Math.abs(Math.max(Math.abs(x), Math.abs(y)) - half) < NEAR),
  );
  holds('stand a spacing apart or more along the line, and never two', (all, half, spacing) => {
    const places = all.map((each) => alongLine(each, half)).sort((a, b) => a - b);
    return places.every((place, at) => {
      const gap = at === 0 ? place + 8 * half - (places.at(-1) ?? 0) : place - (places[at - 1] ?? 0);
      return gap >= spacing - 1e-6 && gap < 2 * spacing;
    });
  });
  holds('are numbered from 1 on, in order', (all) => all.every(({ number }, at) => number === at + 1));
  holds('begin with the four middles: top, bottom, right, left', (all, half) =>
    [
      [0, half],
      [0, -half],
      [half, 0],
      [-half, 0],
    ].every(([x, y], at) => all[at]?.x === x && all[at]?.y === y),
  );
  holds('look the same in a mirror, either way, and turned a quarter', (all) => {
    const has = (x: number, y: number) =>
      all.some((each) => Math.abs(each.x - x) < NEAR && Math.abs(each.y - y) < NEAR);
    return all.every(({ x, y }) => has(-x, y) && has(x, -y) && has(-y, x));
  });
  holds('are a whole number of fours', (all) => all.length % 4 === 0);
  holds('go outward: each has its neighbour towards the middle driven before it', (all, half, spacing) =>
    all.slice(4).every((each) => {
      const before = all.slice(0, each.number - 1);
      const inward = [
        [each.x - Math.sign(each.x) * spacing, each.y],
        [each.x, each.y - Math.sign(each.y) * spacing],
      ];
      const corner = each.on.includes(' ');
      return corner
        ? before.some(({ x, y }) => Math.hypot(x - each.x, y - each.y) < 1.5 * spacing + NEAR)
        : inward.some(([a = 0, b = 0]) =>
            before.some(
              ({ x, y }) =>
                Math.abs(x - a) < 1e-6 &&
                Math.abs(y - b) < 1e-6 &&
                Math.abs(Math.max(Math.abs(x), Math.abs(y)) - half) < 1e-6,
            ),
          );
    }),
  );
});

describe('each run goes to one corner, its two sides in turn', () => {
  test('and the run after it goes to the corner across, or to one that is left', () => {
    fc.assert(
      fc.property(squares, ({ side, spacing, inset }) => {
        const { screws, runs } = screwsInOrder(side, spacing, inset, middles);
        return runs.every(({ corner, sides, first, last, endsInCorner }) => {
          const run = screws.slice(first - 1, last);
          const [right, up] = [corner.endsWith('right') ? 1 : -1, corner.startsWith('top') ? 1 : -1];
          const onSides = endsInCorner ? run.slice(0, -1) : run;
          return (
            run.every(({ x, y }) => x * right > 0 && y * up > 0) &&
            onSides.every(({ on }, at) => on === sides[at % 2]) &&
            onSides.every(
              ({ fromMiddle }, at) => Math.abs(fromMiddle - spacing * Math.floor(at / 2 + 1)) < NEAR,
            ) &&
            (!endsInCorner || run.at(-1)?.on === corner)
          );
        });
      }),
      { numRuns: 1000 },
    );
  });

  test('the corners follow as opposite pairs', () => {
    expect(screwMap(quantity(10, 'in'), rules).runs.map(({ corner }) => corner)).toEqual([
      'top right',
      'bottom left',
      'bottom right',
      'top left',
    ]);
  });
});

/**
 * By hand: half the line is side/2 − inset. A half side holds as many screws as whole spacings fit with half a spacing left before the corner;
 * where a whole one is left, the corner has one of its own.
 */
const counted: readonly [side: number, spacing: number, inset: number, screws: number, why: string][] = [
  [10, 1, 0.375, 36, 'half 4.625: 1, 2, 3, 4, and 0.625 left'],
  [9, 1, 0.375, 32, 'half 4.125: 1, 2, 3, and 1.125 left, so the corners too'],
  [12.75, 1, 0.375, 48, 'half 6: 1 to 5, and exactly 1 left, so the corners too'],
  [9.75, 1, 0.375, 36, 'half 4.5: 1 to 4, and exactly half a spacing left'],
  [4, 1, 0.5, 12, 'half 1.5: 1, and exactly half a spacing left'],
  [2.75, 1, 0.375, 8, 'half 1: none on the halves, a whole spacing to the corner'],
  [2, 1, 0.375, 4, 'half 0.625: the middles alone'],
  [0.8, 0.1, 0, 32, 'half 0.4, in tenths that floating arithmetic can’t hold: 0.1 to 0.3, and the corners'],
];

describe('how many screws a square takes', () => {
  test.each(counted)('%d in, %d in apart, %d in from the edge: %d (%s)', (side, spacing, inset, screws) => {
    expect(screwsInOrder(side, spacing, inset, middles).screws).toHaveLength(screws);
  });

  test('the first dozen of the square of 10 in, by hand', () => {
    expect(
      screwMap(quantity(10, 'in'), rules)
        .screws.slice(0, 13)
        .map(({ x, y }) => [x, y]),
    ).toEqual([
      [0, 4.625],
      [0, -4.625],
      [4.625, 0],
      [-4.625, 0],
      [1, 4.625],
      [4.625, 1],
      [2, 4.625],
      [4.625, 2],
      [3, 4.625],
      [4.625, 3],
      [4, 4.625],
      [4.625, 4],
      [-1, -4.625],
    ]);
  });

  test('an inset of half the side or more leaves no line, and no screw', () => {
    expect(screwsInOrder(2, 1, 1, middles)).toEqual({ screws: [], runs: [] });
    expect(screwsInOrder(0, 1, 0, middles)).toEqual({ screws: [], runs: [] });
  });

  const refused: readonly [string, number, number, number][] = [
    ['a side that is no number', Number.NaN, 1, 0.375],
    ['an endless side', Number.POSITIVE_INFINITY, 1, 0.375],
    ['a spacing of nought', 10, 0, 0.375],
    ['a spacing below nought', 10, -1, 0.375],
    ['an inset below nought', 10, 1, -0.1],
  ];
  test.each(refused)('%s is refused', (_, side, spacing, inset) => {
    expect(() => screwsInOrder(side, spacing, inset, middles)).toThrow(/expected finite lengths/);
  });
});
