import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { bareRoof, every } from './roofs.ts';

/** The same numbers between 0 and 1 every time. */
function numbers(first: number): () => number {
  let state = first;
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

/** A roof with so much on it, strewn anew for each number, and the same for the same one. */
export function crowded({ feet, grid, trusses, seams, obstacles }: Crowd, first: number): LayoutProblem {
  const next = numbers(first);
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
