import { expect, test } from 'vitest';
import { arrowLine } from '../../src/drawings/arrow-line.ts';

// By hand: 30 by 40 is 50 long, so each unit goes 0.6 by 0.8. A barb ends 8 back along the line, 4.8 by 6.4, and 3 to its side, 2.4 by 1.8.
test.each([
  ['down to the right', [10, 20], [40, 60], { x1: 10, y1: 20, x2: 40, y2: 60 }, 'M32.8 55.4L40 60L37.6 51.8'],
  ['up to the left', [40, 60], [10, 20], { x1: 40, y1: 60, x2: 10, y2: 20 }, 'M17.2 24.6L10 20L12.4 28.2'],
] as const)(
  'an arrow has its head at its end, the same size whatever its length: %s',
  (_, from, to, ends, head) => {
    const [line, barbs] = arrowLine(from, to);
    expect(line?.attributes).toMatchObject(ends);
    expect(barbs?.attributes.d).toBe(head);
  },
);
