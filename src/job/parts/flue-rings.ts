import { keptOpen } from '../kept-open.ts';
import type { WorkedJob } from '../planned.ts';

/**
 * The flues and lights that a hose or tube stops before, as the ways in ask for them; those of one half where it is a double home. A light
 * keeps its ring as a flue does.
 */
export const flueRings = ({ hot }: Pick<WorkedJob, 'hot'>, half: 'back' | 'front' | undefined) =>
  keptOpen(hot)
    .filter(({ side }) => half === undefined || side === half)
    .map(({ along, at, thing, space }) => ({ along, at, across: thing.across, ring: space.ring }));
