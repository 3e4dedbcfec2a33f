import { describe, expect, test } from 'vitest';
import { toSvg } from '../../src/drawings/svg.ts';
import { plot, roundAbove } from './plot.ts';

describe('a plot', () => {
  test.each([
    [34, 50],
    [50, 50],
    [51, 100],
    [0.13, 0.2],
    [0, 1],
    [Number.NaN, 1],
  ])('above %d the round number is %d', (value, round) => {
    expect(roundAbove(value)).toBeCloseTo(round, 12);
  });

  /** By hand: from 70 to 510 across, from 240 up to 40; 5 of 10 pages and 50 of 100 s are half way. */
  test('puts a point where its numbers say', () => {
    const panel = {
      title: 'T',
      x: 'pages',
      y: 's',
      series: [
        {
          name: 'one',
          points: [
            [5, 50],
            [10, 100],
          ] as const,
        },
      ],
    };
    const svg = toSvg(plot('A', 'B', [panel]), 'plot');
    expect(svg).toMatch(/d="M ?290[ ,]140 ?L ?510[ ,]40"/);
  });
});
