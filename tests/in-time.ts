import { expect } from 'vitest';

/** So often a machine that is shared may hold up what is quick by itself. */
const TRIES = 5;

/**
 * Does work and gives its result; fails where none of a few tries takes less than so many milliseconds. A test that runs thousands is now and
 * then held up by the machine itself; what really hangs does so again.
 */
export function inTime<T>(milliseconds: number, work: () => T): T {
  let [quickest, found] = timed(work);
  for (let again = 1; again < TRIES && quickest >= milliseconds; again += 1) {
    const [took, same] = timed(work);
    quickest = Math.min(quickest, took);
    found = same;
  }
  expect(quickest).toBeLessThan(milliseconds);
  return found;
}

function timed<T>(work: () => T): [number, T] {
  const start = performance.now();
  const found = work();
  return [performance.now() - start, found];
}
