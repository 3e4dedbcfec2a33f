import type { LayoutProblem } from '../../../src/calc/holes/search.ts';
import { bareRoof, every } from './roofs.ts';

/** The same numbers between 0 and 1 every time. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

/** How much stands on a roof. */
export interface Crowd {
  readonly feet: number;
  readonly grid: number;
  readonly trusses: number;
  readonly seams: number;
  readonly obstacles: number;
}

/** A roof with so much on it, strewn by the seed. */
export function crowded({ feet, grid, trusses, seams, obstacles }: Crowd, seed: number): LayoutProblem {
  const next = numbers(seed);
  const roof = bareRoof(feet);
  return {
    ...roof,
    grid,
    trusses: every(trusses, Math.floor(8 * trusses * next()) / 8, roof.length),
    seams: every(seams, Math.floor(8 * seams * next()) / 8, roof.length),
    obstacles: Array.from({ length: obstacles }, () => {
      const middle = next() * roof.length;
      const reach = 8 + 20 * next();
      return { from: middle - reach, to: middle + reach, name: 'vent' };
    }),
  };
}
