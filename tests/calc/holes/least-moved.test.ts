import { describe, expect, test } from 'vitest';
import type { Gap, Stand } from '../../../src/calc/holes/fewest-over-seams.ts';
import { leastMoved } from '../../../src/calc/holes/least-moved.ts';

/** Every order of these. */
const orders = <Each>(all: readonly Each[]): Each[][] =>
  all.length === 0
    ? [[]]
    : all.flatMap((one) => orders(all.filter((each) => each !== one)).map((rest) => [one, ...rest]));

const stand = (...marks: number[]): Stand => ({ clear: [marks], over: [] });
const exactly = (...gaps: number[]): Gap[] => gaps.map((gap) => ({ least: gap, most: gap }));

describe('the least moved of three holes, whose even places are 0, 10 and 20, in whatever order the gaps come', () => {
  test.each<[title: string, stands: readonly Stand[], gaps: readonly Gap[], marks: readonly number[]]>([
    // By hand: the first hole can’t move, so gaps of g lie g − 10 and 2 (g − 10) off: 3 marks for 9, none for 10, 6 for 12, 12 for 14.
    [
      'nothing in the way of the even gap',
      [stand(0, 0), stand(8, 14), stand(16, 28)],
      exactly(9, 10, 12, 14),
      [0, 10, 20],
    ],
    // By hand: the last hole is kept off 11 to 24, so a gap of 10 asks for 5, 15 and 25: 15 marks; a gap of 5 lies 5 + 10 off as well, and
    // comes first on the tape; a gap of 13 asks for 0, 13 and 26: 9 marks, the least, though the gap is not the nearest to the even one.
    [
      'the even gap only where all holes move',
      [stand(0, 0, 5, 5), stand(5, 5, 13, 15), stand(10, 10, 25, 26)],
      exactly(5, 10, 13),
      [0, 13, 26],
    ],
  ])('%s', (_, stands, gaps, marks) => {
    for (const order of orders(gaps))
      expect(
        leastMoved(stands, order, [0, 10, 20], 1e-6),
        order.map(({ least }) => least).join(', '),
      ).toEqual(marks);
  });
});
