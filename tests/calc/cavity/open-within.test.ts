import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cornerOf, keptWithin, openWithin, type Part } from '../../../src/calc/cavity/open-within.ts';
import { cavitySection } from '../../../src/calc/cavity/section.ts';
import { quantity } from '../../../src/quantity/quantity.ts';

const inches = (amount: number) => quantity(amount, 'in');
/** 10 ft wide, 12 in high everywhere. */
const level = cavitySection({ shape: 'level', width: inches(120), eave: inches(12) } as Parameters<
  typeof cavitySection
>[0]);
const at = (along: number, from_eave: number, across: number) => ({
  along: inches(along),
  at: inches(from_eave),
  across: inches(across),
});
const all: Part = { across: [0, 120], along: [0, 240] };
const sum = (amounts: readonly number[]) => amounts.reduce((a, b) => a + b, 0);

describe('the corner of a circle of radius 1 on the left of x and below y', () => {
  // By hand: a quarter less or more a strip; off the circle a segment, as tables of circular segments have it.
  const segment = (t: number) => Math.acos(t) - t * Math.sqrt(1 - t * t);
  test.each<[title: string, x: number, y: number, area: number]>([
    ['its middle: a quarter', 0, 0, Math.PI / 4],
    ['on the axis: half of what lies left', 0.5, 0, (Math.PI - segment(0.5)) / 2],
    ['beyond it on both sides: all', 1, 1, Math.PI],
    ['beyond it above: what lies left', -0.5, 2, segment(0.5)],
    ['off it, right and above: all but two segments', 0.8, 0.9, Math.PI - segment(0.8) - segment(0.9)],
    ['off it, left and above: the segment left', -0.8, 0.9, segment(0.8)],
    ['off it, right and below: the segment below', 0.9, -0.8, segment(0.8)],
    ['off it, left and below: nothing', -0.8, -0.9, 0],
    ['far off: nothing', -3, 0.5, 0],
  ])('%s', (_, x, y, area) => expect(cornerOf(x, y)).toBeCloseTo(area, 12));
});

describe('rings are cut at the lines of a part', () => {
  test('the parts of a roof leave out together what the whole does, wherever it is cut', () => {
    const place = fc.double({ min: 0, max: 240, noNaN: true });
    fc.assert(
      fc.property(
        place,
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        place,
        fc.double({ min: 0, max: 120, noNaN: true }),
        (along, from_eave, across, line, ridge) => {
          const parts: readonly Part[] = [
            { across: [0, ridge], along: [0, line] },
            { across: [ridge, 120], along: [0, line] },
            { across: [0, ridge], along: [line, 240] },
            { across: [ridge, 120], along: [line, 240] },
          ];
          const ring = [at(along, from_eave, across)];
          const cut = parts.map((part) => sum(openWithin(level, ring, part)));
          expect(Math.min(...cut)).toBeGreaterThan(-1e-9);
          expect(sum(cut)).toBeCloseTo(sum(openWithin(level, ring, all)), 6);
        },
      ),
    );
  });

  test('what stands beyond an end of the roof was never counted there', () => {
    expect(openWithin(level, [at(240, 60, 20)], all)[0]).toBeCloseTo(((Math.PI / 4) * 400 * 12) / 2, 9);
  });

  test('a stretch lists the columns that stand in it, and no other', () => {
    const found = keptWithin(level, [at(20, 60, 20), at(100, 60, 20)], [inches(60), inches(240)], undefined);
    expect(found.map(({ amount }) => amount)).toEqual([
      expect.closeTo(((Math.PI / 4) * 400 * 12) / 1728, 9) as number,
    ]);
  });
});

/** Two circles of one radius share a lens: 2 r² acos(d / 2r) − d/2 · √(4 r² − d²), as handbooks of geometry have it. */
const lens = (radius: number, apart: number) =>
  2 * radius ** 2 * Math.acos(apart / 2 / radius) - (apart / 2) * Math.sqrt(4 * radius ** 2 - apart ** 2);

describe('what two rings share is left out once', () => {
  // Slices tell it to some hundred-thousandths of a ring of 8,482 in3.
  const NEAR = 0.2;
  const disc = Math.PI * 15 ** 2;
  test.each<[title: string, rings: ReturnType<typeof at>[], area: number]>([
    ['far apart: both', [at(60, 60, 30), at(120, 60, 30)], 2 * disc],
    ['touching: both', [at(60, 60, 30), at(90, 60, 30)], 2 * disc],
    ['10 in apart along', [at(60, 60, 30), at(70, 60, 30)], 2 * disc - lens(15, 10)],
    ['10 in apart across', [at(60, 60, 30), at(60, 70, 30)], 2 * disc - lens(15, 10)],
    ['6 and 8 in apart: 10 in', [at(60, 60, 30), at(66, 68, 30)], 2 * disc - lens(15, 10)],
    ['at one place: one', [at(60, 60, 30), at(60, 60, 30)], disc],
    ['a small one within a large one: the large one', [at(60, 60, 30), at(62, 61, 10)], disc],
    ['a large one about a small one, entered after it', [at(62, 61, 10), at(60, 60, 30)], disc],
    ['three at one place: one', [at(60, 60, 30), at(60, 60, 30), at(60, 60, 30)], disc],
    [
      'three in a row, the outer ones apart',
      [at(60, 60, 30), at(80, 60, 30), at(100, 60, 30)],
      3 * disc - 2 * lens(15, 20),
    ],
    [
      'three in a row, the one between them entered last',
      [at(60, 60, 30), at(100, 60, 30), at(80, 60, 30)],
      3 * disc - 2 * lens(15, 20),
    ],
    [
      'the same, the far one entered first',
      [at(100, 60, 30), at(60, 60, 30), at(80, 60, 30)],
      3 * disc - 2 * lens(15, 20),
    ],
  ])('%s', (_, rings, area) => {
    expect(Math.abs(sum(openWithin(level, rings, all)) - area * 12)).toBeLessThan(NEAR);
  });

  test('on either side of a ridge over them as much as in all', () => {
    const rings = [at(60, 60, 30), at(64, 70, 40)];
    const cut = (
      [
        [0, 66],
        [66, 120],
      ] as const
    ).map((across) => sum(openWithin(level, rings, { ...all, across })));
    expect(Math.abs(sum(cut) - sum(openWithin(level, rings, all)))).toBeLessThan(NEAR);
  });

  test('on either side of a line between them as much as in all', () => {
    const rings = [at(60, 60, 30), at(70, 64, 40)];
    const cut = [0, 66, 240]
      .slice(1)
      .map((to, place) =>
        sum(openWithin(level, rings, { across: [0, 120], along: [[0, 66][place] ?? 0, to] })),
      );
    expect(Math.abs(sum(cut) - sum(openWithin(level, rings, all)))).toBeLessThan(NEAR);
  });
});
