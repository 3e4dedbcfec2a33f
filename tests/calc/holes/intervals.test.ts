import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  common,
  countOf,
  either,
  isWithin,
  leftOver,
  type Stretches,
  withinReach,
} from '../../../src/calc/holes/intervals.ts';

const marksOf = (stretches: Stretches): number[] => {
  const marks: number[] = [];
  for (let at = 0; at < stretches.length; at += 2) {
    for (let mark = stretches[at] ?? 0; mark <= (stretches[at + 1] ?? 0); mark++) marks.push(mark);
  }
  return marks;
};

const taken = fc.array(fc.tuple(fc.integer({ min: -3, max: 33 }), fc.integer({ min: -1, max: 5 })), {
  maxLength: 6,
});
const stretches = taken.map((pairs) =>
  leftOver(
    pairs.flatMap(([from, size]) => [from, from + size]),
    0,
    30,
  ),
);
const everyMark = Array.from({ length: 31 }, (_, mark) => mark);

/** Stretches ascend and never touch: each reads as one run of marks. */
const wellFormed = (found: Stretches) =>
  found.every(
    (mark, at) => at === 0 || (at % 2 === 1 ? mark >= (found[at - 1] ?? 0) : mark > (found[at - 1] ?? 0) + 1),
  );

describe('stretches of marks', () => {
  test('left over hold every mark that no pair takes', () => {
    fc.assert(
      fc.property(taken, (pairs) => {
        const left = leftOver(
          pairs.flatMap(([from, size]) => [from, from + size]),
          0,
          30,
        );
        const free = everyMark.filter(
          (mark) => !pairs.some(([from, size]) => mark >= from && mark <= from + size),
        );
        expect(marksOf(left)).toEqual(free);
        expect(wellFormed(left)).toBe(true);
        expect(countOf(left)).toBe(free.length);
      }),
      { seed: 1 },
    );
  });

  test('within reach hold the marks that lie a gap on from some mark, forwards and back', () => {
    const gap = fc.tuple(fc.integer({ min: -15, max: 15 }), fc.integer({ min: -2, max: 6 }));
    fc.assert(
      fc.property(stretches, stretches, gap, (from, into, [least, more]) => {
        const most = least + more;
        const found = withinReach(from, least, most, into);
        const reached = marksOf(into).filter((mark) =>
          marksOf(from).some((start) => mark - start >= least && mark - start <= most),
        );
        expect(marksOf(found)).toEqual(reached);
        expect(wellFormed(found)).toBe(true);
      }),
      { numRuns: 1000, seed: 2 },
    );
  });

  test('in common, and in either, hold what both and what one of two lists hold', () => {
    fc.assert(
      fc.property(stretches, stretches, (a, b) => {
        const inA = new Set(marksOf(a));
        const inB = new Set(marksOf(b));
        expect(marksOf(common(a, b))).toEqual(everyMark.filter((mark) => inA.has(mark) && inB.has(mark)));
        expect(marksOf(either(a, b))).toEqual(everyMark.filter((mark) => inA.has(mark) || inB.has(mark)));
        expect(wellFormed(either(a, b))).toBe(true);
        for (const mark of everyMark) expect(isWithin(a, mark)).toBe(inA.has(mark));
      }),
      { seed: 3 },
    );
  });
});
