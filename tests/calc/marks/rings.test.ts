import { describe, expect, test } from 'vitest';
import { hoseMarks } from '../../../src/calc/marks/marks.ts';
import type { Hand, Opening } from '../../../src/calc/marks/opening.ts';
import { pushesOf } from '../../../src/calc/marks/pushes.ts';
import type { Ring } from '../../../src/calc/ways/flue-ring.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { rules } from '../told.ts';

const inches = (amount: number) => quantity(amount, 'in');
const ring = (along: number, at: number, across = 12): Ring => ({
  along: inches(along),
  at: inches(at),
  across: inches(across),
});

/** In the middle of a stretch of 168 by 160 in: 80 in up the slope to its edge. */
const opening = (rings: readonly Ring[]): Opening => ({
  along: inches(84),
  from: inches(0),
  to: inches(168),
  width: inches(160),
  across: inches(80),
  streamReach: inches(24),
  rings,
});

/** Its marks, with a stand-off of 6 in. */
const marks = (rings: readonly Ring[], more: Partial<Opening> = {}) =>
  hoseMarks({ ...opening(rings), standOff: inches(6), ...more }, rules).marks;

describe('the push up the slope, at 12 o’clock, stops short of the first ring in its way', () => {
  // By hand: a ring of 12 in and a hose of 2 in keep 7 in from the middle of the ring, and the stand-off is 6 in more.
  test.each<[title: string, rings: readonly Ring[], mark: number, stops: boolean]>([
    ['none: to the edge less the stand-off', [], 74, false],
    ['one 40 in off', [ring(84, 120)], 27, true],
    ['a nearer and a farther one', [ring(84, 120), ring(84, 140)], 27, true],
    ['a farther one, entered first', [ring(84, 140), ring(84, 120)], 27, true],
    // 2 in wide on the very edge, it keeps 2 in: 78 in off it begins, behind the end of the push and before the edge.
    ['one within the stand-off at the edge', [ring(84, 160, 2)], 72, true],
    ['one that stands aside by what it keeps off', [ring(91, 120)], 74, false],
  ])('%s', (_, rings, mark, stops) => {
    const up = marks(rings).find(({ clock }) => clock === '12:00');
    expect(up && amountIn(up.mark, 'in')).toBeCloseTo(mark, 9);
    expect(up?.stopsAtRing).toBe(stops);
  });
});

describe('a flue of a neighbouring opening that is blown behind from here has a push of its own', () => {
  const beyond = (along: number, at: number, across = 12): Ring => ({
    ...ring(along, at, across),
    blownBehind: true,
  });
  // By hand: 132 in off, less half of 12 in, half of a hose of 2 in, and 6 in. The corner is at 3 o'clock and at 12: 99 in, 132 in, 165 in.
  test.each<[title: string, rings: readonly Ring[], clock: string, mark: number]>([
    ['straight to the left, in the place of the push that points there', [beyond(216, 80)], '9:00', 119],
    ['straight to the right', [beyond(-48, 80)], '3:00', 119],
    ['aslant, three to four of five', [beyond(84 + 99, 80 - 132)], '7:15', 165 - 13],
    [
      'one so narrow that the reading misses it',
      [beyond(84 + 600, 80 + 7, 1)],
      '9:00',
      Math.hypot(600, 7) - 7.5,
    ],
  ])('%s', (_, rings, clock, mark) => {
    const all = marks(rings);
    const past = all.filter((each) => each.past);
    expect(past.map((each) => [each.clock, each.stopsAtRing])).toEqual([[clock, true]]);
    expect(past[0] && amountIn(past[0].mark, 'in')).toBeCloseTo(mark, 9);
    expect(all.filter((each) => each.clock === clock)).toHaveLength(1);
    expect(all[0]).toBe(past[0]);
  });

  test('and none goes there where the flue is not blown behind from here', () => {
    expect(marks([ring(216, 80)]).filter(({ past }) => past)).toEqual([]);
    expect(marks([ring(216, 80)])).toHaveLength(marks([]).length);
  });
});

describe('which hand a ring lies on', () => {
  // Facing the ridge with the starting end to the right, what lies towards the far end is on the left; from the other side it is on the right.
  test.each<[hand: Hand | undefined, along: number, right: boolean]>([
    [undefined, 124, false],
    ['right hand', 124, false],
    ['right hand', 44, true],
    ['left hand', 124, true],
    ['left hand', 44, false],
  ])('the starting end on the %s, a ring %s in along', (startingEnd, along, right) => {
    const stopped = marks([ring(along, 80)], { startingEnd }).filter(({ stopsAtRing }) => stopsAtRing);
    expect(stopped.length).toBeGreaterThan(0);
    for (const { ray } of stopped) expect(ray.x > 0).toBe(right);
  });
});

test('an opening that touches what a ring keeps off is refused, and one an eighth beyond it is not', () => {
  // Half of 12 in and of the hose of 2 in: 7 in.
  expect(() => marks([ring(84, 87)])).toThrow();
  expect(() => marks([ring(84, 87.125)])).not.toThrow();
});

test('a ring is drawn with half its width and half that of its flue, where that is known, and its share bears its number', () => {
  const flue = { ...ring(84, 120), flue: inches(8) };
  const { rings, behind } = pushesOf(opening([flue, ring(48, 80, 10)]), rules);
  // 40 in up the slope; and 36 in towards the starting end, which lies on the right hand.
  expect(rings).toEqual([
    { x: expect.closeTo(0, 9) as number, y: 40, radius: 6, flue: 4 },
    { x: 36, y: 0, radius: 5 },
  ]);
  expect(behind.map(({ symbol }) => symbol)).toEqual(['su1', 'su2']);
});
