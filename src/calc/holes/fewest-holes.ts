import type { Tape } from './allowed-positions.ts';
import { common, withinReach } from './intervals.ts';

/**
 * How few holes hold every rule?
 * Undefined where no number of them does. Each round finds every mark that one more hole can reach, so the first round that
 * reaches the last stretch is the answer.
 * @example fewestHoles(onTheTape(bareRoof(66), new Set(ruleNames))) // => 5
 */
export function fewestHoles({ allowed, first, last, leastGap, mostGap }: Tape): number | undefined {
  let reached = common(first, allowed);
  for (let holes = 1; reached.length > 0; holes++) {
    if (common(reached, last).length > 0) return holes;
    reached = withinReach(reached, leastGap, mostGap, allowed);
  }
  return undefined;
}
