import { type KeptSpace, keptOpen } from '../kept-open.ts';
import type { WorkedJob } from '../planned.ts';

export type Half = 'back' | 'front' | undefined;

/** The flues and lights that a hose or tube stops before; those of one half where it is a double-section home. */
export const hotInTheWay = ({ hot }: Pick<WorkedJob, 'hot'>, half: Half): KeptSpace[] =>
  keptOpen(hot).filter(({ side }) => half === undefined || side === half);

/** One of them as the ways in ask for it. A light keeps its ring as a flue does. */
export const asFlue = ({ along, at, thing, space }: KeptSpace) => ({
  along,
  at,
  across: thing.across,
  ring: space.ring,
});

/** All of them, so asked for. */
export const flueRings = (plan: Pick<WorkedJob, 'hot'>, half: Half) => hotInTheWay(plan, half).map(asFlue);
