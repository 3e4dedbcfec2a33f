import { median } from './figure.ts';

/** How often something is run before it is timed, and how often it is timed. */
export interface Runs {
  readonly warm: number;
  readonly timed: number;
}

/** The median of the times that some work takes, in milliseconds, after it has run often enough to be as fast as it gets. */
export function medianTime(work: () => unknown, { warm, timed }: Runs): number {
  for (let run = 0; run < warm; run++) work();
  const times: number[] = [];
  for (let run = 0; run < timed; run++) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  return median(times);
}
