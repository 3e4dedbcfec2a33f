import { expect, test } from 'vitest';
import { reachedAlong } from '../../../src/calc/marks/reached.ts';

type Push = Parameters<typeof reachedAlong>[0];
const upTheSlope: Push = { x: 0, y: 1, length: 20 };
const level: Push = { x: 1, y: 0, length: 20 };
/** Up the slope by 3 and along by 4 in every 5. */
const aslant: Push = { x: 0.8, y: 0.6, length: 20 };

// By hand: a stream of 5 comes 5 to either side of a push, and to a round end of that radius; 3, 4 and 5 make a right angle.
test.each<[title: string, push: Push, up: number, span: readonly [number, number] | undefined]>([
  ['half way along a push straight up the slope', upTheSlope, 10, [-5, 5]],
  ['past its end by 3', upTheSlope, 23, [-4, 4]],
  ['behind its start by 4', upTheSlope, -4, [-3, 3]],
  ['past its end by more than the stream', upTheSlope, 25.1, undefined],
  ['beside a level push by 3', level, 3, [-4, 24]],
  ['beside a level push by more than the stream', level, 5.1, undefined],
  // The push is at 8 along when it is 6 up; 5 aside of it is 5/0.6 along.
  ['half way along a push aslant', aslant, 6, [8 - 5 / 0.6, 8 + 5 / 0.6]],
])('a level line %s', (_, push, up, span) => {
  const found = reachedAlong(push, up, 5);
  if (span === undefined) expect(found).toBeUndefined();
  else for (const end of [0, 1] as const) expect(found?.[end]).toBeCloseTo(span[end], 6);
});
