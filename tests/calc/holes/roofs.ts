import fc from 'fast-check';
import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';

/** A roof of so many feet with nothing on it, under the ranges of the trade: 6 to 8 ft at the ends, 12 to 16 ft between. */
export const bareRoof = (feet: number): LayoutProblem => ({
  length: 12 * feet,
  grid: 1 / 8,
  first: { low: 72, high: 96 },
  last: { low: 72, high: 96 },
  spacing: { low: 144, high: 192 },
  holeDiameter: 6,
  patchSide: 10,
  trusses: [],
  memberWidth: 1.5,
  seams: [],
  obstacles: [],
});

/** Places every so far, up to the end of the roof. */
export const every = (step: number, from: number, length: number): number[] =>
  Array.from({ length: Math.floor((length - from) / step) + 1 }, (_, count) => from + count * step);

/** The same roof seen from its other end. */
export const mirrored = (roof: LayoutProblem): LayoutProblem => ({
  ...roof,
  first: roof.last,
  last: roof.first,
  trusses: roof.trusses.map((place) => roof.length - place),
  seams: roof.seams.map((place) => roof.length - place),
  obstacles: roof.obstacles.map(({ from, to, name }) => ({
    from: roof.length - to,
    to: roof.length - from,
    name,
  })),
});

/** The same roof, every length so many times as long. */
export function scaled(roof: LayoutProblem, by: number): LayoutProblem {
  const range = ({ low, high }: { low: number; high: number }) => ({ low: low * by, high: high * by });
  return {
    length: roof.length * by,
    grid: roof.grid * by,
    first: range(roof.first),
    last: range(roof.last),
    spacing: range(roof.spacing),
    holeDiameter: roof.holeDiameter * by,
    patchSide: roof.patchSide * by,
    memberWidth: roof.memberWidth * by,
    trusses: roof.trusses.map((place) => place * by),
    seams: roof.seams.map((place) => place * by),
    obstacles: roof.obstacles.map(({ from, to, name }) => ({ from: from * by, to: to * by, name })),
  };
}

const quarters = (least: number, most: number) => fc.integer({ min: 4 * least, max: 4 * most });
const range = (low: fc.Arbitrary<number>, width: number) =>
  fc.record({ low, more: quarters(0, width) }).map(({ low, more }) => ({ low, high: low + more }));

/**
 * Small roofs of a few dozen marks, every length a whole number of quarter marks: small enough to try every layout, crowded enough
 * that the rules get in each other's way.
 */
export function smallRoofs(
  grids: readonly number[],
  marks: { least: number; most: number },
): fc.Arbitrary<LayoutProblem> {
  const place = quarters(-2, marks.most + 2);
  return fc
    .record({
      length: quarters(marks.least, marks.most),
      first: range(quarters(0, 5), 4),
      last: range(quarters(0, 5), 4),
      spacing: range(quarters(2, 8), 4),
      holeDiameter: quarters(1, 2),
      patchMore: quarters(1, 4),
      memberWidth: quarters(0, 1),
      trusses: fc.array(place, { maxLength: 4 }),
      seams: fc.array(place, { maxLength: 4 }),
      obstacles: fc.array(
        fc
          .record({ from: place, size: quarters(0, 4) })
          .map(({ from, size }) => ({ from, to: from + size, name: 'vent' })),
        { maxLength: 2 },
      ),
      grid: fc.constantFrom(...grids),
    })
    .map(({ grid, patchMore, ...roof }) =>
      scaled({ ...roof, patchSide: roof.holeDiameter + patchMore, grid: 4 }, grid / 4),
    );
}
