import { layOut } from '../../src/calc/holes/lay-out.ts';
import { crowded } from '../calc/holes/crowded.ts';
import { budgets } from './budgets.ts';
import type { Figure } from './figure.ts';
import { medianTime } from './median-time.ts';

/** Twenty roofs, so that the search meets hard ones. */
const seeds = Array.from({ length: 20 }, (_, place) => place + 1);

/** How long does the search for the holes take, on the roof of twenty that takes it longest? */
export function timeOfLayout(): Figure[] {
  const crowd = { feet: 80, grid: 1 / 8, trusses: 24, seams: 48, obstacles: 6 };
  const times = seeds.map((seed) => {
    const roof = crowded(crowd, seed);
    return medianTime(() => layOut(roof), { warm: 20, timed: 21 });
  });
  return [
    {
      what: 'hole layout, 80 ft in 1/8 in, 40 trusses, 20 seams, 6 obstacles, slowest of 20',
      unit: 'ms',
      found: Math.max(...times),
      budget: budgets.layout,
    },
  ];
}
